#include "aim/cant_view.hpp"

#include "aim/aim_pictures.hpp"
#include "look/labels.hpp"
#include "look/theme.hpp"
#include "session/follow.hpp"
#include "text/corner_text.hpp"
#include "text/figure_text.hpp"

#include <rampwright/core/constants.hpp>

#include <QHeaderView>
#include <QLabel>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

CantPicture::Pair pair_of(const CarPlan& plan, const TrackPlan& track, bool front) {
    const WheelPlan& left = plan.wheels[std::size_t(front ? Corner::front_left : Corner::rear_left)];
    const WheelPlan& right = plan.wheels[std::size_t(front ? Corner::front_right : Corner::rear_right)];
    CantPicture::Pair pair;
    pair.left_cant = left.cant;
    pair.right_cant = right.cant;
    pair.wheel_radius = 0.5 * left.outer_diameter;
    pair.wheel_width = left.width;
    pair.wood_half = 0.5 * plan.body.block.y();
    pair.track_half = pair.wood_half + left.gap_to_body + 0.5 * left.width;
    pair.axle_height = front ? plan.axles.front_z : plan.axles.rear_z;
    pair.wood_height = highest_wood(plan.body);
    if (track.rail) pair.rail = Vec2(track.rail->width, track.rail->height);
    return pair;
}

} // namespace

CantView::CantView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      rear_(new CantPicture(this)),
      front_(new CantPicture(this)),
      table_(new QTableWidget(this)) {
    setObjectName(QStringLiteral("cant"));
    rear_->setAccessibleName(tr("Rear wheels from behind"));
    front_->setAccessibleName(tr("Front wheels from behind"));
    table_->setObjectName(QStringLiteral("cant.table"));
    table_->setAccessibleName(tr("Cant of the touching wheels"));
    table_->setWhatsThis(
        tr("One line for each wheel that touches: where its lean drives it, what clears what, and "
           "how to drill or bend the axle for that lean."));
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->verticalHeader()->hide();
    table_->setColumnCount(7);
    table_->setHorizontalHeaderLabels({tr("Wheel"), tr("Cant"), tr("Its hub runs on"),
                                       tr("Tread edge lifted by"), tr("Gap to the wood"),
                                       tr("Gap to the rail"), tr("Drill at, or bend and turn")});
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setStretchLastSection(true);
    auto* note = new QLabel(tr("A canted wheel is driven to one end of its axle: with the outer end higher "
                               "to the head, off the wood. "
                               "Practice cants rear axles by about 3° and finds it faster. The model counts "
                               "what the hub saves and what "
                               "a tread on its edge costs; how much an edge costs is not known, so a timed "
                               "trial of both settles it."),
                            this);
    note->setWordWrap(true);
    auto* pictures = new QHBoxLayout;
    for (const auto& [picture, name] : {std::pair{rear_, tr("Rear")}, {front_, tr("Front")}}) {
        auto* column = new QVBoxLayout;
        auto* label = heading_label(name, this);
        column->addWidget(label);
        column->addWidget(picture, 1);
        pictures->addLayout(column);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addLayout(pictures, 2);
    column->addWidget(table_, 1);
    column->addWidget(note);
    follow_while_seen(*this, session_, [this] { refresh(); });
}

void CantView::refresh() {
    const Project& project = session_.project();
    const UnitSystem units = project.units;
    rear_->set(pair_of(session_.plan(), project.track, false));
    front_->set(pair_of(session_.plan(), project.track, true));
    std::vector<CantRow> rows;
    try {
        rows = plan_cant(project, session_.car(), build_car(project, session_.car()));
    } catch (const Problem&) {
        // The answers say what is wrong with the car.
    }
    table_->setRowCount(static_cast<int>(rows.size()));
    for (int i = 0; i < table_->rowCount(); ++i) {
        const CantRow& row = rows[static_cast<std::size_t>(i)];
        const auto gap = [&](double value) {
            const QString text = quantity_text(value, Quantity::length, units);
            return value < 0 ? tr("rubs: %1").arg(text) : text;
        };
        const QString hub = row.bears_on_head ? (*row.bears_on_head ? tr("the axle's head") : tr("the wood"))
                                              : tr("either, by chance");
        const QString axle = tr("drill at %1, or bend %2 turned %3")
                                 .arg(quantity_text(row.cant, Quantity::angle, units),
                                      quantity_text(row.bent.bend, Quantity::angle, units),
                                      quantity_text(row.bent.turn, Quantity::angle, units));
        const QStringList cells{corner_text(row.corner),
                                quantity_text(row.cant, Quantity::angle, units),
                                hub,
                                quantity_text(row.edge_lift, Quantity::length, units),
                                gap(row.body_gap),
                                row.rail_gap ? gap(*row.rail_gap) : QStringLiteral("–"),
                                axle};
        for (int column = 0; column < cells.size(); ++column)
            table_->setItem(i, column, new QTableWidgetItem(cells[column]));
    }
}

} // namespace rampwright::ui
