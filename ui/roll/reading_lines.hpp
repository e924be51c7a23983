#pragma once

#include "roll/measured_entry.hpp"

#include <rampwright/project/project.hpp>

#include <array>
#include <optional>

namespace rampwright::ui {

/// An entry of a bench form and the reading that is typed in it.
template <class Readings>
struct ReadingLine {
    MeasuredEntry* entry;
    std::optional<Uncertain> Readings::*reading;
};

/// Keeps what is typed in a form's entries.
/// @param now the form's readings as they are. @param keep puts them, changed, into the project.
/// @param show shows what follows, with every letter.
template <class Readings, std::size_t count, class Now, class Keep, class Show>
void keep_what_is_typed(QObject& form, const std::array<ReadingLine<Readings>, count>& lines, Now now,
                        Keep keep, Show show) {
    for (const ReadingLine<Readings>& line : lines) {
        QObject::connect(line.entry, &MeasuredEntry::changed, &form, show);
        QObject::connect(line.entry, &MeasuredEntry::entered, &form, [line, now, keep] {
            const Measured read = line.entry->read();
            Readings readings = now();
            readings.*line.reading = Uncertain{read.value, read.sigma};
            keep(readings);
        });
    }
}

} // namespace rampwright::ui
