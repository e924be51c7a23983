#include "support/group.hpp"

#include <QListWidget>
#include <QTest>

#include <stdexcept>

namespace rampwright::ui::testing {

void click_piece(Workbench& bench, std::size_t piece, Qt::KeyboardModifiers keys) {
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, keys, pixel_of_piece(bench, piece, View::side));
}

void press(Workbench& bench, Qt::Key key, Qt::KeyboardModifiers keys) {
    if (!bench.window->isActiveWindow()) {
        bench.window->activateWindow();
        if (!QTest::qWaitForWindowActive(bench.window.get()))
            throw std::runtime_error("the window does not become the active one");
    }
    QTest::keyClick(&bench.drawing(), key, keys);
}

Vec3 place_of_piece(Workbench& bench, std::size_t piece) {
    return bench.session.plan().ballast.at(piece).at;
}

std::vector<int> chosen_rows(Workbench& bench, const char* list_name) {
    auto& list = bench.find<QListWidget>(QLatin1String(list_name));
    std::vector<int> rows;
    for (int row = 0; row < list.count(); ++row)
        if (list.item(row)->isSelected()) rows.push_back(row);
    return rows;
}

} // namespace rampwright::ui::testing
