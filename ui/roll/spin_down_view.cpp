#include "roll/spin_down_view.hpp"

#include "fields/field_spec.hpp"
#include "fields/quiet_combo_box.hpp"
#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/heat/losses.hpp>
#include <rampwright/study/heat_case.hpp>
#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <QFormLayout>
#include <QHBoxLayout>
#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <numbers>

namespace rampwright::ui {
namespace {

constexpr std::size_t measured_corner = std::size_t(Corner::rear_left); // it always touches

/// rad/s in one of each unit of speed offered, in the order of the box.
constexpr std::array<double, 3> per_second{2 * std::numbers::pi / 60, 2 * std::numbers::pi, 1};

} // namespace

SpinDownView::SpinDownView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      readings_(new QPlainTextEdit(this)),
      speed_unit_(new QuietComboBox(this)),
      inertia_(new MeasuredEntry(session, QStringLiteral("spindown.inertia"), tr("Spin inertia"),
                                 Quantity::inertia, this)),
      mass_(new MeasuredEntry(session, QStringLiteral("spindown.mass"), tr("Wheel weighs"), Quantity::mass,
                              this)),
      bore_(new MeasuredEntry(session, QStringLiteral("spindown.bore"), tr("Bore"), Quantity::length, this)),
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

    connect(readings_, &QPlainTextEdit::textChanged, this, &SpinDownView::show_result);
    connect(speed_unit_, &QComboBox::currentIndexChanged, this, &SpinDownView::show_result);
    connect(air_, &QCheckBox::toggled, this, &SpinDownView::show_result);
    for (MeasuredEntry* entry : {inertia_, mass_, bore_})
        connect(entry, &MeasuredEntry::changed, this, &SpinDownView::show_result);
    connect(put_, &QPushButton::clicked, this, &SpinDownView::put_on_car);
    follow_while_seen(*this, session_, [this] { refresh(); });
}

void SpinDownView::refresh() {
    if (session_.in_gesture()) return;
    try {
        const Wheel wheel = build_car(session_.project(), session_.car()).wheels[measured_corner];
        constexpr double share = 0.03, scale_sigma = 0.01e-3, gauge_sigma = 0.02e-3; // a start
        if (!inertia_->typed()) inertia_->show_value({wheel.spin_inertia, share * wheel.spin_inertia});
        if (!mass_->typed()) mass_->show_value({wheel.mass, scale_sigma});
        if (!bore_->typed()) bore_->show_value({2 * wheel.bore_radius, gauge_sigma});
    } catch (const Problem&) {
        // What was typed still stands; the window says elsewhere why the car cannot be built.
    }
    show_result();
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

SpinDown SpinDownView::read() const {
    std::vector<double> times, speeds;
    const QStringList lines = readings_->toPlainText().split(QLatin1Char('\n'));
    static const QRegularExpression gap(QStringLiteral("[\\s;]+"));
    for (qsizetype i = 0; i < lines.size(); ++i) {
        const QStringList cells = lines[i].split(gap, Qt::SkipEmptyParts);
        if (cells.isEmpty()) continue;
        const auto number = [&](const QString& cell) {
            return parse_entry(cell.toStdString(), Quantity::plain, session_.project().units);
        };
        try {
            if (cells.size() != 2) throw mend_reading(tr("Line %1 is not a time and a speed").arg(i + 1), {});
            const double time = number(cells[0]), speed = number(cells[1]);
            times.push_back(time);
            speeds.push_back(speed * per_second.at(static_cast<std::size_t>(speed_unit_->currentIndex())));
        } catch (const Problem&) {
            // A heading names its columns; a reading with a slip of the pen is not one.
            if (i == 0 && std::none_of(lines[i].begin(), lines[i].end(), [](QChar c) { return c.isDigit(); }))
                continue;
            throw mend_reading(tr("Line %1 is not a time and a speed: “%2”").arg(i + 1).arg(lines[i]),
                               tr("write two numbers with a space, a tab or a semicolon between"));
        }
    }
    if (times.size() < 4)
        throw mend_reading(tr("There are %n reading(s) so far", nullptr, static_cast<int>(times.size())),
                           tr("type or paste at least four"));
    for (std::size_t i = 1; i < times.size(); ++i)
        if (times[i] <= times[i - 1])
            throw mend_reading(tr("The times do not rise"), tr("write the readings in the order of time"));
    const auto count = static_cast<Eigen::Index>(times.size());
    SpinDown spin;
    spin.time = Eigen::Map<const Eigen::VectorXd>(times.data(), count);
    spin.speed = Eigen::Map<const Eigen::VectorXd>(speeds.data(), count);
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
    const double unit = per_second.at(static_cast<std::size_t>(speed_unit_->currentIndex()));
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
