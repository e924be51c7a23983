#pragma once

#include "session/session.hpp"
#include "trace/svg_file.hpp"
#include "trace/take_in.hpp"

#include <QDialog>

#include <memory>
#include <optional>

class QCheckBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace rampwright::ui {

class OutlinePreview;

/// What an SVG file holds, and the one line of it that becomes the outline: chosen, its size checked, turned
/// nose to the right. The file is read, and the line followed, on another thread.
class OutlineDialog : public QDialog {
    Q_OBJECT

public:
    OutlineDialog(Session& session, const QString& path, bool plan, QWidget* parent = nullptr);
    int points_taken() const { return static_cast<int>(points_.size()); }

private:
    struct Read {
        std::shared_ptr<const DrawnFile> file;
        QString fault;
    };
    struct Followed {
        std::vector<PlanPoint> points;
        QString fault;
    };
    void show_file(const Read& read);
    const DrawnShape* chosen() const;
    void show_size();
    void type_length();
    void type_factor();
    void follow();
    void take();
    void say(const QString& fault);
    QString size_text(const DrawnShape& shape, double factor) const;

    Session& session_;
    bool plan_;
    std::shared_ptr<const DrawnFile> file_;
    double factor_ = 1;
    int asked_ = 0; ///< counts the lines sent to be followed: only the latest counts
    std::vector<PlanPoint> points_;

    QLabel *about_, *size_, *result_;
    QListWidget* list_;
    OutlinePreview* preview_;
    QLineEdit *length_, *factor_field_;
    QCheckBox* mirrored_;
    QPushButton* take_;
};

} // namespace rampwright::ui
