// Board, report, season, cords and woodpile say one number of loads, whatever the log: presses doubled, missing, late,
// noticed at the stack and kept, several fires, withdrawn.
#include "core/boil/cords.h"
#include "core/boil/loads.h"
#include "core/boil/shift_log.h"
#include "core/journal/shift_summary.h"
#include "core/rehearsal/rehearse.h"
#include "core/season/shift_account.h"
#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include <random>

namespace panside {
namespace {

using Agree = JournalPlace;

// A log that nobody would want to be given: the presses of a made-up evening, spoilt by chance.
std::vector<Fact> spoilt(std::uint64_t seed) {
    auto facts = readLog(rehearsedLog(Duration{2.5 * 3600}, seed, Duration{5})).facts;
    std::mt19937_64 chance{seed};
    const auto oneIn = [&chance](std::uint64_t n) { return chance() % n == 0; };
    std::vector<Fact> out;
    for (Fact& fact : facts) {
        auto* fired = std::get_if<Fired>(&fact.what);
        if (!fired) {
            out.push_back(fact);
            continue;
        }
        if (oneIn(3))
            continue; // nobody pressed
        if (oneIn(5))
            fired->fire = "finishing pan";
        if (oneIn(4))
            fired->load = Said<Mass>{Mass::kilogram(9), Unit::kg};
        if (oneIn(4))
            fact.at += std::chrono::seconds{chance() % 300}; // late
        if (oneIn(6))
            fired->inferred = true;
        out.push_back(fact);
        if (oneIn(3)) {
            fact.at += std::chrono::seconds{5 + chance() % 60}; // again
            fired->load.reset();
            out.push_back(fact);
        }
        if (oneIn(5)) {
            Fact record = fact;
            record.at -= std::chrono::seconds{chance() % 200};
            std::get<Fired>(record.what).inferred = true;
            record.entered = record.at + std::chrono::seconds{200};
            out.push_back(oneIn(3) ? denialOf(record, *record.entered) : record);
        }
    }
    std::stable_sort(out.begin(), out.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    return out;
}

struct Numbers {
    int loads;
    double wood; // kg, as far as it is known of each load
};

TEST_F(Agree, OnHostileLogs) {
    HandJournal journal = Journal::open(place());
    int inferred = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        SCOPED_TRACE(seed);
        const auto facts = spoilt(seed);
        std::vector<Fact> begun{facts.begin(), facts.end()};
        const auto shift = imported(journal, writeLog(begun)).shift;
        std::vector<FactId> taken; // some are taken back
        for (const auto& [id, fact] : journal.deeds(shift))
            if (std::holds_alternative<Fired>(fact.what) && id % 7 == 0)
                taken.push_back(id);
        for (const FactId id : taken)
            journal.withdrawFrom(shift, id, facts.back().at);

        Boil boil;
        ShiftAccountant accountant;
        CordSum cords{Instant::min()}, pile{Instant::min()};
        journal.visit(shift, [&](FactId id, const Fact& fact) {
            boil.add(id, fact);
            accountant.add(fact);
            cords.add(fact);
            return true;
        });
        const auto add = [&pile](FactId, const Fact& fact) {
            pile.add(fact);
            return true;
        };
        journal.visit(shift, add, Series::stack);
        const Picture board = boil.fold().pictureAt(facts.back().at);
        const ShiftAccount account = accountant.account();
        const ShiftSummary summary = summaryOf(journal, shift);
        ASSERT_GT(board.loads, 3);
        EXPECT_EQ(account.loads, board.loads);
        EXPECT_EQ(summary.loads, board.loads);
        ASSERT_TRUE(board.wood);
        EXPECT_NEAR(account.wood.kilogram(), board.wood->kilogram(), 1e-6);
        EXPECT_NEAR(summary.wood.kilogram(), board.wood->kilogram(), 1e-6);
        EXPECT_NEAR(cords.cords(), account.cords, 1e-9);
        EXPECT_NEAR(pile.cords(), account.cords, 1e-9);
        inferred += boil.noticed().has_value();
    }
    EXPECT_GT(inferred, 3) << "the stack alone showed a load in some of them";
}

// Nobody pressed all night: the report of the imported log has what the board has.
TEST_F(Agree, WithEveryPressTakenOut) {
    auto facts = readLog(rehearsedLog(Duration{3 * 3600.0}, 4)).facts;
    std::erase_if(facts, [](const Fact& fact) { return std::holds_alternative<Fired>(fact.what); });
    HandJournal journal = Journal::open(place());
    const auto shift = imported(journal, writeLog(facts)).shift;
    Boil boil;
    FactId id = 0;
    for (const Fact& fact : facts)
        boil.add(id++, fact);
    const Picture board = boil.fold().pictureAt(facts.back().at);
    const ShiftSummary summary = summaryOf(journal, shift);
    EXPECT_EQ(board.loads, 14);
    EXPECT_EQ(summary.loads, board.loads);
    EXPECT_NEAR(summary.wood.kilogram(), board.wood->kilogram(), 1e-6);
    EXPECT_EQ(journal.facts(shift).size(), facts.size()) << "an import keeps what was in the log, and nothing more";
}

} // namespace
} // namespace panside
