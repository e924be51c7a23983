// Feeds random texts to the readers that need no project: tables pasted from a spreadsheet (wheels, axles),
// lines of SVG paths, lists of numbers. Each must be read or refused by a Problem, and what is read must be a
// number. Needs clang with libFuzzer:
//
//   CC=clang CXX=clang++ cmake --preset debug -DRAMPWRIGHT_FUZZ=ON -DRAMPWRIGHT_UI=OFF -B build/fuzz
//   cmake --build build/fuzz --target table-fuzz
//   build/fuzz/table-fuzz -max_total_time=60 -max_len=4000

#include <rampwright/bench/axle_table.hpp>
#include <rampwright/bench/wheel_table.hpp>
#include <rampwright/body/path_data.hpp>
#include <rampwright/core/problem.hpp>

#include <cmath>
#include <cstdint>
#include <cstdlib>

namespace {

using namespace rampwright;

template <typename Read>
void refuse_or(Read read) {
    try {
        read();
    } catch (const Problem& problem) {
        if (problem.where().empty() || problem.remedy().empty()) std::abort();
    }
}

void need_finite(double value) {
    if (!std::isfinite(value)) std::abort();
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    refuse_or([text] {
        const WheelTable table = read_wheel_table(text);
        for (const MeasuredWheel& wheel : table.wheels)
            for (const WheelColumn column : all_wheel_columns)
                need_finite(value_of(wheel, column).value_or(0));
        find_outliers(table.wheels);
    });
    refuse_or([text] { read_axle_table(text); });
    refuse_or([text] { read_path_data(text); });
    refuse_or([text] {
        for (const double value : read_number_list(text))
            need_finite(value);
    });
    return 0;
}
