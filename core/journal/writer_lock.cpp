#include "core/journal/writer_lock.h"

#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <string>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace panside {
namespace {

std::string lockFile(const std::filesystem::path& journal) { return journal.string() + ".lock"; }

Sentence holderIn(int descriptor) {
    std::array<char, 32> text{};
    const auto got = ::pread(descriptor, text.data(), text.size() - 1, 0);
    std::string holder{text.data(), got > 0 ? static_cast<std::size_t>(got) : 0};
    while (!holder.empty() && holder.back() == '\n')
        holder.pop_back();
    return holder.empty() ? say("process unknown") : say("process %1", {std::move(holder)});
}

void leaveName(int descriptor) {
    const std::string name = std::to_string(::getpid()) + "\n";
    // Only to be shown to people: where it cannot be written, the lock holds all the same.
    if (::ftruncate(descriptor, 0) == 0 && ::pwrite(descriptor, name.data(), name.size(), 0) < 0)
        errno = 0;
}

} // namespace

std::optional<WriterLock> WriterLock::acquire(const std::filesystem::path& journal, Refusal& refusal) {
    const std::string place = lockFile(journal);
    const int descriptor = ::open(place.c_str(), O_RDWR | O_CREAT | O_NOFOLLOW | O_CLOEXEC, 0600);
    if (descriptor < 0) {
        refusal = {false, asWritten(std::strerror(errno))};
        return std::nullopt;
    }
    if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
        refusal = errno == EWOULDBLOCK ? Refusal{true, holderIn(descriptor)}
                                       : Refusal{false, asWritten(std::strerror(errno))};
        ::close(descriptor);
        return std::nullopt;
    }
    leaveName(descriptor);
    return WriterLock{descriptor};
}

WriterLock::WriterLock(WriterLock&& other) noexcept : descriptor_{std::exchange(other.descriptor_, -1)} {}

WriterLock& WriterLock::operator=(WriterLock&& other) noexcept {
    std::swap(descriptor_, other.descriptor_);
    return *this;
}

bool WriterLock::isOn(const std::filesystem::path& journal) const {
    struct stat there {};
    struct stat held {};
    return ::stat(lockFile(journal).c_str(), &there) == 0 && ::fstat(descriptor_, &held) == 0 &&
           there.st_dev == held.st_dev && there.st_ino == held.st_ino;
}

WriterLock::~WriterLock() {
    if (descriptor_ >= 0)
        ::close(descriptor_);
}

} // namespace panside
