#include "core/journal/full_check.h"

#include "core/boil/shift_log.h"
#include "core/journal/rows.h"
#include "core/journal/schema.h"

#include <cstdlib>

namespace panside {
namespace {

class Check {
public:
    Check(SQLite::Database& db, std::vector<Sentence>& findings)
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
    void met(std::int64_t shift, Part part, std::int64_t sum, std::int64_t expected, Sentence finding) {
        there_[{shift, part}].add(asWord(sum));
        if (sum == expected)
            return;
        ++wrong_[{shift, part}];
        findings_.push_back(std::move(finding));
    }
    void compare(const SealPlace& place, const SealSum& sealed, const SealSum& there);

    SQLite::Database& db_;
    std::vector<Sentence>& findings_;
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
        met(shift, Part::facts, query.getColumn(4).getInt64(), sumOf(instantOf(shift), row), aFactOf(nameOf(shift)));
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
            findings_.push_back(readingsOf(nameOf(place.first)));
        }
}

void Check::shifts() {
    SQLite::Statement query{db_, "SELECT id, live, opening, begun, sum FROM shift"};
    while (query.executeStep()) {
        const ShiftRow row{query.getColumn(0).getInt64(), query.getColumn(1).getInt(), query.getColumn(2).getInt(),
                           query.getColumn(3).getInt64()};
        met(ofNoShift, Part::shifts, query.getColumn(4).getInt64(), sumOf(row),
            say("the shift %1 in the list of shifts", {nameOf(row.id)}));
    }
}

void Check::turns() {
    SQLite::Statement query{db_, "SELECT shift, number, open, sum FROM turn"};
    while (query.executeStep()) {
        const TurnRow row{query.getColumn(0).getInt64(), query.getColumn(1).getInt64(), query.getColumn(2).getInt()};
        met(row.shift, Part::turns, query.getColumn(3).getInt64(), sumOf(row),
            say("an opening or closing of the shift %1", {nameOf(row.shift)}));
    }
}

void Check::withdrawals() {
    SQLite::Statement query{db_, "SELECT shift, id, fact, at, by, sum FROM withdrawal"};
    while (query.executeStep()) {
        const WithdrawalRow row{query.getColumn(0).getInt64(), query.getColumn(1).getInt64(),
                                query.getColumn(2).getInt64(), query.getColumn(3).getInt64(),
                                query.getColumn(4).getString()};
        met(row.shift, Part::withdrawals, query.getColumn(5).getInt64(), sumOf(row),
            say("a withdrawal of the shift %1", {nameOf(row.shift)}));
    }
}

void Check::carried() {
    SQLite::Statement query{db_, "SELECT id, at, row, after, sum FROM carried"};
    while (query.executeStep()) {
        const CarriedRow row{query.getColumn(0).getInt64(), query.getColumn(1).getInt64(),
                             query.getColumn(2).getString(), query.getColumn(3).getInt64()};
        met(ofNoShift, Part::carried, query.getColumn(4).getInt64(), sumOf(row),
            say("a setting for shifts to come: %1", {row.row}));
    }
}

void Check::compare(const SealPlace& place, const SealSum& sealed, const SealSum& there) {
    if (sealed == there)
        return;
    const std::int64_t shift = place.first;
    const Part part = place.second;
    const std::int64_t named = wrong_.contains(place) ? wrong_.at(place) : 0;
    const auto missing = sealed.rows - there.rows;
    const std::string name = shift == ofNoShift ? std::string{} : nameOf(shift),
                      rows = std::to_string(std::abs(missing));
    const auto tell = [&](Sentence ofShift, Sentence ofNone) {
        findings_.push_back(std::move(shift == ofNoShift ? ofNone : ofShift));
    };
    if (missing > 0)
        tell(say("missing rows, %1 of the shift %2", {rows, name}),
             say("missing rows, %1 of the list of shifts or of settings for shifts to come", {rows}));
    else if (-missing > named)
        tell(say("rows that were not kept here, %1 of the shift %2", {rows, name}),
             say("rows that were not kept here, %1 of the list of shifts or of settings for shifts to come", {rows}));
    else if (named == 0 && part == Part::blocks)
        findings_.push_back(readingsOf(name));
    else if (named == 0)
        tell(say("rows that are not as they were kept of the shift %1", {name}),
             say("rows that are not as they were kept of the list of shifts or of settings for shifts to come"));
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
                findings_.push_back(
                    say("figures worked out of the shift %1; have them counted again", {nameOf(shift)}));
}

} // namespace

void checkRows(SQLite::Database& db, std::vector<Sentence>& findings) { Check{db, findings}.run(); }

} // namespace panside
