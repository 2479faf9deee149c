#pragma once
#include <filesystem>
#include <mutex>
#include <sys/types.h>
#include <utility>

namespace panside {

// Marks a journal's file as open in this process. The system drops all of a process's locks on a file as soon as the
// process closes it once, whoever had locked it: so a file that SQLite has open must not be opened and closed beside
// it, not even to look at its first bytes. (Another program could then take the WAL file away under a running console.)
class OpenFile {
public:
    // Held while it is found out whether a file is open, looked at, and opened.
    static std::unique_lock<std::mutex> whileOpening();
    // Is it open in this process? Ask only while opening.
    static bool isOpen(const std::filesystem::path& place);

    OpenFile() = default;
    explicit OpenFile(const std::filesystem::path& place); // only while opening
    ~OpenFile();
    OpenFile(OpenFile&& other) noexcept : file_{std::exchange(other.file_, File{})} {}
    OpenFile& operator=(OpenFile&& other) noexcept {
        std::swap(file_, other.file_);
        return *this;
    }
    // Is the file of that name another one by now, or none?
    bool isElsewhere(const std::filesystem::path& place) const;

private:
    using File = std::pair<dev_t, ino_t>;
    static File fileAt(const std::filesystem::path& place);
    File file_{};
};

} // namespace panside
