#include "core/journal/open_file.h"

#include <map>
#include <sys/stat.h>

namespace panside {
namespace {

std::mutex openingMutex;
std::mutex countMutex;

std::map<std::pair<dev_t, ino_t>, int>& openCounts() {
    static std::map<std::pair<dev_t, ino_t>, int> counts;
    return counts;
}

} // namespace

std::unique_lock<std::mutex> OpenFile::whileOpening() { return std::unique_lock{openingMutex}; }

OpenFile::File OpenFile::fileAt(const std::filesystem::path& place) {
    struct stat info {};
    return ::stat(place.c_str(), &info) == 0 ? File{info.st_dev, info.st_ino} : File{};
}

bool OpenFile::isOpen(const std::filesystem::path& place) {
    const std::scoped_lock lock{countMutex};
    return openCounts().contains(fileAt(place));
}

OpenFile::OpenFile(const std::filesystem::path& place) : file_{fileAt(place)} {
    const std::scoped_lock lock{countMutex};
    if (file_ != File{})
        ++openCounts()[file_];
}

OpenFile::~OpenFile() {
    const std::scoped_lock lock{countMutex};
    if (const auto count = openCounts().find(file_); count != openCounts().end() && --count->second == 0)
        openCounts().erase(count);
}

bool OpenFile::isElsewhere(const std::filesystem::path& place) const { return fileAt(place) != file_; }

} // namespace panside
