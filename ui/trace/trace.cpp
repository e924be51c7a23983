#include "trace/trace.hpp"

#include "text/figure_text.hpp"
#include "trace/outline_dialog.hpp"
#include "trace/picture_store.hpp"

#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>

namespace rampwright::ui {
namespace {

struct TraceText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Trace)
};

QString folder_of(const Session& session) {
    return session.has_file() ? QString::fromStdString(session.path().parent_path().string()) : QString();
}

QString choose_picture(QWidget& window, const Session& session) {
    return QFileDialog::getOpenFileName(&window, TraceText::tr("Lay a Picture under the Drawing"),
                                        folder_of(session), PictureStore::file_filter());
}

QString do_edit(Session& session, const std::function<Edit()>& make_edit, const QString& done) {
    try {
        session.apply(make_edit());
        return done;
    } catch (const Problem& problem) {
        return plain_text(problem);
    }
}

} // namespace

QString lay_picture_file(Session& session, const QString& path, bool plan) {
    const QFileInfo file(path);
    const BodyPlan& body = session.plan().body;
    Underlay underlay;
    underlay.picture = file.absoluteFilePath().toStdString();
    underlay.width = body.block.x();
    underlay.at = {body.block.x() / 2, plan ? 0 : body.block.z() / 2};
    return do_edit(
        session,
        [&] {
            return set_underlay(session.document(), session.car(), plan, underlay,
                                TraceText::tr("Lay picture: %1").arg(file.fileName()).toStdString());
        },
        TraceText::tr("Laid under the drawing: %1. Set its scale by two points.").arg(file.fileName()));
}

QString lay_picture(QWidget& window, Session& session, bool plan) {
    const QString path = choose_picture(window, session);
    return path.isEmpty() ? QString() : lay_picture_file(session, path, plan);
}

QString find_picture(QWidget& window, Session& session, bool plan) {
    const auto& now = session.plan().underlays[plan ? 1 : 0];
    if (!now) return {};
    const QString path = choose_picture(window, session);
    if (path.isEmpty()) return {};
    Underlay underlay = *now;
    underlay.picture = QFileInfo(path).absoluteFilePath().toStdString();
    return do_edit(
        session,
        [&] {
            return set_underlay(session.document(), session.car(), plan, underlay,
                                TraceText::tr("Find picture again").toStdString());
        },
        TraceText::tr("Found again: %1").arg(path));
}

QString read_outline(QWidget& window, Session& session, bool plan) {
    const QString path = QFileDialog::getOpenFileName(&window,
                                                      plan ? TraceText::tr("Read the Top Outline from SVG")
                                                           : TraceText::tr("Read the Side Outline from SVG"),
                                                      folder_of(session),
                                                      TraceText::tr("SVG drawings (*.svg);;All files (*)"));
    return path.isEmpty() ? QString() : read_outline_file(window, session, path, plan);
}

QString read_outline_file(QWidget& window, Session& session, const QString& path, bool plan) {
    OutlineDialog dialog(session, path, plan, &window);
    if (dialog.exec() != QDialog::Accepted) return {};
    return TraceText::tr("Taken in from %1: an outline of %n point(s).", nullptr, dialog.points_taken())
        .arg(QFileInfo(path).fileName());
}

} // namespace rampwright::ui
