#include "core/season/tuning.h"

#include "core/boil/shift_log.h"
#include "core/physics/wood.h"

#include <gtest/gtest.h>

#include <algorithm>

#include <cmath>
#include <functional>
#include <random>

namespace panside {
namespace {

// A made-up season: each night fires a little differently, and boils as the truth says, give or take luck.
struct Truth {
    double sooner = 0;  // logarithm of the evaporation for 2 minutes sooner
    double smaller = 0; // for 5 kg less
    double drier = 0;   // for 5 points drier
    double luck = 0.04;
    double tied = 0; // 1: the load is what the interval says, to a tenth
    int nights = 20;
};

std::vector<SeasonShift> seasonOfTruth(const Truth& truth, std::uint64_t seed) {
    std::mt19937_64 dice{seed};
    std::normal_distribution<double> normal;
    std::vector<SeasonShift> shifts;
    const Instant begins = instantIn("2026-03-01T20:00:00Z").value();
    for (int night = 0; night < truth.nights; ++night) {
        ShiftAccount account;
        account.first = begins + std::chrono::days{night + (night * 7 % 3)};
        account.last = account.first + std::chrono::hours{8};
        const double interval = 480 + 80 * normal(dice);
        const double free = 22 + 4 * normal(dice);
        const double load = truth.tied > 0 ? 22 * interval / 480 + 0.1 * normal(dice) : free;
        const double moisture = 0.22 + 0.03 * normal(dice);
        account.loads = account.loadsWeighed = 50;
        account.wood = Mass::kilogram(50 * load);
        account.woods["maple"] = account.wood;
        account.cords = account.wood / *cordMass(woods().front(), WetBasis{0.2});
        account.moisture = moisture;
        account.fireInterval = Duration{interval};
        account.sapSugar = Brix::degrees(2 + 0.3 * normal(dice));
        account.sapIn = Volume::litre(1500);
        account.pressure = Pressure::kilopascal(99 + normal(dice));
        account.draws = account.drawsMeasured = 6;
        account.syrup = Volume::litre(40 * std::exp(0.05 * normal(dice)));
        account.evaporation = VolumeFlow::litrePerHour(
            230 * std::exp(truth.sooner * (480 - interval) / 120 + truth.smaller * (22 - load) / 5 +
                           truth.drier * (0.22 - moisture) / 0.05 + truth.luck * normal(dice)));
        shifts.push_back({account.first, false, account});
    }
    return shifts;
}

const Effect* effectOf(const Tuning& tuning, Cause cause, const std::string& what = {}) {
    for (const Effect& effect : tuning.effects)
        if (effect.cause == cause && effect.what == what)
            return &effect;
    return nullptr;
}

bool claims(Verdict verdict) { return verdict == Verdict::pays || verdict == Verdict::costs; }

int claimsIn(const Tuning& tuning) {
    int count = 0;
    for (const Effect& effect : tuning.effects)
        count += claims(effect.verdict);
    for (const Entangled& group : tuning.entangled)
        count += claims(group.verdict);
    return count;
}

TEST(Tuning, FindsWhatIsThere) {
    const Truth truth{.sooner = 0.12, .smaller = -0.08, .drier = 0.05, .luck = 0.03, .nights = 40};
    int held = 0, tried = 0, claimed = 0;
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        const auto tuning = tune(seasonOfTruth(truth, seed), Outcome::evaporation);
        EXPECT_TRUE(tuning.entangled.empty()) << seed;
        const struct {
            Cause cause;
            double value;
        } true_[] = {
            {Cause::fireInterval, truth.sooner}, {Cause::loadMass, truth.smaller}, {Cause::moisture, truth.drier}};
        for (const auto& [cause, value] : true_) {
            const Effect* effect = effectOf(tuning, cause);
            ASSERT_NE(effect, nullptr);
            held += effect->low <= value && value <= effect->high;
            ++tried;
        }
        claimed += effectOf(tuning, Cause::fireInterval)->verdict == Verdict::pays &&
                   effectOf(tuning, Cause::loadMass)->verdict == Verdict::costs;
        EXPECT_NE(effectOf(tuning, Cause::fireInterval)->verdict, Verdict::costs);
    }
    EXPECT_GE(held, 0.90 * tried); // 180 trials at 0.95: three standard deviations under are 0.90
    EXPECT_GE(claimed, 57);
}

TEST(Tuning, ClaimsNothingWhereThereIsNothing) {
    int wrong = 0;
    constexpr int seasons = 200;
    for (std::uint64_t seed = 1; seed <= seasons; ++seed)
        for (const int nights : {8, 25})
            wrong += claimsIn(tune(seasonOfTruth({.nights = nights}, seed), Outcome::evaporation)) > 0;
    // At most one season in twenty may make a claim at all; of 400 that is 20, and three standard deviations more.
    EXPECT_LE(wrong, 20 + 13) << wrong;
    RecordProperty("wrong", wrong);
}

TEST(Tuning, SaysTooLittleOfThreeNights) {
    // Even where the truth is loud.
    const auto tuning = tune(seasonOfTruth({.sooner = 0.4, .luck = 0.001, .nights = 3}, 5), Outcome::evaporation);
    EXPECT_EQ(tuning.nights, 3);
    EXPECT_FALSE(tuning.effects.empty());
    EXPECT_EQ(claimsIn(tuning), 0);
    for (const Effect& effect : tuning.effects)
        EXPECT_NE(effect.verdict, Verdict::hardlyMatters);
    ASSERT_TRUE(tuning.next);
    EXPECT_TRUE(rowOf(tuning.effects[tuning.next->effect].cause).choosable);
}

// What a boil gave is not known before its end: the night that is on tells nothing yet.
TEST(Tuning, LearnsNothingFromTheNightThatIsOn) {
    auto shifts = seasonOfTruth({.sooner = 0.2, .nights = 12}, 4);
    const auto ended = tune(shifts, Outcome::evaporation);
    auto tonight = shifts.back();
    tonight.id += std::chrono::days{1};
    tonight.open = true;
    tonight.account->evaporation = VolumeFlow::litrePerHour(20); // just lit
    shifts.push_back(tonight);
    const auto meanwhile = tune(shifts, Outcome::evaporation);
    EXPECT_EQ(meanwhile.nights, ended.nights);
    EXPECT_EQ(effectOf(meanwhile, Cause::fireInterval)->middle, effectOf(ended, Cause::fireInterval)->middle);
}

TEST(Tuning, SaysNothingOfNoNights) {
    for (const int nights : {0, 1}) {
        const auto tuning = tune(seasonOfTruth({.nights = nights}, 1), Outcome::syrupPerCord);
        EXPECT_TRUE(tuning.effects.empty());
        EXPECT_FALSE(tuning.next);
    }
}

TEST(Tuning, NamesTogetherWhatWentTogether) {
    const auto tuning =
        tune(seasonOfTruth({.sooner = 0.2, .luck = 0.02, .tied = 1, .nights = 30}, 3), Outcome::evaporation);
    ASSERT_EQ(tuning.entangled.size(), 1U);
    const Entangled& group = tuning.entangled[0];
    ASSERT_EQ(group.effects.size(), 2U);
    EXPECT_EQ(tuning.effects[group.effects[0]].cause, Cause::fireInterval);
    EXPECT_EQ(tuning.effects[group.effects[1]].cause, Cause::loadMass);
    EXPECT_EQ(tuning.effects[group.effects[0]].verdict, Verdict::entangled);
    EXPECT_EQ(tuning.effects[group.effects[1]].verdict, Verdict::entangled);
    EXPECT_FALSE(group.against[0]);
    EXPECT_FALSE(group.against[1]); // both smaller together
    // What the two do together is as plain as ever: 0.2 for 120 s, so 0.133 for the 80 s of one standard deviation.
    EXPECT_EQ(group.verdict, Verdict::pays);
    EXPECT_NEAR(group.middle, 0.2 * 80 / 120, 0.04);
    EXPECT_EQ(effectOf(tuning, Cause::smallerOftener)->verdict, Verdict::pays);
}

TEST(Tuning, SaysWhatHardlyMatters) {
    const auto tuning = tune(seasonOfTruth({.luck = 0.01, .nights = 40}, 4), Outcome::evaporation);
    EXPECT_EQ(effectOf(tuning, Cause::moisture)->verdict, Verdict::hardlyMatters);
    EXPECT_EQ(effectOf(tuning, Cause::fireInterval)->verdict, Verdict::hardlyMatters);
    ASSERT_TRUE(std::none_of(tuning.effects.begin(), tuning.effects.end(),
                             [](const Effect& effect) { return claims(effect.verdict); }));
}

TEST(Tuning, LeavesOutWhatIsUnknownOrAlwaysTheSame) {
    auto shifts = seasonOfTruth({.nights = 12}, 6);
    for (std::size_t i = 0; i < shifts.size(); ++i) {
        shifts[i].account->moisture = i < 4 ? std::optional{0.2} : std::nullopt;
        shifts[i].account->pressure = Pressure::kilopascal(99);
    }
    shifts[7].account->sapSugar.reset(); // one night less, not one cause less
    const auto tuning = tune(shifts, Outcome::evaporation);
    EXPECT_EQ(tuning.withOutcome, 12);
    EXPECT_EQ(tuning.nights, 11);
    EXPECT_EQ(effectOf(tuning, Cause::moisture), nullptr);
    EXPECT_EQ(effectOf(tuning, Cause::pressure), nullptr);
    const auto left = [&](Cause cause) {
        return std::find_if(tuning.leftOut.begin(), tuning.leftOut.end(),
                            [&](const LeftOut& one) { return one.cause == cause; });
    };
    ASSERT_NE(left(Cause::moisture), tuning.leftOut.end());
    EXPECT_EQ(left(Cause::moisture)->known, 4);
    EXPECT_FALSE(left(Cause::moisture)->same);
    ASSERT_NE(left(Cause::pressure), tuning.leftOut.end());
    EXPECT_TRUE(left(Cause::pressure)->same);
}

TEST(Tuning, TellsHandsAndSpeciesApart) {
    auto shifts = seasonOfTruth({.luck = 0.02, .nights = 36}, 9);
    for (std::size_t i = 0; i < shifts.size(); ++i) {
        auto& account = *shifts[i].account;
        account.crew[i % 2 ? "Maud" : "Ansel"] = std::chrono::hours{8};
        if (i % 3 == 0) {
            account.woods = {{"ash", account.wood}};
            account.evaporation = *account.evaporation * std::exp(0.15);
        }
    }
    const auto tuning = tune(shifts, Outcome::evaporation);
    // Two hands that take turns, and two species that stand for each other, are one choice each.
    ASSERT_EQ(tuning.entangled.size(), 2U);
    for (const Entangled& group : tuning.entangled) {
        ASSERT_EQ(group.effects.size(), 2U);
        EXPECT_TRUE(group.against[1]);
        const bool wood = tuning.effects[group.effects[0]].cause == Cause::species;
        EXPECT_EQ(group.verdict, wood ? Verdict::pays : Verdict::tooLittle) << wood;
    }
}

// Boil the nights that it asks for, half with and half without, and the interval is as narrow as it said: 5 % either
// way, give or take what the new nights teach of the scatter.
TEST(Tuning, AsksForAsManyNightsAsWillShowIt) {
    int asked = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        auto shifts = seasonOfTruth({.luck = 0.05, .nights = 8}, seed);
        const auto before = tune(shifts, Outcome::evaporation);
        ASSERT_TRUE(before.next);
        const Effect& effect = before.effects[before.next->effect];
        if (before.next->pairs == 0 || effect.cause != Cause::loadMass)
            continue;
        ++asked;
        std::mt19937_64 dice{seed};
        std::normal_distribution<double> normal;
        const SeasonShift usual = shifts.front();
        for (int night = 0; night < 2 * before.next->pairs; ++night) {
            SeasonShift one = usual;
            one.id = usual.id + std::chrono::days{30 + night};
            const double load = effect.usual + (night % 2 ? 2.5 : -2.5);
            one.account->wood = Mass::kilogram(50 * load);
            one.account->woods["maple"] = one.account->wood;
            one.account->evaporation = VolumeFlow::litrePerHour(230 * std::exp(0.05 * normal(dice)));
            shifts.push_back(one);
        }
        const auto after = tune(shifts, Outcome::evaporation);
        const Effect* now = effectOf(after, Cause::loadMass);
        ASSERT_NE(now, nullptr);
        EXPECT_GT(effect.high - effect.low, 0.10) << seed;
        EXPECT_LT(now->high - now->low, 0.10 * 1.5) << seed;
    }
    EXPECT_GT(asked, 0);
}

} // namespace
} // namespace panside
