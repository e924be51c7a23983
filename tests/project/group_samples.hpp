#pragma once

#include "project/edit_samples.hpp"
#include "support/demo.hpp"

#include <rampwright/project/group_edits.hpp>
#include <rampwright/project/take_in.hpp>

namespace rampwright::test {

/// Edits of several things, on values that the demo has; some have nothing to do there and then say so.
inline std::vector<EditSample> group_samples(unsigned n) {
    const double mm = 1e-3;
    const double step = 0.1 * (1 + n % 7);
    const std::size_t car = n % 3;
    const int axis = static_cast<int>(n / 3 % 3);
    const Group pieces{{0, 1}, {}}, all{{0, 1}, {0}};
    return {
        {"move_group",
         [=](const Document& d) {
             return move_group(d, car, {{0, Vec3(20 + step, 3, 9) * mm, ""}, {1, Vec3(40, step, 9) * mm, ""}},
                               {}, Vec3::Zero());
         }},
        {"move_group of cuts",
         [=](const Document& d) { return move_group(d, car, {}, {0}, Vec3(step, -step, 0) * mm); }},
        {"remove_group",
         [=](const Document& d) {
             return remove_group(d, car, {{1}, {0}});
         }},
        {"duplicate_group",
         [=](const Document& d) {
             return duplicate_group(d, n % 2, {{0}, {0}}, Vec3(0, step, 0) * mm);
         }},
        {"lock_group",
         [=](const Document& d) {
             return lock_group(d, car, {0, n % 2}, n % 4 == 0);
         }},
        {"align_group",
         [=](const Document& d) { return align_group(d, car, all, axis, static_cast<AlignTo>(n % 4)); }},
        {"space_group", [=](const Document& d) { return space_group(d, car, all, axis); }},
        {"mirror_group", [=](const Document& d) { return mirror_group(d, car, n % 2 ? all : pieces); }},
        {"mirror_copy", [=](const Document& d) { return mirror_copy(d, car, n % 2 ? all : pieces); }},
        {"paste_group",
         [=](const Document& d) {
             return paste_group(d, (car + 1) % 3, copy_group(d, car, n % 2 ? all : Group{{0}, {}}),
                                Vec3(5, 0, 0) * mm);
         }},
        {"take_in_cars", [=](const Document& d) { return take_in_cars(d, demo_document(), {car}).edit; }},
    };
}

} // namespace rampwright::test
