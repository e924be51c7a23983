#include "support/letters.hpp"

#include <QAction>
#include <QKeySequence>
#include <QMap>
#include <QMenu>
#include <QMenuBar>

namespace rampwright::ui::testing {

QString mnemonic(const QString& text) {
    const QKeySequence keys = QKeySequence::mnemonic(text);
    return keys.isEmpty() ? QString() : keys.toString();
}

QStringList repeated_letters(const QString& where, const QStringList& texts) {
    QMap<QString, QStringList> by_keys;
    for (const QString& text : texts)
        if (const QString keys = mnemonic(text); !keys.isEmpty()) by_keys[keys] << text;
    QStringList repeated;
    for (auto each = by_keys.cbegin(); each != by_keys.cend(); ++each)
        if (each.value().size() > 1)
            repeated << QStringLiteral("%1: %2: %3")
                            .arg(where, each.key(), each.value().join(QStringLiteral(" | ")));
    return repeated;
}

QStringList texts_of(const QList<QAction*>& lines) {
    QStringList texts;
    for (const QAction* line : lines)
        texts << line->text();
    return texts;
}

QStringList repeated_letters_of_menus(const QWidget& window, const QMenuBar& bar) {
    QStringList repeated = repeated_letters(QStringLiteral("menu bar"), texts_of(bar.actions()));
    for (const QMenu* menu : window.findChildren<QMenu*>())
        repeated << repeated_letters(menu->title(), texts_of(menu->actions()));
    return repeated;
}

} // namespace rampwright::ui::testing
