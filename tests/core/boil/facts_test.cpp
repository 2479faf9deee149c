#include "core/boil/facts.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

namespace panside {
namespace {

constexpr Instant sunset{std::chrono::seconds{1'800'000'000}};

Fact readingAt(int second, double si, std::string probe = "pan box") {
    return {sunset + std::chrono::seconds{second}, Reading{Series::syrup_pan, si, Unit::degC, std::move(probe)}};
}

std::vector<FactId> idsOf(const Facts& facts) {
    std::vector<FactId> ids;
    for (const auto& [id, fact] : facts)
        ids.push_back(id);
    return ids;
}

} // namespace

TEST(Facts, StandByTimeAndThoseOfOneTimeByTheirNumbers) {
    Facts facts;
    EXPECT_EQ(facts.add(3, readingAt(10, 375)), 0U);
    EXPECT_EQ(facts.add(2, readingAt(10, 376)), 0U);
    EXPECT_EQ(facts.add(4, readingAt(20, 377)), 2U);
    EXPECT_EQ(facts.add(9, Fact{sunset, Lit{}}), 0U);
    EXPECT_EQ(idsOf(facts), (std::vector<FactId>{9, 2, 3, 4}));
    EXPECT_EQ(facts.before(sunset + std::chrono::seconds{10}), 1U);
    EXPECT_EQ(facts.upTo(sunset + std::chrono::seconds{10}), 3U);
    EXPECT_EQ(facts.front().fact.what, What{Lit{}});
    EXPECT_EQ(facts.back().id, 4);
}

// Whatever a fact can hold: who, when it was entered, what this version does not know.
TEST(Facts, GiveBackWhatWasPutIn) {
    Fact late = readingAt(0, 374.25, "hand");
    late.entered = sunset + std::chrono::hours{1};
    late.by = "Ada";
    Fact odd = readingAt(1, 374.5);
    odd.extra = "colour=blue";
    const std::vector<Fact> put{late,
                                odd,
                                readingAt(2, 0.1 + 0.2, "a probe whose name is longer than fifteen letters"),
                                readingAt(3, 373, {}),
                                {sunset + std::chrono::seconds{4}, Reading{Series::stack, 600, Unit::degF, "pan box"}},
                                {sunset + std::chrono::seconds{5}, Note{"steam"}}};
    Facts facts;
    for (std::size_t i = 0; i < put.size(); ++i)
        facts.add(static_cast<FactId>(i), put[i]);
    Fact scratch{};
    for (std::size_t i = 0; i < put.size(); ++i) {
        EXPECT_EQ(facts[i].fact, put[i]) << i;
        EXPECT_EQ(facts.fact(i, scratch), put[i]) << i;
    }
}

// Against the plain list that they stand for.
TEST(Facts, AgreeWithASortedListHoweverTheyCome) {
    std::mt19937 dice{7};
    const auto from = [&dice](int end) { return static_cast<int>(dice() % static_cast<unsigned>(end)); };
    Facts facts;
    std::vector<FactEntry> plain;
    for (FactId id = 0; id < 2000; ++id) {
        if (!plain.empty() && from(10) == 0) {
            const auto gone = plain.begin() + from(static_cast<int>(plain.size()));
            const auto place = facts.placeOf(gone->id);
            ASSERT_EQ(place, static_cast<std::size_t>(gone - plain.begin()));
            facts.erase(*place);
            plain.erase(gone);
        }
        Fact fact = from(5) == 0 ? Fact{sunset + std::chrono::seconds{from(300)}, Defoamer{1.0 * from(9)}}
                                 : readingAt(from(300), from(400), from(2) == 0 ? "pan box" : "hand");
        const FactEntry entry{id, fact};
        const auto later = [](const FactEntry& a, const FactEntry& b) {
            return std::pair{a.fact.at, a.id} < std::pair{b.fact.at, b.id};
        };
        plain.insert(std::upper_bound(plain.begin(), plain.end(), entry, later), entry);
        facts.add(id, std::move(fact));
    }
    ASSERT_EQ(facts.size(), plain.size());
    for (std::size_t i = 0; i < plain.size(); ++i) {
        EXPECT_EQ(facts[i].id, plain[i].id);
        EXPECT_EQ(facts[i].fact, plain[i].fact);
    }
    EXPECT_FALSE(facts.placeOf(5000));
}

TEST(Facts, AreMadeOfAListInAnyOrder) {
    const Facts facts = std::vector<FactEntry>{{2, readingAt(5, 1)}, {1, readingAt(3, 2)}};
    EXPECT_EQ(idsOf(facts), (std::vector<FactId>{1, 2}));
}

} // namespace panside
