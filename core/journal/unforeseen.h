#pragma once
// The outermost frame of whatever works at a journal: nothing that a disk, a folder or a file can do may end the boil,
// also not what nobody foresaw. What was thrown becomes a JournalError, which is told and tried again.
#include "core/journal/journal_error.h"

#include <optional>
#include <system_error>
#include <utility>

namespace panside {

// What the system said of a place, as a trouble.
JournalError errorOf(const std::error_code& error, const std::filesystem::path& place);

// Only within a catch: what was thrown there, whatever it was.
JournalError thrownAt(const std::filesystem::path& place);

// Runs the work; nullopt, or what went wrong in it. Throws nothing.
template <class Work>
std::optional<JournalError> troubleIn(const std::filesystem::path& place, Work&& work) {
    try {
        std::forward<Work>(work)();
        return std::nullopt;
    } catch (...) {
        return thrownAt(place);
    }
}

} // namespace panside
