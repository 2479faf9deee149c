#pragma once
#include "core/journal/journal_error.h"

#include <filesystem>
#include <optional>
#include <string>

namespace panside {

// The right to write in a journal: one console at a time. A lock of the system's on a file beside the journal, so that
// it is free again the moment its holder ends, however it ends.
class WriterLock {
public:
    ~WriterLock();
    WriterLock(WriterLock&& other) noexcept;
    WriterLock& operator=(WriterLock&& other) noexcept;

    struct Refusal {
        bool held; // by another; otherwise the file cannot be made
        Sentence why;
    };
    static std::optional<WriterLock> acquire(const std::filesystem::path& journal, Refusal& refusal);

    // Is the file that is locked still the one beside the journal?
    bool isOn(const std::filesystem::path& journal) const;

private:
    explicit WriterLock(int descriptor) : descriptor_{descriptor} {}
    int descriptor_;
};

} // namespace panside
