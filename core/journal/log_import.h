#pragma once
// Shift logs into the journal and out of it again.
#include "core/boil/shift_log.h"
#include "core/journal/journal.h"
#include "core/journal/log_source.h"

#include <cstdint>
#include <functional>
#include <iosfwd>

namespace panside {

enum class ImportOutcome : std::uint8_t {
    added,
    alreadyThere, // a shift with the same beginning and the same facts: nothing added, nothing amiss
    faulty,       // the log has faults
    differs, // a shift with the same beginning but other facts is there: which of the two is right only a person knows
    twoShifts, // a fire is lit after the shift_end
    cancelled,
    unreadable // the file could not be read to its end
};

// Of a log that is refused or cancelled, nothing at all is in the journal.
struct Imported {
    ImportOutcome outcome = ImportOutcome::faulty;
    ShiftId shift{};                                     // its name in the journal, where there is one
    std::vector<std::pair<FactId, std::uint32_t>> lines; // of its deeds and what was `placed`, in the log
    std::uint64_t facts = 0;                             // in the log; of one with faults, its good rows
    std::uint64_t factsThere = 0;                        // differs: in the journal's shift
    std::vector<Fault> faults, warnings;                 // the first ones
    std::uint64_t faultCount = 0, warningCount = 0;      // all of them
    Instant endedAt{}, litAgain{};                       // twoShifts
};
// English, for what is not told by the faults: `night.csv: added as shift 2025-03-14T18:00:00Z, 259210 facts`.
std::string sentence(const Imported& imported, std::string_view file);

struct ImportOptions {
    // How many bytes are read; false: stop, and leave everything as it was. Called every quarter of a megabyte.
    std::function<bool(std::uint64_t bytes)> goOn{};
    std::size_t most = 200; // faults and warnings kept to be shown
    // Asked where a shift's log holds rows of the day book: these rows, and the draws that name a vessel, with their
    // lines. What it finds refuses the log. None: nothing is judged.
    std::function<std::vector<Fault>(const ReadLog& rows)> judge{};
    std::function<bool(const Fact& reading)> placed{}; // readings whose lines are wanted beside those of the deeds
};

// Reads as a stream: ten million readings need some 30 MB. The journal is held only for the moment of the last write.
// Throws JournalError as the journal does.
Imported importLog(Journal& journal, std::istream& log, const ImportOptions& options = {});

// The same of any source: another logger's table by its map.
Imported importLog(Journal& journal, LogSource& log, const ImportOptions& options = {});

// Of facts that an import refuses since they are two shifts', that outcome.
std::optional<Imported> twoShiftsIn(const std::vector<Fact>& facts);

// A shift as a log, in pieces as they are made. False if `goOn` said to stop: what came is then only a part.
bool exportLog(const Journal& journal, ShiftId shift, const std::function<void(std::string_view)>& piece,
               const std::function<bool(std::uint64_t facts)>& goOn = {});

// What a shift's facts are, in any order of equal times: the same for two shifts exactly when their facts are the same.
struct Digest {
    std::uint64_t sum = 0, facts = 0;
    void add(const Fact& fact);
    bool operator==(const Digest&) const = default;
};
Digest digestOf(const Journal& journal, ShiftId shift);

} // namespace panside
