#include "files/fault_report.hpp"

#include <rampwright/core/version.hpp>

#include <QDir>
#include <QFile>

#include <array>
#include <csignal>
#include <cstring>
#include <ctime>
#include <execinfo.h>
#include <fcntl.h>
#include <string>
#include <string_view>
#include <unistd.h>

namespace rampwright::ui {
namespace {

// Set before a fault, since nothing can be allocated in one.
std::string report_path, report_head;

QString file_in(const QString& folder) {
    return QDir(folder).filePath(QStringLiteral("fault.txt"));
}

void put(int file, std::string_view text) {
    while (!text.empty()) {
        const ssize_t written = ::write(file, text.data(), text.size());
        if (written <= 0) return;
        text.remove_prefix(static_cast<std::size_t>(written));
    }
}

std::string_view name_of(int signal) {
    switch (signal) {
    case SIGSEGV:
        return "SIGSEGV, a bad memory access";
    case SIGABRT:
        return "SIGABRT, a check of its own failed or an exception was not taken";
    case SIGFPE:
        return "SIGFPE, a bad computation with whole numbers";
    case SIGILL:
        return "SIGILL, a bad instruction";
    default:
        return "SIGBUS, a bad memory address";
    }
}

/// Calls nothing but what may be called in a signal handler (POSIX, 2.4.3; backtrace's library is loaded
/// beforehand).
void report(int signal) {
    const int file = ::open(report_path.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    if (file >= 0) {
        put(file, report_head);
        std::array<char, 24> digits{};
        std::size_t first = digits.size();
        for (auto left = static_cast<unsigned long>(std::time(nullptr)); left > 0 && first > 0; left /= 10)
            digits[--first] = static_cast<char>('0' + left % 10);
        put(file, "seconds since 1970: ");
        put(file, {digits.data() + first, digits.size() - first});
        put(file, "\nended by ");
        put(file, name_of(signal));
        put(file, "\n");
        std::array<void*, 64> calls{};
        ::backtrace_symbols_fd(calls.data(), ::backtrace(calls.data(), static_cast<int>(calls.size())), file);
        ::close(file);
    }
    // Once more, now to the system: the way it ended stays visible to whoever started it.
    ::raise(signal);
}

} // namespace

void leave_fault_reports_in(const QString& folder) {
    QDir().mkpath(folder);
    report_path = QFile::encodeName(file_in(folder)).toStdString();
    report_head = "Rampwright " + std::string(version()) + "\n";
    std::array<void*, 1> call{};
    ::backtrace(call.data(), 1); // its first call loads a library
    struct sigaction action {};
    action.sa_handler = report;
    // One report; a fault while writing it ends the program.
    action.sa_flags = SA_RESETHAND;
    for (const int signal : {SIGSEGV, SIGABRT, SIGFPE, SIGILL, SIGBUS})
        ::sigaction(signal, &action, nullptr);
}

QString take_fault_report(const QString& folder) {
    QFile file(file_in(folder));
    if (!file.open(QIODevice::ReadOnly)) return {};
    const QString text = QString::fromUtf8(file.read(1 << 16));
    file.close();
    file.remove();
    return text;
}

} // namespace rampwright::ui
