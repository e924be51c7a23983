#include "sheet/pdf_tools.hpp"
#include "sheet/spread.hpp"
#include "sheet/tiles.hpp"
#include "sheet/type.hpp"
#include "support/demo.hpp"

#include <catch2/catch.hpp>

#include <set>

using namespace rampwright;
using namespace rampwright::test;
using namespace rampwright::ui::paper;

namespace {

std::vector<const TextInk*> texts_of(const Page& page) {
    std::vector<const TextInk*> texts;
    for (const Ink& ink : page.ink)
        if (const auto* text = std::get_if<TextInk>(&ink)) texts.push_back(text);
    return texts;
}

/// Pairs of texts that are printed over one another, as "one | other".
std::vector<std::string> overprints(const Page& page) {
    constexpr double hair = 0.02; // mm
    std::vector<std::string> found;
    const auto texts = texts_of(page);
    for (std::size_t i = 0; i < texts.size(); ++i)
        for (std::size_t j = i + 1; j < texts.size(); ++j) {
            const QRectF common = texts[i]->box & texts[j]->box;
            if (common.width() > hair && common.height() > hair)
                found.push_back(texts[i]->text.toStdString() + " | " + texts[j]->text.toStdString());
        }
    return found;
}

/// Texts and lines that leave the paper's printable part.
std::vector<std::string> outside(const Page& page, Paper paper) {
    const QRectF room = printable(paper).adjusted(-0.01, -0.01, 0.01, 0.01);
    std::vector<std::string> found;
    for (const Ink& ink : page.ink) {
        if (const auto* text = std::get_if<TextInk>(&ink)) {
            if (!room.contains(text->box)) found.push_back(text->text.toStdString());
        } else {
            const auto& path = std::get<PathInk>(ink);
            QRectF box = path.path.boundingRect();
            if (path.clip)
                box = QRectF(
                    QPointF(std::max(box.left(), path.clip->left()), std::max(box.top(), path.clip->top())),
                    QPointF(std::min(box.right(), path.clip->right()),
                            std::min(box.bottom(), path.clip->bottom())));
            // An upright or level line has a box without area.
            if (!room.contains(box.topLeft()) || !room.contains(box.bottomRight()))
                found.push_back(QStringLiteral("a line from %1, %2 to %3, %4")
                                    .arg(box.left())
                                    .arg(box.top())
                                    .arg(box.right())
                                    .arg(box.bottom())
                                    .toStdString());
        }
    }
    return found;
}

void check_layout(const Sheet& sheet) {
    for (std::size_t n = 0; n < sheet.pages.size(); ++n) {
        CAPTURE(n + 1, sheet.pages[n].title.toStdString());
        CHECK(overprints(sheet.pages[n]) == std::vector<std::string>{});
        CHECK(outside(sheet.pages[n], sheet.paper) == std::vector<std::string>{});
        CHECK(texts_of(sheet.pages[n]).size() > 4);
    }
}

/// Many weights and cuts, names that are too long for any column, long notes.
Project long_project() {
    Project project = demo_project();
    CarPlan& car = project.cars[0];
    car.name = "Bittern of the Long Reed Bed beyond the Harbour Wall, Third Rebuild, Winter";
    project.title = "Harbour Hall race night, the one with the very long name that nobody ever says in full";
    for (int i = 0; i < 400; ++i)
        project.notes += "Note " + std::to_string(i) + ": the reed stands high this year. ";
    project.notes += "\nA_word_that_is_far_too_long_for_any_line_" + std::string(300, 'x');
    for (int i = 0; i < 36; ++i) {
        CutPlan cut;
        cut.name = "bore number " + std::to_string(i) + " for a small rod of lead wire, left of the middle";
        cut.is_bore = true;
        cut.from = {(6 + 4.6 * i) * 1e-3, (i % 3 - 1) * 8e-3, 16e-3};
        cut.to = cut.from - Vec3(0, 0, 9e-3);
        cut.diameter = 3e-3;
        car.body.cuts.push_back(cut);
        BallastPlan rod;
        rod.name = "lead wire " + std::string(std::size_t(i), 'i') + " cut from the long roll";
        rod.shape = PieceShape::cylinder;
        rod.size = {3e-3, 9e-3};
        rod.material = "lead";
        rod.mass = 0.7e-3;
        rod.axis = 2;
        rod.at = (cut.from + cut.to) / 2;
        rod.in = cut.name;
        rod.held = i % 2 ? "epoxy" : "";
        car.ballast.push_back(rod);
    }
    return project;
}

} // namespace

