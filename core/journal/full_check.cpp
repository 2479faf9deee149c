#include "core/journal/full_check.h"

#include "core/boil/shift_log.h"
#include "core/journal/rows.h"
#include "core/journal/schema.h"

namespace panside {
namespace {

using Kind = JournalFinding::Kind;

class Check {
public:
    Check(SQLite::Database& db, std::vector<JournalFinding>& findings)
        : db_{db}, findings_{findings}, sealed_{db.execAndGet("PRAGMA user_version").getInt() >= firstSealed} {}
    void run() {
        facts();
        blocks();
        if (!sealed_)
            return;
        shifts();
        turns();
        withdrawals();
        carried();
        seals();
        derived();
    }

private:
    void facts();
    void blocks();
    void shifts();
    void turns();
    void withdrawals();
    void carried();
    void seals();
    void derived();

    // A row that was met, with the sum that stands beside it and the one that it should be.
    void met(std::int64_t shift, Part part, std::int64_t sum, std::int64_t expected, JournalFinding finding) {
        there_[{shift, part}].add(asWord(sum));
        if (sum == expected)
            return;
        ++wrong_[{shift, part}];
        findings_.push_back(std::move(finding));
    }
    void compare(const SealPlace& place, const SealSum& sealed, const SealSum& there);

    SQLite::Database& db_;
    std::vector<JournalFinding>& findings_;
    bool sealed_;
    SealSums there_;
    std::map<SealPlace, std::int64_t> wrong_; // rows named already
};

std::string nameOf(std::int64_t shift) { return textOf(instantOf(shift)); }

void Check::facts() {
    SQLite::Statement query{db_, "SELECT shift, id, at, row, sum FROM fact"};
    while (query.executeStep()) {
        const std::int64_t shift = query.getColumn(0).getInt64();
        const FactRow row{query.getColumn(1).getInt64(), query.getColumn(2).getInt64(), query.getColumn(3).getString()};
        met(shift, Part::facts, query.getColumn(4).getInt64(), sumOf(instantOf(shift), row),
            {Kind::fact, nameOf(shift)});
    }
}

void Check::blocks() {
    SQLite::Statement query{db_, "SELECT shift, first, sum, data, last, count, earliest, latest FROM block"};
    BlocksByFour four{query};
    for (auto blocks = four.next(); !blocks.empty(); blocks = four.next())
        for (const auto& block : blocks) {
            const SealPlace place{microsOf(block.shift), Part::blocks};
            there_[place].add(sealOf(block.row, block.sum));
            if (block.sound)
                continue;
            ++wrong_[place];
            findings_.push_back({Kind::readings, nameOf(place.first)});
        }
}

void Check::shifts() {
    SQLite::Statement query{db_, "SELECT id, live, opening, begun, sum FROM shift"};
    while (query.executeStep()) {
        const ShiftRow row{query.getColumn(0).getInt64(), query.getColumn(1).getInt(), query.getColumn(2).getInt(),
                           query.getColumn(3).getInt64()};
        met(ofNoShift, Part::shifts, query.getColumn(4).getInt64(), sumOf(row), {Kind::shiftEntry, nameOf(row.id)});
    }
}

void Check::turns() {
    SQLite::Statement query{db_, "SELECT shift, number, open, sum FROM turn"};
    while (query.executeStep()) {
        const TurnRow row{query.getColumn(0).getInt64(), query.getColumn(1).getInt64(), query.getColumn(2).getInt()};
        met(row.shift, Part::turns, query.getColumn(3).getInt64(), sumOf(row), {Kind::turn, nameOf(row.shift)});
    }
}

void Check::withdrawals() {
    SQLite::Statement query{db_, "SELECT shift, id, fact, at, by, sum FROM withdrawal"};
    while (query.executeStep()) {
        const WithdrawalRow row{query.getColumn(0).getInt64(), query.getColumn(1).getInt64(),
                                query.getColumn(2).getInt64(), query.getColumn(3).getInt64(),
                                query.getColumn(4).getString()};
        met(row.shift, Part::withdrawals, query.getColumn(5).getInt64(), sumOf(row),
            {Kind::withdrawal, nameOf(row.shift)});
    }
}

void Check::carried() {
    SQLite::Statement query{db_, "SELECT id, at, row, after, sum FROM carried"};
    while (query.executeStep()) {
        const CarriedRow row{query.getColumn(0).getInt64(), query.getColumn(1).getInt64(),
                             query.getColumn(2).getString(), query.getColumn(3).getInt64()};
        met(ofNoShift, Part::carried, query.getColumn(4).getInt64(), sumOf(row), {Kind::carried, row.row});
    }
}

void Check::compare(const SealPlace& place, const SealSum& sealed, const SealSum& there) {
    if (sealed == there)
        return;
    const auto& [shift, part] = place;
    const std::string name = shift == ofNoShift ? std::string{} : nameOf(shift);
    const std::int64_t named = wrong_.contains(place) ? wrong_.at(place) : 0;
    const auto missing = sealed.rows - there.rows;
    if (missing > 0)
        findings_.push_back({Kind::missing, name, std::to_string(missing)});
    else if (-missing > named)
        findings_.push_back({Kind::added, name, std::to_string(-missing)});
    else if (named == 0)
        findings_.push_back(part == Part::blocks ? JournalFinding{Kind::readings, name}
                                                 : JournalFinding{Kind::sealed, name});
}

void Check::seals() {
    const SealSums sealed = sealsIn(db_);
    for (const auto& [place, sum] : sealed) {
        const auto found = there_.find(place);
        compare(place, sum, found == there_.end() ? SealSum{} : found->second);
    }
    for (const auto& [place, sum] : there_)
        if (!sealed.contains(place))
            compare(place, {}, sum);
}

void Check::derived() {
    for (const Derived what : {Derived::summary, Derived::scores, Derived::figures})
        for (const std::int64_t shift : shiftsWith(db_, what))
            if (!isAsDerived(db_, what, shift))
                findings_.push_back({Kind::derived, nameOf(shift)});
}

} // namespace

void checkRows(SQLite::Database& db, std::vector<JournalFinding>& findings) { Check{db, findings}.run(); }

} // namespace panside
