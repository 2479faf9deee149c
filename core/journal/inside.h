#pragma once
// What the parts of the journal share; no one else includes it.
#include "core/journal/journal.h"
#include "core/journal/open_file.h"
#include "core/journal/rows.h"
#include "core/journal/unforeseen.h"
#include "core/journal/writer_lock.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <SQLiteCpp/VariadicBind.h>

#include <array>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <unordered_set>

namespace panside {

// A shift's readings are merged into blocks of so many: large enough that the half-empty last page of each costs
// little.
inline constexpr std::int64_t readingsABlock = 16384;

struct Journal::Inside {
    std::filesystem::path place;
    JournalOptions options;
    std::shared_ptr<WriterLock> lock; // none: opened to read
    std::optional<JournalError> readOnly;
    OpenFile file; // before db: SQLite lets go first
    std::unique_ptr<SQLite::Database> db;
    std::filesystem::path copy; // where a copy is read instead, because the folder cannot be written
    std::int32_t version = 0;
    std::int64_t loose = 0;        // readings of the open shift in small blocks
    std::optional<ShiftId> newest; // shift begun here: a file that is to be the same one must have it

    Inside() = default;
    ~Inside();
    Inside(const Inside&) = delete;
    Inside& operator=(const Inside&) = delete;
    void inspect(bool mayBeNew) const; // throws where the file is none that can be opened
    void connect();
    bool moved() const { return file.isElsewhere(place); }
};

// The words for what SQLite threw.
JournalError errorOf(const SQLite::Exception& error, const std::filesystem::path& place);

template <class Work>
auto guarded(const std::filesystem::path& place, Work&& work) {
    try {
        return work();
    } catch (const SQLite::Exception& error) {
        throw errorOf(error, place);
    } catch (const std::filesystem::filesystem_error& error) {
        throw errorOf(error.code(), place);
    }
}

// Is there a file of that name? Throws where the place cannot even be asked: no right to a folder on the way, a loop of
// links, a network place that is gone.
bool isThere(const std::filesystem::path& place);

// Throws unless this connection may write, in the file that lies at its place.
void requireRight(const Journal::Inside& inside);

// One read transaction: all that is read in it is of the same moment, whatever is written meanwhile.
class Snapshot {
public:
    explicit Snapshot(SQLite::Database& db) : transaction_{db, SQLite::TransactionBehavior::DEFERRED} {}

private:
    SQLite::Transaction transaction_;
};

// When a shift's first fact was, and how many of its facts are the settings in force when it began.
struct Beginning {
    std::int64_t earliest;
    std::int32_t opening;
};
Beginning beginningOf(const Journal::Inside& inside, ShiftId shift);

bool isPlain(const Fact& fact); // a probe's reading with nothing beside it: packed

// A fact of the fact table. A row that is whole but that this version cannot read is shown as a note, not lost.
Fact factIn(const std::string& row, std::int64_t at);
std::unordered_set<FactId> withdrawnIds(SQLite::Database& db, ShiftId shift);
FactId nextId(SQLite::Database& db, ShiftId shift);
// For who has a snapshot already: as Journal::visit.
void visitFacts(const Journal::Inside& inside, ShiftId shift, const std::function<bool(FactId, const Fact&)>& visitor,
                std::optional<Series> only = {});
// A name that no shift or day book has yet: the time of its first row, or soon after it.
ShiftId freeName(const Journal& journal, Instant first);
// Does what was worked out of a shift still bear its sum? Older forms have none.
bool isAsKept(const Journal::Inside& inside, Derived what, ShiftId shift);
// Merges the small blocks of a shift into large ones.
void mergeBlocks(Journal::Inside& inside, ShiftId shift);

} // namespace panside
