#include <rampwright/project/pictures.hpp>

#include <array>
#include <functional>

namespace rampwright {

namespace {

namespace fs = std::filesystem;

/// Texts are UTF-8, whatever the system's own encoding of names.
fs::path path_of(const std::string& utf8) {
    return fs::path(std::u8string(utf8.begin(), utf8.end()));
}

std::string text_of(const fs::path& path) {
    const std::u8string utf8 = path.generic_u8string();
    return {utf8.begin(), utf8.end()};
}

Document with_pictures(Document document, const std::function<fs::path(const fs::path&)>& change) {
    const auto cars = document.root.find("cars");
    if (cars == document.root.end() || !cars->is_array()) return document;
    for (Json& car : *cars) {
        if (!car.is_object() || !car.contains("underlay") || !car["underlay"].is_object()) continue;
        for (Json& underlay : car["underlay"]) {
            if (!underlay.is_object()) continue;
            const auto picture = underlay.find("picture");
            if (picture == underlay.end() || !picture->is_string()) continue;
            const fs::path changed = change(path_of(picture->get<std::string>()));
            if (!changed.empty()) *picture = text_of(changed);
        }
    }
    return document;
}

} // namespace

Document with_full_picture_paths(const Document& document, const fs::path& folder) {
    std::error_code failed;
    const fs::path full = fs::absolute(folder.empty() ? fs::path(".") : folder, failed);
    return with_pictures(document, [&](const fs::path& picture) {
        return failed || picture.empty() || picture.is_absolute() ? picture
                                                                  : (full / picture).lexically_normal();
    });
}

Document with_picture_paths_from(const Document& document, const fs::path& folder) {
    std::error_code failed;
    const fs::path full = fs::absolute(folder.empty() ? fs::path(".") : folder, failed).lexically_normal();
    return with_pictures(document, [&](const fs::path& picture) {
        return failed || !picture.is_absolute() ? picture : picture.lexically_relative(full);
    });
}

} // namespace rampwright
