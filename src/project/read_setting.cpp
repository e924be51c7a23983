#include "project/read_parts.hpp"

#include <algorithm>

namespace rampwright {

namespace {

/// YYYY-MM-DD with a month and a day that exist, leap years left aside.
bool is_date(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (i != 4 && i != 7 && (text[i] < '0' || text[i] > '9')) return false;
    const int month = (text[5] - '0') * 10 + text[6] - '0';
    const int day = (text[8] - '0') * 10 + text[9] - '0';
    return month >= 1 && month <= 12 && day >= 1 && day <= 31;
}

} // namespace

Rules read_rules(const Node& rules) {
    Rules r;
    r.title = rules["title"].text();
    r.source = rules["source"].text();
    r.max_mass = rules["max_mass_g"].maybe_number(above(0, 5000));
    r.max_length = rules["max_length_mm"].maybe_number(above(0, 2000));
    r.max_width = rules["max_width_mm"].maybe_number(above(0, 1000));
    r.max_height = rules["max_height_mm"].maybe_number(above(0, 1000));
    r.min_ground_clearance = rules["min_ground_clearance_mm"].maybe_number(from_to(0, 200));
    r.min_inner_width = rules["min_inner_width_mm"].maybe_number(from_to(0, 500));
    const Node wheelbase = rules["wheelbase_mm"];
    // Its members have no ending of their own: they are in the unit of the key above.
    r.wheelbase.min = wheelbase.inner("min").maybe_number(from_to(0, 1000));
    r.wheelbase.max = wheelbase.inner("max").maybe_number(above(0, 1000));
    if (r.wheelbase.min && r.wheelbase.max && *r.wheelbase.min > *r.wheelbase.max)
        wheelbase.refuse("the smallest wheelbase is above the largest", "exchange \"min\" and \"max\"");
    r.wheel_min_mass = rules["wheel_min_mass_g"].maybe_number(from_to(0, 100));
    if (const Node touching = rules["wheels_touching"]; touching.present())
        r.wheels_touching = touching.whole(3, 4);
    for (const auto& [name, allowed] : rules["allow"].members())
        if (allowed.present()) r.allow[name] = allowed.flag();
    return r;
}

Scale read_scale(const Node& scale) {
    Scale s;
    s.division = scale["division_g"].number(above(0, 100), {0.1});
    s.rounds_down = scale["reads"].word<bool>({{"nearest", false}, {"down", true}}, false);
    s.offset = scale["offset_g"].number(from_to(-100, 100), {0});
    return s;
}

AirState read_air(const Node& air) {
    AirState a;
    a.temperature = air["temperature_c"].number(from_to(-40, 60), {20, 3});
    a.pressure = air["pressure_hpa"].number(from_to(500, 1100), {1013.25, 15});
    a.humidity = air["humidity_pct"].number(from_to(0, 100), {50, 15});
    return a;
}

std::vector<ShelfPiece> read_shelf(const Node& shelf) {
    std::vector<ShelfPiece> pieces;
    for (const Node& row : shelf.rows()) {
        PieceBody body = read_piece(row);
        ShelfPiece piece;
        piece.name = row["piece"].text("piece " + std::to_string(pieces.size() + 1));
        piece.shape = body.shape;
        piece.size = std::move(body.size);
        piece.material = std::move(body.material);
        piece.mass = body.mass;
        piece.count = row["count"].whole(0, 100000, 1);
        piece.counted = row["count"].present();
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

Tools read_tools(const Node& tools) {
    Tools t;
    for (const Node& bit : tools["drill_bits_mm"].rows())
        t.drill_bits.push_back(bit.number(above(0, 100)));
    t.saw_kerf = tools["saw_kerf_mm"].number(from_to(0, 10), {1.0});
    t.saw_tolerance = tools["saw_tolerance_mm"].number(from_to(0, 10), {0.5});
    t.drill_tolerance = tools["drill_tolerance_mm"].number(from_to(0, 10), {0.2});
    return t;
}

std::vector<Run> read_runs(const Node& runs, const std::vector<CarPlan>& cars) {
    std::vector<Run> log;
    for (const Node& row : runs.rows()) {
        Run run;
        const Node car = row["car"];
        if (!car.present()) car.refuse_missing("give the \"id\" of the car that ran");
        run.car = car.text();
        if (std::none_of(cars.begin(), cars.end(), [&](const CarPlan& c) { return c.id == run.car; }))
            car.refuse("no car has the id \"" + run.car + "\"", "give the \"id\" of a car of this project");
        run.date = row["date"].text();
        if (!run.date.empty() && !is_date(run.date))
            row["date"].refuse("\"" + run.date + "\" is not a date", "write it as YYYY-MM-DD");
        run.lane = row["lane"].label();
        run.time = row["time_s"].number(above(0, 100));
        run.notes = row["notes"].text();
        log.push_back(std::move(run));
    }
    return log;
}

} // namespace rampwright
