// Feeds random texts to the reader of outlines: each must be read or refused by a Problem, and what is read
// must be followed or refused. Needs clang with libFuzzer and the window's library:
//
//   CC=clang CXX=clang++ cmake --preset debug -DRAMPWRIGHT_FUZZ=ON -B build/fuzz
//   cmake --build build/fuzz --target drawing-fuzz
//   mkdir -p build/drawings && build/release/rampwright outline data/harbour-hall.ramp.json --car Tern
//     --out build/drawings/tern.svg
//   build/fuzz/drawing-fuzz -max_total_time=60 -max_len=20000 build/drawings

#include "trace/svg_file.hpp"
#include "trace/take_in.hpp"

#include <rampwright/core/problem.hpp>

#include <cstdint>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace rampwright;
    try {
        const ui::DrawnFile file =
            ui::read_svg({reinterpret_cast<const char*>(data), static_cast<qsizetype>(size)});
        if (file.shapes.empty()) std::abort();
        for (const ui::DrawnShape& shape : file.shapes) {
            // As the window does: nothing longer than a metre is followed.
            if (!((shape.high - shape.low).maxCoeff() < 1000)) continue;
            for (const PlanPoint& point : ui::outline_from(shape, {}))
                if (!point.at.allFinite()) std::abort();
        }
    } catch (const Problem& problem) {
        if (problem.where().empty() || problem.remedy().empty()) std::abort();
    }
    return 0;
}
