#include "look/theme.hpp"
#include "support/bench.hpp"

#include <QApplication>
#include <QDir>
#include <QImage>
#include <QRegularExpression>
#include <QTabBar>
#include <QTest>
#include <catch2/catch.hpp>

#include <map>
#include <set>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

/// Shares of the picture that are dark, middling and light.
std::array<double, 3> tones(const QImage& picture) {
    std::array<double, 3> share{};
    int counted = 0;
    for (int y = 0; y < picture.height(); y += 3)
        for (int x = 0; x < picture.width(); x += 3, ++counted)
            share[static_cast<std::size_t>(std::min(2, qGray(picture.pixel(x, y)) / 86))] += 1;
    for (double& each : share)
        each /= counted;
    return share;
}

QString plain(QString name) {
    name = name.toLower();
    name.replace(QRegularExpression(QStringLiteral("[^a-z0-9]+")), QStringLiteral("-"));
    return name;
}

} // namespace

/// Where RAMPWRIGHT_SCREENS names a folder the pictures are kept there: docs/pictures is made so.
TEST_CASE("Every screen is pictured, light and dark; none is empty, none is another's", "[screens]") {
    const QString folder = qEnvironmentVariable("RAMPWRIGHT_SCREENS");
    if (!folder.isEmpty()) QDir().mkpath(folder);
    std::map<QString, std::array<double, 3>> light;
    for (const Appearance appearance : {Appearance::light, Appearance::dark}) {
        apply_theme(appearance);
        const bool dark = appearance == Appearance::dark;
        Workbench bench(demo_path, QSize(1366, 768));
        bench.choose_car("Swift");
        std::set<QByteArray> seen;
        int pictures = 0;
        each_screen(bench, [&](const Screen& screen) {
            ++pictures;
            QTest::qWait(400); // what is computed beside the window arrives
            const QImage picture = bench.window->grab().toImage();
            const QString name =
                plain(screen.view.isEmpty() ? screen.step : screen.step + QLatin1Char('-') + screen.view);
            INFO(name.toStdString() << (dark ? " dark" : " light"));
            CHECK(picture.size() == QSize(1366, 768));
            const auto share = tones(picture);
            CHECK(share[0] + share[1] > 0.01);
            CHECK(share[2] + share[1] > 0.01);
            if (dark) {
                // The page itself is dark, not only its frame; of the paper step all but its white
                // sheets.
                REQUIRE(light.contains(name));
                CHECK(share[0] > light.at(name)[0] + 0.3);
                CHECK(share[2] < light.at(name)[2] - 0.3);
            } else {
                light[name] = share;
            }
            QByteArray bytes(reinterpret_cast<const char*>(picture.constBits()),
                             static_cast<int>(picture.sizeInBytes()));
            CHECK(seen.insert(std::move(bytes)).second);
            if (!folder.isEmpty())
                CHECK(picture.convertToFormat(QImage::Format_RGB888)
                          .save(QDir(folder).filePath(name + QLatin1String(dark ? "-dark.png" : ".png")),
                                nullptr, 0));
        });
        CHECK(pictures >= 14);
    }
    apply_theme(Appearance::light);
}
