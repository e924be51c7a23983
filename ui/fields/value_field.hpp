#pragma once

#include "session/session.hpp"

#include <QLineEdit>

#include <functional>
#include <string>

namespace rampwright::ui {

/// A value that is no single key of the file, or one that may not stand in it yet: how it is read and set,
/// SI.
struct PlanValue {
    std::string id; ///< tells it from others: what is half typed is kept while it stays the same
    Quantity quantity = Quantity::length;
    std::function<double()> read;
    std::function<Edit(double)> write;
};

/// A number of the project that can be typed in any unit, as a sum, or left empty for the default, which
/// then stands in grey. Text that is no value stays and is marked; the project keeps the value it had.
class ValueField : public QLineEdit {
    Q_OBJECT

public:
    ValueField(Session& session, QWidget* parent = nullptr);

    /// Shows the value at a JSON pointer. @param name what the history calls it: "mass of tungsten cube".
    void bind(std::string pointer, const QString& name);
    void bind(PlanValue value);
    void unbind();
    const std::string& pointer() const { return pointer_; }

    /// Why the text is no value; empty where it is one.
    const QString& fault() const { return fault_; }

Q_SIGNALS:
    void fault_changed(const QString& fault);

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void refresh();
    void commit();
    bool bound() const { return !pointer_.empty() || plan_value_.read; }
    Edit edit_for(const std::string& typed) const;
    void set_fault(const QString& fault);

    Session& session_;
    std::string pointer_; ///< of the file's key; or else
    PlanValue plan_value_;
    QString name_, fault_;
};

} // namespace rampwright::ui
