#pragma once

#include <rampwright/project/document.hpp>

#include <filesystem>
#include <string>
#include <vector>

namespace rampwright {

/// A lane that can be put into a project (set_track): the `track` object of a project file.
struct LibraryTrack {
    std::string name;  ///< of its file: "club-ramp"
    std::string title; ///< for people
    std::string notes; ///< one sentence
    Json track;
};

/// The lanes of data/tracks, built into the program; our own descriptions, none of them a real place.
const std::vector<LibraryTrack>& track_library();

/// The lane of a project file; a lane's own file is a project without cars.
/// @throws Problem where the file cannot be read or holds no lane.
Json load_track(const std::filesystem::path& path);

/// A lane's own file: a project that holds nothing else.
Document track_file(const Json& track);

} // namespace rampwright
