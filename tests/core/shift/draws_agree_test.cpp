// Board, report and season say one number of draws, of checks and of sap, whatever the log: keys doubled, missing,
// late, told by two hands.
#include "core/boil/boil.h"
#include "core/boil/shift_log.h"
#include "core/journal/shift_summary.h"
#include "core/rehearsal/rehearse.h"
#include "core/season/shift_account.h"
#include "tests/core/journal/place.h"

#include <algorithm>
#include <random>

namespace panside {
namespace {

using DrawsAgree = JournalPlace;

// A made-up evening whose keys of the draw were spoilt by chance.
std::vector<Fact> spoiltDraws(std::uint64_t seed) {
    auto facts = readLog(rehearsedLog(Duration{4 * 3600}, seed, Duration{5})).facts;
    std::mt19937_64 chance{seed};
    const auto oneIn = [&chance](std::uint64_t n) { return chance() % n == 0; };
    std::vector<Fact> out;
    for (Fact& fact : facts) {
        const bool opened = std::holds_alternative<DrawOpened>(fact.what);
        const bool closed = std::holds_alternative<DrawClosed>(fact.what);
        const bool told = closed || std::holds_alternative<DensityCheck>(fact.what);
        if ((opened && oneIn(6)) || (closed && oneIn(3)))
            continue; // nobody pressed
        if (closed && oneIn(4))
            fact.at += std::chrono::seconds{chance() % 300}; // late
        out.push_back(fact);
        if ((opened || told) && oneIn(4)) {
            fact.at += std::chrono::seconds{1 + chance() % 50}; // again
            if (auto* draw = std::get_if<DrawClosed>(&fact.what))
                draw->volume.reset();
            out.push_back(fact);
        } else if (closed && oneIn(4)) {
            fact.at += std::chrono::seconds{70 + chance() % 200}; // by another hand
            fact.entered = fact.at + std::chrono::seconds{60};
            out.push_back(fact);
        }
    }
    std::stable_sort(out.begin(), out.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    out.push_back({.at = out.back().at + std::chrono::seconds{1}, .what = ShiftEnd{}});
    return out;
}

TEST_F(DrawsAgree, OnHostileLogs) {
    Journal journal = Journal::open(place());
    int draws = 0, keyed = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        SCOPED_TRACE(seed);
        const auto facts = spoiltDraws(seed);
        const auto shift = imported(journal, writeLog(facts)).shift;
        Boil boil;
        ShiftAccountant accountant;
        journal.visit(shift, [&](FactId id, const Fact& fact) {
            boil.add(id, fact);
            accountant.add(fact);
            keyed += std::holds_alternative<DrawClosed>(fact.what);
            return true;
        });
        const Picture board = boil.fold().pictureAt(facts.back().at);
        const ShiftAccount account = accountant.account();
        const ShiftSummary summary = summaryOf(journal, shift);
        EXPECT_EQ(account.draws, board.draws);
        EXPECT_EQ(summary.draws, board.draws);
        EXPECT_NEAR(account.syrup.litre(), board.syrupOut.value_or(Volume{}).litre(), 1e-6);
        EXPECT_NEAR(summary.syrup.litre(), board.syrupOut.value_or(Volume{}).litre(), 1e-6);
        EXPECT_EQ(summary.checks, account.checks);
        EXPECT_NEAR(summary.sap.litre(), board.sapIn.value_or(Volume{}).litre(), 1e-6);
        EXPECT_NEAR(account.sapIn.value_or(Volume{}).litre(), summary.sap.litre(), 1e-6);
        draws += board.draws;
    }
    EXPECT_GT(draws, 40);
    EXPECT_GT(keyed, 40);
}

// The board says at once what the pan shows, the report when a fact tells of it; at the end they are one.
TEST_F(DrawsAgree, OnADrawThatNobodyKeyedShut) {
    auto facts = readLog(rehearsedLog(Duration{4 * 3600.0}, 3, Duration{2})).facts;
    int closed = 0;
    std::erase_if(facts,
                  [&](const Fact& fact) { return std::holds_alternative<DrawClosed>(fact.what) && ++closed % 2 == 0; });
    facts.push_back({.at = facts.back().at + std::chrono::seconds{1}, .what = ShiftEnd{}});
    Journal journal = Journal::open(place());
    const auto shift = imported(journal, writeLog(facts)).shift;
    Boil boil;
    FactId id = 0;
    for (const Fact& fact : facts)
        boil.add(id++, fact);
    const Picture board = boil.fold().pictureAt(facts.back().at);
    ASSERT_GE(closed, 2);
    EXPECT_EQ(board.draws, closed);
    EXPECT_EQ(summaryOf(journal, shift).draws, closed);
    EXPECT_EQ(summaryOf(journal, shift).drawsMeasured, (closed + 1) / 2);
}

} // namespace
} // namespace panside
