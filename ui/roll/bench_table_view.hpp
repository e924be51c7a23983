#pragma once

#include "session/session.hpp"

#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QWidget>

namespace rampwright::ui {

/// A bench's table of measured things, one a row: typed cell by cell, taken from the clipboard or a file,
/// added to and taken from. What stands in a row, and what follows from it, is the bench's own.
class BenchTableView : public QWidget {
    Q_OBJECT

protected:
    /// What this bench calls things.
    struct Words {
        QString key;              ///< object names begin with it: "axles"
        QString table_key;        ///< the table's own object name
        QString table, table_why; ///< for screen readers; how to work it
        QStringList headings;
        QString paste_why, open_title, add, remove;
    };
    BenchTableView(Session& session, const Words& words, QWidget* parent);

    Session& session() const { return session_; }
    QTableWidget& table() const { return *table_; }
    /// The view's last row, for what follows from the table.
    void put_below(QWidget* widget);
    void put_below(QLayout* layout);
    /// Fills the table, and says what follows from it.
    virtual void refresh() = 0;
    virtual std::size_t count() const = 0;
    /// Takes the rows of a table written as text. @return what was taken and what was left out.
    /// @throws Problem.
    virtual QStringList take(const std::string& text) = 0;
    /// Sets the value that a typed cell stands for. @throws EntryError, Problem.
    virtual void set_cell(std::size_t place, const QTableWidgetItem& item) = 0;
    virtual void add_row() = 0;
    virtual void remove_row(std::size_t place) = 0;

private:
    void take_table(const QString& text);
    void edit_cell(int row, int column);

    Session& session_;
    QTableWidget* table_;
    QLabel* trouble_;
    QPushButton* remove_;
};

} // namespace rampwright::ui
