#pragma once
// A file that is written whole or not at all: beside its place under a name that nobody knows, forced to the disk, read
// back, and only then given its name. Whatever fails before leaves what was there as it was. A link that lies in its
// place is replaced, never written through.
#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

namespace panside {

class WholeFile {
public:
    // Who may read it.
    enum class For : std::uint8_t { everybody, userAlone };

    // A device or a pipe at that place is written as it comes. All of these throw std::filesystem::filesystem_error.
    explicit WholeFile(std::filesystem::path place, For whom = For::everybody);
    ~WholeFile(); // not finished: as if it had not been begun
    WholeFile(const WholeFile&) = delete;
    WholeFile& operator=(const WholeFile&) = delete;

    void add(std::string_view bytes);
    void finish();

private:
    void hashed(std::string_view bytes);
    void verify();
    [[noreturn]] void fail(int error) const;

    std::filesystem::path place_;
    std::string beside_; // empty: a device or a pipe
    int number_ = -1;
    std::string unhashed_;
    std::uint64_t sum_ = 0, size_ = 0;
};

void writeWhole(const std::filesystem::path& place, std::string_view bytes,
                WholeFile::For whom = WholeFile::For::everybody);

// Forces a folder's list of names to the disk.
void syncFolderOf(const std::filesystem::path& place);

} // namespace panside
