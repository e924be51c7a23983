#include "project/read_parts.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/materials/materials.hpp>

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

/// HH:MM of a day.
bool is_hour(std::string_view text) {
    if (text.size() != 5 || text[2] != ':') return false;
    for (const std::size_t i : {0, 1, 3, 4})
        if (text[i] < '0' || text[i] > '9') return false;
    return (text[0] - '0') * 10 + text[1] - '0' <= 23 && text[3] <= '5';
}

} // namespace

std::string read_date(const Node& date) {
    const std::string text = date.text();
    if (!text.empty() && !is_date(text))
        date.refuse(Core::tr("\"{what}\" is not a date", {{"what", text}}),
                    Core::tr("write it as YYYY-MM-DD"));
    return text;
}

RaceTime read_race(const Node& race) {
    RaceTime r;
    r.date = read_date(race["date"]);
    r.starts = race["starts"].text();
    if (!r.starts.empty() && !is_hour(r.starts))
        race["starts"].refuse(Core::tr("\"{what}\" is not a time of day", {{"what", r.starts}}),
                              Core::tr("write it as HH:MM, 00:00 to 23:59"));
    if (!r.starts.empty() && r.date.empty())
        race["date"].refuse_missing("give the race's date with its hour, YYYY-MM-DD");
    return r;
}

Scale read_scale(const Node& scale) {
    Scale s;
    s.division = scale["division_g"].number(above(0, 100), {0.1});
    s.rounds_down = scale["reads"].word<bool>({{"nearest", false}, {"down", true}}, false);
    s.offset = scale["offset_g"].number(from_to(-100, 100), {0});
    return s;
}

Scale read_worse_scale(const Node& scale, const Scale& race) {
    Scale s = race;
    const Node division = scale["division_g"], reads = scale["reads"], offset = scale["offset_g"];
    if (division.present()) s.division = division.number(above(0, 100));
    if (reads.present()) s.rounds_down = reads.word<bool>({{"nearest", false}, {"down", true}});
    if (offset.present())
        s.offset = offset.number(from_to(-100, 100));
    else
        s.offset = offset.assume_si(race.offset + race.division, 0);
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
    const Node putty = tools["putty"], pellet = tools["pellet_diameter_mm"];
    if (putty.present()) {
        t.putty = putty.text();
        if (find_material(t.putty) == nullptr)
            putty.refuse(Core::tr("\"{what}\" is not in the table of materials", {{"what", t.putty}}),
                         Core::tr("use one of {what}", {{"what", names_of(materials())}}));
    } else {
        putty.assume(t.putty);
    }
    t.pellet_diameter = pellet.number(from_to(0.5, 50), {5});
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
            car.refuse(Core::tr("no car has the id \"{what}\"", {{"what", run.car}}),
                       Core::tr("give the \"id\" of a car of this project"));
        run.date = read_date(row["date"]);
        run.lane = row["lane"].label();
        run.time = row["time_s"].number(above(0, 100));
        run.notes = row["notes"].text();
        log.push_back(std::move(run));
    }
    return log;
}

} // namespace rampwright
