#include "fields/field_spec.hpp"

#include <QtGlobal>

#include <array>
#include <string_view>

namespace rampwright::ui {
namespace tables {
namespace {

#define FIELD_TEXT(text) QT_TRANSLATE_NOOP("Fields", text)

constexpr auto scale = std::to_array<FieldSpec>({
    {"/scale/division_g", FIELD_TEXT("Division"), FIELD_TEXT("The smallest step the race's scale shows.")},
    {"/scale/offset_g", FIELD_TEXT("Shows too much by"),
     FIELD_TEXT("What the scale shows with nothing on it; negative where it shows too little.")},
});
constexpr auto worse_scale = std::to_array<FieldSpec>({
    {"/scale/worse/division_g", FIELD_TEXT("Its division"),
     FIELD_TEXT("Of a scale the car may meet on the night; left empty, the race scale's own.")},
    {"/scale/worse/offset_g", FIELD_TEXT("Shows too much by"),
     FIELD_TEXT("Left empty: one division more than the race scale.")},
});
constexpr auto putty = std::to_array<FieldSpec>({
    {"/tools/pellet_diameter_mm", FIELD_TEXT("Pellet across"),
     FIELD_TEXT("Diameter of the roll of putty that pellets are cut from.")},
});
constexpr std::array<FieldGroup, 3> scales{{{FIELD_TEXT("Race scale"), scale},
                                            {FIELD_TEXT("A worse scale"), worse_scale},
                                            {FIELD_TEXT("Putty for the last tenths"), putty}}};

constexpr auto block = std::to_array<FieldSpec>({
    {"@/body/block_mass_g", FIELD_TEXT("Block weighs"),
     FIELD_TEXT("The uncut block on your own scale. It wins over the density.")},
    {"@/body/density_kg_m3", FIELD_TEXT("Density"),
     FIELD_TEXT("Of the wood, where the block was not weighed.")},
    {"@/body/moisture_pct", FIELD_TEXT("Water in it"),
     FIELD_TEXT("As a share of the dry wood's mass: about 8 % in a heated room, 12 % in the yard, more in a "
                "damp shed. It counts where the table's density does.")},
    {"@/body/block_mm/0", FIELD_TEXT("Length"), FIELD_TEXT("Of the uncut block.")},
    {"@/body/block_mm/1", FIELD_TEXT("Width"), FIELD_TEXT("Of the uncut block.")},
    {"@/body/block_mm/2", FIELD_TEXT("Height"), FIELD_TEXT("Of the uncut block.")},
});
constexpr auto surface = std::to_array<FieldSpec>({
    {"@/body/edge_radius_mm", FIELD_TEXT("Edges rounded by"),
     FIELD_TEXT("The radius that sanding leaves along the edges.")},
    {"@/body/finish_g", FIELD_TEXT("Paint and decals"),
     FIELD_TEXT("What they weigh, spread over the surface.")},
});
constexpr std::array<FieldGroup, 2> shape{{{FIELD_TEXT("Wood"), block}, {FIELD_TEXT("Surface"), surface}}};

constexpr auto axles = std::to_array<FieldSpec>({
    {"@/axles/rear_x_mm", FIELD_TEXT("Rear axle at"), FIELD_TEXT("From the tail to the rear axle.")},
    {"@/axles/front_x_mm", FIELD_TEXT("Front axle at"), FIELD_TEXT("From the tail to the front axle.")},
    {"@/axles/rear_z_mm", FIELD_TEXT("Rear height"),
     FIELD_TEXT("From the bottom of the wood to the middle of the rear axle.")},
    {"@/axles/front_z_mm", FIELD_TEXT("Front height"),
     FIELD_TEXT("From the bottom of the wood to the middle of the front axle.")},
    {"@/axles/shank_diameter_mm", FIELD_TEXT("Shank"),
     FIELD_TEXT("Diameter of the axle where the wheel turns.")},
    {"@/axles/length_mm", FIELD_TEXT("Length"), FIELD_TEXT("Of one axle, under its head.")},
    {"@/axles/head_diameter_mm", FIELD_TEXT("Head"), FIELD_TEXT("Diameter of the axle's head.")},
    {"@/axles/mass_each_g", FIELD_TEXT("One axle weighs"), FIELD_TEXT("Weigh all four and divide.")},
});
#define WHEEL_FIELDS(corner)                                                                                 \
    std::to_array<FieldSpec>({                                                                               \
        {"@/wheels/" corner "/mass_g", FIELD_TEXT("Weighs"),                                                 \
         FIELD_TEXT("The wheel alone, without its axle.")},                                                  \
        {"@/wheels/" corner "/outer_diameter_mm", FIELD_TEXT("Diameter"), FIELD_TEXT("What it rolls on.")},  \
        {"@/wheels/" corner "/bore_diameter_mm", FIELD_TEXT("Bore"),                                         \
         FIELD_TEXT("The hole the axle goes through.")},                                                     \
        {"@/wheels/" corner "/width_mm", FIELD_TEXT("Width"), FIELD_TEXT("From inner to outer face.")},      \
        {"@/wheels/" corner "/gap_to_body_mm", FIELD_TEXT("Gap to the wood"),                                \
         FIELD_TEXT("Play between hub and body.")},                                                          \
        {"@/wheels/" corner "/spin_inertia_g_mm2", FIELD_TEXT("Spin inertia"),                               \
         FIELD_TEXT("Where it was measured.")},                                                              \
        {"@/wheels/" corner "/cant_deg", FIELD_TEXT("Cant"),                                                 \
         FIELD_TEXT("Positive where the axle's outer end is higher.")},                                      \
        {"@/wheels/" corner "/raised_mm", FIELD_TEXT("Raised by"),                                           \
         FIELD_TEXT("Gap under a wheel that does not touch.")},                                              \
    })
constexpr auto rear_left = WHEEL_FIELDS("rear-left");
constexpr auto rear_right = WHEEL_FIELDS("rear-right");
constexpr auto front_left = WHEEL_FIELDS("front-left");
constexpr auto front_right = WHEEL_FIELDS("front-right");
#undef WHEEL_FIELDS
constexpr std::array<FieldGroup, 5> roll{{{FIELD_TEXT("Axles"), axles},
                                          {FIELD_TEXT("Rear left wheel"), rear_left},
                                          {FIELD_TEXT("Rear right wheel"), rear_right},
                                          {FIELD_TEXT("Front left wheel"), front_left},
                                          {FIELD_TEXT("Front right wheel"), front_right}}};

constexpr auto toe = std::to_array<FieldSpec>({
    {"@/wheels/front-left/toe_deg", FIELD_TEXT("Front left"),
     FIELD_TEXT("Positive where the wheel steers to the car's left.")},
    {"@/wheels/front-right/toe_deg", FIELD_TEXT("Front right"),
     FIELD_TEXT("Positive where the wheel steers to the car's left.")},
    {"@/wheels/rear-left/toe_deg", FIELD_TEXT("Rear left"),
     FIELD_TEXT("Positive where the wheel steers to the car's left.")},
    {"@/wheels/rear-right/toe_deg", FIELD_TEXT("Rear right"),
     FIELD_TEXT("Positive where the wheel steers to the car's left.")},
});
constexpr auto drift = std::to_array<FieldSpec>({
    {"@/steer/drift_mm", FIELD_TEXT("Drift"),
     FIELD_TEXT("How far the car wandered sideways on the drift board.")},
    {"@/steer/over_mm", FIELD_TEXT("Over"), FIELD_TEXT("How far it rolled, straight along the board.")},
    {"@/steer/watched_ahead_mm", FIELD_TEXT("Watched mark"),
     FIELD_TEXT("How far the mark you watched is ahead of the rear axle.")},
});
constexpr std::array<FieldGroup, 2> aim{
    {{FIELD_TEXT("Steer of each wheel"), toe}, {FIELD_TEXT("Drift board"), drift}}};

constexpr auto air = std::to_array<FieldSpec>({
    {"/air/temperature_c", FIELD_TEXT("Temperature"), FIELD_TEXT("In the hall.")},
    {"/air/pressure_hpa", FIELD_TEXT("Pressure"),
     FIELD_TEXT("At the hall itself, not reduced to sea level.")},
    {"/air/humidity_pct", FIELD_TEXT("Humidity"), FIELD_TEXT("Relative humidity of the air.")},
});
constexpr auto track = std::to_array<FieldSpec>({
    {"/track/start_line_mm", FIELD_TEXT("Start line"),
     FIELD_TEXT("Along the surface, from the beginning of the first piece.")},
    {"/track/finish_line_mm", FIELD_TEXT("Finish line"),
     FIELD_TEXT("Along the surface, from the beginning of the first piece.")},
});
constexpr auto as_built = std::to_array<FieldSpec>({
    {"@/as_built/mass_g", FIELD_TEXT("Car weighs"),
     FIELD_TEXT("The finished car on your scale. It wins over what is computed.")},
    {"@/as_built/front_load_g", FIELD_TEXT("Front load"),
     FIELD_TEXT("What the scale shows under the front wheels, the rear at the same height.")},
    {"@/as_built/balance_ahead_of_rear_axle_mm", FIELD_TEXT("Balances at"),
     FIELD_TEXT("Ahead of the rear axle, on a knife edge.")},
    {"@/as_built/centre_height_mm", FIELD_TEXT("Centre of mass at"),
     FIELD_TEXT("Above the lane, where it was measured.")},
});
constexpr std::array<FieldGroup, 2> run{{{FIELD_TEXT("Track"), track}, {FIELD_TEXT("Air"), air}}};
constexpr std::array<FieldGroup, 1> measured{{{FIELD_TEXT("Typed back from the sheet"), as_built}}};

#undef FIELD_TEXT

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
