#include "panels/energy_panel.hpp"

#include "explain/why_button.hpp"
#include "look/labels.hpp"
#include "look/theme.hpp"
#include "text/figure_text.hpp"

#include <QGridLayout>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <array>

namespace rampwright::ui {
namespace {

/// One loss of the budget: how to read it, what to call it, what it is.
struct Loss {
    std::optional<double> (*read)(const Budget&);
    const char* object_name;
    const char* name;
    const char* why;
};

constexpr std::array<Loss, 6> losses{{
    {[](const Budget& b) { return std::optional(b.journal); }, "journal",
     QT_TRANSLATE_NOOP("rampwright::ui::EnergyPanel", "Axles"),
     QT_TRANSLATE_NOOP(
         "rampwright::ui::EnergyPanel",
         "Rubbing of the wheels' bores on their axles. Smoother, better lubricated axles take less.")},
    {[](const Budget& b) { return std::optional(b.air); }, "air",
     QT_TRANSLATE_NOOP("rampwright::ui::EnergyPanel", "Air"),
     QT_TRANSLATE_NOOP(
         "rampwright::ui::EnergyPanel",
         "Pushing the air aside, and the air the wheels stir. A lower, smoother body takes less.")},
    {[](const Budget& b) { return std::optional(b.rolling); }, "rolling",
     QT_TRANSLATE_NOOP("rampwright::ui::EnergyPanel", "Rolling"),
     QT_TRANSLATE_NOOP("rampwright::ui::EnergyPanel", "Flattening of tread and lane where they touch.")},
    {[](const Budget& b) { return b.rail; }, "rail", QT_TRANSLATE_NOOP("rampwright::ui::EnergyPanel", "Rail"),
     QT_TRANSLATE_NOOP("rampwright::ui::EnergyPanel", "Rubbing and bouncing along the lane's guide rail.")},
    {[](const Budget& b) { return std::optional(b.hub); }, "hub",
     QT_TRANSLATE_NOOP("rampwright::ui::EnergyPanel", "Hubs"),
     QT_TRANSLATE_NOOP("rampwright::ui::EnergyPanel", "Rubbing of the hubs on axle heads or wood.")},
    {[](const Budget& b) { return std::optional(b.scrub); }, "scrub",
     QT_TRANSLATE_NOOP("rampwright::ui::EnergyPanel", "Scrub"),
     QT_TRANSLATE_NOOP("rampwright::ui::EnergyPanel",
                       "Sliding sideways of wheels that do not point straight ahead.")},
}};

} // namespace

EnergyBar::EnergyBar(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setCursor(Qt::PointingHandCursor);
}

void EnergyBar::set(double share, double before) {
    share_ = share;
    before_ = before;
    update();
}

void EnergyBar::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF room = QRectF(rect()).adjusted(0, 1.5, -1, -1.5);
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme().grid);
    painter.drawRoundedRect(room, 2, 2);
    painter.setBrush(theme().accent);
    painter.drawRoundedRect(
        QRectF(room.topLeft(),
               QSizeF(std::max(1.0, room.width() * std::clamp(share_, 0.0, 1.0)), room.height())),
        2, 2);
    if (before_ < 0 || before_ > 1) return;
    const double x = room.left() + room.width() * before_;
    painter.setPen(QPen(theme().ink, 1.6));
    painter.drawLine(QPointF(x, 0), QPointF(x, height()));
}

void EnergyBar::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton && rect().contains(event->pos())) Q_EMIT clicked();
}

EnergyPanel::EnergyPanel(Session& session, QWidget* parent) : QFrame(parent), session_(session) {
    setObjectName(QStringLiteral("energy"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    setFrameShape(QFrame::StyledPanel);
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(14, 8, 14, 8);
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(2);
    grid->setColumnStretch(1, 1);
    auto* title = heading_label(tr("Where the energy goes"), this);
    summary_ = new QLabel(this);
    summary_->setObjectName(QStringLiteral("energy.summary"));
    summary_->setForegroundRole(QPalette::PlaceholderText);
    auto* head = new QHBoxLayout;
    head->addWidget(title);
    head->addSpacing(8);
    head->addWidget(summary_, 1);
    head->addWidget(new WhyButton(session_, "budget_mj.released", tr("Energy released"), this));
    grid->addLayout(head, 0, 0, 1, 4);
    for (const Loss& loss : losses) {
        Row row{new QLabel(tr(loss.name), this), new EnergyBar(this), new QLabel(this), nullptr};
        const QString key = QLatin1String(loss.object_name);
        row.why = new WhyButton(session_, std::string("budget_mj.") + loss.object_name, tr(loss.name), this);
        connect(row.bar, &EnergyBar::clicked, row.why, [why = row.why, bar = row.bar] { why->ask(bar); });
        row.value->setObjectName(QStringLiteral("energy.") + key);
        row.value->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        row.value->setFont(text_font(1.0, true));
        for (QWidget* each : {static_cast<QWidget*>(row.name), static_cast<QWidget*>(row.bar),
                              static_cast<QWidget*>(row.value)}) {
            each->setToolTip(tr(loss.why));
            each->setWhatsThis(tr(loss.why));
        }
        const int at = grid->rowCount();
        grid->addWidget(row.name, at, 0);
        grid->addWidget(row.bar, at, 1);
        grid->addWidget(row.value, at, 2);
        grid->addWidget(row.why, at, 3);
        rows_.push_back(row);
    }
    grid->setRowStretch(grid->rowCount(), 1);
    connect(&session_, &Session::changed, this, &EnergyPanel::refresh);
    connect(&session_, &Session::car_chosen, this, &EnergyPanel::refresh);
    refresh();
}

void EnergyPanel::refresh() {
    const Figures* now = session_.figures();
    const Figures* before = session_.figures_before();
    const auto units = session_.project().units;
    if (!now) {
        summary_->clear();
        for (auto& row : rows_) {
            row.value->setText(QStringLiteral("–"));
            row.bar->set(0, -1);
        }
        return;
    }
    // One scale for all bars, steady while a piece is dragged: the greatest loss, now or before.
    double greatest = 0;
    for (const Loss& loss : losses)
        for (const Figures* each : {now, before})
            if (each) greatest = std::max(greatest, loss.read(each->budget).value_or(0));
    const auto share = [&](double value) { return greatest > 0 ? value / greatest : 0; };
    const auto text_rows = table_rows(*now, units);
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const auto value = losses[i].read(now->budget);
        auto& row = rows_[i];
        for (QWidget* each : {static_cast<QWidget*>(row.name), static_cast<QWidget*>(row.bar),
                              static_cast<QWidget*>(row.value), static_cast<QWidget*>(row.why)})
            each->setVisible(value.has_value());
        if (!value) continue;
        const QString text = row_text(text_rows, std::string("budget_mj.") + losses[i].object_name);
        row.value->setText(text);
        row.value->setAccessibleName(tr("%1: %2").arg(row.name->text(), text));
        const auto was = before ? losses[i].read(before->budget) : std::nullopt;
        row.bar->set(share(*value), was && *was != *value ? share(*was) : -1);
    }
    summary_->setText(tr("%1 from the ramp, %2 left at the finish")
                          .arg(quantity_text(now->budget.released, Quantity::energy, units),
                               quantity_text(now->budget.kept(), Quantity::energy, units)));
}

} // namespace rampwright::ui
