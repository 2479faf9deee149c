#include "core/journal/full_check.h"

#include "core/boil/shift_log.h"
#include "core/journal/rows.h"
#include "core/journal/schema.h"

#include <cstdlib>

namespace panside {
namespace {

std::string nameOf(std::int64_t shift) { return textOf(instantOf(shift)); }

class Check {
public:
    Check(SQLite::Database& db, std::vector<Sentence>& findings)
        : db_{db}, findings_{findings}, sealed_{db.execAndGet("PRAGMA user_version").getInt() >= firstSealed} {}
    void run() {
        facts();
        blocks();
        if (!sealed_)
            return;
        rows<ShiftRow>([](const ShiftRow& row) { return say("the shift %1 in the list of shifts", {nameOf(row.id)}); });
        rows<TurnRow>(
            [](const TurnRow& row) { return say("an opening or closing of the shift %1", {nameOf(row.shift)}); });
        rows<WithdrawalRow>(
            [](const WithdrawalRow& row) { return say("a withdrawal of the shift %1", {nameOf(row.shift)}); });
        rows<CarriedRow>([](const CarriedRow& row) { return say("a setting for shifts to come: %1", {row.row}); });
        seals();
        derived();
    }

private:
    void facts();
    void blocks();
    template <class Row>
    void rows(const auto& findingOf) {
        eachRow<Row>(db_, [&](const Row& row, std::int64_t sum) {
            met(row.ofShift(), Row::part, sum, sumOf(row), [&] { return findingOf(row); });
        });
    }
    void seals();
    void derived();

    // A row that was met, with the sum that stands beside it and the one that it should be.
    void met(std::int64_t shift, Part part, std::int64_t sum, std::int64_t expected, const auto& findingOf) {
        there_[{shift, part}].add(asWord(sum));
        if (sum == expected)
            return;
        ++wrong_[{shift, part}];
        findings_.push_back(findingOf());
    }
    void compare(const SealPlace& place, const SealSum& sealed, const SealSum& there);

    SQLite::Database& db_;
    std::vector<Sentence>& findings_;
    bool sealed_;
    SealSums there_;
    std::map<SealPlace, std::int64_t> wrong_; // rows named already
};

void Check::facts() {
    SQLite::Statement query{db_, "SELECT id, at, row, sum, shift FROM fact"};
    while (query.executeStep()) {
        const auto row = query.getColumns<FactRow, 3>();
        const std::int64_t shift = query.getColumn(4).getInt64();
        met(shift, Part::facts, query.getColumn(3).getInt64(), sumOf(instantOf(shift), row),
            [&] { return aFactOf(nameOf(shift)); });
    }
}

void Check::blocks() {
    BlocksByFour four{db_};
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
                findings_.push_back(say(
                    "figures worked out of the shift %1; they are counted again when they are shown", {nameOf(shift)}));
}

} // namespace

void checkRows(SQLite::Database& db, std::vector<Sentence>& findings) { Check{db, findings}.run(); }

} // namespace panside
