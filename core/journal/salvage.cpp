#include "core/journal/salvage.h"

#include "core/boil/shift_log.h"
#include "core/journal/inside.h"
#include "core/journal/schema.h"

#include <fmt/format.h>
#include <map>
#include <set>

namespace panside {
namespace fs = std::filesystem;
namespace {

using RowKey = std::pair<std::int64_t, std::int64_t>; // shift, number: both tables are in this order

// Steps through a table by its key. A broken page ends a walk; a walk from the other end finds what lies behind it, and
// searches from keys in between what lies between two broken pages.
template <class Visit>
bool walk(SQLite::Database& db, const std::string& columns, const std::string& table, const std::string& number,
          const RowKey& from, bool forward, Visit&& visit) {
    try {
        const std::string order = forward ? "" : " DESC";
        SQLite::Statement query{db, "SELECT shift, " + number + ", " + columns + " FROM " + table + " WHERE (shift, " +
                                        number + ")" + (forward ? ">=" : "<=") + "(?,?) ORDER BY shift" + order + ", " +
                                        number + order};
        SQLite::bind(query, from.first, from.second);
        while (query.executeStep())
            if (!visit(RowKey{query.getColumn(0).getInt64(), query.getColumn(1).getInt64()}, query))
                return true;
        return true;
    } catch (const SQLite::Exception&) {
        return false;
    }
}

constexpr RowKey lowest{INT64_MIN, INT64_MIN}, highest{INT64_MAX, INT64_MAX};

// Calls visit(key, query) once for each row that can be reached.
template <class Visit>
bool reach(SQLite::Database& db, const std::string& columns, const std::string& table, const std::string& number,
           const std::set<std::int64_t>& shifts, Visit&& visit) {
    std::set<RowKey> met;
    const auto once = [&](const RowKey& key, SQLite::Statement& query) {
        if (met.insert(key).second)
            visit(key, query);
        return true;
    };
    if (walk(db, columns, table, number, lowest, true, once))
        return true;
    walk(db, columns, table, number, highest, false, once);
    for (const std::int64_t shift : shifts) {
        walk(db, columns, table, number, {shift, INT64_MIN}, true, once);
        walk(db, columns, table, number, {shift, INT64_MAX}, false, once);
    }
    // From every number between those that were met: what a page that is whole holds is found by its own keys.
    std::vector<RowKey> holes;
    for (auto key = met.begin(); key != met.end(); ++key)
        if (const auto next = std::next(key);
            next != met.end() && next->first == key->first && next->second > key->second + 1)
            for (std::int64_t n = key->second + 1; n < next->second && n < key->second + 4096; ++n)
                holes.emplace_back(key->first, n);
    for (const RowKey& hole : holes)
        if (!met.contains(hole))
            walk(db, columns, table, number, hole, true,
                 [&](const RowKey& key, SQLite::Statement& query) { return !met.contains(key) && once(key, query); });
    return false;
}

class Salvage {
public:
    Salvage(const Journal& from, Journal& into)
        : from_{*from.inside().db}, to_{*into.inside().db}, sealed_{from.inside().version >= firstSealed} {}
    Salvaged run();

private:
    void shiftList();
    void facts();
    void blocks();
    void plainRows();
    void listShift(std::int64_t shift, int live, int opening);
    Salvaged::PartlyLost& lossOf(std::int64_t shift);
    void remember(std::int64_t shift, const std::vector<Sample>& samples);
    void rememberEnds();
    void countGaps();

