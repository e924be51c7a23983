#include "text/input_text.hpp"

#include <QCoreApplication>

#include <array>
#include <charconv>
#include <utility>

namespace rampwright::ui {
namespace {

struct InputWords {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Inputs)
};

constexpr std::array<std::pair<std::string_view, const char*>, 36> plain_inputs{{
    {"journal", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Friction of the axles")},
    {"hub_on_head", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Friction of hubs on axle heads")},
    {"hub_on_wood", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Friction of hubs on the wood")},
    {"rolling", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Rolling resistance of the treads")},
    {"edge_factor", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "How a tread rolls on its edge")},
    {"windage", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Air stirred by the wheels")},
    {"tread_grip", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Grip of the treads")},
    {"creep_per_rad", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Side force of a slanting tread")},
    {"rail", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Friction on the rail")},
    {"rail_share", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Sliding while riding the rail")},
    {"touch_share", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Sliding while touching the rail")},
    {"restitution", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "How wheels bounce off the rail")},
    {"align_deg", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "How straight the axle holes are")},
    {"need_deg", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Steer that the lane's bumps take up")},
    {"kick_n_mm", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Kicks from the lane's joints")},
    {"hold_width", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "How sharply a car loses the rail")},
    {"drag_coefficient", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Drag of the body's form")},
    {"rear_x", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Place of the rear axle")},
    {"front_x", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Place of the front axle")},
    {"rear_z", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Height of the rear axle")},
    {"front_z", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Height of the front axle")},
    {"saw/profile", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "How true the side outline is sawn")},
    {"saw/plan", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "How true the top outline is sawn")},
    {"nose_x", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Place of the nose")},
    {"rear_wheel_radius", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Size of the rear wheels")},
    {"front_wheel_radius", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Size of the front wheels")},
    {"bore_radius", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Size of the wheels' bores")},
    {"as_built/mass", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "The weighed mass")},
    {"as_built/front_load", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "The weighed front load")},
    {"as_built/balance_ahead_of_rear_axle",
     QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "The measured balance point")},
    {"as_built/centre_height", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "The measured centre height")},
    {"mass/body", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Mass of the wood")},
    {"mass/body/finish_g", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Mass of the paint")},
    {"mass/axles", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Mass of the axles")},
    {"clock_offset", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Zero of the track's clock")},
    {"run_scatter", QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Scatter from run to run")},
}};

constexpr std::array<const char*, 4> wheel_inputs{
    QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Mass of the rear left wheel"),
    QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Mass of the rear right wheel"),
    QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Mass of the front left wheel"),
    QT_TRANSLATE_NOOP("rampwright::ui::Inputs", "Mass of the front right wheel")};

/// The number after a prefix; none where the key does not begin with it.
std::optional<std::size_t> number_after(std::string_view key, std::string_view prefix) {
    if (!key.starts_with(prefix)) return std::nullopt;
    key.remove_prefix(prefix.size());
    std::size_t number = 0;
    const auto end = std::from_chars(key.data(), key.data() + key.size(), number);
    if (end.ec != std::errc() || end.ptr != key.data() + key.size()) return std::nullopt;
    return number;
}

} // namespace

QString input_text(std::string_view key, const CarPlan& car) {
    for (const auto& [known, words] : plain_inputs)
        if (key == known) return InputWords::tr(words);
    if (const auto wheel = number_after(key, "mass/wheels/"); wheel && *wheel < wheel_inputs.size())
        return InputWords::tr(wheel_inputs[*wheel]);
    const auto piece = [&](std::size_t n) {
        const QString name = n < car.ballast.size() ? QString::fromStdString(car.ballast[n].name) : QString();
        return name.isEmpty() ? InputWords::tr("piece %1").arg(n + 1) : name;
    };
    if (const auto n = number_after(key, "drill/cuts/")) {
        const QString name =
            *n < car.body.cuts.size() ? QString::fromStdString(car.body.cuts[*n].name) : QString();
        return InputWords::tr("How true %1 is drilled")
            .arg(name.isEmpty() ? InputWords::tr("cut %1").arg(*n + 1) : name);
    }
    if (constexpr std::string_view held = "/held"; key.ends_with(held))
        if (const auto n = number_after(key.substr(0, key.size() - held.size()), "mass/ballast/"))
            return InputWords::tr("Mass of what holds %1").arg(piece(*n));
    if (const auto n = number_after(key, "mass/ballast/")) return InputWords::tr("Mass of %1").arg(piece(*n));
    if (const auto n = number_after(key, "place-x/ballast/"))
        return InputWords::tr("Place of %1 along the car").arg(piece(*n));
    if (const auto n = number_after(key, "place-z/ballast/"))
        return InputWords::tr("Height of %1").arg(piece(*n));
    return QString::fromUtf8(key.data(), static_cast<qsizetype>(key.size()));
}

} // namespace rampwright::ui
