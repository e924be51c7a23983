#include <rampwright/core/version.hpp>

namespace rampwright {

std::string_view version() { return RAMPWRIGHT_VERSION; }

} // namespace rampwright
