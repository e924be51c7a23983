#pragma once

#include "session/session.hpp"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QLabel;
class QPushButton;
class QSlider;

namespace rampwright::ui {

class CarCanvas;
class ValueEditor;
enum class Tool;

/// What is traced: the picture under the side view or the top view, its scale and place, and outlines read
/// from drawing files.
class UnderlayPanel : public QWidget {
    Q_OBJECT

public:
    UnderlayPanel(Session& session, CarCanvas& canvas, QWidget* parent = nullptr);

protected:
    void showEvent(QShowEvent* event) override;

private:
    bool plan() const;
    const std::optional<Underlay>& underlay() const;
    void change(const QString& name, const std::function<void(Underlay&)>& how, const QString& merge = {});
    void refresh();
    void bind_fields();
    void show_tool(Tool tool);
    void measure(bool plan, const QPointF& one, const QPointF& other);
    void say(const QString& text);

    Session& session_;
    CarCanvas& canvas_;
    QComboBox* view_;
    QWidget* form_;
    QLabel *name_, *fault_;
    QPushButton *find_, *scale_, *move_, *remove_;
    ValueEditor *width_, *turned_;
    QSlider* opacity_;
    QCheckBox *mirrored_, *shown_;
};

} // namespace rampwright::ui
