#pragma once

#include <functional>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>

namespace rampwright {

/// The one door by which the core's sentences come into the person's language.
///
/// Every sentence is an English template with `{name}` for what goes into it. A template that stands in the
/// code is written `Core::tr("...")`, which the translators' tools find; those of a catalogue or of a
/// built-in table are listed by `translatable_texts` (explain/translatable_texts.hpp). Without a translation
/// (the command line) the English is said.
struct Core {
    static std::string tr(std::string_view english);
    /// The template with its values in their places.
    static std::string tr(std::string_view english,
                          std::initializer_list<std::pair<std::string_view, std::string>> values);
};

/// While one lives, `Core::tr` says the English on this thread: for files, which are the same in every
/// language.
class InEnglish {
public:
    InEnglish();
    ~InEnglish();
    InEnglish(const InEnglish&) = delete;
    InEnglish& operator=(const InEnglish&) = delete;
};

/// Sets what `Core::tr` asks. Once, before anything is computed: texts are made with the figures, by any
/// thread.
/// @param translate returns what it is given where it has no translation.
void install_translation(std::function<std::string(std::string_view english)> translate);

} // namespace rampwright
