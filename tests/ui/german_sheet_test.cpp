#include "sheet/paint.hpp"
#include "sheet/sheet.hpp"
#include "support/bench.hpp"
#include "support/languages.hpp"

#include <QFile>
#include <QRegularExpression>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::paper;
using namespace rampwright::ui::testing;

namespace {

const QDate some_day(2026, 2, 10);

std::vector<const TextInk*> texts_of(const Page& page) {
    std::vector<const TextInk*> texts;
    for (const Ink& ink : page.ink)
        if (const auto* text = std::get_if<TextInk>(&ink)) texts.push_back(text);
    return texts;
}

/// Texts of a page that lie on one another, leave the printable part, or were cut off.
QStringList faults_of(const Page& page, Paper paper) {
    constexpr double hair = 0.02; // mm
    const QRectF room = printable(paper).adjusted(-0.01, -0.01, 0.01, 0.01);
    QStringList faults;
    const auto texts = texts_of(page);
    for (std::size_t i = 0; i < texts.size(); ++i) {
        if (!room.contains(texts[i]->box)) faults << QStringLiteral("outside: ") + texts[i]->text;
        if (texts[i]->text.endsWith(QChar(0x2026))) faults << QStringLiteral("cut off: ") + texts[i]->text;
        for (std::size_t j = i + 1; j < texts.size(); ++j) {
            const QRectF common = texts[i]->box & texts[j]->box;
            if (common.width() > hair && common.height() > hair)
                faults << texts[i]->text + QStringLiteral(" | ") + texts[j]->text;
        }
    }
    return faults;
}

} // namespace

TEST_CASE("The sheet in German: nothing over anything else, nothing cut off, no English",
          "[language][sheet]") {
    QTranslator german;
    REQUIRE(german.load(QStringLiteral(":/languages/rampwright_de.qm")));
    const Spoken spoken(german);
    Project project = read_project(load_document(demo_path));
    // What the demo's author wrote stays English.
    project.notes.clear();
    project.rules.source.clear();
    bool long_words = false;
    const QStringList heads{QStringLiteral("Bohrung,"), QStringLiteral("gefunden"), QStringLiteral("Drin")};
    // English words that are none in German; names and notes of the demo are English, so no sentence of them.
    static const QRegularExpression english(
        QStringLiteral("\\b(the|with|behind|ahead|wheel|wheels|axle|axles|than|cannot|should)\\b"));
    for (std::size_t car = 0; car < project.cars.size(); ++car) {
        const Figures figures = compute_figures(project, car);
        for (const Paper paper : {Paper::a4, Paper::letter}) {
            const Sheet sheet =
                make_sheet({project, car, figures, QStringLiteral("a.json"), some_day, paper});
            const QString folder = qEnvironmentVariable("RAMPWRIGHT_SHEETS");
            if (!folder.isEmpty()) {
                QFile file(QStringLiteral("%1/%2-%3.pdf")
                               .arg(folder)
                               .arg(car)
                               .arg(paper == Paper::a4 ? "a4" : "letter"));
                REQUIRE(file.open(QIODevice::WriteOnly));
                file.write(to_pdf(sheet, some_day));
            }
            QStringList words;
            for (const Page& page : sheet.pages)
                for (const TextInk* text : texts_of(page))
                    words += text->text.split(QLatin1Char(' '));
            for (const QString& head : heads)
                CHECK(words.contains(head));
            for (const QString& word : words)
                if (word.startsWith(QStringLiteral("Ständerbohr"))) {
                    CHECK(word.startsWith(QStringLiteral("Ständerbohrmaschine")));
                    long_words = true;
                }
            for (std::size_t n = 0; n < sheet.pages.size(); ++n) {
                CAPTURE(project.cars[car].name, n + 1, sheet.pages[n].title.toStdString());
                CHECK(faults_of(sheet.pages[n], paper).join(QLatin1Char('\n')).toStdString() == "");
                for (const TextInk* text : texts_of(sheet.pages[n])) {
                    INFO(text->text.toStdString());
                    CHECK_FALSE(english.match(text->text).hasMatch());
                }
            }
        }
    }
    CHECK(long_words);
}
