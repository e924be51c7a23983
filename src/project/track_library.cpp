#include "project/edit_support.hpp"

#include <rampwright/core/data_table.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/project/track_library.hpp>

#include <array>

namespace rampwright {

namespace {

// The order in which they are offered.
constexpr std::array names{"harbour-hall-lane", "club-ramp", "wooden-lane", "constant-slope", "unknown-lane"};

LibraryTrack read(const char* name) {
    const Document document = parse_document(find_data_table(name));
    return {name, text_in(document.root, "title", name), text_in(document.root, "notes", ""),
            document.root.at("track")};
}

} // namespace

const std::vector<LibraryTrack>& track_library() {
    static const std::vector<LibraryTrack> library = [] {
        std::vector<LibraryTrack> made;
        for (const char* name : names)
            made.push_back(read(name));
        return made;
    }();
    return library;
}

Json load_track(const std::filesystem::path& path) {
    const Document document = load_document(path);
    const auto track = document.root.find("track");
    if (track == document.root.end() || !track->is_object())
        throw Problem(Exit::could_not, "/track", Core::tr("this file holds no lane"),
                      Core::tr("choose another project"), path.string());
    return *track;
}

Document track_file(const Json& track) {
    Document document;
    document.root = {{"format", "rampwright-project"},
                     {"version", project_file_version},
                     {"title", text_in(track, "title", "Lane")},
                     {"track", track}};
    return document;
}

} // namespace rampwright
