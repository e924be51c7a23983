#include "window/program.hpp"

#include "files/fault_report.hpp"
#include "files/recovery.hpp"
#include "window/language.hpp"
#include "window/main_window.hpp"

#include <rampwright/core/version.hpp>

#include <QApplication>
#include <QFile>
#include <QHash>
#include <QScreen>
#include <QSettings>
#include <QTimer>

#include <iostream>

namespace rampwright::ui {
namespace {

Document demo() {
    QFile file(QStringLiteral(":/demo/harbour-hall.ramp.json"));
    if (!file.open(QIODevice::ReadOnly))
        throw Problem(Exit::could_not, "-", "the demo project is missing", "name a project file");
    return parse_document(file.readAll().toStdString());
}

QSize read_size(const std::string& text) {
    const auto parts = QString::fromStdString(text).split(QLatin1Char('x'));
    bool width_ok = false, height_ok = false;
    const QSize size =
        parts.size() == 2 ? QSize(parts[0].toInt(&width_ok), parts[1].toInt(&height_ok)) : QSize();
    if (!width_ok || !height_ok || size.width() < 100 || size.height() < 100 || size.width() > 10000 ||
        size.height() > 10000)
        throw Problem(Exit::wrong_call, "-", "\"" + text + "\" is no size", "give it as 1360x860");
    return size;
}

} // namespace

WindowCall read_window_call(std::span<const std::string> arguments) {
    WindowCall call;
    for (std::size_t i = 0; i < arguments.size(); ++i) {
        const std::string& word = arguments[i];
        const auto value = [&]() -> const std::string& {
            if (i + 1 == arguments.size())
                throw Problem(Exit::wrong_call, "-", word + " needs a value", "see rampwright --help");
            return arguments[++i];
        };
        if (word == "--grab") {
            call.grab = QString::fromStdString(value());
        } else if (word == "--size") {
            call.size = read_size(value());
        } else if (word == "--theme") {
            const std::string& name = value();
            if (name != "light" && name != "dark")
                throw Problem(Exit::wrong_call, "-", "there is no theme \"" + name + "\"",
                              "say light or dark");
            call.appearance = name == "dark" ? Appearance::dark : Appearance::light;
        } else if (word == "--language") {
            const std::string& code = value();
            if (code != "en" && code != "de")
                throw Problem(Exit::wrong_call, "-", "there is no language \"" + code + "\"", "say en or de");
            call.language = QString::fromStdString(code);
        } else if (word == "--wait") {
            const std::string& text = value();
            bool ok = false;
            call.wait_ms = QString::fromStdString(text).toInt(&ok);
            if (!ok || call.wait_ms < 0)
                throw Problem(Exit::wrong_call, "-", "\"" + text + "\" is no number of milliseconds",
                              "give a whole number");
        } else if (word == "--step") {
            const std::string& name = value();
            call.step = step_named(name);
            if (!call.step)
                throw Problem(Exit::wrong_call, "-", "there is no step \"" + name + "\"",
                              "say agree, shape, roll, load, aim, run or paper");
        } else if (word.starts_with("-") || call.project) {
            throw Problem(Exit::wrong_call, "-", "\"" + word + "\" is not understood",
                          "see rampwright --help");
        } else {
            call.project = word;
        }
    }
    return call;
}

int run_window(const WindowCall& call, int& argc, char** argv) {
    const bool has_screen = qEnvironmentVariableIsSet("DISPLAY") ||
                            qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
                            qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
    if (!has_screen) {
        if (call.grab.isEmpty())
            throw Problem(Exit::could_not, "-", "there is no display to open a window on",
                          "start it from a desktop session, or use the verbs listed by rampwright --help");
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    // Equal sheets give equal PDFs: the toolkit writes fonts in the order of a hash that it seeds by chance.
    QHashSeed::setDeterministicGlobalSeed();
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("rampwright"));
    QApplication::setOrganizationName(QStringLiteral("rampwright"));
    QApplication::setApplicationVersion(
        QString::fromUtf8(version().data(), static_cast<qsizetype>(version().size())));
    const bool keep_settings = call.grab.isEmpty();
    // A picture is the same on every machine, unless another language is asked for.
    const QString otherwise = keep_settings ? chosen_language() : QStringLiteral("en");
    load_language(call.language.isEmpty() ? otherwise : call.language);
    const bool dark = keep_settings && QSettings().value(QStringLiteral("window/dark"), false).toBool();
    apply_theme(call.appearance.value_or(dark ? Appearance::dark : Appearance::light));

    if (keep_settings) leave_fault_reports_in(Recovery::default_folder());
    Session session;
    if (call.project)
        session.open(*call.project);
    else
        session.start(demo());
    MainWindow window(session, keep_settings);
    if (call.size.isValid())
        window.resize(call.size);
    else if (keep_settings) // all of it on the screen, with the frame that the window manager puts around it
        window.resize(window.size().boundedTo(window.screen()->availableSize() - QSize(8, 40)));
    if (call.step) window.show_step(*call.step);
    window.show();
    if (keep_settings) window.greet(!call.project);
    if (!call.grab.isEmpty())
        QTimer::singleShot(call.wait_ms, &window, [&] {
            const bool saved = window.grab().save(call.grab);
            if (!saved)
                std::cerr << "rampwright: " << call.grab.toStdString()
                          << ": -: the picture cannot be written; choose another file\n";
            QApplication::exit(static_cast<int>(saved ? Exit::done : Exit::could_not));
        });
    return QApplication::exec();
}

} // namespace rampwright::ui
