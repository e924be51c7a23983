#include "panels/inspection_view.hpp"

#include "drawing/car_canvas.hpp"
#include "drawing/rule_place.hpp"
#include "look/icon.hpp"
#include "look/theme.hpp"
#include "panels/agree_slip.hpp"
#include "panels/rule_row.hpp"
#include "panels/verdict_mark.hpp"
#include "session/follow.hpp"

#include <QHeaderView>
#include <QLabel>
#include <QPainter>
#include <QTableWidget>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

/// Columns of the list.
struct ListColumn {
    enum { verdict, rule, limit, value, room, how, source, count };
};

QString from_core(const std::string& words) {
    return QString::fromStdString(words);
}

QIcon list_icon(Verdict verdict, double ratio) {
    constexpr int side = 22;
    return drawn_icon({side, side}, ratio, [&](QPainter& painter) {
        paint_verdict_mark(painter, {side / 2.0, side / 2.0}, verdict);
    });
}

QLabel* make_list_line(QWidget* parent, const char* name) {
    auto* label = new QLabel(parent);
    label->setObjectName(QLatin1String(name));
    label->setWordWrap(true);
    return label;
}

} // namespace

InspectionView::InspectionView(Session& session, CarCanvas& drawing, QWidget* parent)
    : QWidget(parent),
      session_(session),
      drawing_(drawing),
      title_(make_list_line(this, "inspection.title")),
      said_(make_list_line(this, "inspection.said")),
      table_(new QTableWidget(this)) {
    setObjectName(QStringLiteral("inspection"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    table_->setObjectName(QStringLiteral("inspection.list"));
    table_->setAccessibleName(tr("Inspection list"));
    table_->setWhatsThis(
        tr("Every rule of the race and how the car stands. A click on a row, or Return, shows "
           "its place on the drawing."));
    table_->setColumnCount(ListColumn::count);
    table_->setHorizontalHeaderLabels({tr("Verdict"), tr("Rule"), tr("Limit"), tr("The car has"), tr("Room"),
                                       tr("How it is looked at"), tr("Source")});
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setIconSize({22, 22});
    table_->setFrameShape(QFrame::NoFrame);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    QHeaderView* heads = table_->horizontalHeader();
    heads->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    for (const int column : {ListColumn::limit, ListColumn::value, ListColumn::room})
        heads->setSectionResizeMode(column, QHeaderView::ResizeToContents);
    heads->setSectionResizeMode(ListColumn::verdict, QHeaderView::ResizeToContents);
    for (const int column : {ListColumn::rule, ListColumn::how, ListColumn::source})
        heads->setSectionResizeMode(column, QHeaderView::Stretch);
    auto* decides = make_list_line(this, "inspection.decides");
    decides->setText(inspector_decides_text());
    decides->setFont(text_font(1.0, true));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    for (QWidget* each : {static_cast<QWidget*>(title_), static_cast<QWidget*>(decides),
                          static_cast<QWidget*>(table_), static_cast<QWidget*>(said_)})
        column->addWidget(each, each == table_ ? 1 : 0);
    connect(table_, &QTableWidget::cellClicked, this, [this](int row, int) { show_place(row); });
    connect(table_, &QTableWidget::itemActivated, this,
            [this](const QTableWidgetItem* item) { show_place(item->row()); });
    follow_while_seen(*this, session_, [this] { refresh(); });
    refresh();
}

void InspectionView::refresh() {
    shown_ = inspect_shown(session_);
    said_->hide();
    if (!shown_) {
        table_->setRowCount(0);
        title_->setText(tr("The car cannot be computed, so no rule is decided."));
        return;
    }
    title_->setText(
        shown_->rows.empty()
            ? tr("%1: the project states no rules. Ask for the local ones.").arg(from_core(shown_->car))
        : shown_->source.empty()
            ? tr("%1, by these rules: %2").arg(from_core(shown_->car), from_core(shown_->title))
            : tr("%1, by these rules: %2 (%3)")
                  .arg(from_core(shown_->car), from_core(shown_->title), from_core(shown_->source)));
    table_->setRowCount(static_cast<int>(shown_->rows.size()));
    for (int row = 0; row < table_->rowCount(); ++row)
        fill_row(row, shown_->rows[static_cast<std::size_t>(row)]);
    table_->resizeRowsToContents();
}

void InspectionView::fill_row(int row, const InspectionRow& line) {
    const UnitSystem units = session_.project().units;
    const auto put = [&](int column, const QString& text) {
        QTableWidgetItem* item = table_->item(row, column);
        if (!item) table_->setItem(row, column, item = new QTableWidgetItem);
        item->setText(text);
        return item;
    };
    const QString verdict = verdict_text(line.verdict), name = sentence_case(line.name),
                  limit = from_core(limit_text(line, units)), value = from_core(value_text(line, units)),
                  room = from_core(margin_text(line, units));
    QTableWidgetItem* first = put(ListColumn::verdict, verdict);
    first->setIcon(list_icon(line.verdict, devicePixelRatioF()));
    first->setData(
        Qt::AccessibleTextRole,
        room.isEmpty()
            ? tr("%1: %2. Limit: %3. The car has: %4.").arg(name, verdict, limit, value)
            : tr("%1: %2. Limit: %3. The car has: %4, %5.").arg(name, verdict, limit, value, room));
    put(ListColumn::rule, name)->setToolTip(from_core(line.rule));
    put(ListColumn::limit, limit);
    put(ListColumn::value, value);
    put(ListColumn::room, room.isEmpty() ? QStringLiteral("–") : room);
    put(ListColumn::how, line.why.empty() ? from_core(line.inspect)
                                          : tr("%1 (%2)").arg(from_core(line.inspect), from_core(line.why)));
    put(ListColumn::source, line.source.empty() ? tr("not given") : from_core(line.source));
}

void InspectionView::show_place(int row) {
    const Figures* figures = session_.figures();
    if (!shown_ || !figures || row < 0 || row >= static_cast<int>(shown_->rows.size())) return;
    const InspectionRow& line = shown_->rows[static_cast<std::size_t>(row)];
    auto place = find_rule_place(line.code, session_.plan(), drawing_.shape(), *figures);
    const QString name = sentence_case(line.name);
    if (!place) {
        said_->setText(tr("%1: nothing on the drawing shows it. Look at the car itself.").arg(name));
        said_->show();
        return;
    }
    place->name = name;
    said_->hide();
    drawing_.point_out(*place);
}

} // namespace rampwright::ui
