#include "support/bench.hpp"
#include "support/clipped.hpp"
#include "support/languages.hpp"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QFile>
#include <QGroupBox>
#include <QHeaderView>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QRegularExpression>
#include <QSet>
#include <QStatusBar>
#include <QTabBar>
#include <QTableWidget>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

/// Words that are the same in every language: the person's own words out of the file, units, keys, proper
/// names.
class OwnWords {
public:
    OwnWords() {
        QFile file(QString::fromStdString(demo_path));
        REQUIRE(file.open(QIODevice::ReadOnly));
        add(QJsonDocument::fromJson(file.readAll()).object());
        for (const char* word :
             {"rampwright", "harbour", "hall", "ramp", "json",        // the program and the file
              "ctrl", "shift", "esc", "del", "ins", "pgup", "pgdown", // keys, as the toolkit
                                                                      // writes them
              "return", "tab", "english", "deutsch",                  // languages in their own names
              "deg", "kg", "mm", "ms", "rpm", "rad", "min", "fps",    // units
              "inf", "nan", "pdf", "png", "svg", "csv", "letter"})
            words_.insert(QLatin1String(word));
    }
    bool has(const QString& word) const { return words_.contains(word.toLower()); }

private:
    void add(const QJsonValue& value) {
        static const QRegularExpression letters(QStringLiteral("\\p{L}+"));
        if (value.isString())
            for (auto match = letters.globalMatch(value.toString()); match.hasNext();)
                words_.insert(match.next().captured().toLower());
        for (const QJsonValue& each : value.toArray())
            add(each);
        const QJsonObject object = value.toObject();
        for (const QString& key : object.keys())
            if (key != QLatin1String("figures")) add(object[key]);
    }
    QSet<QString> words_;
};

/// What stands outside of all brackets.
QString outside(const QString& text) {
    QString rest;
    int depth = 0;
    static const QRegularExpression tag(QStringLiteral("<[^>]*>")); // of a link in a sentence
    QString plain = text;
    plain.remove(tag);
    for (const QChar c : plain) {
        if (c == QLatin1Char('[')) ++depth;
        if (depth == 0) rest += c;
        if (c == QLatin1Char(']')) --depth;
    }
    return rest;
}

/// Everything a person reads or hears of a window, with who says it.
class Texts {
public:
    explicit Texts(const QWidget& window) {
        for (const QWidget* widget : window.findChildren<QWidget*>())
            if (widget->isVisible()) read(*widget);
        for (const QAction* action : window.findChildren<QAction*>())
            if (!action->isSeparator() && action->isVisible()) say(QStringLiteral("action"), action->text());
        for (const QMenu* menu : window.findChildren<QMenu*>())
            say(QStringLiteral("menu"), menu->title());
    }
    const QSet<QString>& all() const { return texts_; }

private:
    void say(const QString& who, const QString& text) {
        if (!text.isEmpty()) texts_.insert(who + QStringLiteral(": ") + text);
    }
    void read(const QWidget& widget) {
        // A row of tabs too long for its place has the toolkit's own arrows, in the toolkit's own words.
        if (qobject_cast<const QTabBar*>(widget.parentWidget())) return;
        const QString who = QLatin1String(widget.metaObject()->className()) + QStringLiteral(" \"") +
                            widget.objectName() + QLatin1Char('"');
        say(who + QStringLiteral(" tool tip"), widget.toolTip());
        say(who + QStringLiteral(" status tip"), widget.statusTip());
        say(who + QStringLiteral(" accessible name"), widget.accessibleName());
        say(who + QStringLiteral(" accessible description"), widget.accessibleDescription());
        say(who + QStringLiteral(" what is this"), widget.whatsThis());
        if (const auto* label = qobject_cast<const QLabel*>(&widget)) say(who, label->text());
        if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) say(who, button->text());
        if (const auto* group = qobject_cast<const QGroupBox*>(&widget)) say(who, group->title());
        if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) say(who, line->placeholderText());
        if (const auto* box = qobject_cast<const QComboBox*>(&widget))
            for (int i = 0; i < box->count(); ++i)
                say(who, box->itemText(i));
        if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
            for (int i = 0; i < tabs->count(); ++i)
                say(who, tabs->tabText(i));
        if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget); view && view->model()) {
            const QAbstractItemModel& model = *view->model();
            for (int c = 0; c < model.columnCount(); ++c) {
                say(who + QStringLiteral(" heading"), model.headerData(c, Qt::Horizontal).toString());
                for (int r = 0; r < model.rowCount(); ++r)
                    say(who, model.index(r, c).data().toString());
            }
        }
    }
    QSet<QString> texts_;
};

PseudoLanguage pseudo() {
    return PseudoLanguage(
        read_language(QStringLiteral(RAMPWRIGHT_SOURCE_DIR "/ui/languages/rampwright_de.ts")));
}

} // namespace

TEST_CASE("In a language that nobody speaks, no English is left on any screen", "[language][pseudo]") {
    PseudoLanguage language = pseudo();
    const Spoken spoken(language);
    const OwnWords own;
    Workbench bench;
    QSet<QString> faults;
    std::size_t read = 0;
    static const QRegularExpression word(QStringLiteral("\\p{L}{3,}"));
    each_screen(bench, [&](const Screen&) {
        const Texts texts(*bench.window);
        for (const QString& text : texts.all()) {
            ++read;
            const QString rest = outside(text.mid(text.indexOf(QStringLiteral(": ")) + 2));
            for (auto match = word.globalMatch(rest); match.hasNext();)
                if (const QString left = match.next().captured(); !own.has(left)) faults.insert(text);
        }
    });
    CHECK(read > 1000);
    INFO(QStringList(faults.values()).join(QLatin1Char('\n')).toStdString());
    CHECK(faults.isEmpty());
}

TEST_CASE("Sentences a third longer are not cut off", "[language][pseudo][layout]") {
    PseudoLanguage language = pseudo();
    const Spoken spoken(language);
    const QSize size = GENERATE(QSize(1280, 720), QSize(1366, 768));
    Workbench bench(demo_path, size);
    for (const QWidget* widget : bench.window->findChildren<QWidget*>())
        if (widget->minimumSizeHint().width() > 900)
            UNSCOPED_INFO(widget->metaObject()->className()
                          << " " << widget->objectName().toStdString() << " needs "
                          << widget->minimumSizeHint().width());
    CHECK(bench.window->minimumSizeHint().width() <= size.width());
    QStringList faults;
    each_screen(bench, [&](const Screen& screen) {
        for (const std::string& each : clipped(*bench.window))
            faults << QString::fromStdString(screen.name() + ": " + each);
    });
    faults.removeDuplicates();
    INFO(faults.join(QLatin1Char('\n')).toStdString());
    CHECK(faults.isEmpty());
}
