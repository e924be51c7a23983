#pragma once

#include <QList>
#include <QStringList>

class QAction;
class QMenuBar;
class QWidget;

/// The letters underlined in texts, by which keys choose them.
namespace rampwright::ui::testing {

/// The keys that choose a text; empty where no letter is underlined. "&&" is a real ampersand.
QString mnemonic(const QString& text);

/// Which texts of one place share a letter, a line for each letter: "where: Alt+S: &Save | &Shape".
QStringList repeated_letters(const QString& where, const QStringList& texts);

/// The texts of a menu's or a menu bar's lines.
QStringList texts_of(const QList<QAction*>& lines);

/// Which lines share a letter with another of their menu: in the menu bar, and in every menu of a window.
QStringList repeated_letters_of_menus(const QWidget& window, const QMenuBar& bar);

} // namespace rampwright::ui::testing
