#include "program.hpp"

#include <array>
#include <cerrno>
#include <fcntl.h>
#include <fstream>
#include <iterator>
#include <sys/wait.h>
#include <unistd.h>

namespace {

/// A file without a name that a child writes into and the parent reads back.
class Capture {
public:
    Capture() {
        std::array<char, 32> name{"/tmp/rampwright-run-XXXXXX"};
        file_ = ::mkstemp(name.data());
        ::unlink(name.data());
    }
    ~Capture() { ::close(file_); }
    Capture(const Capture&) = delete;
    Capture& operator=(const Capture&) = delete;
    int file() const { return file_; }
    std::string text() const {
        std::string result;
        std::array<char, 65536> buffer;
        ::lseek(file_, 0, SEEK_SET);
        for (ssize_t n; (n = ::read(file_, buffer.data(), buffer.size())) > 0;) result.append(buffer.data(), std::size_t(n));
        return result;
    }

private:
    int file_;
};

} // namespace

Ran run_program(const std::vector<std::string>& words) {
    const Capture out, err;
    const pid_t child = ::fork();
    if (child == 0) {
        ::unsetenv("DISPLAY");
        ::unsetenv("WAYLAND_DISPLAY");
        ::dup2(out.file(), 1);
        ::dup2(err.file(), 2);
        const int nothing = ::open("/dev/null", O_RDONLY);
        ::dup2(nothing, 0);
        std::vector<char*> arguments;
        static const std::string program = RAMPWRIGHT_PROGRAM;
        arguments.push_back(const_cast<char*>(program.c_str()));
        for (const std::string& word : words) arguments.push_back(const_cast<char*>(word.c_str()));
        arguments.push_back(nullptr);
        ::execv(program.c_str(), arguments.data());
        ::_exit(127);
    }
    int status = 0;
    while (::waitpid(child, &status, 0) < 0 && errno == EINTR) {
    }
    return {WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status), out.text(), err.text()};
}
