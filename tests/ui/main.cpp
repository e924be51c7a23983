#define CATCH_CONFIG_RUNNER
#include "look/theme.hpp"

#include <QApplication>
#include <QHash>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

int main(int argc, char** argv) {
    // Tests are listed at build time too, where there is no display.
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QStandardPaths::setTestModeEnabled(true);
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
    QHashSeed::setDeterministicGlobalSeed(); // as the program does
    QApplication application(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("rampwright-tests"));
    rampwright::ui::apply_theme(rampwright::ui::Appearance::light);
    return Catch::Session().run(argc, argv);
}
