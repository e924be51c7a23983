#define CATCH_CONFIG_RUNNER
#include <QGuiApplication>
#include <QHash>
#include <catch2/catch.hpp>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QHashSeed::setDeterministicGlobalSeed();
    QGuiApplication application(argc, argv);
    return Catch::Session().run(argc, argv);
}
