#pragma once

#include <string_view>
#include <vector>

/// What each catalogue of templates holds, for `translatable_texts`; defined beside the catalogue.
namespace rampwright {

std::vector<std::string_view> finding_texts();
std::vector<std::string_view> step_texts();
std::vector<std::string_view> explanation_texts(); ///< sentences, laws and sources
std::vector<std::string_view> input_name_texts();

} // namespace rampwright
