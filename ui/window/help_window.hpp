#pragma once

#include <QDialog>
#include <QString>

class QTextBrowser;

namespace rampwright::ui {

/// The pages of the documentation, as they come with the program.
class HelpWindow : public QDialog {
    Q_OBJECT

public:
    /// Shows a page ("user-guide", "model"), scrolled to the first heading that begins with `heading`, in
    /// the one help window of the program.
    static HelpWindow& show_page(const QString& page, const QString& heading = {});

private:
    explicit HelpWindow(QWidget* parent);
    void go_to(const QString& page, const QString& heading);

    QTextBrowser* browser_;
};

/// Every menu command with its keys, and the keys of the drawing.
void show_shortcuts(QWidget& window);

} // namespace rampwright::ui
