#include <bench/bench.hpp>
#include <cstdlib>
#include <filesystem>
#include <stdexcept>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace rampwright;

namespace {

struct Run {
    double seconds = 0;
    double megabytes = 0; ///< greatest resident set
};

/// The program opens the demo on the toolkit's offscreen platform, paints the window into a file and ends.
Run open_window() {
    const auto picture =
        std::filesystem::temp_directory_path() / ("first-" + std::to_string(getpid()) + ".png");
    Run run;
    rusage usage{};
    run.seconds = bench::seconds([&] {
        const pid_t child = fork();
        if (child == 0) {
            setenv("QT_QPA_PLATFORM", "offscreen", 1);
            execl(RAMPWRIGHT_PROGRAM, RAMPWRIGHT_PROGRAM, "--grab", picture.c_str(), "--wait", "0",
                  static_cast<char*>(nullptr));
            _exit(127);
        }
        int status = 0;
        if (child < 0 || wait4(child, &status, 0, &usage) != child || status != 0)
            throw std::runtime_error("the program did not paint its window (is it built with it?)");
    });
    run.megabytes = double(usage.ru_maxrss) / 1024;
    if (!std::filesystem::exists(picture) || std::filesystem::file_size(picture) < 10000)
        throw std::runtime_error("there is no picture");
    std::filesystem::remove(picture);
    return run;
}

bench::Result first_picture() {
    const double seconds = bench::least(5, [] { return open_window().seconds; });
    return {seconds * 1e3, "ms",
            "from the program's start with the demo to its window written as a picture and the program "
            "ended; the "
            "least of five, offscreen"};
}

bench::Result memory() {
    const Run run = open_window();
    return {run.megabytes, "MB", "greatest resident set of that same run, the toolkit's libraries included"};
}

const bench::Registered picture_bench{"first-picture", first_picture};
const bench::Registered memory_bench{"memory", memory};

} // namespace
