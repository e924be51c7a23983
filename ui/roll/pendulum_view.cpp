#include "roll/pendulum_view.hpp"

#include "fields/field_spec.hpp"
#include "fields/quiet_combo_box.hpp"
#include "session/follow.hpp"
#include "text/corner_text.hpp"
#include "text/figure_text.hpp"

#include <rampwright/units/format.hpp>

#include <QFormLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace rampwright::ui {

PendulumView::PendulumView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      measured_(new BenchWheelBox(QStringLiteral("pendulum.of"), this)),
      wires_(new QuietComboBox(this)),
      corner_(new QuietComboBox(this)),
      wheel_(new MeasuredEntry(session, QStringLiteral("pendulum.mass"), tr("Wheel weighs"), Quantity::mass,
                               tr("The wheel alone, on a pocket scale."), this)),
      plate_(new MeasuredEntry(session, QStringLiteral("pendulum.plate"), tr("Plate weighs"), Quantity::mass,
                               tr("What carries the wheel on the wires; zero where nothing does."), this)),
      spread_(new MeasuredEntry(session, QStringLiteral("pendulum.spread"), tr("Wires apart"),
                                Quantity::length,
                                tr("With two wires from one to the other; with three from the axle's line "
                                   "to any of them. A tenth of a millimetre counts."),
                                this)),
      length_(new MeasuredEntry(session, QStringLiteral("pendulum.length"), tr("Wires long"),
                                Quantity::length,
                                tr("From where a wire is held above to where it holds the wheel."), this)),
      time_(new MeasuredEntry(session, QStringLiteral("pendulum.time"), tr("Time with the wheel"),
                              Quantity::time, tr("Of all the full swings counted, there and back."), this)),
      plate_time_(new MeasuredEntry(session, QStringLiteral("pendulum.plate_time"),
                                    tr("Time of the plate alone"), Quantity::time,
                                    tr("Of as many full swings of the plate without the wheel."), this)),
      swing_(new MeasuredEntry(
          session, QStringLiteral("pendulum.swing"), tr("Swing to one side"), Quantity::angle,
          tr("How far it turns from the middle to one side. A wide swing is slower."), this)),
      lines_{{{wheel_, &PendulumReadings::wheel},
              {plate_, &PendulumReadings::plate},
              {spread_, &PendulumReadings::spread},
              {length_, &PendulumReadings::length},
              {time_, &PendulumReadings::time},
              {plate_time_, &PendulumReadings::plate_time},
              {swing_, &PendulumReadings::swing}}},
      spread_label_(new QLabel(this)),
      result_(new QLabel(this)),
      count_(new QSpinBox(this)),
      put_(new QPushButton(PendulumView::tr("&Put It on the Car"), this)) {
    setObjectName(QStringLiteral("pendulum"));
    wires_->setObjectName(QStringLiteral("pendulum.wires"));
    wires_->setAccessibleName(PendulumView::tr("How it hangs"));
    wires_->addItems({PendulumView::tr("Two wires"), PendulumView::tr("Three wires")});
    corner_->setObjectName(QStringLiteral("pendulum.corner"));
    corner_->setAccessibleName(PendulumView::tr("Wheel that takes it"));
    corner_->addItem(PendulumView::tr("all wheels"));
    for (const Corner corner : all_corners)
        corner_->addItem(corner_text(corner));
    count_->setObjectName(QStringLiteral("pendulum.count"));
    count_->setAccessibleName(PendulumView::tr("Full swings timed"));
    count_->setRange(1, 1000);
    wires_->setWhatsThis(PendulumView::tr("How many wires it hangs on, all equally long and upright."));
    corner_->setWhatsThis(PendulumView::tr("Which wheel of the car takes the spin inertia found."));
    count_->setWhatsThis(
        PendulumView::tr("Full swings, there and back, that both times are of. More make the time of one "
                         "surer."));
    result_->setObjectName(QStringLiteral("pendulum.result"));
    result_->setWordWrap(true);
    put_->setObjectName(QStringLiteral("pendulum.put"));
    setWhatsThis(PendulumView::tr(
        "Hang the wheel level on two or three equally long upright wires, its axle's line in the "
        "middle, twist it a little and time full swings, there and back. A plate that carries it "
        "is timed alone too; without one leave its mass at zero."));
    auto* form = new QFormLayout(this);
    form->setContentsMargins(12, 8, 12, 8);
    form->addRow(measured_->accessibleName(), measured_);
    form->addRow(PendulumView::tr("It hangs on"), wires_);
    form->addRow(wheel_->focusProxy()->accessibleName(), wheel_);
    form->addRow(plate_->focusProxy()->accessibleName(), plate_);
    form->addRow(spread_label_, spread_);
    form->addRow(length_->focusProxy()->accessibleName(), length_);
    form->addRow(count_->accessibleName(), count_);
    form->addRow(time_->focusProxy()->accessibleName(), time_);
    form->addRow(plate_time_->focusProxy()->accessibleName(), plate_time_);
    form->addRow(swing_->focusProxy()->accessibleName(), swing_);
    form->addRow(result_);
    auto* put_row = new QHBoxLayout;
    put_row->addWidget(put_);
    put_row->addWidget(corner_);
    put_row->addStretch(1);
    form->addRow(put_row);

    keep_what_is_typed(
        *this, lines_, [this] { return readings(); }, [this](const PendulumReadings& now) { keep(now); },
        [this] { show_result(); });
    connect(measured_, &QComboBox::currentIndexChanged, this, [this] {
        for (const auto& line : lines_)
            line.entry->forget();
        refresh();
    });
    connect(wires_, &QComboBox::currentIndexChanged, this, [this](int index) {
        PendulumReadings now = readings();
        now.wires = index + 2;
        keep(now);
    });
    connect(count_, &QSpinBox::valueChanged, this, [this](int count) {
        PendulumReadings now = readings();
        now.swings = count;
        keep(now);
    });
    connect(put_, &QPushButton::clicked, this, &PendulumView::put_on_car);
    follow_while_seen(*this, session_, [this] { refresh(); });
}

