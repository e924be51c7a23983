#include "explain/why_button.hpp"
#include "explain/why_popover.hpp"
#include "panels/energy_panel.hpp"
#include "support/bench.hpp"

#include <rampwright/explain/explain.hpp>

#include <QApplication>
#include <QLabel>
#include <QPointer>
#include <QPushButton>
#include <QTest>
#include <QTextBlock>
#include <QTextBrowser>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

WhyPopover* open_popover() {
    return qobject_cast<WhyPopover*>(QApplication::activePopupWidget());
}

QString words(const QWidget& popover, const char* name) {
    return popover.findChild<QLabel*>(QLatin1String(name))->text();
}

Explanation expected(const Workbench& bench, const std::string& code) {
    for (const Explanation& each :
         explain(bench.session.project(), bench.session.car(), *bench.session.figures()))
        if (each.code == code) return each;
    throw std::runtime_error("no explanation of " + code);
}

} // namespace

TEST_CASE("Every figure of the answers and every bar of the ledger says why", "[why]") {
    Workbench bench;
    bench.choose_car(bench.session.project().cars[2].name);
    for (const char* code : {"heat.time_s", "mass_g", "scale.margin_g", "balance_ahead_of_rear_axle_mm",
                             "front_load_g", "budget_mj.released", "budget_mj.journal", "budget_mj.air",
                             "budget_mj.rolling", "budget_mj.rail", "budget_mj.hub", "budget_mj.scrub"}) {
        INFO(code);
        auto& button = bench.find<WhyButton>(QStringLiteral("why.") + QLatin1String(code));
        REQUIRE(button.isVisible());
        QTest::mouseClick(&button, Qt::LeftButton);
        REQUIRE(open_popover());
        const Explanation e = expected(bench, code);
        CHECK(words(*open_popover(), "why.sentence").toStdString() == e.plain);
        CHECK_FALSE(open_popover()->findChild<QLabel*>(QStringLiteral("why.formula"))->isVisible());
        QTest::mouseClick(open_popover()->findChild<QPushButton*>(QStringLiteral("why.more")),
                          Qt::LeftButton);
        CHECK(words(*open_popover(), "why.formula").toStdString() == e.formula);
        CHECK(words(*open_popover(), "why.source").contains(QString::fromStdString(e.source)));
        // No text is cut off.
        for (const auto* label : open_popover()->findChildren<QLabel*>())
            if (label->isVisible()) CHECK(label->heightForWidth(label->width()) <= label->height() + 1);
        QTest::keyClick(open_popover(), Qt::Key_Escape);
        CHECK(open_popover() == nullptr);
    }
}

TEST_CASE("An explanation follows an edit, opens by keyboard and by the bar, and leads to the model",
          "[why]") {
    Workbench bench;
    auto& button = bench.find<WhyButton>(QStringLiteral("why.budget_mj.journal"));
    button.setFocus();
    QTest::keyClick(&button, Qt::Key_Space);
    REQUIRE(open_popover());
    const QString before = words(*open_popover(), "why.sentence");
    QTest::keyClick(open_popover(), Qt::Key_Escape);

    bench.session.apply(set_value(bench.session.document(), "/model/journal",
                                  {{"value", 0.2}, {"sigma", 0.02}}, "Rough axles"));
    auto* bar = bench.window->findChildren<EnergyBar*>().front();
    QTest::mouseClick(bar, Qt::LeftButton);
    REQUIRE(open_popover());
    CHECK(words(*open_popover(), "why.sentence") != before);
    CHECK(words(*open_popover(), "why.sentence").toStdString() == expected(bench, "budget_mj.journal").plain);
    QTest::mouseClick(open_popover()->findChild<QPushButton*>(QStringLiteral("why.read")), Qt::LeftButton);
    QTextBrowser* page = nullptr;
    for (QWidget* top : QApplication::topLevelWidgets())
        if (top->objectName() == QStringLiteral("help") && top->isVisible())
            page = top->findChild<QTextBrowser*>();
    REQUIRE(page);
    CHECK(page->textCursor().block().text() == QStringLiteral("Losses at the wheel"));
    page->window()->close();
}
