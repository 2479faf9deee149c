#include "core/files/whole_file.h"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <functional>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace panside {
namespace fs = std::filesystem;
namespace {

constexpr std::size_t pieceSize = 1U << 16;

bool isStream(const fs::path& place) {
    std::error_code none;
    const auto status = fs::status(place, none);
    return fs::exists(status) && !fs::is_regular_file(status) && !fs::is_directory(status);
}

// Enough to tell whether the disk gives back what it was given; kept nowhere.
std::uint64_t onward(std::uint64_t sum, std::string_view bytes) {
    return (sum ^ std::hash<std::string_view>{}(bytes)) * 0x9e3779b97f4a7c15U;
}

// How many bytes were written or read, or -1.
template <class Step>
ssize_t again(Step&& step) {
    ssize_t count = 0;
    do
        count = step();
    while (count < 0 && errno == EINTR);
    return count;
}

} // namespace

WholeFile::WholeFile(fs::path place, For whom) : place_{std::move(place)} {
    if (isStream(place_)) {
        number_ = ::open(place_.c_str(), O_WRONLY | O_CLOEXEC);
    } else if (std::error_code none; fs::is_directory(place_, none)) {
        fail(EISDIR);
    } else {
        beside_ = place_.string() + ".XXXXXX";
        number_ = ::mkostemp(beside_.data(), O_CLOEXEC); // for the user alone, and never a file that was there
        if (number_ < 0)
            beside_.clear();
        else if (whom == For::everybody)
            ::fchmod(number_, 0644); // where a disk knows no rights, there are none to give
    }
    if (number_ < 0)
        fail(errno);
}

WholeFile::~WholeFile() {
    if (number_ >= 0)
        ::close(number_);
    if (!beside_.empty())
        ::unlink(beside_.c_str());
}

void WholeFile::fail(int error) const {
    throw fs::filesystem_error{"cannot be written", place_, std::error_code{error, std::generic_category()}};
}

void WholeFile::hashed(std::string_view bytes) {
    while (!bytes.empty()) {
        const auto piece = bytes.substr(0, pieceSize - unhashed_.size());
        unhashed_ += piece;
        bytes.remove_prefix(piece.size());
        if (unhashed_.size() == pieceSize) {
            sum_ = onward(sum_, unhashed_);
            unhashed_.clear();
        }
    }
}

void WholeFile::add(std::string_view bytes) {
    hashed(bytes);
    size_ += bytes.size();
    while (!bytes.empty()) {
        const auto count = again([&] { return ::write(number_, bytes.data(), bytes.size()); });
        if (count < 0)
            fail(errno);
        bytes.remove_prefix(static_cast<std::size_t>(count));
    }
}

// Read back from the disk, not from the system's memory, as far as that can be asked for.
void WholeFile::verify() {
    ::posix_fadvise(number_, 0, 0, POSIX_FADV_DONTNEED);
    const std::uint64_t wrote = onward(sum_, unhashed_);
    std::string piece(pieceSize, '\0');
    std::uint64_t sum = 0, at = 0;
    while (at < size_) {
        std::size_t filled = 0;
        const auto wanted = static_cast<std::size_t>(std::min<std::uint64_t>(pieceSize, size_ - at));
        while (filled < wanted) {
            const auto count = again([&] {
                return ::pread(number_, piece.data() + filled, wanted - filled, static_cast<off_t>(at + filled));
            });
            if (count <= 0)
                fail(count == 0 ? EIO : errno);
            filled += static_cast<std::size_t>(count);
        }
        at += filled;
        if (filled == pieceSize)
            sum = onward(sum, piece);
        else
            piece.resize(filled);
    }
    if (onward(sum, size_ % pieceSize == 0 ? std::string_view{} : std::string_view{piece}) != wrote)
        fail(EIO);
}

void WholeFile::finish() {
    if (beside_.empty()) {
        const int closed = ::close(std::exchange(number_, -1));
        if (closed != 0)
            fail(errno);
        return;
    }
    if (::fsync(number_) != 0)
        fail(errno);
    verify();
    if (::close(std::exchange(number_, -1)) != 0)
        fail(errno);
    if (::rename(beside_.c_str(), place_.c_str()) != 0)
        fail(errno);
    beside_.clear();
    syncFolderOf(place_);
}

void writeWhole(const fs::path& place, std::string_view bytes, WholeFile::For whom) {
    WholeFile file{place, whom};
    file.add(bytes);
    file.finish();
}

void syncFolderOf(const fs::path& place) {
    const fs::path folder = place.has_parent_path() ? place.parent_path() : fs::path{"."};
    const int number = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (number < 0)
        return;      // a folder that may be written and not read
    ::fsync(number); // some disks cannot; the file itself is there
    ::close(number);
}

} // namespace panside
