#pragma once

#include <cstddef>
#include <string>
#include <vector>

namespace rampwright {

/// What could not be read from a pasted table.
struct TableFault {
    std::size_t line = 0; ///< from 1
    std::string column;   ///< its heading
    std::string text;     ///< the cell
    std::string why;
};

} // namespace rampwright
