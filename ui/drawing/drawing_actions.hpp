#pragma once

#include <QObject>

#include <vector>

class QAction;
class QKeySequence;
class QMenu;
class QWidget;

namespace rampwright::ui {

class CarCanvas;
class Session;

/// What can be done to what is chosen on the drawing: one set of actions, with their keys, for the Edit menu
/// and for the drawing's own. Each is enabled while it can work.
class DrawingActions : public QObject {
    Q_OBJECT

public:
    DrawingActions(Session& session, CarCanvas& canvas);

    QAction *cut, *copy, *paste, *select_all, *duplicate, *remove, *lock;
    QAction *add_point, *corner_or_smooth, *draw_pocket, *draw_bore;

    /// Clipboard, duplicate, remove, lock, and the arranging as a menu of its own.
    void fill(QMenu& menu);
    /// Gives a list of what is drawn the same: its keys, and the menu of its right button.
    void serve(QWidget& list);

Q_SIGNALS:
    /// A cut is to be drawn: the step about the wood is wanted first.
    void wood_wanted();

private:
    /// An action for so many things at least, of which one may be moved.
    struct Arranging {
        QAction* action = nullptr;
        std::size_t least = 1;
    };
    void make_arranging();
    void allow();
    bool eventFilter(QObject* watched, QEvent* event) override;

    Session& session_;
    CarCanvas& canvas_;
    QMenu* arrange_;
    QAction* mirror_copy_ = nullptr;
    std::vector<Arranging> arranging_;
};

} // namespace rampwright::ui
