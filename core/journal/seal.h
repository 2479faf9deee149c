#pragma once
// Sums over what is kept, so that whatever was altered, added or taken out beside the journal is found and named. Each
// row bears the sum of what stands in it; and for each shift and each kind of its rows stands how many there are and
// what their sums come to, carried on with every row that is kept (`seal`). A row that went is so missed where its own
// sum went with it. No protection against ill will: who alters a row may alter the sums.
#include "core/journal/hash.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <cstdint>
#include <map>
#include <utility>
#include <vector>

namespace panside {

// On disk: never change.
enum class Part : std::uint8_t { shifts = 1, turns, facts, blocks, withdrawals, carried };

// What belongs to no one shift: the list of shifts, and what is carried between them.
inline constexpr std::int64_t ofNoShift = INT64_MIN;

struct SealSum {
    std::int64_t rows = 0;
    std::uint64_t sum = 0;
    void add(std::uint64_t row) { ++rows, sum += mixed(row); }
    void drop(std::uint64_t row) { --rows, sum -= mixed(row); }
    bool operator==(const SealSum&) const = default;
};
using SealPlace = std::pair<std::int64_t, Part>;
using SealSums = std::map<SealPlace, SealSum>;

// What one transaction adds and takes away; close() before it is committed.
class Seal {
public:
    explicit Seal(SQLite::Database& db) : db_{db} {}
    void add(std::int64_t shift, Part part, std::uint64_t row) { changed_[{shift, part}].add(row); }
    void drop(std::int64_t shift, Part part, std::uint64_t row) { changed_[{shift, part}].drop(row); }
    void close();

private:
    SQLite::Database& db_;
    SealSums changed_;
};

// As they stand in the journal.
SealSums sealsIn(SQLite::Database& db);

// What was worked out from a shift's facts bears one sum a shift: it can be worked out again, but not be altered
// unseen.
enum class Derived : std::uint8_t { summary, scores, figures };
std::int64_t sumOf(SQLite::Database& db, Derived what, std::int64_t shift);
// Writes it beside what was worked out, or asks whether it still fits.
void sealDerived(SQLite::Database& db, Derived what, std::int64_t shift);
bool isAsDerived(SQLite::Database& db, Derived what, std::int64_t shift);
// The shifts of which there is such a thing.
std::vector<std::int64_t> shiftsWith(SQLite::Database& db, Derived what);

} // namespace panside
