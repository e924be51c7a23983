#pragma once

#include <QObject>
#include <QRect>

class QDialog;

namespace rampwright::ui {

class CarCanvas;
class CarPicture;
class Session;

/// Keeps a turnable picture of the car in the sheet's free corner, below the front view and beside the top
/// view; hides it while the drawing is magnified over that corner.
class PictureCorner : public QObject {
    Q_OBJECT

public:
    PictureCorner(Session& session, CarCanvas& canvas);
    CarPicture& picture() { return *picture_; }
    /// Shows the picture in a window of its own.
    void enlarge();

    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void place();

    Session& session_;
    CarCanvas& canvas_;
    CarPicture* picture_;
    QDialog* large_ = nullptr;
    CarPicture* large_picture_ = nullptr;
    QRect placed_;
};

} // namespace rampwright::ui
