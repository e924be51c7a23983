#pragma once

#include <rampwright/project/project.hpp>

#include <QWidget>

#include <vector>

namespace rampwright::ui {

/// The outline that would be taken in, with its points, over the present one.
class OutlinePreview : public QWidget {
    Q_OBJECT

public:
    OutlinePreview(std::vector<PlanPoint> present, QWidget* parent = nullptr);
    void show_points(std::vector<PlanPoint> points);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<PlanPoint> present_, points_;
};

} // namespace rampwright::ui
