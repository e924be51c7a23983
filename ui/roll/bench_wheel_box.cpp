#include "roll/bench_wheel_box.hpp"

#include <QSignalBlocker>

namespace rampwright::ui {

BenchWheelBox::BenchWheelBox(const QString& object_name, QWidget* parent) : QuietComboBox(parent) {
    setObjectName(object_name);
    setAccessibleName(tr("Wheel measured"));
    setWhatsThis(
        tr("Readings are kept in the project for each wheel of the bench's table, and for one that is "
           "not in it. Choose a wheel to look at its readings again."));
    addItem(tr("one not in the table"));
}

void BenchWheelBox::list(const Project& project) {
    QStringList names{itemText(0)};
    for (std::size_t i = 0; i < project.bench_wheels.size(); ++i)
        names << bench_wheel_name(project.bench_wheels[i], i);
    const QSignalBlocker blocker(this);
    const QString was = currentText();
    const int index = currentIndex();
    if (names.size() == count()) {
        for (int i = 1; i < count(); ++i)
            setItemText(i, names[i]);
        return;
    }
    clear();
    addItems(names);
    setCurrentIndex(index == 0 ? 0 : std::max(0, findText(was)));
}

std::optional<std::size_t> BenchWheelBox::place() const {
    if (currentIndex() <= 0) return {};
    return static_cast<std::size_t>(currentIndex() - 1);
}

QString bench_wheel_name(const BenchWheel& wheel, std::size_t place) {
    return wheel.name.empty() ? BenchWheelBox::tr("wheel %1").arg(place + 1)
                              : BenchWheelBox::tr("wheel %1").arg(QString::fromStdString(wheel.name));
}

} // namespace rampwright::ui
