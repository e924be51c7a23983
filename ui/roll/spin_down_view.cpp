#include "roll/spin_down_view.hpp"

#include "fields/field_spec.hpp"
#include "fields/quiet_combo_box.hpp"
#include "roll/reading_text.hpp"
#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/heat/losses.hpp>
#include <rampwright/study/heat_case.hpp>
#include <rampwright/units/format.hpp>

#include <QEvent>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>

#include <algorithm>
#include <array>

namespace rampwright::ui {
namespace {

constexpr std::size_t measured_corner = std::size_t(Corner::rear_left); // it always touches

/// As offered, in the order of the box.
constexpr std::array<SpeedUnit, 3> speed_units{SpeedUnit::turns_per_minute, SpeedUnit::turns_per_second,
                                               SpeedUnit::radians_per_second};

} // namespace

SpinDownView::SpinDownView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      measured_(new BenchWheelBox(QStringLiteral("spindown.of"), this)),
      readings_(new QPlainTextEdit(this)),
      speed_unit_(new QuietComboBox(this)),
      inertia_(new MeasuredEntry(
          session, QStringLiteral("spindown.inertia"), tr("Spin inertia"), Quantity::inertia,
          tr("Of the wheel about its axle: from the pendulum, or as the plan has it."), this)),
      mass_(new MeasuredEntry(session, QStringLiteral("spindown.mass"), tr("Wheel weighs"), Quantity::mass,
                              tr("The wheel alone, on a pocket scale."), this)),
      bore_(new MeasuredEntry(session, QStringLiteral("spindown.bore"), tr("Bore"), Quantity::length,
                              tr("Diameter of the hole the axle goes through."), this)),
      lines_{{{inertia_, &SpinDownReadings::spin_inertia},
              {mass_, &SpinDownReadings::wheel},
              {bore_, &SpinDownReadings::bore}}},
      air_(new QCheckBox(tr("&Take off what the air takes"), this)),
      plot_(new MarkPlot(QStringLiteral("spindown.plot"), {{tr("read"), QScatterSeries::MarkerShapeCircle}},
                         tr("fitted"), this)),
      result_(new QLabel(this)),
      put_(new QPushButton(tr("&Put It on the Car"), this)) {
    setObjectName(QStringLiteral("spindown"));
    readings_->setObjectName(QStringLiteral("spindown.readings"));
    readings_->setAccessibleName(tr("Readings: time and speed, one pair a line"));
    readings_->setTabChangesFocus(true);
    readings_->setPlaceholderText(tr("seconds  speed\n0  1900\n2  1710\n4  1525\n…"));
    speed_unit_->setObjectName(QStringLiteral("spindown.unit"));
    speed_unit_->setAccessibleName(tr("Unit of the speeds"));
    speed_unit_->addItems({tr("turns a minute"), tr("turns a second"), tr("radians a second")});
    air_->setObjectName(QStringLiteral("spindown.air"));
    air_->setChecked(true);
    air_->setWhatsThis(
        tr("The air slows the wheel too. Taken off, what is left is the axle's friction alone."));
    speed_unit_->setWhatsThis(tr("What the speeds are read in. A mark on the wheel filmed at a known rate "
                                 "gives turns a second."));
    readings_->setWhatsThis(tr("One reading a line: seconds, then speed, with a space, a tab or a semicolon "
                               "between. A first line of words is a heading."));
    readings_->installEventFilter(this);
    result_->setObjectName(QStringLiteral("spindown.result"));
    result_->setWordWrap(true);
    put_->setObjectName(QStringLiteral("spindown.put"));
    setWhatsThis(tr("Spin a wheel on its own level axle and read its speed at several times while it slows: "
                    "paste or type time and speed, one pair a line. Keep eyes and sleeves clear of whatever "
                    "spins it up."));
    auto* form = new QFormLayout;
    form->addRow(tr("Speeds in"), speed_unit_);
    form->addRow(inertia_->focusProxy()->accessibleName(), inertia_);
    form->addRow(mass_->focusProxy()->accessibleName(), mass_);
    form->addRow(bore_->focusProxy()->accessibleName(), bore_);
    form->addRow(air_);
    auto* left = new QVBoxLayout;
    auto* whose = new QFormLayout;
    whose->addRow(measured_->accessibleName(), measured_);
    left->addLayout(whose);
    left->addWidget(readings_, 1);
    left->addLayout(form);
    auto* top = new QHBoxLayout;
    top->addLayout(left, 2);
    top->addWidget(plot_, 3);
    auto* bottom = new QHBoxLayout;
    bottom->addWidget(result_, 1);
    bottom->addWidget(put_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addLayout(top, 1);
    column->addLayout(bottom);

    connect(readings_, &QPlainTextEdit::textChanged, this, [this] {
        text_typed_ = true;
        keep_text();
    });
    connect(speed_unit_, &QComboBox::currentIndexChanged, this, &SpinDownView::keep_text);
    connect(air_, &QCheckBox::toggled, this, [this](bool air) {
        SpinDownReadings now = readings();
        now.air = air;
        keep(now);
    });
    keep_what_is_typed(
        *this, lines_, [this] { return readings(); }, [this](const SpinDownReadings& now) { keep(now); },
        [this] { show_result(); });
    connect(measured_, &QComboBox::currentIndexChanged, this, [this] {
        text_typed_ = false;
        for (const auto& line : lines_)
            line.entry->forget();
        refresh();
    });
    connect(put_, &QPushButton::clicked, this, &SpinDownView::put_on_car);
    follow_while_seen(*this, session_, [this] { refresh(); });
}

bool SpinDownView::eventFilter(QObject* watched, QEvent* event) {
    if (watched == readings_ && event->type() == QEvent::FocusIn) ++visit_;
    return QWidget::eventFilter(watched, event);
}

void SpinDownView::refresh() {
    if (session_.in_gesture()) return;
    measured_->list(session_.project());
    show_readings();
    show_result();
}

SpinDownReadings SpinDownView::readings() const {
    const Project& project = session_.project();
    const auto& own =
        measured_->place() ? project.bench_wheels[*measured_->place()].spin_down : project.spin_down;
    return own.value_or(SpinDownReadings{});
}

void SpinDownView::keep(const SpinDownReadings& readings, const QString& merge) {
    try {
        session_.apply(set_spin_down(session_.document(), measured_->place(), readings), merge);
        show_result();
    } catch (const Problem& problem) {
        result_->setText(plain_text(problem));
        put_->setEnabled(false);
    }
}

void SpinDownView::keep_text() {
    SpinDownReadings now = readings();
    now.speed_unit = speed_unit();
    try {
        now.readings = pairs();
    } catch (const Problem&) {
        return show_result(); // What cannot be read yet stays in the text; the result says why.
    }
    text_typed_ = false;
    keep(now, QStringLiteral("spindown.readings.%1.%2").arg(measured_->currentIndex()).arg(visit_));
}

SpeedUnit SpinDownView::speed_unit() const {
    return speed_units.at(static_cast<std::size_t>(speed_unit_->currentIndex()));
}

void SpinDownView::show_readings() {
    const SpinDownReadings now = readings();
    const auto place = measured_->place();
    const auto show = [](MeasuredEntry& entry, const std::optional<Uncertain>& reading,
                         std::optional<Measured> otherwise) {
        if (reading)
            entry.show_value({reading->value, reading->sigma});
        else if (otherwise)
            entry.show_value(*otherwise);
    };
    std::optional<Measured> inertia, mass, bore;
    try {
        const Wheel wheel = build_car(session_.project(), session_.car()).wheels[measured_corner];
        const BenchWheel bench = place ? session_.project().bench_wheels[*place] : BenchWheel{};
        constexpr double share = 0.03, scale_sigma = 0.01e-3, gauge_sigma = 0.02e-3; // a start
        inertia = Measured{wheel.spin_inertia, share * wheel.spin_inertia};
        mass = Measured{bench.mass.value_or(wheel.mass), scale_sigma};
        bore = Measured{bench.bore.value_or(2 * wheel.bore_radius), gauge_sigma};
    } catch (const Problem&) {
        // What was typed still stands; the window says elsewhere why the car cannot be built.
    }
    show(*inertia_, now.spin_inertia, inertia);
    show(*mass_, now.wheel, mass);
    show(*bore_, now.bore, bore);
    const QSignalBlocker text_blocker(readings_), unit_blocker(speed_unit_), air_blocker(air_);
    air_->setChecked(now.air);
    if (text_typed_) return;
    speed_unit_->setCurrentIndex(static_cast<int>(
        std::find(speed_units.begin(), speed_units.end(), now.speed_unit) - speed_units.begin()));
    // A text that says what is kept stays as it was typed, its heading with it.
    constexpr double alike = 1e-5;
    try {
        const std::vector<Vec2> shown = pairs();
        if (std::equal(shown.begin(), shown.end(), now.readings.begin(), now.readings.end(),
                       [](const Vec2& a, const Vec2& b) { return (a - b).norm() < alike; }))
            return;
    } catch (const Problem&) {
        // Of another wheel, or undone.
    }
    std::vector<Vec2> kept = now.readings;
    for (Vec2& reading : kept)
        reading.y() /= radians_per_second(now.speed_unit);
    readings_->setPlainText(reading_text(kept));
}

Measured SpinDownView::windage() const {
    if (!air_->isChecked()) return {};
    const ReadyHeat ready = make_ready(make_case(session_.project(), session_.car()));
    const double value =
        wheel_losses(ready.wheels, true, ready.air.density, ready.air.dynamic_viscosity)[measured_corner]
            .windage;
    const Uncertain factor = ready.wheels.model[ModelName::windage];
    return {value, factor.value > 0 ? value * factor.sigma / factor.value : 0};
}

std::vector<Vec2> SpinDownView::pairs() const {
    std::vector<Vec2> found = read_reading_text(readings_->toPlainText(), session_.project().units);
    for (Vec2& reading : found)
        reading.y() *= radians_per_second(speed_unit());
    return found;
}

SpinDown SpinDownView::read() const {
    const std::vector<Vec2> found = pairs();
    if (found.size() < 4)
        throw mend_reading(tr("There are %n reading(s) so far", nullptr, static_cast<int>(found.size())),
                           tr("type or paste at least four"));
    SpinDown spin;
    spin.time.resize(static_cast<Eigen::Index>(found.size()));
    spin.speed.resize(spin.time.size());
    for (Eigen::Index i = 0; i < spin.time.size(); ++i) {
        spin.time[i] = found[static_cast<std::size_t>(i)].x();
        spin.speed[i] = found[static_cast<std::size_t>(i)].y();
    }
    spin.inertia = inertia_->read();
    spin.mass = mass_->read();
    const Measured bore = bore_->read();
    spin.bore_radius = {bore.value / 2, bore.sigma / 2};
    if (spin.inertia.value <= 0 || spin.mass.value <= 0 || bore.value <= 0)
        throw mend_reading(tr("Inertia, mass and bore must be above zero"), tr("type what was measured"));
    spin.windage = windage();
    spin.gravity = session_.project().track.gravity;
    return spin;
}

void SpinDownView::show_result() {
    journal_.reset();
    QList<QPointF> points, line;
    const double unit = radians_per_second(speed_unit());
    try {
        const SpinDown spin = read();
        for (Eigen::Index i = 0; i < spin.time.size(); ++i)
            points << QPointF(spin.time[i], spin.speed[i] / unit);
        const SpinDownFit fit = fit_spin_down(spin);
        for (Eigen::Index i = 0; i < spin.time.size(); ++i)
            line << QPointF(spin.time[i], fit.expected[i] / unit);
        const UnitSystem units = session_.project().units;
        FormatOptions scatter;
        scatter.significant = 2;
        const QString text =
            tr("Journal friction %1; the readings scatter by %2 %3 about the curve.")
                .arg(QString::fromStdString(
                         format_with_sigma(fit.journal.value, fit.journal.sigma, Quantity::plain, units)),
                     QString::fromStdString(format(fit.scatter / unit, Quantity::plain, units, scatter)),
                     speed_unit_->currentText());
        result_->setText(text);
        if (fit.journal.value > 0) journal_ = fit.journal;
    } catch (const Problem& problem) {
        result_->setText(plain_text(problem));
    }
    plot_->show_points({points}, tr("time, s"), tr("speed, %1").arg(speed_unit_->currentText()), line);
    put_->setEnabled(journal_.has_value());
}

void SpinDownView::put_on_car() {
    if (!journal_) return;
    try {
        const auto pointer = resolve_pointer(session_, "@/model/journal");
        session_.apply(set_value(session_.document(), *pointer,
                                 Json{{"value", journal_->value}, {"sigma", journal_->sigma}},
                                 tr("Set journal friction from the spin-down").toStdString()));
    } catch (const Problem& problem) {
        result_->setText(plain_text(problem));
    }
}

} // namespace rampwright::ui