void PendulumView::refresh() {
    if (session_.in_gesture()) return;
    measured_->list(session_.project());
    show_readings();
    show_result();
}

PendulumReadings PendulumView::readings() const {
    const Project& project = session_.project();
    const auto& own =
        measured_->place() ? project.bench_wheels[*measured_->place()].pendulum : project.pendulum;
    if (own) return *own;
    // Another wheel has hung on the same wires: they start as they were then.
    const PendulumReadings* rig = project.pendulum ? &*project.pendulum : nullptr;
    for (const BenchWheel& wheel : project.bench_wheels)
        if (wheel.pendulum) rig = &*wheel.pendulum;
    if (!rig) return {};
    PendulumReadings start = *rig;
    start.wheel.reset();
    start.time.reset();
    return start;
}

void PendulumView::keep(PendulumReadings readings) {
    try {
        session_.apply(set_pendulum(session_.document(), measured_->place(), readings));
        show_result();
    } catch (const Problem& problem) {
        result_->setText(plain_text(problem));
        put_->setEnabled(false);
    }
}

void PendulumView::show_readings() {
    constexpr double scale_sigma = 0.01e-3; // of a pocket scale, a start
    const PendulumReadings now = readings();
    const auto place = measured_->place();
    const double mass = place ? session_.project().bench_wheels[*place].mass.value_or(0) : 0;
    const auto show = [](MeasuredEntry& entry, const std::optional<Uncertain>& reading, Measured otherwise) {
        entry.show_value(reading ? Measured{reading->value, reading->sigma} : otherwise);
    };
    show(*wheel_, now.wheel,
         {mass > 0 ? mass : session_.plan().wheels[std::size_t(Corner::rear_left)].mass, scale_sigma});
    show(*plate_, now.plate, {0, 0});
    show(*spread_, now.spread, {20e-3, 0.1e-3});
    show(*length_, now.length, {0.5, 0.5e-3});
    show(*swing_, now.swing, {10 * std::numbers::pi / 180, 0});
    for (MeasuredEntry* entry : {time_, plate_time_}) {
        const auto& reading = entry == time_ ? now.time : now.plate_time;
        if (reading)
            entry->show_value({reading->value, reading->sigma});
        else
            entry->show_nothing();
    }
    const QSignalBlocker wires_blocker(wires_), count_blocker(count_);
    wires_->setCurrentIndex(now.wires - 2);
    count_->setValue(now.swings);
}

