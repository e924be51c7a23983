#include <rampwright/explain/translatable_texts.hpp>

#include <iostream>

/// Writes what stands in catalogues and built-in tables as source for the translators' tool, which reads C++
/// only.
int main() {
    const auto escaped = [](const std::string& text) {
        std::string out;
        for (const char c : text)
            out += c == '"' ? "\\\"" : c == '\\' ? "\\\\" : c == '\n' ? "\\n" : std::string(1, c);
        return out;
    };
    std::cout << "#include <QtGlobal>\nconst char* const texts[] = {\n";
    for (const std::string& text : rampwright::translatable_texts())
        std::cout << "    QT_TRANSLATE_NOOP(\"Core\", \"" << escaped(text) << "\"),\n";
    std::cout << "};\n";
}
