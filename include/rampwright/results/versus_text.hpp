#pragma once

#include <rampwright/study/draws.hpp>
#include <rampwright/units/quantity.hpp>

#include <string>

namespace rampwright {

/// What two cars on one clock come to, as people read it: the same words of number on screen and command
/// line.
struct VersusText {
    std::string gap;   ///< by how much the first is the faster one on average, "4.2 ms"; negative: the slower
    std::string sigma; ///< one sigma of that, "3.1 ms"
    std::string lead;  ///< of the first at the finish, "20.1 mm"
    std::string wins;  ///< chance that it wins one heat, "71.3 %"
    std::string better; ///< chance that it is the faster car, "91.0 %"
};
VersusText to_text(const Versus& versus, UnitSystem units);

} // namespace rampwright