TEST_CASE("nothing is printed over anything else, nor beyond the margins", "[sheet][layout]") {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::inch_ounce}) {
        Project project = demo_project();
        project.units = units;
        for (const Paper paper : {Paper::letter, Paper::a4})
            for (std::size_t car = 0; car < project.cars.size(); ++car)
                check_layout(sheet_of(project, car, paper));
    }
}

TEST_CASE("a long project spills over to more pages cleanly", "[sheet][layout]") {
    const Project project = long_project();
    for (const Paper paper : {Paper::letter, Paper::a4}) {
        const Sheet sheet = sheet_of(project, 0, paper);
        CHECK(sheet.pages.size() > 18);
        check_layout(sheet);
        // Not a word of the notes is lost.
        QString all;
        for (const Page& page : sheet.pages)
            for (const TextInk* text : texts_of(page))
                all += text->text + QLatin1Char(' ');
        for (int i = 0; i < 400; i += 7)
            CHECK(all.simplified().contains(QStringLiteral("Note %1:").arg(i)));
        CHECK(all.count(QLatin1Char('x')) >= 300);
    }
}

TEST_CASE("a corrected print stays inside the margins", "[sheet][layout]") {
    for (const double bar : {96.0, 104.0})
        for (const Paper paper : {Paper::letter, Paper::a4})
            check_layout(sheet_of(demo_project(), 2, paper, bar));
}

TEST_CASE("the check of the layout finds what it is there for", "[sheet][layout]") {
    Sheet sheet = sheet_of(demo_project(), 0, Paper::a4);
    TextInk copy = *texts_of(sheet.pages[0])[3];
    sheet.pages[0].ink.push_back(copy);
    CHECK(overprints(sheet.pages[0]).size() == 1);
    copy.box.moveLeft(-3);
    sheet.pages[1].ink.push_back(copy);
    CHECK(outside(sheet.pages[1], Paper::a4).size() == 1);
}

TEST_CASE("labels along a strip move apart as little as they can", "[sheet][layout]") {
    std::vector<Label> labels{{10, 8}, {50, 8}, {51, 8}, {99, 8}};
    CHECK(spread(labels, 0, 100, 1) == 1);
    CHECK(labels[0].placed == Approx(10));
    CHECK(labels[2].placed - labels[1].placed == Approx(9));
    CHECK((labels[1].placed + labels[2].placed) / 2 == Approx(50.5)); // both give way alike
    CHECK(labels[3].placed == Approx(96));                            // its end at the strip's end
    std::vector<Label> many(30, Label{50, 8});
    CHECK(spread(many, 0, 100, 1) == 3); // 30 labels of 9 mm want 270 mm
    for (const Label& each : many) {
        CHECK(each.placed - 4 >= -1e-9);
        CHECK(each.placed + 4 <= 100 + 1e-9);
    }
}

