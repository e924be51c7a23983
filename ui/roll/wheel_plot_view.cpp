#include "roll/wheel_plot_view.hpp"

#include "fields/quiet_combo_box.hpp"
#include "roll/bench_wheel_box.hpp"
#include "roll/wheel_columns.hpp"
#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/study/wheel_worth.hpp>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace rampwright::ui {

WheelPlotView::WheelPlotView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      across_(new QuietComboBox(this)),
      up_(new QuietComboBox(this)),
      plot_(new MarkPlot(QStringLiteral("wheelplot.plot"),
                         {{tr("wheel"), QScatterSeries::MarkerShapeCircle},
                          {tr("odd"), QScatterSeries::MarkerShapeTriangle},
                          {tr("to take"), QScatterSeries::MarkerShapeStar}},
                         {}, this)),
      said_(new QLabel(this)) {
    setObjectName(QStringLiteral("wheelplot"));
    const QStringList columns{tr("weight"), tr("diameter"), tr("run-out"), tr("bore"), tr("spin time")};
    up_->addItems(columns);
    across_->addItem(tr("order in the table"));
    across_->addItems(columns);
    up_->setObjectName(QStringLiteral("wheelplot.up"));
    across_->setObjectName(QStringLiteral("wheelplot.across"));
    said_->setObjectName(QStringLiteral("wheelplot.said"));
    said_->setWordWrap(true);
    auto* up_label = new QLabel(tr("&Show"), this);
    up_label->setBuddy(up_);
    auto* across_label = new QLabel(tr("a&gainst"), this);
    across_label->setBuddy(across_);
    up_->setAccessibleName(tr("Column shown upward"));
    across_->setAccessibleName(tr("Column shown across"));
    up_->setWhatsThis(tr("Which measurement of the wheels is shown upward."));
    across_->setWhatsThis(tr("What it is shown against: another measurement, or the order in the table."));
    setWhatsThis(tr("The wheels of the bench's table. A triangle marks a wheel odd in a column shown, a star "
                    "the four to take."));
    auto* row = new QHBoxLayout;
    for (QWidget* widget : std::initializer_list<QWidget*>{up_label, up_, across_label, across_})
        row->addWidget(widget);
    row->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addLayout(row);
    column->addWidget(plot_, 1);
    column->addWidget(said_);
    connect(up_, &QComboBox::currentIndexChanged, this, &WheelPlotView::show_plot);
    connect(across_, &QComboBox::currentIndexChanged, this, &WheelPlotView::show_plot);
    follow_while_seen(*this, session_, [this] { refresh(); });
}

void WheelPlotView::refresh() {
    if (session_.in_gesture()) return;
    find_chosen();
    show_plot();
}

void WheelPlotView::find_chosen() {
    chosen_.clear();
    try {
        const WheelChoice choice = choose_wheels(session_.project().bench_wheels,
                                                 wheel_worth(make_case(session_.project(), session_.car())));
        chosen_ = {choice.guide, choice.raised, choice.rear[0], choice.rear[1]};
    } catch (const Problem&) {
        // The bench itself says why none can be chosen.
    }
}

void WheelPlotView::show_plot() {
    const auto& wheels = session_.project().bench_wheels;
    const auto outliers = find_outliers(wheels);
    const auto up = static_cast<std::size_t>(up_->currentIndex());
    const int across = across_->currentIndex(); // 0 is the order
    const auto unit_of = [&](std::size_t column) -> const Unit& {
        return default_unit(wheel_column_quantity.at(column), session_.project().units);
    };
    const auto shown = [&](WheelColumn column) {
        return column == all_wheel_columns.at(up) ||
               (across > 0 && column == all_wheel_columns.at(static_cast<std::size_t>(across - 1)));
    };
    std::vector<QList<QPointF>> points(3);
    std::vector<MarkPlot::Label> odd_labels, take_labels, labels;
    int left_out = 0;
    for (std::size_t i = 0; i < wheels.size(); ++i) {
        const auto number = [&](std::size_t column) -> std::optional<double> {
            const auto& value = value_of(wheels[i], all_wheel_columns.at(column));
            if (!value) return {};
            return from_si(*value, unit_of(column));
        };
        const auto y = number(up);
        const auto x = across == 0 ? std::optional(static_cast<double>(i + 1))
                                   : number(static_cast<std::size_t>(across - 1));
        if (!x || !y) {
            ++left_out;
            continue;
        }
        const bool odd = std::any_of(outliers.begin(), outliers.end(), [&](const Outlier& outlier) {
            return outlier.wheel == i && shown(outlier.column);
        });
        const bool take = std::find(chosen_.begin(), chosen_.end(), i) != chosen_.end();
        // One that is both stands in both lists: neither is hidden.
        if (odd) points[1] << QPointF(*x, *y);
        if (take) points[2] << QPointF(*x, *y);
        if (!odd && !take) points[0] << QPointF(*x, *y);
        (odd ? odd_labels : take ? take_labels : labels).push_back({{*x, *y}, {}, {}});
        auto& label = (odd ? odd_labels : take ? take_labels : labels).back();
        const QString name =
            wheels[i].name.empty() ? QString::number(i + 1) : QString::fromStdString(wheels[i].name);
        label.text = odd ? tr("%1, odd").arg(name) : name;
        label.told = told_of(i, odd, take);
    }
    for (const auto* more : {&take_labels, &labels})
        odd_labels.insert(odd_labels.end(), more->begin(), more->end());
    const auto title = [&](const QComboBox& box, std::size_t column) {
        const std::string_view symbol = unit_of(column).symbol;
        return tr("%1, %2").arg(box.currentText(),
                                QString::fromUtf8(symbol.data(), static_cast<qsizetype>(symbol.size())));
    };
    plot_->show_points(
        points, across == 0 ? across_->currentText() : title(*across_, static_cast<std::size_t>(across - 1)),
        title(*up_, up));
    plot_->show_labels(std::move(odd_labels));
    said_->setText(left_out == 0
                       ? QString()
                       : tr("%n wheel(s) without these measurements are not shown.", nullptr, left_out));
}

QString WheelPlotView::told_of(std::size_t wheel, bool odd, bool take) const {
    const BenchWheel& shown = session_.project().bench_wheels[wheel];
    QStringList parts{bench_wheel_name(shown, wheel)};
    if (!shown.mould.empty()) parts << tr("mould mark %1").arg(QString::fromStdString(shown.mould));
    const auto say = [&](int column) {
        const auto& value = value_of(shown, all_wheel_columns.at(static_cast<std::size_t>(column)));
        const Quantity quantity = wheel_column_quantity.at(static_cast<std::size_t>(column));
        if (value)
            parts << tr("%1 %2").arg(up_->itemText(column),
                                     quantity_text(*value, quantity, session_.project().units));
    };
    say(up_->currentIndex());
    if (across_->currentIndex() > 0 && across_->currentIndex() - 1 != up_->currentIndex())
        say(across_->currentIndex() - 1);
    if (odd) parts << tr("odd");
    if (take) parts << tr("to take");
    return parts.join(QStringLiteral(", "));
}

} // namespace rampwright::ui
