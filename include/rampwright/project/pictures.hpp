#pragma once

#include <rampwright/project/document.hpp>

#include <filesystem>

/// Where the pictures of a project lie. Its file names them from its own folder, so that both can be moved
/// together; while it is open they are named in full, so that saving it elsewhere loses none.
namespace rampwright {

/// The document with every picture named in full. @param folder the project file's own.
Document with_full_picture_paths(const Document& document, const std::filesystem::path& folder);

/// The document with every picture named from `folder`, where there is a way; with `/` between the parts.
Document with_picture_paths_from(const Document& document, const std::filesystem::path& folder);

} // namespace rampwright
