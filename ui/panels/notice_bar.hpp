#pragma once

#include <QFrame>
#include <QString>

#include <deque>
#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;

namespace rampwright::ui {

/// One line at the top of the sheet that tells something and offers answers, without stopping the work.
/// Notices wait in a row; the first is shown.
class NoticeBar : public QFrame {
    Q_OBJECT

public:
    struct Answer {
        QString text;
        std::function<void()> act; ///< may be empty: the notice just goes
    };

    explicit NoticeBar(QWidget* parent = nullptr);
    /// Shows a notice, in the place of one with the same name that has not been answered.
    void tell(const QString& name, const QString& text, std::vector<Answer> answers);
    void drop(const QString& name);

private:
    struct Notice {
        QString name, text;
        std::vector<Answer> answers;
    };
    void show_first();

    std::deque<Notice> notices_;
    QLabel* text_;
    QHBoxLayout* buttons_;
};

} // namespace rampwright::ui
