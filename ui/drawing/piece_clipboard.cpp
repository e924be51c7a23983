#include "drawing/piece_clipboard.hpp"

#include "text/figure_text.hpp"

#include <QCoreApplication>

namespace rampwright::ui {
namespace {

struct PieceTable {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::PieceTable)
};

QString line_of(const QStringList& cells) {
    return cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
}

QString place_text(const Vec3& at, UnitSystem units) {
    return PieceTable::tr("%1, %2, %3")
        .arg(quantity_text(at.x(), Quantity::length, units), quantity_text(at.y(), Quantity::length, units),
             quantity_text(at.z(), Quantity::length, units));
}

QString table_of(const CarPlan& plan, const Group& group, UnitSystem units) {
    QString text;
    if (!group.pieces.empty())
        text += line_of({PieceTable::tr("Piece"), PieceTable::tr("Mass"), PieceTable::tr("From the tail"),
                         PieceTable::tr("To the left"), PieceTable::tr("Height"), PieceTable::tr("Lies in")});
    for (const std::size_t place : group.pieces) {
        const BallastPlan& piece = plan.ballast.at(place);
        QStringList cells{QString::fromStdString(piece.name),
                          quantity_text(piece.mass, Quantity::mass, units)};
        for (int axis = 0; axis < 3; ++axis)
            cells << (piece.shape == PieceShape::putty
                          ? QString()
                          : quantity_text(piece.at[axis], Quantity::length, units));
        text += line_of(cells << QString::fromStdString(piece.in));
    }
    if (!group.cuts.empty())
        text += line_of({PieceTable::tr("Cut"), PieceTable::tr("From"), PieceTable::tr("To"),
                         PieceTable::tr("Diameter")});
    for (const std::size_t place : group.cuts) {
        const CutPlan& cut = plan.body.cuts.at(place);
        text +=
            line_of({QString::fromStdString(cut.name), place_text(cut.from, units), place_text(cut.to, units),
                     cut.is_bore ? quantity_text(cut.diameter, Quantity::length, units) : QString()});
    }
    return text;
}

} // namespace

std::unique_ptr<QMimeData> pieces_mime(const Json& copied, const CarPlan& plan, const Group& group,
                                       UnitSystem units) {
    auto mime = std::make_unique<QMimeData>();
    mime->setData(QLatin1String(pieces_mime_type), QByteArray::fromStdString(copied.dump(2)));
    mime->setText(table_of(plan, group, units));
    return mime;
}

Json pieces_on(const QMimeData* mime) {
    if (!mime) return read_pieces({});
    if (mime->hasFormat(QLatin1String(pieces_mime_type)))
        return read_pieces(mime->data(QLatin1String(pieces_mime_type)).toStdString());
    return read_pieces(mime->text().toStdString());
}

} // namespace rampwright::ui
