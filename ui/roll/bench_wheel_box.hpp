#pragma once

#include "fields/quiet_combo_box.hpp"

#include <rampwright/project/project.hpp>

#include <optional>

namespace rampwright::ui {

/// "wheel 7", by its name or else by its place.
QString bench_wheel_name(const BenchWheel& wheel, std::size_t place);

/// Whose readings a bench form shows: a wheel of the bench's table, or one that is not in it.
class BenchWheelBox : public QuietComboBox {
    Q_OBJECT

public:
    BenchWheelBox(const QString& object_name, QWidget* parent = nullptr);

    /// Lists the project's wheels; the choice stays with the wheel, by its place or, where the table has
    /// another length, by its name.
    void list(const Project& project);
    /// Place in the bench's table; none for a wheel that is not in it.
    std::optional<std::size_t> place() const;
};

} // namespace rampwright::ui
