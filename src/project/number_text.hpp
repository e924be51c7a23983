#pragma once

#include <string>

namespace rampwright {

/// A number in its shortest exact form, free of any locale: plain digits between 1e-5 and 1e15, an
/// exponent beyond; always with a point or an exponent, so that it is read back as the same kind of
/// number. @param value finite.
std::string number_text(double value);

/// The same for people: 21.3, 0, 12 (no forced point).
std::string plain_number(double value);

} // namespace rampwright
