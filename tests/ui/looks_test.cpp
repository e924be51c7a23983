#include "look/theme.hpp"
#include "support/bench.hpp"
#include "support/clipped.hpp"

#include <QAbstractButton>
#include <QAccessible>
#include <QApplication>
#include <QCheckBox>
#include <QLabel>
#include <QListWidget>
#include <QRadioButton>
#include <QStyleOptionButton>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

/// Interactive parts without a name in the tree that screen readers walk. The toolkit's own inner parts
/// (scroll bars, the viewport of a list, the menu bar's extension) are left out by their class.
void find_unnamed(QAccessibleInterface* part, std::vector<std::string>& unnamed, int depth = 0) {
    if (!part || !part->isValid() || depth > 40) return;
    switch (part->role()) {
    case QAccessible::Button:
    case QAccessible::CheckBox:
    case QAccessible::RadioButton:
    case QAccessible::EditableText:
    case QAccessible::ComboBox:
    case QAccessible::SpinBox:
    case QAccessible::Slider:
    case QAccessible::List:
    case QAccessible::Table:
    case QAccessible::Tree:
    case QAccessible::ListItem:
    case QAccessible::PageTab:
    case QAccessible::MenuItem: {
        const QObject* object = part->object();
        const bool inner = object && object->objectName().startsWith(QStringLiteral("qt_"));
        const bool tab_scroller = object && object->parent() && qobject_cast<QTabBar*>(object->parent());
        if (part->text(QAccessible::Name).isEmpty() && !inner && !tab_scroller && !part->state().invisible)
            unnamed.push_back(object ? std::string(object->metaObject()->className()) + " " +
                                           object->objectName().toStdString()
                                     : "item");
        break;
    }
    default:
        break;
    }
    for (int i = 0; i < part->childCount(); ++i)
        find_unnamed(part->child(i), unnamed, depth + 1);
}

} // namespace

TEST_CASE("Words reach 4.5 : 1 and marks 3 : 1 in both themes", "[looks]") {
    // WCAG 2.1, success criteria 1.4.3 and 1.4.11 (AA).
    for (const Appearance appearance : {Appearance::light, Appearance::dark}) {
        const Theme t = make_theme(appearance);
        INFO((appearance == Appearance::dark ? "dark" : "light"));
        CHECK(contrast(t.ink, t.paper) >= 4.5);
        CHECK(contrast(t.ink, t.bench) >= 4.5);
        CHECK(contrast(t.faint_ink, t.paper) >= 4.5);
        CHECK(contrast(t.faint_ink, t.bench) >= 4.5);
        CHECK(contrast(t.accent, t.paper) >= 4.5);
        CHECK(contrast(t.ink, t.wood) >= 4.5);
        for (const QColor& mark : {t.wood_ink, t.metal_ink, t.wheel_ink, t.good, t.caution, t.breach})
            CHECK(contrast(mark, t.paper) >= 3);
        for (const QColor& line : t.series)
            CHECK(contrast(line, t.paper) >= 4.5); // their labels are words in the same colour
        CHECK(contrast(t.wood_ink, t.wood) >= 3);
        CHECK(contrast(t.metal_ink, t.metal) >=
              1.5); // an outline of a filled shape whose fill differs from the wood
        const auto pair = [&](QPalette::ColorRole text, QPalette::ColorRole ground) {
            return contrast(t.palette.color(QPalette::Active, text),
                            t.palette.color(QPalette::Active, ground));
        };
        CHECK(pair(QPalette::WindowText, QPalette::Window) >= 4.5);
        CHECK(pair(QPalette::Text, QPalette::Base) >= 4.5);
        CHECK(pair(QPalette::Text, QPalette::AlternateBase) >= 4.5);
        CHECK(pair(QPalette::ButtonText, QPalette::Button) >= 4.5);
        CHECK(pair(QPalette::HighlightedText, QPalette::Highlight) >= 4.5);
        CHECK(pair(QPalette::ToolTipText, QPalette::ToolTipBase) >= 4.5);
        CHECK(pair(QPalette::PlaceholderText, QPalette::Base) >= 4.5);
        CHECK(pair(QPalette::Link, QPalette::Base) >= 4.5);
    }
}