WireBench PendulumView::read() const {
    const auto per_swing = [&](Measured time) {
        return Measured{time.value / count_->value(), time.sigma / count_->value()};
    };
    Measured radius = spread_->read();
    if (wires_->currentIndex() == 0) radius = {radius.value / 2, radius.sigma / 2};
    WireBench bench;
    bench.body_mass = wheel_->read();
    bench.platform_mass = plate_->read();
    bench.radius = radius;
    bench.length = length_->read();
    bench.period = per_swing(time_->read());
    if (bench.platform_mass.value > 0) bench.platform_period = per_swing(plate_time_->read());
    bench.amplitude = swing_->read().value;
    bench.gravity = session_.project().track.gravity;
    return bench;
}

void PendulumView::show_result() {
    const QString spread = wires_->currentIndex() == 0 ? PendulumView::tr("Wires apart")
                                                       : PendulumView::tr("Axle's line to a wire");
    spread_label_->setText(spread);
    spread_->name(spread);
    inertia_.reset();
    try {
        const WireBench bench = read();
        if (bench.body_mass.value <= 0 || bench.radius.value <= 0 || bench.length.value <= 0 ||
            bench.period.value <= 0 || bench.platform_mass.value < 0)
            throw mend_reading(PendulumView::tr("Mass, wires and time must be above zero"),
                               PendulumView::tr("type what was measured"));
        if (!(std::abs(bench.amplitude) < std::numbers::pi / 2) ||
            bench.length.value < 2 * bench.radius.value)
            throw mend_reading(PendulumView::tr("The swing or the wires cannot be so"),
                               PendulumView::tr("swing less than 90°, on wires longer than they are apart"));
        const Combined found = measure_inertia(bench);
        if (!(found.value > 0))
            throw mend_reading(PendulumView::tr("It swings too quickly for what it weighs"),
                               PendulumView::tr("look at the time, the number of swings and the wires"));
        const std::array<QString, 6> sources{PendulumView::tr("the wheel's mass"),
                                             PendulumView::tr("the plate's mass"),
                                             PendulumView::tr("where the wires are"),
                                             PendulumView::tr("the wires' length"),
                                             PendulumView::tr("the time"),
                                             PendulumView::tr("the plate's time")};
        std::size_t worst = 0;
        for (std::size_t i = 0; i < std::min(sources.size(), found.contributions.size()); ++i)
            if (std::abs(found.contributions[i]) > std::abs(found.contributions[worst])) worst = i;
        const QString value = QString::fromStdString(
            format_with_sigma(found.value, found.sigma, Quantity::inertia, session_.project().units));
        result_->setText(found.sigma > 0
                             ? PendulumView::tr("Spin inertia %1; most of the doubt comes from %2.")
                                   .arg(value, sources[worst])
                             : PendulumView::tr("Spin inertia %1.").arg(value));
        inertia_ = found;
    } catch (const Problem& problem) {
        result_->setText(plain_text(problem));
    }
    put_->setEnabled(inertia_.has_value());
}

void PendulumView::put_on_car() {
    if (!inertia_) return;
    Edit edit{session_.document(), PendulumView::tr("Set spin inertia from the pendulum").toStdString(), {}};
    try {
        for (std::size_t i = 0; i < all_corners.size(); ++i) {
            if (corner_->currentIndex() > 0 && corner_->currentIndex() != static_cast<int>(i) + 1) continue;
            const std::string key =
                "@/wheels/" + std::string(to_string(all_corners[i])) + "/spin_inertia_g_mm2";
            const auto pointer = resolve_pointer(session_, key.c_str());
            if (pointer)
                edit.document = set_value(edit.document, *pointer,
                                          from_si(inertia_->value, *find_unit("g mm²")), edit.name)
                                    .document;
        }
        edit.keys = difference(session_.document(), edit.document);
        session_.apply(edit);
    } catch (const Problem& problem) {
        result_->setText(plain_text(problem));
    }
}

} // namespace rampwright::ui