    SQLite::Database& from_;
    SQLite::Database& to_;
    bool sealed_; // the damaged one bears sums beside every row
    Seal seal_{to_};
    Salvaged salvaged_;
    std::map<std::int64_t, Salvaged::PartlyLost> lost_;
    std::map<std::int64_t, std::set<std::pair<FactId, FactId>>> saved_; // number ranges of a shift's rows
    std::set<std::int64_t> shifts_;
    bool allReached_ = true;
};

Salvaged::PartlyLost& Salvage::lossOf(std::int64_t shift) {
    auto& loss = lost_[shift];
    loss.shift = instantOf(shift);
    return loss;
}

void Salvage::listShift(std::int64_t shift, int live, int opening) {
    if (!shifts_.insert(shift).second)
        return;
    addShift(to_, seal_, {shift, live, opening, 0});
    addTurn(to_, seal_, instantOf(shift), false);
}

void Salvage::shiftList() {
    try {
        SQLite::Statement query{from_, sealed_ ? "SELECT id, live, opening, begun, sum FROM shift ORDER BY begun"
                                               : "SELECT id, live, opening, 0, 0 FROM shift ORDER BY id"};
        while (query.executeStep()) {
            auto row = query.getColumns<ShiftRow, ShiftRow::count>();
            if (sealed_ && sumOf(row) != query.getColumn(4).getInt64()) {
                ++lossOf(row.id).unproven;
                row.opening = 0; // its first facts stand at the times that are in them
            }
            listShift(row.id, row.live, row.opening);
        }
    } catch (const SQLite::Exception&) {
        salvaged_.listLost = true;
    }
}

void Salvage::facts() {
    FactTable facts{to_, seal_};
    allReached_ &=
        reach(from_, "at, row, sum", "fact", "id", shifts_, [&](const RowKey& key, SQLite::Statement& query) {
            const FactRow row{key.second, query.getColumn(2).getInt64(), query.getColumn(3).getString()};
            if (sumOf(instantOf(key.first), row) != query.getColumn(4).getInt64()) {
                ++lossOf(key.first).facts;
                saved_[key.first].insert({row.id, row.id}); // counted already
                return;
            }
            listShift(key.first, 1, 0);
            facts.add(instantOf(key.first), row);
            saved_[key.first].insert({row.id, row.id});
            ++salvaged_.facts;
        });
}

void Salvage::blocks() {
    BlockTable blocks{to_, seal_};
    allReached_ &= reach(from_, "last, count, sum, data", "block", "first", shifts_,
                         [&](const RowKey& key, SQLite::Statement& query) {
                             const auto shift = instantOf(key.first);
                             const FactId last = query.getColumn(2).getInt64();
                             const std::int64_t count = query.getColumn(3).getInt64();
                             const std::string data = query.getColumn(5).getString();
                             Unpacked unpacked;
                             if (sumOf(shift, key.second, data) != query.getColumn(4).getInt64() ||
                                 !unpack(data, unpacked) || unpacked.samples.empty()) {
                                 lossOf(key.first).readings += count;
                                 saved_[key.first].insert({key.second, last});
                                 return;
                             }
                             listShift(key.first, 1, 0);
                             // What stands beside the readings is worked out of them: the sum is of the readings alone.
                             blocks.addPacked(shift, blockRowOf(unpacked.samples), data);
                             remember(key.first, unpacked.samples);
                             salvaged_.readings += static_cast<std::int64_t>(unpacked.samples.size());
                         });
}

// Small tables; what they hold counts only beside the facts. A withdrawal or a setting that nobody is proven to have
// made is left out: the fact stays, and the setting before it stands.
void Salvage::plainRows() {
    allReached_ &= reach(from_, sealed_ ? "fact, at, by, sum" : "fact, at, by, 0", "withdrawal", "id", shifts_,
                         [&](const RowKey& key, SQLite::Statement& query) {
                             const auto row = query.getColumns<WithdrawalRow, WithdrawalRow::count>();
                             saved_[key.first].insert({key.second, key.second});
                             if (sealed_ && sumOf(row) != query.getColumn(5).getInt64())
                                 ++lossOf(key.first).unproven;
                             else
                                 addWithdrawal(to_, seal_, row);
                         });
    try {
        SQLite::Statement query{from_, sealed_ ? "SELECT id, at, row, after, sum FROM carried ORDER BY id"
                                               : "SELECT id, at, row, 0, 0 FROM carried ORDER BY id"};
        while (query.executeStep()) {
            const auto row = query.getColumns<CarriedRow, CarriedRow::count>();
            if (sealed_ && sumOf(row) != query.getColumn(4).getInt64())
                ++salvaged_.settings;
            else
                addCarried(to_, seal_, row.at, row.row, row.after);
        }
    } catch (const SQLite::Exception&) {
        salvaged_.listLost = true;
    }
}

// A block's own numbers: between them stand the facts that came meanwhile.
void Salvage::remember(std::int64_t shift, const std::vector<Sample>& samples) {
    for (auto from = samples.begin(); from != samples.end();) {
        auto to = from + 1;
        while (to != samples.end() && to->id == (to - 1)->id + 1)
            ++to;
        saved_[shift].insert({from->id, (to - 1)->id});
        from = to;
    }
}

// Where the summary still knows how far a shift's numbers went, what is missing at its end is seen too.
void Salvage::rememberEnds() {
    try {
        SQLite::Statement query{from_, "SELECT shift, seen FROM summary"};
        while (query.executeStep())
            saved_[query.getColumn(0).getInt64()].insert(
                {query.getColumn(1).getInt64(), query.getColumn(1).getInt64()});
    } catch (const SQLite::Exception&) {
        return; // it is derived and may be missing
    }
}

// Rows of a shift are numbered without holes: a hole is what could not be reached at all.
void Salvage::countGaps() {
    rememberEnds();
    for (const auto& [shift, ranges] : saved_) {
        FactId next = 1;
        for (const auto& [first, last] : ranges) {
            if (first > next)
                lossOf(shift).unreached += first - next;
            next = std::max(next, last + 1);
        }
    }
    for (const std::int64_t shift : shifts_)
        if (!saved_.contains(shift))
            lossOf(shift);
}

Salvaged Salvage::run() {
    SQLite::Transaction transaction{to_, SQLite::TransactionBehavior::IMMEDIATE};
    shiftList();
    facts();
    blocks();
    plainRows();
    countGaps();
    seal_.close();
    transaction.commit();
    // Where a page could not be reached, the end of the last shift met before it may be missing without a hole to show
    // it.
    for (const std::int64_t shift : shifts_) {
        if (const auto loss = lost_.find(shift); loss != lost_.end())
            salvaged_.partly.push_back(loss->second);
        else
            salvaged_.whole.push_back(instantOf(shift));
    }
    salvaged_.listLost |= !allReached_;
    return salvaged_;
}

} // namespace

Salvaged salvage(const fs::path& damaged, const fs::path& into) {
    if (isThere(into))
        throw JournalError{JournalTrouble::cannotWrite, into, say("it is there already; name a new file")};
    const Journal from = Journal::open(damaged, Journal::Access::read);
    Journal to = Journal::open(into);
    return guarded(into, [&] { return Salvage{from, to}.run(); });
}

std::string sentence(const Salvaged& salvaged) {
    std::string text = fmt::format("{} shifts saved whole, {} in part: {} facts and {} readings.",
                                   salvaged.whole.size(), salvaged.partly.size(), salvaged.facts, salvaged.readings);
    for (const auto& loss : salvaged.partly)
        text += fmt::format("\nShift {}: {} facts and {} readings were altered, {} more could not be reached.{}",
                            textOf(loss.shift), loss.facts, loss.readings, loss.unreached,
                            loss.unproven == 0 ? "" : fmt::format(" {} more entries are not proven.", loss.unproven));
    if (salvaged.settings > 0)
        text += fmt::format("\n{} settings for shifts to come were altered and left out.", salvaged.settings);
    if (salvaged.listLost)
        text += "\nSome pages could not be read at all: there may have been more.";
    return text;
}

} // namespace panside
