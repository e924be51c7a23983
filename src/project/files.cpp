#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/project/document.hpp>

#include <cerrno>
#include <fcntl.h>
#include <random>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace rampwright {

namespace {

namespace fs = std::filesystem;

/// What the system says, and what the person can do, in words of our own for the usual cases.
Problem system_problem(const std::string& doing, int error, const fs::path& path) {
    std::string cause, remedy;
    switch (error) {
    case ENOENT:
        cause = Core::tr("there is no such file or folder");
        remedy = Core::tr("check the name");
        break;
    case EACCES:
    case EPERM:
        cause = Core::tr("permission denied");
        remedy = Core::tr("choose another place, or change the permissions");
        break;
    case EROFS:
        cause = Core::tr("the place is read-only");
        remedy = Core::tr("choose another place");
        break;
    case ENOTDIR:
        cause = Core::tr("a part of the path is a file, not a folder");
        remedy = Core::tr("check the path");
        break;
    case EISDIR:
        cause = Core::tr("it is a folder");
        remedy = Core::tr("name a file in it");
        break;
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        cause = Core::tr("the disk is full");
        remedy = Core::tr("make room or choose another place; the old file is as it was");
        break;
    case ENAMETOOLONG:
        cause = Core::tr("the name is too long");
        remedy = Core::tr("choose a shorter one");
        break;
    default:
        cause = std::generic_category().message(error);
        remedy = Core::tr("try again, or choose another place");
    }
    return {Exit::could_not, "-", doing + ": " + cause, remedy, path.string()};
}

/// A file descriptor that closes itself.
class Descriptor {
public:
    explicit Descriptor(int number) : number_(number) {}
    ~Descriptor() {
        if (number_ >= 0) ::close(number_);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    int get() const { return number_; }
    explicit operator bool() const { return number_ >= 0; }
    /// Closes now; false where the system only then tells that the data did not get there.
    bool close() { return ::close(std::exchange(number_, -1)) == 0; }

private:
    int number_;
};

/// Removes the file of that name on the way out, unless it has become the real one.
class Temporary {
public:
    explicit Temporary(fs::path path) : path_(std::move(path)) {}
    ~Temporary() {
        if (!path_.empty()) ::unlink(path_.c_str());
    }
    Temporary(const Temporary&) = delete;
    Temporary& operator=(const Temporary&) = delete;

    const fs::path& path() const { return path_; }
    void keep() { path_.clear(); }

private:
    fs::path path_;
};

/// The file a name stands for, symbolic links followed, whether or not it exists yet.
fs::path real_target(const fs::path& path) {
    constexpr int most_links = 40;
    fs::path target = path;
    std::error_code error;
    for (int hop = 0; hop < most_links && fs::is_symlink(target, error); ++hop) {
        const fs::path next = fs::read_symlink(target, error);
        if (error) break;
        target = next.is_absolute() ? next : target.parent_path() / next;
    }
    if (fs::is_symlink(target, error)) throw system_problem(Core::tr("cannot be written"), ELOOP, path);
    return target;
}

/// A new file beside the target, made with the mode a new file gets. The name is kept short, for
/// the target's own may be as long as a name can be.
std::pair<fs::path, int> create_beside(const fs::path& folder) {
    static constexpr char letters[] = "abcdefghijklmnopqrstuvwxyz0123456789";
    std::random_device random;
    std::uniform_int_distribution<std::size_t> pick(0, sizeof letters - 2);
    for (int attempt = 0; attempt < 100; ++attempt) {
        std::string name = ".ramp-";
        for (int i = 0; i < 12; ++i)
            name += letters[pick(random)];
        const fs::path path = folder / (name + ".part");
        const int number = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
        if (number >= 0 || errno != EEXIST) return {path, number};
    }
    errno = EEXIST;
    return {folder, -1};
}

bool write_all(int number, std::string_view text) {
    while (!text.empty()) {
        const ssize_t written = ::write(number, text.data(), text.size());
        if (written < 0) {
            if (errno == EINTR) continue;
            return false;
        }
        text.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

} // namespace

Document load_document(const fs::path& path) {
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file) throw system_problem(Core::tr("cannot be opened"), errno, path);
    std::string text;
    std::string block(1u << 16, '\0');
    // One byte above the limit is enough for the parser to refuse it; a device may have no end.
    while (text.size() <= largest_project_file) {
        const ssize_t count = ::read(file.get(), block.data(), block.size());
        if (count < 0) {
            if (errno == EINTR) continue;
            throw system_problem(Core::tr("cannot be read"), errno, path);
        }
        if (count == 0) break;
        text.append(block, 0, static_cast<std::size_t>(count));
    }
    try {
        return parse_document(text);
    } catch (const Problem& problem) {
        throw problem.in_file(path.string());
    }
}

void write_file(const fs::path& path, std::string_view text) {
    const std::string doing = Core::tr("cannot be written");
    const fs::path target = real_target(path);
    const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");

    struct stat old {};
    const bool exists = ::stat(target.c_str(), &old) == 0;
    if (!exists && errno != ENOENT) throw system_problem(doing, errno, path);
    if (exists && S_ISDIR(old.st_mode)) throw system_problem(doing, EISDIR, path);
    if (exists && !S_ISREG(old.st_mode))
        throw Problem(Exit::could_not, "-",
                      Core::tr("{what}: it is a device or a pipe, not an ordinary file", {{"what", doing}}),
                      Core::tr("name an ordinary file"), path.string());
    // Renaming over it would need no permission on the file itself, but a write-protected file is
    // one that somebody wants kept.
    if (exists && ::access(target.c_str(), W_OK) != 0) throw system_problem(doing, errno, path);

    auto [name, number] = create_beside(folder);
    if (number < 0) throw system_problem(doing, errno, path);
    Descriptor file(number);
    Temporary temporary(name);
    if (exists) {
        // The owner can be kept only by the superuser; a group we are not in stays ours. Best effort:
        // the mode matters more, and comes second because a change of owner clears some of its bits.
        if (::fchown(file.get(), old.st_uid, old.st_gid) != 0) errno = 0;
        if (::fchmod(file.get(), old.st_mode & 07777) != 0) throw system_problem(doing, errno, path);
    }
    if (!write_all(file.get(), text) || ::fsync(file.get()) != 0 || !file.close())
        throw system_problem(doing, errno, path);
    if (::rename(temporary.path().c_str(), target.c_str()) != 0) throw system_problem(doing, errno, path);
    temporary.keep();

    // The rename itself is on the disk only once the folder is; some file systems cannot sync one,
    // and then the new file is in place all the same.
    if (const Descriptor directory(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)); directory)
        ::fsync(directory.get());
}

void save_document(const fs::path& path, const Document& document) {
    write_file(path, to_text(with_figures(document)));
}

} // namespace rampwright
