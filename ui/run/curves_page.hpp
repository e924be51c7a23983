#pragma once

#include "session/session.hpp"

#include <QWidget>

namespace rampwright::ui {

class CurveView;

/// The heat along the lane, with what can be done with the picture.
class CurvesPage : public QWidget {
    Q_OBJECT

public:
    explicit CurvesPage(Session& session, QWidget* parent = nullptr);
    /// Writes the picture: SVG by that suffix, else a raster. @return whether it could be written.
    bool save_picture(const QString& path) const;

private:
    void choose_file();
    CurveView* view_;
};

} // namespace rampwright::ui
