#include "project/helpers.hpp"

#include <catch2/catch.hpp>

#include <csignal>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

using namespace rampwright;
using namespace rampwright::test;
using Catch::Contains;
namespace fs = std::filesystem;

namespace {

unsigned mode_of(const fs::path& path) {
    struct stat status {};
    REQUIRE(::stat(path.c_str(), &status) == 0);
    return status.st_mode & 07777u;
}

/// Runs `action` in a process of its own and tells its exit status.
template <class Action>
int in_child(Action&& action) {
    const pid_t child = ::fork();
    if (child == 0) ::_exit(action());
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

/// The exit status of a child that may use this many bytes a file, and then writes; 0 where it was told so.
int write_with_file_limit(const fs::path& path, const std::string& text, rlim_t limit) {
    return in_child([&] {
        std::signal(SIGXFSZ, SIG_IGN); // as a full disk: an error from write, not a signal
        const rlimit small{limit, limit};
        if (::setrlimit(RLIMIT_FSIZE, &small) != 0) return 9;
        const auto problem = problem_of([&] { write_file(path, text); });
        if (!problem) return 1;
        if (problem->exit() != Exit::could_not) return 2;
        if (problem->wrong().find("the disk is full") == std::string::npos) return 3;
        return problem->file() == path.string() ? 0 : 4;
    });
}

} // namespace

TEST_CASE("what cannot be opened says why and names the file") {
    TestFolder folder;
    write_file(folder / "plain.txt", "hello");
    const std::pair<fs::path, const char*> rows[] = {
        {folder / "absent.ramp.json", "no such file"},
        {folder.path(), "a folder"},
        {folder / "plain.txt/under.ramp.json", "not a folder"},
        {folder / std::string(300, 'x'), "too long"},
    };
    for (const auto& [path, wrong] : rows) {
        INFO(path);
        const auto problem = problem_of([&] { load_document(path); });
        REQUIRE(problem);
        CHECK(problem->exit() == Exit::could_not);
        CHECK(problem->file() == path.string());
        CHECK_THAT(problem->wrong(), Contains(wrong));
    }
    const auto damaged = problem_of([&] { load_document(folder / "plain.txt"); });
    REQUIRE(damaged);
    CHECK(damaged->exit() == Exit::not_ours);
    CHECK(damaged->where() == "line 1, column 1");
    CHECK(damaged->file() == (folder / "plain.txt").string());
    CHECK(bytes_of(folder / "plain.txt") == "hello");
}

TEST_CASE("a file without read permission is refused") {
    TestFolder folder;
    write_file(folder / "closed.ramp.json", bytes_of(demo_path()));
    fs::permissions(folder / "closed.ramp.json", fs::perms::none);
    // The superuser may read it all the same, so a child gives up that right first.
    const int status = in_child([&] {
        if (::geteuid() == 0) {
            fs::permissions(folder.path(), fs::perms::all);
            if (::setgid(65534) != 0 || ::setuid(65534) != 0) return 9;
        }
        const auto problem = problem_of([&] { load_document(folder / "closed.ramp.json"); });
        if (!problem || problem->exit() != Exit::could_not) return 1;
        return problem->wrong().find("permission denied") != std::string::npos ? 0 : 2;
    });
    CHECK(status == 0);
}

TEST_CASE("a device without end is read no further than the limit") {
    const auto problem = problem_of([] { load_document("/dev/zero"); });
    REQUIRE(problem);
    CHECK_THAT(problem->wrong(), Contains("64 MiB"));
}

TEST_CASE("a place that cannot be written says so, and nothing is left behind") {
    TestFolder folder;
    write_file(folder / "plain.txt", "hello");
    fs::create_directory(folder / "sub");
    const std::pair<fs::path, const char*> rows[] = {
        {folder / "none/a.ramp.json", "no such file or folder"},
        {folder / "plain.txt/a.ramp.json", "not a folder"},
        {folder / "sub", "a folder"},
        {"/dev/full", "a device"},
        {"/proc/a.ramp.json", "cannot be written"}, // no files can be made there, not even by the superuser
    };
    for (const auto& [path, wrong] : rows) {
        INFO(path);
        const auto problem = problem_of([&] { write_file(path, "new"); });
        REQUIRE(problem);
        CHECK(problem->exit() == Exit::could_not);
        CHECK(problem->file() == path.string());
        CHECK_THAT(problem->wrong(), Contains(wrong));
    }
    CHECK(bytes_of(folder / "plain.txt") == "hello");
    CHECK(folder.count() == 2);
}

TEST_CASE("a read-only folder or file keeps what it has") {
    TestFolder folder;
    fs::permissions(folder.path(), fs::perms::all);
    fs::create_directory(folder / "locked");
    write_file(folder / "locked/a.ramp.json", "old");
    fs::permissions(folder / "locked/a.ramp.json", fs::perms::all);
    fs::permissions(folder / "locked", fs::perms::owner_read | fs::perms::owner_exec |
                                           fs::perms::others_read | fs::perms::others_exec);
    write_file(folder / "kept.ramp.json", "old");
    fs::permissions(folder / "kept.ramp.json", fs::perms::owner_read | fs::perms::others_read);
    const int status = in_child([&] {
        if (::geteuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0)) return 9;
        for (const char* name : {"locked/a.ramp.json", "kept.ramp.json"}) {
            const auto problem = problem_of([&] { write_file(folder / name, "new"); });
            if (!problem || problem->wrong().find("permission denied") == std::string::npos) return 1;
        }
        return 0;
    });
    CHECK(status == 0);
    CHECK(bytes_of(folder / "locked/a.ramp.json") == "old");
    CHECK(bytes_of(folder / "kept.ramp.json") == "old");
    fs::permissions(folder / "locked", fs::perms::all);
}

