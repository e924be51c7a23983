#include "fields/value_field.hpp"
#include "support/bench.hpp"

#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

void type(QLineEdit& field, const QString& text) {
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, text);
    QTest::keyClick(&field, Qt::Key_Return);
}

ValueField& mass_of_first_piece(Workbench& bench) {
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of_piece(bench, 0, View::side));
    return bench.find<ValueField>(QStringLiteral("ballast.mass"));
}

} // namespace

TEST_CASE("A mass typed in ounces is taken as one step and shown in the project's unit", "[fields]") {
    Workbench bench;
    const Document before = bench.session.document();
    auto& field = mass_of_first_piece(bench);
    type(field, QStringLiteral("1/2 oz"));
    // The international avoirdupois ounce: 28.349523125 g by definition.
    CHECK(bench.session.plan().ballast.at(0).mass == Approx(0.0141747615625).epsilon(1e-14));
    CHECK(value_of(field.text(), Quantity::mass) == Approx(0.01417476).epsilon(1e-4));
    CHECK(bench.session.history().count() == 1);
    bench.session.history().undo();
    CHECK(bench.session.document() == before);
}

TEST_CASE("Both decimal marks mean the same", "[fields]") {
    Workbench bench;
    auto& field = mass_of_first_piece(bench);
    type(field, QStringLiteral("12,5"));
    CHECK(bench.session.plan().ballast.at(0).mass == Approx(0.0125).epsilon(1e-14));
    type(field, QStringLiteral("13.5 g"));
    CHECK(bench.session.plan().ballast.at(0).mass == Approx(0.0135).epsilon(1e-14));
}

TEST_CASE("What is no value stays as typed, is marked with a reason, and changes nothing", "[fields]") {
    Workbench bench;
    const Document before = bench.session.document();
    auto& field = mass_of_first_piece(bench);
    for (const char* text : {"abc", "3 mm", "-5 g", "4 +"}) {
        INFO(text);
        type(field, QLatin1String(text));
        CHECK(field.text() == QLatin1String(text));
        CHECK_FALSE(field.fault().isEmpty());
        CHECK(field.accessibleDescription() == field.fault());
        CHECK(bench.session.document() == before);
    }
    QTest::keyClick(&field, Qt::Key_Escape);
    CHECK(field.fault().isEmpty());
    CHECK(value_of(field.text(), Quantity::mass) ==
          Approx(bench.session.plan().ballast.at(0).mass).epsilon(1e-3));
}

TEST_CASE("An emptied field takes the default again, which then stands in grey", "[fields]") {
    Workbench bench;
    auto& field = bench.find<ValueField>(QStringLiteral("/air/humidity_pct"));
    type(field, QStringLiteral("80"));
    CHECK(bench.session.project().air.humidity == Approx(0.8).epsilon(1e-14));
    type(field, QStringLiteral("70 %"));
    CHECK(bench.session.project().air.humidity == Approx(0.7).epsilon(1e-14));
    field.setFocus();
    field.selectAll();
    QTest::keyClick(&field, Qt::Key_Delete);
    QTest::keyClick(&field, Qt::Key_Return);
    CHECK(field.text().isEmpty());
    CHECK_FALSE(field.placeholderText().isEmpty());
    CHECK(bench.session.project().air.humidity ==
          Approx(value_of(field.placeholderText(), Quantity::percent)));
}

TEST_CASE("Every field of every slip shows a value of the file or its default, and reads it back unchanged",
          "[fields]") {
    Workbench bench;
    const Document before = bench.session.document();
    int shown = 0;
    for (std::size_t car = 0; car < bench.session.project().cars.size(); ++car) {
        bench.session.choose_car(car);
        for (auto* field : bench.window->findChildren<ValueField*>()) {
            if (!field->isEnabled() || field->text().isEmpty()) continue;
            ++shown;
            field->setModified(true);
            Q_EMIT field->editingFinished();
            INFO(field->pointer() << " shows " << field->text().toStdString() << " "
                                  << field->fault().toStdString());
            CHECK(field->fault().isEmpty());
        }
    }
    CHECK(shown > 60);
    const auto drift = difference(before, bench.session.document());
    for (const auto& key : drift)
        UNSCOPED_INFO(key);
    CHECK(drift.empty());
}
