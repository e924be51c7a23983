#include "sheet/pdf_tools.hpp"
#include "sheet/share_pages.hpp"
#include "sheet/table.hpp"
#include "support/demo.hpp"

#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::test;
using namespace rampwright::ui::paper;

using Counts = std::vector<std::size_t>;

TEST_CASE("what goes on to another page is a sensible share", "[sheet][layout]") {
    // By hand, pages of 100: eleven of 10 fill one and leave one; shared, six and five.
    const std::vector<double> eleven(11, 10.0);
    CHECK(fill_pages(eleven, 100, 100) == Counts{10, 1});
    CHECK(share_pages(eleven, 100, 100) == Counts{6, 5});
    // Half a page over: left as it is.
    CHECK(share_pages(std::vector<double>(15, 10.0), 100, 100) == Counts{10, 5});
    CHECK(share_pages(std::vector<double>(9, 10.0), 100, 100) == Counts{9});
    // The first page has less room; 21 of 10 on 80, 100, 100.
    CHECK(fill_pages(std::vector<double>(21, 10.0), 80, 100) == Counts{8, 10, 3});
    CHECK(share_pages(std::vector<double>(21, 10.0), 80, 100) == Counts{6, 8, 7});
    // Higher than a page: alone on one.
    CHECK(fill_pages({10, 150, 10}, 100, 100) == Counts{1, 1, 1});
    CHECK(share_pages({}, 100, 100).empty());
}

TEST_CASE("a continuation of the steps holds at least a quarter of a page", "[sheet][layout]") {
    for (const Paper paper : {Paper::letter, Paper::a4})
        for (std::size_t car = 0; car < 3; ++car) {
            const Sheet sheet = sheet_of(demo_project(), car, paper);
            const QRectF room = printable(paper);
            int continued = 0;
            for (std::size_t n = 0; n < sheet.pages.size(); ++n) {
                if (sheet.pages[n].title != QStringLiteral("Steps")) continue;
                double low = room.top();
                for (const Ink& ink : sheet.pages[n].ink)
                    if (const auto* text = std::get_if<TextInk>(&ink);
                        text && text->box.bottom() < room.bottom() - 8)
                        low = std::max(low, text->box.bottom());
                CAPTURE(car, n + 1, low);
                CHECK(low > room.top() + 15 + 0.25 * room.height());
                ++continued;
            }
            CHECK(continued >= 1);
        }
}

TEST_CASE("a column is as wide as its longest word", "[sheet][layout]") {
    Sheet sheet;
    Flow flow(sheet, {});
    flow.start_page(QStringLiteral("T"));
    Table table;
    table.columns = {{QStringLiteral("Gewicht und Namen"), -1},
                     {QStringLiteral("Bohrung, mm"), 6, Align::right},
                     {QStringLiteral("Ausgewogenes"), -0.01},
                     {QStringLiteral("Drin"), 3, Align::middle}};
    table.rows.push_back({QStringLiteral("tungsten"), QStringLiteral("123456.7"),
                          QStringLiteral("langes Gleitstueck"), Cell::Kind::box});
    put_table(flow, table);
    QStringList words;
    for (const Ink& ink : sheet.pages[0].ink)
        if (const auto* text = std::get_if<TextInk>(&ink)) {
            words += text->text.split(QLatin1Char(' '));
            CHECK(text->box.right() <= flow.body().right() + 0.01);
        }
    for (const char* whole : {"Bohrung,", "Ausgewogenes", "Drin", "123456.7", "Gleitstueck"})
        CHECK(words.contains(QLatin1String(whole)));
}