TEST_CASE("a full disk leaves the old file as it was, and no scrap of the new one") {
    TestFolder folder;
    const fs::path path = folder / "a.ramp.json";
    const std::string old(2000, 'o');
    write_file(path, old);
    const std::string text(3u << 20, 'n');
    for (const rlim_t limit :
         {rlim_t{0}, rlim_t{1}, rlim_t{4096}, rlim_t{1u << 20}, rlim_t{text.size() - 1}}) {
        INFO(limit);
        CHECK(write_with_file_limit(path, text, limit) == 0);
        CHECK(bytes_of(path) == old);
        CHECK(folder.count() == 1);
    }
    CHECK(write_with_file_limit(folder / "b.ramp.json", text, 100) == 0);
    CHECK(folder.count() == 1);
    CHECK(write_with_file_limit(path, text, text.size()) == 1); // just enough room: no problem
    CHECK(bytes_of(path) == text);
}

TEST_CASE("killed in the middle of saving, the file is an old one or a new one, never a mix") {
    TestFolder folder;
    const fs::path path = folder / "a.ramp.json";
    const auto version = [](int n) { return std::string(1u << 20, static_cast<char>('a' + n % 20)); };
    write_file(path, version(0));
    for (int round = 0; round < 25; ++round) {
        const pid_t child = ::fork();
        if (child == 0)
            for (int n = 0;; ++n)
                write_file(path, version(n));
        std::this_thread::sleep_for(std::chrono::milliseconds(5 + round));
        ::kill(child, SIGKILL);
        ::waitpid(child, nullptr, 0);
        const std::string found = bytes_of(path);
        REQUIRE(found.size() == 1u << 20);
        REQUIRE(found.find_first_not_of(found[0]) == std::string::npos);
    }
}

TEST_CASE("a symbolic link stays one, and its target is written") {
    TestFolder folder;
    fs::create_directory(folder / "real");
    write_file(folder / "real/a.ramp.json", "old");
    fs::create_symlink("real/a.ramp.json", folder / "link.ramp.json");
    fs::create_symlink("link.ramp.json", folder / "link2.ramp.json");
    write_file(folder / "link2.ramp.json", "new");
    CHECK(fs::is_symlink(folder / "link2.ramp.json"));
    CHECK(fs::is_symlink(folder / "link.ramp.json"));
    CHECK(bytes_of(folder / "real/a.ramp.json") == "new");

    fs::create_symlink("real/b.ramp.json", folder / "dangling.ramp.json");
    write_file(folder / "dangling.ramp.json", "made");
    CHECK(bytes_of(folder / "real/b.ramp.json") == "made");

    fs::create_symlink("round.ramp.json", folder / "round.ramp.json");
    const auto problem = problem_of([&] { write_file(folder / "round.ramp.json", "x"); });
    REQUIRE(problem);
    CHECK(problem->exit() == Exit::could_not);
}

TEST_CASE("mode bits are kept; a new file gets those of any new file") {
    TestFolder folder;
    const mode_t old = ::umask(027);
    write_file(folder / "new.ramp.json", "1");
    ::umask(old);
    CHECK(mode_of(folder / "new.ramp.json") == 0640u);
    for (const unsigned mode : {0600u, 0664u, 0640u, 0755u}) {
        REQUIRE(::chmod((folder / "new.ramp.json").c_str(), mode) == 0);
        write_file(folder / "new.ramp.json", "2");
        CHECK(mode_of(folder / "new.ramp.json") == mode);
    }
}

TEST_CASE("a name in the current folder and the longest name are written") {
    TestFolder folder;
    const std::string longest = std::string(245, 'n') + ".ramp.json"; // 255 bytes: NAME_MAX on Linux
    write_file(folder / longest, "text");
    CHECK(bytes_of(folder / longest) == "text");
    const int status = in_child([&] {
        if (::chdir(folder.path().c_str()) != 0) return 9;
        write_file("here.ramp.json", "text");
        return 0;
    });
    CHECK(status == 0);
    CHECK(bytes_of(folder / "here.ramp.json") == "text");
}

TEST_CASE("saving and loading give the same project") {
    TestFolder folder;
    save_document(folder / "a.ramp.json", demo_document());
    const Document again = load_document(folder / "a.ramp.json");
    CHECK(to_text(with_figures(demo_document())) == to_text(again));
    CHECK(read_project(again).cars.size() == 3);
}
