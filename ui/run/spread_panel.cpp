#include "run/spread_panel.hpp"

#include "look/labels.hpp"
#include "look/theme.hpp"
#include "run/bell_plot.hpp"
#include "run/draws_bar.hpp"
#include "text/figure_text.hpp"
#include "text/input_text.hpp"

#include <rampwright/units/format.hpp>

#include <QGridLayout>
#include <QLabel>
#include <QPainter>

#include <algorithm>

namespace rampwright::ui {
namespace {

constexpr std::size_t spread_draws = 10000, most_shares = 8;
constexpr double least_share = 0.005; ///< below, an input is not worth a line

QString share_text(double part) {
    FormatOptions tenths;
    tenths.decimals = 1;
    return QString::fromStdString(format(part, Quantity::percent, UnitSystem::metric, tenths));
}

/// A share as a bar, its standard error as a whisker on either side of its end.
class ShareBar : public QWidget {
public:
    ShareBar(double share, double error, double whole, QWidget* parent)
        : QWidget(parent), share_(share / whole), error_(error / whole) {
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        setFixedHeight(12);
    }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const QRectF room = QRectF(rect()).adjusted(0, 2.5, -1, -2.5);
        const auto x = [&](double part) { return room.left() + room.width() * std::clamp(part, 0.0, 1.0); };
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme().grid);
        painter.drawRoundedRect(room, 2, 2);
        painter.setBrush(theme().accent);
        painter.drawRoundedRect(
            QRectF(room.topLeft(), QPointF(std::max(x(share_), room.left() + 1), room.bottom())), 2, 2);
        painter.setPen(QPen(theme().ink, 1.2));
        const double middle = room.center().y();
        painter.drawLine(QPointF(x(share_ - error_), middle), QPointF(x(share_ + error_), middle));
    }

private:
    double share_, error_;
};

} // namespace

SpreadPanel::SpreadPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), job_(session, this) {
    setObjectName(QStringLiteral("spread"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 14, 20, 12);
    column->setSpacing(8);
    results_ = new QWidget(this);
    auto* inner = new QVBoxLayout(results_);
    inner->setContentsMargins(0, 0, 0, 0);
    inner->setSpacing(6);
    heat_ = new QLabel(results_);
    heat_->setObjectName(QStringLiteral("spread.heat"));
    heat_->setFont(text_font(1.5, true));
    interval_ = new QLabel(results_);
    interval_->setObjectName(QStringLiteral("spread.interval"));
    interval_->setWordWrap(true);
    bells_ = new BellPlot(results_);
    bells_->setObjectName(QStringLiteral("spread.bells"));
    auto* title = heading_label(tr("What it is unsure of"), results_);
    auto* why =
        new QLabel(tr("The part of the spread that would go if this one value were known. Measure the "
                      "top of the list first."),
                   results_);
    why->setForegroundRole(QPalette::PlaceholderText);
    why->setWordWrap(true);
    shares_ = new QGridLayout;
    shares_->setHorizontalSpacing(12);
    shares_->setVerticalSpacing(3);
    shares_->setColumnStretch(1, 1);
    inner->addWidget(heat_);
    inner->addWidget(interval_);
    inner->addWidget(bells_, 1);
    inner->addSpacing(6);
    inner->addWidget(title);
    inner->addWidget(why);
    inner->addLayout(shares_);
    column->addWidget(results_, 1);
    auto* bar = new DrawsBar(job_, this);
    column->addWidget(bar);
    connect(bar, &DrawsBar::asked, this, &SpreadPanel::ask);
    connect(&job_, &DrawsJob::changed, this, &SpreadPanel::refresh);
    connect(&session_, &Session::car_chosen, this, [this] {
        if (isVisible()) ask(1);
    });
    refresh();
}

void SpreadPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    ask(1);
}

void SpreadPanel::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    job_.release();
}

void SpreadPanel::ask(std::uint64_t seed) {
    job_.want({session_.car()}, spread_draws, seed);
}

void SpreadPanel::refresh() {
    const DrawsResult* result = job_.result();
    // What is of an earlier document stays to be read, but pale.
    results_->setEnabled(job_.state() == DrawsJob::State::done);
    if (result && result == shown_ && job_.state() != DrawsJob::State::done) return;
    shown_ = result;
    if (!result) {
        heat_->setText(QStringLiteral("–"));
        interval_->setText(QStringLiteral(" "));
        bells_->show_bells({});
        show_shares({});
        return;
    }
    const CarDraws& draws = result->draws.cars.front();
    const DrawnHeat heat = summarise(draws);
    const UnitSystem units = session_.project().units;
    const Figures* figures = session_.figures();
    const double planned = figures && figures->heat.time ? *figures->heat.time : heat.mean;
    heat_->setText(QString::fromStdString(format_with_sigma(planned, heat.sigma, Quantity::time, units)));
    QString interval = tr("%1: 19 heats of 20 between %2 and %3.")
                           .arg(QString::fromStdString(session_.plan().name),
                                quantity_text(heat.interval95[0], Quantity::time, units),
                                quantity_text(heat.interval95[1], Quantity::time, units));
    // The mean lies beside the planned time where what may go wrong costs more than what may go right gains.
    if (heat.mean - planned > 0.1 * heat.sigma)
        interval +=
            QLatin1Char(' ') + tr("The mean of the draws is %1: what may go wrong weighs more than what "
                                  "may go right.")
                                   .arg(quantity_text(heat.mean, Quantity::time, units));
    interval_->setText(heat.stopped == 0 ? interval
                                         : tr("%1 In %L2 of %L3 it stops before the finish.")
                                               .arg(interval)
                                               .arg(heat.stopped)
                                               .arg(draws.heat.size()));
    bells_->show_bells(
        {{QString::fromStdString(session_.plan().name), draws.heat, heat.mean, heat.interval95, true}});
    show_shares(draws);
}

void SpreadPanel::show_shares(const CarDraws& draws) {
    while (QLayoutItem* item = shares_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    const double whole = draws.shares.empty() ? 1 : std::max(draws.shares.front().share, 1e-6);
    for (std::size_t i = 0; i < std::min(draws.shares.size(), most_shares); ++i) {
        const Share& share = draws.shares[i];
        if (share.share < least_share) break;
        const double error = share.standard_error.value_or(0);
        auto* name = new QLabel(input_text(share.key, session_.plan()), results_);
        auto* value = new QLabel(tr("%1 ± %2").arg(share_text(share.share), share_text(error)), results_);
        value->setObjectName(QStringLiteral("share.") + QString::fromStdString(share.key));
        value->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        value->setAccessibleName(tr("%1: %2").arg(name->text(), value->text()));
        const int row = static_cast<int>(i);
        shares_->addWidget(name, row, 0);
        shares_->addWidget(new ShareBar(share.share, error, whole * 1.1, results_), row, 1);
        shares_->addWidget(value, row, 2);
    }
}

} // namespace rampwright::ui
