#pragma once

#include "fields/field_spec.hpp"

#include <QWidget>

#include <vector>

namespace rampwright::ui {

class ValueEditor;

/// A slip of typed values, in titled groups.
class ValueSlip : public QWidget {
    Q_OBJECT

public:
    ValueSlip(Session& session, std::span<const FieldGroup> groups, QWidget* parent = nullptr);

private:
    struct Bound {
        const FieldSpec* spec = nullptr;
        QString name; ///< for the history
        ValueEditor* editor = nullptr;
    };
    void bind();

    Session& session_;
    std::vector<Bound> fields_;
};

} // namespace rampwright::ui