TEST_CASE("The frame of what can be ticked stands out from the window, ticked or not", "[looks]") {
    // WCAG 2.1, success criterion 1.4.11 (AA), by the pixels.
    for (const Appearance appearance : {Appearance::light, Appearance::dark}) {
        apply_theme(appearance);
        QCheckBox box(QStringLiteral("Tungsten"));
        QRadioButton choice(QStringLiteral("Lead"));
        for (QAbstractButton* button :
             {static_cast<QAbstractButton*>(&box), static_cast<QAbstractButton*>(&choice)}) {
            button->resize(button->sizeHint());
            const QImage picture = button->grab().toImage();
            QStyleOptionButton option;
            option.initFrom(button);
            const QRect mark = button->style()->subElementRect(
                button == &box ? QStyle::SE_CheckBoxIndicator : QStyle::SE_RadioButtonIndicator, &option,
                button);
            // Along the middle line, from outside to the mark's own middle.
            double most = 0;
            for (int x = mark.left(); x < mark.center().x(); ++x)
                most = std::max(most, contrast(picture.pixelColor(x, mark.center().y()), theme().bench));
            CAPTURE(int(appearance), button->text().toStdString());
            CHECK(most >= 3);
        }
    }
    apply_theme(Appearance::light);
}

TEST_CASE("Contrast is WCAG's: black on white is 21 : 1", "[looks]") {
    CHECK(contrast(Qt::black, Qt::white) == Approx(21));
    // The grey that WCAG's own documents use as the borderline case for 4.5 : 1 on white.
    CHECK(contrast(QColor(0x767676), Qt::white) == Approx(4.54).margin(0.005));
}

TEST_CASE("No text is cut off, at the usual and at the smallest size", "[looks][layout]") {
    for (const QSize size : {QSize(1360, 860), QSize(1280, 700)}) {
        Workbench bench(demo_path, size);
        for (std::size_t car = 0; car < bench.session.project().cars.size(); ++car) {
            bench.session.choose_car(car);
            for (auto* step : bench.window->findChildren<StepButton*>()) {
                QTest::mouseClick(step, Qt::LeftButton);
                QApplication::processEvents();
                const auto found = clipped(*bench.window);
                for (const auto& each : found)
                    UNSCOPED_INFO(each);
                INFO(size.width() << " " << step->text().toStdString());
                CHECK(found.empty());
            }
        }
    }
}

TEST_CASE("The window fits a small laptop", "[looks][layout]") {
    Workbench bench(demo_path, QSize(1280, 700));
    CHECK(bench.window->minimumSizeHint().width() <= 1280);
    CHECK(bench.window->minimumSizeHint().height() <= 700);
    CHECK(bench.window->size() == QSize(1280, 700));
    const auto& map = bench.drawing().map();
    const CarExtent extent = bench.drawing().shape().extent();
    for (const View view : all_views) {
        CHECK(map.paper().contains(map.to_pixel(view, extent.low)));
        CHECK(map.paper().contains(map.to_pixel(view, extent.high)));
    }
}

TEST_CASE("Every control has a name for those who cannot see it", "[looks]") {
    Workbench bench;
    QAccessible::setActive(true);
    std::vector<std::string> unnamed;
    for (auto* step : bench.window->findChildren<StepButton*>()) {
        QTest::mouseClick(step, Qt::LeftButton);
        find_unnamed(QAccessible::queryAccessibleInterface(bench.window.get()), unnamed);
    }
    for (const auto& each : unnamed)
        UNSCOPED_INFO(each);
    CHECK(unnamed.empty());
    CHECK_FALSE(bench.drawing().accessibleName().isEmpty());
}

