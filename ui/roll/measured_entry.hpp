#pragma once

#include "session/session.hpp"

#include <rampwright/bench/combine.hpp>

#include <QLineEdit>
#include <QWidget>

namespace rampwright::ui {

/// What is wrong with readings, and how to mend them, to be shown in place of a result.
Problem mend_reading(const QString& wrong, const QString& remedy);

/// A reading at the bench and its standard uncertainty, typed in any unit. It belongs to no key of the
/// project: only what is worked out from it does.
class MeasuredEntry : public QWidget {
    Q_OBJECT

public:
    MeasuredEntry(Session& session, const QString& object_name, const QString& label, Quantity quantity,
                  QWidget* parent = nullptr);

    void show_value(const Measured& value); ///< SI, shown in the project's units
    /// @throws EntryError where either text is no value.
    Measured read() const;
    void name(const QString& label);
    /// Whether a hand has typed here: what stands in a field of its own accord may be replaced.
    bool typed() const { return typed_; }

Q_SIGNALS:
    void changed();

private:
    double si(const QLineEdit& edit) const;
    void spell_out(QLineEdit& edit);

    Session& session_;
    Quantity quantity_;
    QLineEdit *value_, *sigma_;
    bool typed_ = false;
};

} // namespace rampwright::ui
