#include "window/language.hpp"

#include <rampwright/core/say.hpp>

#include <QActionGroup>
#include <QApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QMenu>
#include <QSettings>
#include <QTranslator>

#include <array>

namespace rampwright::ui {
namespace {

struct LanguageText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Language)
};

struct Language {
    const char* code;
    const char* own_name; ///< the same in every language, so that whoever is lost finds home
};

constexpr std::array languages{Language{"en", "English"}, Language{"de", "Deutsch"}};

const QString& setting() {
    static const QString key = QStringLiteral("window/language");
    return key;
}

bool is_known(const QString& code) {
    return std::any_of(languages.begin(), languages.end(),
                       [&](const Language& each) { return code == QLatin1String(each.code); });
}

/// The first of the system's languages that is there.
QString system_language() {
    for (const QString& name : QLocale::system().uiLanguages())
        if (const QString code = name.section(QLatin1Char('-'), 0, 0); is_known(code)) return code;
    return QStringLiteral("en");
}

std::string translate_core(std::string_view english) {
    const QByteArray text(english.data(), static_cast<qsizetype>(english.size()));
    return QCoreApplication::translate("Core", text.constData()).toStdString();
}

} // namespace

QString chosen_language() {
    const QString code = QSettings().value(setting()).toString();
    return is_known(code) ? code : QString();
}

void load_language(const QString& chosen) {
    const QString code = is_known(chosen) ? chosen : system_language();
    if (code == QStringLiteral("en")) return;
    auto* ours = new QTranslator(qApp);
    if (!ours->load(QStringLiteral(":/languages/rampwright_%1.qm").arg(code))) return;
    // The toolkit's own buttons, where the system has them in this language.
    auto* toolkit = new QTranslator(qApp);
    if (toolkit->load(QStringLiteral("qtbase_%1").arg(code),
                      QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(toolkit);
    QCoreApplication::installTranslator(ours);
    install_translation(translate_core);
}

void add_language_menu(QMenu& view, bool keep_settings, std::function<void(const QString&)> say) {
    QMenu* menu = view.addMenu(LanguageText::tr("La&nguage"));
    auto* group = new QActionGroup(menu);
    const QString now = keep_settings ? chosen_language() : QString();
    const auto add = [&](const QString& text, const QString& code) {
        QAction* action = menu->addAction(text, menu, [code, keep_settings, say] {
            if (keep_settings) QSettings().setValue(setting(), code);
            say(LanguageText::tr("Rampwright speaks the new language from its next start."));
        });
        action->setObjectName(QStringLiteral("language.%1").arg(code));
        action->setCheckable(true);
        action->setChecked(code == now);
        group->addAction(action);
    };
    add(LanguageText::tr("As the &System"), QString());
    for (const Language& each : languages)
        add(QString::fromLatin1(each.own_name), QString::fromLatin1(each.code));
}

} // namespace rampwright::ui
