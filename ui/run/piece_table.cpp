#include "run/piece_table.hpp"

#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>
#include <rampwright/units/key_unit.hpp>

#include <QHeaderView>
#include <QKeyEvent>
#include <QScopedValueRollback>
#include <QSignalBlocker>

#include <cmath>
#include <functional>

namespace rampwright::ui {
namespace {

constexpr double usual_straight_mm = 1000, usual_radius_mm = 1200, usual_turn_deg = 10;

const char* piece_key(int column) {
    constexpr const char* keys[] = {"kind", "length_mm", "radius_mm", "turn_deg", "easing_mm"};
    return keys[column];
}

} // namespace

PieceTable::PieceTable(Session& session, QWidget* parent)
    : QTableWidget(0, columns, parent), session_(session) {
    setObjectName(QStringLiteral("lane.pieces"));
    setAccessibleName(tr("Pieces of the lane, from the start-gate end"));
    setHorizontalHeaderLabels({tr("Piece"), tr("Length"), tr("Radius"), tr("Turns by"), tr("Easing")});
    const QStringList why{tr("In the order a car meets them."), tr("Of a straight piece, along the surface."),
                          tr("Of the bend."),
                          tr("By how much the slope changes; positive where it turns upward."),
                          tr("Over this length at each end the bend begins and ends softly.")};
    for (int column = 0; column < columns; ++column)
        horizontalHeaderItem(column)->setToolTip(why[column]);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    verticalHeader()->hide();
    setSelectionBehavior(QAbstractItemView::SelectItems);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(false);
    connect(this, &QTableWidget::cellChanged, this, &PieceTable::commit);
    follow_while_seen(*this, session_, [this] { refresh(); });
    refresh();
}

void PieceTable::refresh() {
    const QScopedValueRollback guard(filling_, true);
    const TrackPlan& plan = session_.project().track;
    const UnitSystem units = session_.project().units;
    setRowCount(static_cast<int>(plan.pieces.size()));
    for (int row = 0; row < rowCount(); ++row) {
        const TrackPiece& piece = plan.pieces[static_cast<std::size_t>(row)];
        const auto* straight = std::get_if<Straight>(&piece);
        const auto* arc = std::get_if<Arc>(&piece);
        const auto put = [&](int column, const QString& text, bool open) {
            QTableWidgetItem* cell = item(row, column);
            if (!cell) setItem(row, column, cell = new QTableWidgetItem);
            cell->setText(text);
            cell->setFlags(open ? Qt::ItemIsSelectable | Qt::ItemIsEnabled | Qt::ItemIsEditable
                                : Qt::ItemIsSelectable | Qt::ItemIsEnabled);
            if (column != kind) cell->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        };
        const auto number = [&](double si, Quantity quantity) {
            return QString::fromStdString(format_entry(si, quantity, units));
        };
        put(kind, straight ? tr("straight") : tr("bend"), false);
        put(length, straight ? number(straight->length, Quantity::length) : QString(), straight != nullptr);
        put(radius, arc ? number(arc->radius, Quantity::length) : QString(), arc != nullptr);
        put(turn, arc ? number(arc->turn, Quantity::angle) : QString(), arc != nullptr);
        put(easing, arc ? number(arc->easing, Quantity::length) : QString(), arc != nullptr);
    }
}

void PieceTable::attempt(const std::function<Edit()>& edit) {
    try {
        const Edit made = edit();
        session_.apply(made);
        // The cell's editor hands in the old value once more as it closes: that answers nothing.
        if (made.changed()) Q_EMIT refused({});
    } catch (const Problem& problem) {
        Q_EMIT refused(problem_text(problem));
    }
    refresh();
}

void PieceTable::commit(int row, int column) {
    if (filling_ || column == kind) return;
    const QString typed = item(row, column)->text().trimmed();
    attempt([&] {
        const std::size_t index = static_cast<std::size_t>(row);
        Json piece = session_.document().root.at("track").at("pieces").at(index);
        const char* key = piece_key(column);
        if (typed.isEmpty()) {
            piece.erase(key);
        } else {
            const Quantity quantity = column == turn ? Quantity::angle : Quantity::length;
            // The screen's minus sign is a true one.
            const std::string text = QString(typed).replace(QChar(0x2212), QLatin1Char('-')).toStdString();
            const double si = parse_entry(text, quantity, session_.project().units);
            piece[key] = std::round(from_si(si, *find_key_unit(key)) * 1e6) / 1e6;
        }
        return set_track_piece(session_.document(), index, piece);
    });
}

std::size_t PieceTable::place_for_new() const {
    return static_cast<std::size_t>(currentRow() >= 0 ? currentRow() + 1 : rowCount());
}

void PieceTable::add_straight() {
    attempt([&] {
        return add_track_piece(session_.document(), place_for_new(),
                               Json{{"kind", "straight"}, {"length_mm", usual_straight_mm}});
    });
}

void PieceTable::add_arc() {
    attempt([&] {
        return add_track_piece(
            session_.document(), place_for_new(),
            Json{{"kind", "arc"}, {"radius_mm", usual_radius_mm}, {"turn_deg", usual_turn_deg}});
    });
}

void PieceTable::remove_chosen() {
    if (currentRow() < 0) return;
    attempt([&] { return remove_track_piece(session_.document(), static_cast<std::size_t>(currentRow())); });
}

} // namespace rampwright::ui
