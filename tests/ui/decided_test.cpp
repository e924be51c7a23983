#include "panels/step_ruler.hpp"
#include "support/bench.hpp"

#include <QCheckBox>
#include <QImage>
#include <QTemporaryDir>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

StepButton& step_button(Workbench& bench, Step step) {
    return bench.find<StepButton>(QStringLiteral("step.%1").arg(static_cast<int>(step)));
}

/// What is on the screen, without colour.
QImage greys(QWidget& widget) {
    return widget.grab().toImage().convertToFormat(QImage::Format_Grayscale8);
}

} // namespace

TEST_CASE("A step is ticked on the slip and shown on the ruler; undo takes it back, the file keeps it",
          "[decided]") {
    Workbench bench;
    const Document before = bench.session.document();
    go_to_step(bench, static_cast<int>(Step::agree));
    auto& button = step_button(bench, Step::agree);
    auto& box = bench.find<QCheckBox>(QStringLiteral("decided.agree"));
    CHECK_FALSE(button.decided());
    CHECK(button.accessibleDescription() == QStringLiteral("open"));
    CHECK(bench.text("decided.words.agree").contains(QStringLiteral("Open:")));
    CHECK(bench.text("decided.words.agree").contains(QStringLiteral("Usual:")));
    const QImage open = greys(button);

    box.setFocus();
    QTest::keyClick(&box, Qt::Key_Space);
    CHECK(box.isChecked());
    CHECK(button.decided());
    CHECK(button.accessibleDescription() == QStringLiteral("decided"));
    CHECK(bench.text("decided.words.agree").contains(QStringLiteral("you said so")));
    CHECK(bench.text("decided.words.agree").contains(QStringLiteral("Next: ")));
    CHECK(greys(button) != open); // not by colour alone

    // Each car for itself.
    bench.choose_car("Swift");
    CHECK_FALSE(button.decided());
    CHECK_FALSE(box.isChecked());
    bench.choose_car("Bittern");
    CHECK(button.decided());

    QTemporaryDir folder;
    const std::string path = folder.filePath(QStringLiteral("kept.ramp.json")).toStdString();
    bench.session.save(path);
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK_FALSE(button.decided());
    CHECK_FALSE(box.isChecked());
    CHECK(bench.session.document() == before);
    Workbench later(path);
    CHECK(step_button(later, Step::agree).decided());
}

TEST_CASE("A measured value decides a step without a tick; another value does not", "[decided]") {
    Workbench bench;
    auto& session = bench.session;
    session.apply(set_value(session.document(), "/cars/0/body/block_mass_g", nullptr, "Not weighed"));
    go_to_step(bench, static_cast<int>(Step::shape));
    auto& button = step_button(bench, Step::shape);
    CHECK_FALSE(button.decided());
    session.apply(set_value(session.document(), "/cars/0/body/density_kg_m3", 377, "Guess"));
    CHECK_FALSE(button.decided());
    session.apply(set_value(session.document(), "/cars/0/body/block_mass_g", 105, "Weigh"));
    CHECK(button.decided());
    CHECK(bench.text("decided.words.shape").contains(QStringLiteral("the block was weighed")));
    CHECK_FALSE(bench.find<QCheckBox>(QStringLiteral("decided.shape")).isChecked());
}
