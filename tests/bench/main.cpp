#include <algorithm>
#include <bench/bench.hpp>
#include <charconv>
#include <exception>
#include <iostream>

namespace rampwright::bench {

std::vector<Benchmark>& registry() {
    static std::vector<Benchmark> all;
    return all;
}

std::string digits(double value, int significant) {
    char text[64];
    const auto end = std::to_chars(text, text + sizeof text, value, std::chars_format::general, significant);
    return {text, end.ptr};
}

} // namespace rampwright::bench

using namespace rampwright::bench;

namespace {

/// `NAME VALUE UNIT`, then what it was measured against.
bool print(const Benchmark& benchmark) {
    try {
        const Result result = benchmark.run();
        std::cout << benchmark.name << ' ' << digits(result.value) << ' ' << result.unit << "  ("
                  << result.against << ")\n"
                  << std::flush;
        return true;
    } catch (const std::exception& error) {
        std::cerr << "rampwright-bench: " << benchmark.name << ": " << error.what() << '\n';
        return false;
    }
}

} // namespace

/// rampwright-bench [NAME...]: those benchmarks, or all of them. Exit 1 where one failed, 2 for an unknown
/// name.
int main(int count, char** words) {
    std::vector<Benchmark> all = registry();
    std::sort(all.begin(), all.end(), [](const Benchmark& a, const Benchmark& b) { return a.name < b.name; });
    std::vector<Benchmark> chosen;
    for (int n = 1; n < count; ++n) {
        const std::string name = words[n];
        const auto found =
            std::find_if(all.begin(), all.end(), [&](const Benchmark& b) { return b.name == name; });
        if (found == all.end()) {
            std::cerr << "rampwright-bench: no benchmark is called " << name << "; there are:";
            for (const Benchmark& benchmark : all)
                std::cerr << ' ' << benchmark.name;
            std::cerr << '\n';
            return 2;
        }
        chosen.push_back(*found);
    }
    bool fine = true;
    for (const Benchmark& benchmark : chosen.empty() ? all : chosen)
        fine = print(benchmark) && fine;
    return fine ? 0 : 1;
}
