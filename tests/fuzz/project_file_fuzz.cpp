// Feeds random texts to the reader of project files: each must be read or refused by a Problem, and what is
// read must survive a save. Needs clang with libFuzzer:
//
//   CC=clang CXX=clang++ cmake --preset debug -DRAMPWRIGHT_FUZZ=ON -DRAMPWRIGHT_UI=OFF -B build/fuzz
//   cmake --build build/fuzz --target project-file-fuzz
//   mkdir -p build/corpus && cp data/*.ramp.json build/corpus
//   build/fuzz/project-file-fuzz -max_total_time=60 -max_len=20000 build/corpus

#include <rampwright/core/problem.hpp>
#include <rampwright/project/document.hpp>

#include <cstdint>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace rampwright;
    try {
        const Document document = parse_document({reinterpret_cast<const char*>(data), size});
        if (!(parse_document(to_text(document)) == document)) std::abort();
        read_project(document);
    } catch (const Problem& problem) {
        if (problem.exit() != Exit::not_ours || problem.where().empty() || problem.remedy().empty())
            std::abort();
    }
    return 0;
}
