#include "text/corner_text.hpp"

#include <QCoreApplication>

namespace rampwright::ui {
namespace {

struct CornerWords {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Corners)
};

} // namespace

QString corner_text(Corner corner) {
    switch (corner) {
    case Corner::rear_left:
        return CornerWords::tr("rear left");
    case Corner::rear_right:
        return CornerWords::tr("rear right");
    case Corner::front_left:
        return CornerWords::tr("front left");
    case Corner::front_right:
        break;
    }
    return CornerWords::tr("front right");
}

} // namespace rampwright::ui
