#pragma once

#include <QWidget>

#include <functional>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;

namespace rampwright::ui {

class PaperDesk;
class PaperView;

/// What to do with the sheet: paper, the printer's scale, the race's hour, how weights are held; save, print,
/// send.
class PaperSlip : public QWidget {
    Q_OBJECT

public:
    PaperSlip(PaperDesk& desk, PaperView& view, QWidget* parent = nullptr);

private:
    void build_pages();
    void build_printing();
    void build_race();
    void build_holdings();
    QWidget* titled(const QString& title);
    void refresh();
    void refresh_holdings();
    void show_page_count();
    void take_bar();
    void take_race(QLineEdit& field, const char* pointer, const QString& name);
    /// Writes a file of that name, if there is one, and says how it went.
    void save(const QString& name, const std::function<void()>& write);
    void save_pdf();
    void save_picture();
    void print();
    void say(const QString& text);

    PaperDesk& desk_;
    PaperView& view_;
    QLabel *count_ = nullptr, *said_ = nullptr;
    QComboBox* paper_ = nullptr;
    QLineEdit *bar_ = nullptr, *race_date_ = nullptr, *race_hour_ = nullptr;
    QFormLayout* held_ = nullptr;
};

} // namespace rampwright::ui
