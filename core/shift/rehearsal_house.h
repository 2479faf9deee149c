#pragma once
#include <chrono>
#include <cstdint>
#include <filesystem>

namespace panside {

// The sugarhouse that a rehearsal stands in: a journal with nights and a day book made up from the seed, all before
// `now` and the last of them the evening before, in a folder of its own that goes with this object. Throws JournalError
// or std::filesystem::filesystem_error where no disk takes it.
class RehearsalHouse {
public:
    explicit RehearsalHouse(std::uint64_t seed,
                            std::chrono::system_clock::time_point now = std::chrono::system_clock::now());
    ~RehearsalHouse();
    RehearsalHouse(const RehearsalHouse&) = delete;
    RehearsalHouse& operator=(const RehearsalHouse&) = delete;

    const std::filesystem::path& folder() const { return folder_; }
    std::filesystem::path journal() const { return folder_ / "journal.db"; }
    // The journal as it was before tonight. Nobody may have it open.
    void asItWas() const;

private:
    std::filesystem::path past() const { return folder_ / "past.db"; }
    std::filesystem::path folder_;
};

} // namespace panside
