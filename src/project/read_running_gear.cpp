#include "project/number_text.hpp"
#include "project/read_parts.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>

namespace rampwright {

namespace {

constexpr std::array<std::pair<std::string_view, Corner>, 4> corners{{{"rear-left", Corner::rear_left},
                                                                      {"rear-right", Corner::rear_right},
                                                                      {"front-left", Corner::front_left},
                                                                      {"front-right", Corner::front_right}}};

Vec2 read_ring(const Node& ring, double inner, double outer) {
    const Limits radius = from_to(0, 100);
    if (!ring.present())
        return {ring.element(0).assume_si(inner, inner / millimetre / 20),
                ring.element(1).assume_si(outer, outer / millimetre / 20)};
    const Vec2 read = ring.point2(radius);
    if (read.x() >= read.y())
        ring.refuse(Core::tr("a ring whose inner radius is not below its outer one"),
                    Core::tr("give [inner radius, outer radius]"));
    return read;
}

/// The section's measures: what is given must leave a ring for the tread and a sleeve around the bore.
void read_section(const Node& row, WheelPlan& w) {
    const Node tread = row["tread_thickness_mm"], web = row["web_thickness_mm"], hub = row["hub_diameter_mm"];
    w.tread_thickness = tread.maybe_number(above(0, 100));
    if (w.tread_thickness && *w.tread_thickness > (w.outer_diameter - w.bore_diameter) / 2)
        tread.refuse(Core::tr("the tread is thicker than the wheel from bore to rim"),
                     Core::tr("measure it from the rim inward, beside the web"));
    w.web_thickness = web.maybe_number(above(0, 100));
    if (w.web_thickness && *w.web_thickness > w.width)
        web.refuse(Core::tr("the web is thicker than the wheel is wide"),
                   Core::tr("give a thinner web or a wider wheel"));
    w.hub_diameter = hub.maybe_number(above(0, 200));
    if (w.hub_diameter && (*w.hub_diameter < w.bore_diameter ||
                           *w.hub_diameter > w.outer_diameter - 2 * w.tread_thickness.value_or(0)))
        hub.refuse(Core::tr("the hub does not lie between bore and tread"),
                   Core::tr("give the diameter of the sleeve around the bore"));
}

WheelPlan read_wheel(const Node& row, Corner corner, const AxlePlan& axles) {
    WheelPlan w;
    w.corner = corner;
    w.mass = row["mass_g"].number(above(0, 100), usual_mass(2.6));
    w.outer_diameter = row["outer_diameter_mm"].number(from_to(5, 200), usual_length(30.2));
    const Node bore = row["bore_diameter_mm"];
    w.bore_diameter = bore.number(above(0, 50), usual_length(2.6));
    if (w.bore_diameter <= axles.shank_diameter)
        bore.refuse(Core::tr("the bore is not wider than the axle's shank ({what} mm)",
                             {{"what", plain_number(axles.shank_diameter / millimetre)}}),
                    Core::tr("give a larger bore or a thinner shank: a wheel needs play to turn"));
    if (w.bore_diameter >= w.outer_diameter)
        bore.refuse(Core::tr("the bore is wider than the wheel"),
                    Core::tr("give a smaller bore or a larger wheel"));
    w.width = row["width_mm"].number(above(0, 100), usual_length(8));
    read_section(row, w);
    w.gap_to_body = row["gap_to_body_mm"].number(from_to(0, 50), {0.8, 0.3});
    w.spin_inertia = row["spin_inertia_g_mm2"].maybe_number(above(0, 1e6));
    w.touches = row["touches"].flag(true);
    // A wheel that touches is not raised, whatever is kept in the file for when it is lifted again.
    const Node raised = row["raised_mm"];
    w.raised = w.touches && !raised.present() ? 0 : raised.number(from_to(0, 50), {1.5, 0.3});
    if (w.touches) w.raised = 0;
    w.cant = row["cant_deg"].number(from_to(-20, 20), {0});
    w.toe = row["toe_deg"].number(from_to(-20, 20), {0});
    w.hub = row["hub"].word<Hub>({{"flat", Hub::flat}, {"stepped", Hub::stepped}, {"coned", Hub::coned}},
                                 Hub::flat);
    // From memory: a coned hub touches along a narrow ring around its bore, a flat one as wide as the
    // head that it meets, and with its whole face the wood.
    const double bore_radius = w.bore_diameter / 2;
    const double narrow = bore_radius + 0.4 * millimetre;
    const double head = std::max(axles.head_diameter / 2, narrow);
    w.hub_ring =
        read_ring(row["hub_ring_mm"], bore_radius, w.hub == Hub::coned ? std::min(narrow, head) : head);
    w.body_ring = read_ring(row["body_ring_mm"], bore_radius,
                            bore_radius * (w.hub == Hub::coned     ? 1.5
                                           : w.hub == Hub::stepped ? 2.0
                                                                   : 2.5));
    w.runout = row["runout_mm"].number(from_to(0, 5), {0.05, 0.03});
    return w;
}

void check_standing(const Node& wheels, const std::array<WheelPlan, 4>& read) {
    for (const WheelPlan& wheel : read)
        if (!wheel.touches && !is_front(wheel.corner))
            wheels.refuse(
                Core::tr("the {what} wheel does not touch", {{"what", std::string(to_string(wheel.corner))}}),
                Core::tr("a car stands on both rear wheels and one or two front wheels: let it touch"));
    if (std::none_of(read.begin(), read.end(),
                     [](const WheelPlan& w) { return is_front(w.corner) && w.touches; }))
        wheels.refuse(Core::tr("neither front wheel touches"), Core::tr("let one of them touch"));
}

} // namespace

std::string_view to_string(Corner corner) {
    for (const auto& [name, value] : corners)
        if (value == corner) return name;
    return {};
}

std::string in_words(Corner corner) {
    switch (corner) {
    case Corner::rear_left:
        return Core::tr("rear left");
    case Corner::rear_right:
        return Core::tr("rear right");
    case Corner::front_left:
        return Core::tr("front left");
    case Corner::front_right:
        break;
    }
    return Core::tr("front right");
}

AxlePlan read_axles(const Node& axles, const BodyPlan& body) {
    AxlePlan a;
    const double length = body.block.x() / millimetre;
    const Limits along = from_to(-100, 1000), up = from_to(-100, 200);
    a.rear_x = axles["rear_x_mm"].number(along, usual_length(22));
    const Node front = axles["front_x_mm"];
    a.front_x = front.number(along, usual_length(length - 45));
    if (a.front_x - a.rear_x < 10 * millimetre)
        front.refuse(
            Core::tr("the front axle is not at least 10 mm ahead of the rear axle"),
            Core::tr("x is measured forward from the tail; give a larger front_x_mm or a smaller rear_x_mm"));
    a.rear_z = axles["rear_z_mm"].number(up, usual_length(5));
    a.front_z = axles["front_z_mm"].number(up, usual_length(5));
    a.shank_diameter = axles["shank_diameter_mm"].number(above(0, 20), usual_length(2.2));
    a.length = axles["length_mm"].number(above(0, 200), usual_length(28));
    const Node head = axles["head_diameter_mm"];
    a.head_diameter = head.number(above(0, 50), usual_length(4.5));
    if (a.head_diameter <= a.shank_diameter)
        head.refuse(Core::tr("the axle's head is not wider than its shank"),
                    Core::tr("give a wider head: it is what keeps the wheel on"));
    a.mass_each = axles["mass_each_g"].number(above(0, 100), usual_mass(0.9));
    a.holes = axles["holes"].word<Holes>(
        {{"jig", Holes::jig}, {"press", Holes::press}, {"slots", Holes::slots}}, Holes::press);
    const Node hole = axles["hole_diameter_mm"];
    a.hole_diameter = hole.present() ? hole.number(above(0, 20)) : hole.assume_si(a.shank_diameter, 0.05);
    return a;
}

std::array<WheelPlan, 4> read_wheels(const Node& wheels, const AxlePlan& axles) {
    std::array<WheelPlan, 4> read;
    if (!wheels.present()) {
        for (const Corner corner : all_corners) {
            const auto i = static_cast<std::size_t>(corner);
            read[i] = read_wheel(wheels.element(i), corner, axles);
            read[i].row = i;
        }
        return read;
    }
    std::array<bool, 4> seen{};
    std::size_t index = 0;
    for (const Node& row : wheels.rows()) {
        const Node place = row["corner"];
        const Corner corner = place.word<Corner>(corners);
        bool& there = seen[static_cast<std::size_t>(corner)];
        if (there)
            place.refuse(Core::tr("two wheels at {what}", {{"what", std::string(to_string(corner))}}),
                         Core::tr("give each corner one wheel"));
        there = true;
        WheelPlan& wheel = read[static_cast<std::size_t>(corner)];
        wheel = read_wheel(row, corner, axles);
        wheel.row = index++;
    }
    for (const Corner corner : all_corners)
        if (!seen[static_cast<std::size_t>(corner)])
            wheels.refuse(Core::tr("no wheel at {what}", {{"what", std::string(to_string(corner))}}),
                          Core::tr("give all four corners, or leave the list out for four usual wheels"));
    check_standing(wheels, read);
    return read;
}

} // namespace rampwright
