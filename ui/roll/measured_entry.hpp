#pragma once

#include "session/session.hpp"

#include <rampwright/bench/combine.hpp>

#include <QLineEdit>
#include <QWidget>

namespace rampwright::ui {

/// What is wrong with readings, and how to mend them, to be shown in place of a result.
Problem mend_reading(const QString& wrong, const QString& remedy);

/// A reading at the bench and its standard uncertainty, typed in any unit. Its form keeps it in the project
/// and shows it again.
class MeasuredEntry : public QWidget {
    Q_OBJECT

public:
    /// @param why what it is and how to measure it, on request.
    MeasuredEntry(Session& session, const QString& object_name, const QString& label, Quantity quantity,
                  const QString& why, QWidget* parent = nullptr);

    /// SI, shown in the project's units. What a hand has typed and not finished stays.
    void show_value(const Measured& value);
    void show_nothing();
    /// @throws EntryError where either text is no value.
    Measured read() const;
    void name(const QString& label);
    /// Takes what stands here as finished, so that another value may be shown.
    void forget() { typed_ = false; }

Q_SIGNALS:
    void changed(); ///< with every letter
    void entered(); ///< when a hand has typed and both texts are values

private:
    double si(const QLineEdit& edit) const;
    void finish();
    void put_text(QLineEdit& edit, const QString& text);

    Session& session_;
    Quantity quantity_;
    QLineEdit *value_, *sigma_;
    bool typed_ = false; ///< and not finished
};

} // namespace rampwright::ui
