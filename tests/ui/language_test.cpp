#include "support/bench.hpp"
#include "support/languages.hpp"
#include "support/letters.hpp"
#include "window/language.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/results/figures.hpp>

#include <QAction>
#include <QDir>
#include <QFile>
#include <QMenu>
#include <QMenuBar>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QStatusBar>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

const QString german_file = QStringLiteral(RAMPWRIGHT_SOURCE_DIR "/ui/languages/rampwright_de.ts");

/// "%1", "%L2", "%n", "{name}", "[*]", line breaks and tags, sorted: what a translation must keep.
QStringList kept_parts(const QString& text) {
    static const QRegularExpression part(
        QStringLiteral("%L?\\d|%n|\\{[a-z_0-9*]+\\}|\\[\\*\\]|\\n|</?[a-z]+>"));
    QStringList parts;
    for (auto match = part.globalMatch(text); match.hasNext();)
        parts << match.next().captured();
    parts.sort();
    return parts;
}

/// The program's German, as the program itself carries it.
struct German : QTranslator {
    German() { REQUIRE(load(QStringLiteral(":/languages/rampwright_de.qm"))); }
};

std::string list_of(const QStringList& faults) {
    return faults.join(QLatin1Char('\n')).toStdString();
}

} // namespace

TEST_CASE("The files of the languages hold exactly the sentences of the sources", "[language]") {
    QTemporaryDir folder;
    const QString copy = folder.filePath(QStringLiteral("rampwright_de.ts"));
    REQUIRE(QFile::copy(german_file, copy));
    QProcess update;
    update.setProcessChannelMode(QProcess::MergedChannels);
    update.start(QStringLiteral(RAMPWRIGHT_CMAKE),
                 {QStringLiteral("-DSOURCE=" RAMPWRIGHT_SOURCE_DIR),
                  QStringLiteral("-DLIST=" RAMPWRIGHT_TEXTS), QStringLiteral("-DLUPDATE=" RAMPWRIGHT_LUPDATE),
                  QStringLiteral("-DWORK=") + folder.path(), QStringLiteral("-DFILES=") + copy,
                  QStringLiteral("-P"), QStringLiteral(RAMPWRIGHT_SOURCE_DIR "/.cmake/languages.cmake")});
    REQUIRE(update.waitForFinished(120000));
    INFO(update.readAll().toStdString());
    REQUIRE(update.exitCode() == 0);
    const auto names = [](const QString& file) {
        QSet<QString> set;
        for (const Message& each : read_language(file))
            set.insert(each.context + QStringLiteral(": ") + each.source);
        return set;
    };
    const QSet<QString> in_sources = names(copy), in_file = names(german_file);
    CHECK(in_sources.size() > 1500);
    const QSet<QString> missing = in_sources - in_file, obsolete = in_file - in_sources;
    INFO("build the target languages, then translate:\n" << list_of(missing.values()));
    CHECK(missing.isEmpty());
    INFO("no longer said:\n" << list_of(obsolete.values()));
    CHECK(obsolete.isEmpty());
}

TEST_CASE("Every sentence is there in German, with everything that is put into it", "[language]") {
    QStringList faults;
    for (const Message& each : read_language(german_file))
        for (const QString& german : each.translations) {
            const QString name = each.context + QStringLiteral(": ") + each.source;
            if (!each.finished || german.isEmpty()) {
                faults << QStringLiteral("not translated: ") + name;
                continue;
            }
            if (kept_parts(german) != kept_parts(each.source))
                faults << QStringLiteral("parts differ: ") + name;
            if (mnemonic(german).isEmpty() != mnemonic(each.source).isEmpty())
                faults << QStringLiteral("a letter for the keyboard: ") + name;
            const auto outer_blanks = [](const QString& text) {
                return std::pair(text.startsWith(QLatin1Char(' ')), text.endsWith(QLatin1Char(' ')));
            };
            if (outer_blanks(german) != outer_blanks(each.source))
                faults << QStringLiteral("blanks: ") + name;
        }
    INFO(list_of(faults));
    CHECK(faults.isEmpty());
}

TEST_CASE("German is spoken by window and core, and the file stays English", "[language]") {
    const Document plain = load_document(demo_path);
    const Document english = with_figures(plain);
    German german;
    const Spoken spoken(german);
    Workbench bench;
    CHECK(bench.window->menuBar()->actions().front()->text() == QStringLiteral("&Datei"));
    CHECK(Core::tr("passes") == "besteht");
    CHECK(with_figures(plain).root == english.root);
}

TEST_CASE("In each German menu every letter opens one line", "[language]") {
    German german;
    const Spoken spoken(german);
    Workbench bench;
    const QStringList repeated = repeated_letters_of_menus(*bench.window, *bench.window->menuBar());
    INFO(list_of(repeated));
    CHECK(repeated.isEmpty());
}

TEST_CASE("The language is chosen in the View menu and holds from the next start", "[language]") {
    QMenu view;
    QString said;
    add_language_menu(view, true, [&](const QString& text) { said = text; });
    auto* german = view.findChild<QAction*>(QStringLiteral("language.de"));
    REQUIRE(german);
    CHECK_FALSE(german->isChecked());
    german->trigger();
    CHECK(chosen_language() == QStringLiteral("de"));
    CHECK_FALSE(said.isEmpty());
    view.findChild<QAction*>(QStringLiteral("language."))->trigger();
    CHECK(chosen_language().isEmpty());
}
