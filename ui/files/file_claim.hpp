#pragma once

#include <QLockFile>
#include <QString>

#include <filesystem>
#include <memory>

namespace rampwright::ui {

/// Tells other windows, of this program or another running one, that a file is open in this one.
/// It only tells: nobody is kept from opening it.
class FileClaim {
public:
    explicit FileClaim(QString folder);

    static QString default_folder();
    /// Gives up what was claimed and claims this file. @return false where another window has it.
    bool claim(const std::filesystem::path& path);
    /// Whether another window has the file.
    bool taken_elsewhere(const std::filesystem::path& path) const;
    void release() { lock_.reset(); }

private:
    QString lock_name(const std::filesystem::path& path) const;

    QString folder_;
    std::unique_ptr<QLockFile> lock_;
    QString held_;
};

} // namespace rampwright::ui
