#include "session/follow.hpp"

#include "session/session.hpp"

#include <QEvent>
#include <QWidget>

#include <utility>

namespace rampwright::ui {
namespace {

/// Watches one view come into sight; it lives as long as the view.
class Follower : public QObject {
public:
    Follower(QWidget& view, std::function<void()> refresh)
        : QObject(&view), view_(view), refresh_(std::move(refresh)) {
        view_.installEventFilter(this);
    }
    void follow() const {
        if (view_.isVisible()) refresh_();
    }
    bool eventFilter(QObject* object, QEvent* event) override {
        if (event->type() == QEvent::Show) refresh_();
        return QObject::eventFilter(object, event);
    }

private:
    QWidget& view_;
    std::function<void()> refresh_;
};

} // namespace

void follow_while_seen(QWidget& view, Session& session, std::function<void()> refresh) {
    auto* follower = new Follower(view, std::move(refresh));
    QObject::connect(&session, &Session::changed, follower, &Follower::follow);
    QObject::connect(&session, &Session::car_chosen, follower, &Follower::follow);
}

} // namespace rampwright::ui
