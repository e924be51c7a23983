#include "window/help_window.hpp"

#include <QAbstractTextDocumentLayout>
#include <QAction>
#include <QApplication>
#include <QDesktopServices>
#include <QDialogButtonBox>
#include <QFile>
#include <QHeaderView>
#include <QMenu>
#include <QMenuBar>
#include <QPointer>
#include <QScrollBar>
#include <QTableWidget>
#include <QTextBlock>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace rampwright::ui {

HelpWindow::HelpWindow(QWidget* parent) : QDialog(parent), browser_(new QTextBrowser(this)) {
    setObjectName(QStringLiteral("help"));
    setWindowTitle(tr("Help – Rampwright"));
    setAttribute(Qt::WA_DeleteOnClose);
    browser_->setObjectName(QStringLiteral("help.page"));
    browser_->setAccessibleName(tr("Help page"));
    browser_->setOpenLinks(false);
    connect(browser_, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
        if (link.isRelative())
            go_to(link.path().section(QLatin1Char('.'), 0, 0), {});
        else
            QDesktopServices::openUrl(link);
    });
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(browser_);
    resize(720, 640);
}

HelpWindow& HelpWindow::show_page(const QString& page, const QString& heading) {
    static QPointer<HelpWindow> open;
    if (!open) open = new HelpWindow(QApplication::activeWindow());
    open->show();
    open->raise();
    open->activateWindow();
    open->go_to(page, heading);
    return *open;
}

void HelpWindow::go_to(const QString& page, const QString& heading) {
    QFile file(QStringLiteral(":/help/%1.md").arg(page));
    if (!file.open(QIODevice::ReadOnly)) return;
    browser_->setMarkdown(QString::fromUtf8(file.readAll()));
    browser_->document()->setDocumentMargin(18);
    browser_->verticalScrollBar()->setValue(0);
    if (heading.isEmpty()) return;
    for (QTextBlock block = browser_->document()->begin(); block.isValid(); block = block.next())
        if (block.blockFormat().headingLevel() > 0 && block.text().startsWith(heading, Qt::CaseInsensitive)) {
            const QRectF place = browser_->document()->documentLayout()->blockBoundingRect(block);
            browser_->verticalScrollBar()->setValue(static_cast<int>(place.top()));
            browser_->setTextCursor(QTextCursor(block));
            return;
        }
}

namespace {

struct ShortcutText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Shortcuts)
};

} // namespace

void show_shortcuts(QWidget& window) {
    std::vector<std::pair<QString, QString>> rows;
    for (const QAction* action : window.findChildren<QAction*>()) {
        QStringList keys;
        for (const QKeySequence& sequence : action->shortcuts())
            keys << sequence.toString(QKeySequence::NativeText);
        if (!keys.isEmpty())
            rows.emplace_back(action->text().remove(QLatin1Char('&')), keys.join(QStringLiteral(", ")));
    }
    rows.emplace_back(ShortcutText::tr("Move what is chosen on the drawing"),
                      ShortcutText::tr("Arrow keys; with Shift ten steps, with Ctrl a fifth"));
    rows.emplace_back(ShortcutText::tr("Drag without the snap"), ShortcutText::tr("Hold Ctrl"));
    rows.emplace_back(ShortcutText::tr("Drag straight"), ShortcutText::tr("Hold Shift"));
    rows.emplace_back(ShortcutText::tr("Put back what is being dragged"), ShortcutText::tr("Esc"));

    auto* dialog = new QDialog(&window);
    dialog->setObjectName(QStringLiteral("shortcuts"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(ShortcutText::tr("Keyboard Shortcuts"));
    auto* table = new QTableWidget(static_cast<int>(rows.size()), 2, dialog);
    table->setAccessibleName(ShortcutText::tr("Keyboard shortcuts"));
    table->setHorizontalHeaderLabels({ShortcutText::tr("What"), ShortcutText::tr("Keys")});
    table->verticalHeader()->hide();
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->horizontalHeader()->setStretchLastSection(true);
    for (int row = 0; row < table->rowCount(); ++row) {
        const auto& [what, keys] = rows[static_cast<std::size_t>(row)];
        table->setItem(row, 0, new QTableWidgetItem(what));
        table->setItem(row, 1, new QTableWidgetItem(keys));
    }
    table->resizeColumnToContents(0);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, dialog);
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::reject);
    auto* column = new QVBoxLayout(dialog);
    column->addWidget(table);
    column->addWidget(buttons);
    dialog->resize(560, 520);
    dialog->show();
}

} // namespace rampwright::ui
