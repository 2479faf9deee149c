#pragma once
// Back-ups of the journal, made while it is in use, each checked after it was written; and the way back.
#include "core/journal/journal.h"

#include <cstdint>

namespace panside {

// What is the matter with a journal's file, as far as was looked.
struct JournalHealth {
    std::vector<Sentence> findings; // none: sound
    bool sound() const { return findings.empty(); }
};
// At start: SQLite's structures (no readings are unpacked).
JournalHealth quickCheck(const Journal& journal);
// On demand: structures and indexes, and every fact and reading against the sum that was written beside it.
JournalHealth fullCheck(const Journal& journal);

// Pages written and read back; false: stop, and leave no back-up behind.
using BackupProgress = std::function<bool(int done, int all)>;

struct Backup {
    std::filesystem::path place;
    Instant at;     // by the clock that it was made under
    int number = 0; // in the order in which they were made; 0: of an earlier program, before all that have one
};
// Copies the journal as it is at this moment into `folder`, as panside-20250314T180000Z-7.journal: the clock's time,
// and its place in the order in which they were made there, which no clock can turn round. It is written beside, read
// back from the disk byte for byte, and what was copied is looked through (SQLite's structures, every fact's and
// reading's sum); only then is it given its name: a back-up with its name is whole, and whatever happens before leaves
// the older ones as they were. Takes as much memory as the journal is long. Throws JournalError (diskFull, gone where
// the stick was pulled, damaged where a check fails). nullopt: stopped.
std::optional<Backup> backUp(const Journal& journal, const std::filesystem::path& folder, Instant now,
                             const BackupProgress& progress = {});

// The back-ups in a folder, the last made first.
std::vector<Backup> backupsIn(const std::filesystem::path& folder);
// The rule: the ten last made are kept, and the last one of each of the last sixty days of which there are any, and the
// last of each year for good. By the order in which they were made: one that was made under a wrong clock takes the
// place of one, and no more. Removes the others and returns them. Only files with a back-up's name are touched.
std::vector<Backup> pruneBackups(const std::filesystem::path& folder);

// What taking a back-up back would do to the journal, shift by shift.
struct RestorePreview {
    std::vector<Shift> lost;    // in the journal only
    std::vector<Shift> gained;  // in the back-up only
    std::vector<Shift> changed; // in both, with other facts
    std::size_t same = 0;
};
RestorePreview previewRestore(const std::filesystem::path& backup, const std::filesystem::path& journal);
// Puts the back-up in the journal's place; the journal that was there is kept beside it under the name returned. Nobody
// may have the journal open to write (heldByOther).
std::filesystem::path restore(const std::filesystem::path& backup, const std::filesystem::path& journal, Instant now);

} // namespace panside
