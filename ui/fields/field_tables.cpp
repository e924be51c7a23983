#include "fields/field_spec.hpp"

#include <QtGlobal>

#include <array>
#include <string_view>

namespace rampwright::ui {
namespace tables {
namespace {

constexpr auto scale = std::to_array<FieldSpec>({
    {"/scale/division_g", QT_TRANSLATE_NOOP("Fields", "Division"),
     QT_TRANSLATE_NOOP("Fields", "The smallest step the race's scale shows.")},
    {"/scale/offset_g", QT_TRANSLATE_NOOP("Fields", "Shows too much by"),
     QT_TRANSLATE_NOOP("Fields",
                       "What the scale shows with nothing on it; negative where it shows too little.")},
});
constexpr auto worse_scale = std::to_array<FieldSpec>({
    {"/scale/worse/division_g", QT_TRANSLATE_NOOP("Fields", "Its division"),
     QT_TRANSLATE_NOOP("Fields",
                       "Of a scale the car may meet on the night; left empty, the race scale's own.")},
    {"/scale/worse/offset_g", QT_TRANSLATE_NOOP("Fields", "Shows too much by"),
     QT_TRANSLATE_NOOP("Fields", "Left empty: one division more than the race scale.")},
});
constexpr auto putty = std::to_array<FieldSpec>({
    {"/tools/pellet_diameter_mm", QT_TRANSLATE_NOOP("Fields", "Pellet across"),
     QT_TRANSLATE_NOOP("Fields", "Diameter of the roll of putty that pellets are cut from.")},
});
constexpr std::array<FieldGroup, 3> scales{
    {{QT_TRANSLATE_NOOP("Fields", "Race scale"), scale},
     {QT_TRANSLATE_NOOP("Fields", "A worse scale"), worse_scale},
     {QT_TRANSLATE_NOOP("Fields", "Putty for the last tenths"), putty}}};

constexpr auto block = std::to_array<FieldSpec>({
    {"@/body/block_mass_g", QT_TRANSLATE_NOOP("Fields", "Block weighs"),
     QT_TRANSLATE_NOOP("Fields", "The uncut block on your own scale. It wins over the density.")},
    {"@/body/density_kg_m3", QT_TRANSLATE_NOOP("Fields", "Density"),
     QT_TRANSLATE_NOOP("Fields", "Of the wood, where the block was not weighed.")},
    {"@/body/moisture_pct", QT_TRANSLATE_NOOP("Fields", "Water in it"),
     QT_TRANSLATE_NOOP(
         "Fields",
         "As a share of the dry wood's mass: about 8 % in a heated room, 12 % in the yard, more in a "
         "damp shed. It counts where the table's density does.")},
    {"@/body/block_mm/0", QT_TRANSLATE_NOOP("Fields", "Length"),
     QT_TRANSLATE_NOOP("Fields", "Of the uncut block.")},
    {"@/body/block_mm/1", QT_TRANSLATE_NOOP("Fields", "Width"),
     QT_TRANSLATE_NOOP("Fields", "Of the uncut block.")},
    {"@/body/block_mm/2", QT_TRANSLATE_NOOP("Fields", "Height"),
     QT_TRANSLATE_NOOP("Fields", "Of the uncut block.")},
});
constexpr auto surface = std::to_array<FieldSpec>({
    {"@/body/edge_radius_mm", QT_TRANSLATE_NOOP("Fields", "Edges rounded by"),
     QT_TRANSLATE_NOOP("Fields", "The radius that sanding leaves along the edges.")},
    {"@/body/finish_g", QT_TRANSLATE_NOOP("Fields", "Paint and decals"),
     QT_TRANSLATE_NOOP("Fields", "What they weigh, spread over the surface.")},
});
constexpr std::array<FieldGroup, 2> shape{
    {{QT_TRANSLATE_NOOP("Fields", "Wood"), block}, {QT_TRANSLATE_NOOP("Fields", "Surface"), surface}}};

constexpr auto axles = std::to_array<FieldSpec>({
    {"@/axles/rear_x_mm", QT_TRANSLATE_NOOP("Fields", "Rear axle at"),
     QT_TRANSLATE_NOOP("Fields", "From the tail to the rear axle.")},
    {"@/axles/front_x_mm", QT_TRANSLATE_NOOP("Fields", "Front axle at"),
     QT_TRANSLATE_NOOP("Fields", "From the tail to the front axle.")},
    {"@/axles/rear_z_mm", QT_TRANSLATE_NOOP("Fields", "Rear height"),
     QT_TRANSLATE_NOOP("Fields", "From the bottom of the wood to the middle of the rear axle.")},
    {"@/axles/front_z_mm", QT_TRANSLATE_NOOP("Fields", "Front height"),
     QT_TRANSLATE_NOOP("Fields", "From the bottom of the wood to the middle of the front axle.")},
    {"@/axles/shank_diameter_mm", QT_TRANSLATE_NOOP("Fields", "Shank"),
     QT_TRANSLATE_NOOP("Fields", "Diameter of the axle where the wheel turns.")},
    {"@/axles/length_mm", QT_TRANSLATE_NOOP("Fields", "Length"),
     QT_TRANSLATE_NOOP("Fields", "Of one axle, under its head.")},
    {"@/axles/head_diameter_mm", QT_TRANSLATE_NOOP("Fields", "Head"),
     QT_TRANSLATE_NOOP("Fields", "Diameter of the axle's head.")},
    {"@/axles/mass_each_g", QT_TRANSLATE_NOOP("Fields", "One axle weighs"),
     QT_TRANSLATE_NOOP("Fields", "Weigh all four and divide.")},
});
#define WHEEL_FIELDS(corner)                                                                                 \
    std::to_array<FieldSpec>({                                                                               \
        {"@/wheels/" corner "/mass_g", QT_TRANSLATE_NOOP("Fields", "Weighs"),                                \
         QT_TRANSLATE_NOOP("Fields", "The wheel alone, without its axle.")},                                 \
        {"@/wheels/" corner "/outer_diameter_mm", QT_TRANSLATE_NOOP("Fields", "Diameter"),                   \
         QT_TRANSLATE_NOOP("Fields", "What it rolls on.")},                                                  \
        {"@/wheels/" corner "/bore_diameter_mm", QT_TRANSLATE_NOOP("Fields", "Bore"),                        \
         QT_TRANSLATE_NOOP("Fields", "The hole the axle goes through.")},                                    \
        {"@/wheels/" corner "/width_mm", QT_TRANSLATE_NOOP("Fields", "Width"),                               \
         QT_TRANSLATE_NOOP("Fields", "From inner to outer face.")},                                          \
        {"@/wheels/" corner "/gap_to_body_mm", QT_TRANSLATE_NOOP("Fields", "Gap to the wood"),               \
         QT_TRANSLATE_NOOP("Fields", "Play between hub and body.")},                                         \
        {"@/wheels/" corner "/spin_inertia_g_mm2", QT_TRANSLATE_NOOP("Fields", "Spin inertia"),              \
         QT_TRANSLATE_NOOP("Fields", "Where it was measured.")},                                             \
        {"@/wheels/" corner "/cant_deg", QT_TRANSLATE_NOOP("Fields", "Cant"),                                \
         QT_TRANSLATE_NOOP("Fields", "Positive where the axle's outer end is higher.")},                     \
        {"@/wheels/" corner "/raised_mm", QT_TRANSLATE_NOOP("Fields", "Raised by"),                          \
         QT_TRANSLATE_NOOP("Fields", "Gap under a wheel that does not touch.")},                             \
    })
constexpr auto rear_left = WHEEL_FIELDS("rear-left");
constexpr auto rear_right = WHEEL_FIELDS("rear-right");
constexpr auto front_left = WHEEL_FIELDS("front-left");
constexpr auto front_right = WHEEL_FIELDS("front-right");
#undef WHEEL_FIELDS
constexpr std::array<FieldGroup, 5> roll{{{QT_TRANSLATE_NOOP("Fields", "Axles"), axles},
                                          {QT_TRANSLATE_NOOP("Fields", "Rear left wheel"), rear_left},
                                          {QT_TRANSLATE_NOOP("Fields", "Rear right wheel"), rear_right},
                                          {QT_TRANSLATE_NOOP("Fields", "Front left wheel"), front_left},
                                          {QT_TRANSLATE_NOOP("Fields", "Front right wheel"), front_right}}};

constexpr auto toe = std::to_array<FieldSpec>({
    {"@/wheels/front-left/toe_deg", QT_TRANSLATE_NOOP("Fields", "Front left"),
     QT_TRANSLATE_NOOP("Fields", "Positive where the wheel steers to the car's left.")},
    {"@/wheels/front-right/toe_deg", QT_TRANSLATE_NOOP("Fields", "Front right"),
     QT_TRANSLATE_NOOP("Fields", "Positive where the wheel steers to the car's left.")},
    {"@/wheels/rear-left/toe_deg", QT_TRANSLATE_NOOP("Fields", "Rear left"),
     QT_TRANSLATE_NOOP("Fields", "Positive where the wheel steers to the car's left.")},
    {"@/wheels/rear-right/toe_deg", QT_TRANSLATE_NOOP("Fields", "Rear right"),
     QT_TRANSLATE_NOOP("Fields", "Positive where the wheel steers to the car's left.")},
});
constexpr auto drift = std::to_array<FieldSpec>({
    {"@/steer/drift_mm", QT_TRANSLATE_NOOP("Fields", "Drift"),
     QT_TRANSLATE_NOOP("Fields", "How far the car wandered sideways on the drift board.")},
    {"@/steer/over_mm", QT_TRANSLATE_NOOP("Fields", "Over"),
     QT_TRANSLATE_NOOP("Fields", "How far it rolled, straight along the board.")},
    {"@/steer/watched_ahead_mm", QT_TRANSLATE_NOOP("Fields", "Watched mark"),
     QT_TRANSLATE_NOOP("Fields", "How far the mark you watched is ahead of the rear axle.")},
});
constexpr std::array<FieldGroup, 2> aim{{{QT_TRANSLATE_NOOP("Fields", "Steer of each wheel"), toe},
                                         {QT_TRANSLATE_NOOP("Fields", "Drift board"), drift}}};

constexpr auto air = std::to_array<FieldSpec>({
    {"/air/temperature_c", QT_TRANSLATE_NOOP("Fields", "Temperature"),
     QT_TRANSLATE_NOOP("Fields", "In the hall.")},
    {"/air/pressure_hpa", QT_TRANSLATE_NOOP("Fields", "Pressure"),
     QT_TRANSLATE_NOOP("Fields", "At the hall itself, not reduced to sea level.")},
    {"/air/humidity_pct", QT_TRANSLATE_NOOP("Fields", "Humidity"),
     QT_TRANSLATE_NOOP("Fields", "Relative humidity of the air.")},
});
constexpr auto track = std::to_array<FieldSpec>({
    {"/track/start_line_mm", QT_TRANSLATE_NOOP("Fields", "Start line"),
     QT_TRANSLATE_NOOP("Fields", "Along the surface, from the beginning of the first piece.")},
    {"/track/finish_line_mm", QT_TRANSLATE_NOOP("Fields", "Finish line"),
     QT_TRANSLATE_NOOP("Fields", "Along the surface, from the beginning of the first piece.")},
});
constexpr auto as_built = std::to_array<FieldSpec>({
    {"@/as_built/mass_g", QT_TRANSLATE_NOOP("Fields", "Car weighs"),
     QT_TRANSLATE_NOOP("Fields", "The finished car on your scale. It wins over what is computed.")},
    {"@/as_built/front_load_g", QT_TRANSLATE_NOOP("Fields", "Front load"),
     QT_TRANSLATE_NOOP("Fields",
                       "What the scale shows under the front wheels, the rear at the same height.")},
    {"@/as_built/balance_ahead_of_rear_axle_mm", QT_TRANSLATE_NOOP("Fields", "Balances at"),
     QT_TRANSLATE_NOOP("Fields", "Ahead of the rear axle, on a knife edge.")},
    {"@/as_built/centre_height_mm", QT_TRANSLATE_NOOP("Fields", "Centre of mass at"),
     QT_TRANSLATE_NOOP("Fields", "Above the lane, where it was measured.")},
});
constexpr std::array<FieldGroup, 2> run{
    {{QT_TRANSLATE_NOOP("Fields", "Track"), track}, {QT_TRANSLATE_NOOP("Fields", "Air"), air}}};
constexpr std::array<FieldGroup, 1> measured{
    {{QT_TRANSLATE_NOOP("Fields", "Typed back from the sheet"), as_built}}};

} // namespace
} // namespace tables

std::span<const FieldGroup> scale_fields() {
    return tables::scales;
}
std::span<const FieldGroup> shape_fields() {
    return tables::shape;
}
std::span<const FieldGroup> roll_fields() {
    return tables::roll;
}
std::span<const FieldGroup> aim_fields() {
    return tables::aim;
}
std::span<const FieldGroup> run_fields() {
    return tables::run;
}
std::span<const FieldGroup> measured_fields() {
    return tables::measured;
}

std::optional<std::string> resolve_pointer(const Session& session, const char* pointer) {
    std::string_view text = pointer;
    if (text.empty() || text.front() != '@') return std::string(text);
    text.remove_prefix(1);
    const std::string car = "/cars/" + std::to_string(session.car());
    constexpr std::string_view wheels = "/wheels/";
    if (!text.starts_with(wheels)) return car + std::string(text);
    text.remove_prefix(wheels.size());
    const std::size_t slash = text.find('/');
    const std::string corner(text.substr(0, slash));
    const Json& root = session.document().root;
    const Json::json_pointer array(car + "/wheels");
    if (!root.contains(array) || !root.at(array).is_array()) return {};
    const Json& list = root.at(array);
    for (std::size_t i = 0; i < list.size(); ++i)
        if (list[i].is_object() && list[i].value("corner", std::string()) == corner)
            return car + "/wheels/" + std::to_string(i) + std::string(text.substr(slash));
    return {};
}

} // namespace rampwright::ui
