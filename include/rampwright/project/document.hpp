#pragma once

#include <rampwright/core/json.hpp>
#include <rampwright/project/project.hpp>

#include <filesystem>
#include <string>

namespace rampwright {

/// A project as its file holds it: the JSON tree, unknown keys and the order of keys included.
///
/// A plain value: copy it, compare it, keep old ones for undo. It is changed by edits (edits.hpp)
/// alone and turned into numbers by `read_project`.
struct Document {
    Json root;
    bool operator==(const Document&) const = default;
};

inline constexpr std::size_t largest_project_file = 64u << 20;
inline constexpr int project_file_version = 1;

/// Parses the text of a project file.
/// @throws Problem (Exit::not_ours) where it is not JSON, repeats a key, is nested too deeply, is too
///         large, is not a Rampwright project, or is of a newer version.
Document parse_document(std::string_view text);

/// The text of the file: UTF-8, two spaces of indent, short rows of numbers on one line, numbers in
/// their shortest exact form. parse_document(to_text(d)) == d, and text to text is stable.
std::string to_text(const Document& document);

/// Every value in SI units, ranges checked, defaults filled in and listed in `assumed`.
/// @throws Problem (Exit::not_ours) for a value out of range or of the wrong type; `where` is its JSON
///         pointer.
Project read_project(const Document& document);

/// Reads a file. @throws Problem naming the file; Exit::could_not where it cannot be opened.
Document load_document(const std::filesystem::path& path);

/// Writes `text` so that the file is the old one or the new one, never half: a temporary file in
/// the same folder, written, synced, renamed; a symbolic link is followed, mode bits are kept.
/// @throws Problem (Exit::could_not), the old file untouched.
void write_file(const std::filesystem::path& path, std::string_view text);

/// The document with each car's `figures` brought up to date (results/figures.hpp), as saved.
Document with_figures(const Document& document);

/// Saves with figures: write_file(path, to_text(with_figures(document))).
void save_document(const std::filesystem::path& path, const Document& document);

} // namespace rampwright