TEST_CASE("tiles cover the whole with their overlap", "[sheet][layout]") {
    CHECK(split_into_tiles(-3, 181, 186).size() == 1);
    const auto tiles = split_into_tiles(0, 460, 186);
    CHECK(tiles.front().from == 0);
    CHECK(tiles.back().to == 460);
    const auto covers = [](const std::vector<Tile>& all) {
        for (std::size_t i = 0; i < all.size(); ++i) {
            CHECK(all[i].to - all[i].from <= 186 + 1e-9);
            if (i > 0) CHECK(all[i - 1].to - all[i].from == Approx(tile_overlap));
        }
    };
    covers(tiles);
    // With a place to keep whole anywhere on it, no more tiles, and none of their overlaps lies over it where
    // 26 mm to spare in each leave a choice.
    for (double place = 0; place <= 460; place += 0.5) {
        CAPTURE(place);
        const auto clear = split_into_tiles(0, 460, 186, {place});
        CHECK(clear.size() == tiles.size());
        CHECK(clear.front().from == 0);
        CHECK(clear.back().to == 460);
        covers(clear);
        for (std::size_t i = 1; i < clear.size(); ++i)
            CHECK_FALSE((place > clear[i].from && place < clear[i - 1].to));
    }
    // No room to choose: it is covered all the same.
    const auto tight = split_into_tiles(0, 3 * 186 - 2 * tile_overlap, 186, {170, 340});
    CHECK(tight.size() == 3);
    covers(tight);
}

TEST_CASE("a long car's axles are whole on a page and named once for each template", "[sheet][layout]") {
    for (const double width : {0.044, 0.23})
        for (const double length : {0.3, 0.4, 0.46, 0.6})
            for (const Paper paper : {Paper::letter, Paper::a4}) {
                const Project project = long_car(length, width, 0.032);
                const Sheet sheet = sheet_of(project, 2, paper);
                CAPTURE(length, width, to_string(paper));
                check_layout(sheet);
                int named = 0, whole = 0;
                std::size_t rows = 0; // of the top template, which a wide block takes several of
                std::set<double> starts;
                for (const Page& page : sheet.pages) {
                    for (const TextInk* text : texts_of(page))
                        named += text->text.startsWith(QStringLiteral("front axle, "));
                    for (const PlacedTemplate& placed : page.templates) {
                        const double x = placed.origin.x() + project.cars[2].axles.front_x * 1e3;
                        const QRectF& window = placed.window;
                        whole += placed.view == ui::View::side && x > window.left() + 4.9 &&
                                 x < window.right() - 4.9;
                        if (placed.view == ui::View::top)
                            starts.insert(std::round(placed.window.top() - placed.origin.y()));
                    }
                }
                rows = starts.size();
                CHECK(named == 1 + int(rows));
                CHECK(whole >= 1);
            }
}

TEST_CASE("no page of a drawing is left with a line or two", "[sheet][layout]") {
    // Sections whose drawing can give way; a wide block fills their page.
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::inch_ounce})
        for (const double width : {0.044, 0.12, 0.2, 0.23}) {
            Project project = long_car(0.46, width, 0.06);
            project.units = units;
            const Sheet sheet = sheet_of(project, 2, Paper::a4);
            for (const char* title : {"Build sheet", "Drill and pocket map", "Ballast map"})
                for (std::size_t n = 1; n < sheet.pages.size(); ++n) {
                    const Page &page = sheet.pages[n], &before = sheet.pages[n - 1];
                    if (page.title != QLatin1String(title) || before.title != page.title) continue;
                    CAPTURE(width, title, n + 1);
                    CHECK(texts_of(page).size() > 14);
                }
        }
}

TEST_CASE("lines break at words, and inside a word only where it fills a line", "[sheet][layout]") {
    const TextStyle style;
    const QString text = QStringLiteral("saw outside of the line and then sand down to it");
    const QStringList lines = wrapped(text, style, 30);
    CHECK(lines.join(QLatin1Char(' ')) == text);
    CHECK(lines.size() > 1);
    for (const QString& line : lines)
        CHECK(width_of(line, style) <= 30);
    const QStringList broken = wrapped(QString(80, QLatin1Char('m')), style, 30);
    CHECK(broken.join(QString()) == QString(80, QLatin1Char('m')));
    CHECK(wrapped({}, style, 30).size() == 1);
    CHECK(elided(text, style, 20).endsWith(QStringLiteral("…")));
    CHECK(width_of(elided(text, style, 20), style) <= 20);
}