TEST_CASE("What is drawn stands in the tree with name, place and state", "[looks]") {
    Workbench bench;
    QAccessible::setActive(true);
    auto* drawing = QAccessible::queryAccessibleInterface(&bench.drawing());
    REQUIRE(drawing);
    CHECK(drawing->role() == QAccessible::Canvas);
    const auto& plan = bench.session.plan();
    for (const Step step : {Step::load, Step::shape, Step::roll}) {
        bench.window->show_step(step);
        QStringList names;
        for (int i = 0; i < drawing->childCount(); ++i) {
            auto* part = drawing->child(i);
            REQUIRE(part);
            CHECK(part->isValid());
            CHECK_FALSE(part->text(QAccessible::Name).isEmpty());
            CHECK_FALSE(part->text(QAccessible::Description).isEmpty());
            CHECK(drawing->indexOfChild(part) == i);
            CHECK(part->parent() == drawing);
            names += part->text(QAccessible::Name);
        }
        for (const char* fixed : {"Balance point", "Front load", "Wheel rear left", "Wheel front right"})
            CHECK(names.contains(QString::fromUtf8(fixed)));
        if (step == Step::load)
            for (const auto& piece : plan.ballast)
                CHECK(names.contains(QString::fromStdString(piece.name)));
        if (step == Step::shape) {
            for (const auto& cut : plan.body.cuts)
                CHECK(names.contains(QString::fromStdString(cut.name)));
            CHECK(names.contains(QStringLiteral("profile point 1")));
        }
        if (step == Step::roll) CHECK(names.contains(QStringLiteral("front axle")));
    }
    // A reader chooses the first piece: the window follows, and the tree tells it back.
    bench.window->show_step(Step::load);
    for (int i = 0; i < drawing->childCount(); ++i) {
        auto* part = drawing->child(i);
        if (part->text(QAccessible::Name).toStdString() != plan.ballast[0].name) continue;
        CHECK_FALSE(part->state().selected);
        auto* action = part->actionInterface();
        REQUIRE(action);
        action->doAction(QAccessibleActionInterface::pressAction());
        CHECK(part->state().selected);
        CHECK(drawing->focusChild() == part);
        // Pieces may share a name, never a place.
        const auto chosen = bench.drawing().selected();
        REQUIRE(chosen);
        CHECK(chosen->kind == TargetKind::piece);
        CHECK(plan.ballast[chosen->index].name == plan.ballast[0].name);
        CHECK(part->rect().contains(
            bench.drawing().mapToGlobal(pixel_of_piece(bench, chosen->index, View::side))));
        // What it says follows the car, there and back.
        const QString where = part->text(QAccessible::Description);
        const Vec3 at = plan.ballast[chosen->index].at;
        bench.session.apply(move_ballast(bench.session.document(), 0, chosen->index, at + Vec3(2e-3, 0, 0)));
        CHECK(part->text(QAccessible::Description) != where);
        CHECK(part->rect().contains(
            bench.drawing().mapToGlobal(pixel_of_piece(bench, chosen->index, View::side))));
        bench.session.history().undo();
        CHECK(part->text(QAccessible::Description) == where);
        return;
    }
    FAIL("the first piece is not in the tree");
}

TEST_CASE("Dark and light change the drawing's paper too", "[looks]") {
    Workbench bench;
    const auto paper = [&] {
        return bench.drawing().grab().toImage().pixelColor(bench.drawing().width() - 14,
                                                           bench.drawing().height() - 14);
    };
    apply_theme(Appearance::dark);
    QApplication::processEvents();
    CHECK(paper() == make_theme(Appearance::dark).paper);
    apply_theme(Appearance::light);
    QApplication::processEvents();
    CHECK(paper() == make_theme(Appearance::light).paper);
}

TEST_CASE("Findings carry a word beside their colour", "[looks]") {
    Workbench bench;
    for (std::size_t car = 0; car < bench.session.project().cars.size(); ++car) {
        bench.session.choose_car(car);
        auto& list = bench.find<QListWidget>(QStringLiteral("findings.list"));
        REQUIRE(bench.session.figures());
        CHECK(static_cast<std::size_t>(list.count()) == bench.session.figures()->findings.size());
        for (int i = 0; i < list.count(); ++i)
            CHECK(list.item(i)->text().section(QLatin1Char(':'), 0, 0).size() >= 4);
    }
}
