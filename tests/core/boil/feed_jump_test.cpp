// Situation 28: a concentrator is switched on and the feed's sugar jumps. The boil is made up by the rehearsal, a chain
// of stirred sections, whose equations nothing in the engine shares.
#include "core/boil/boil.h"
#include "core/rehearsal/rehearsal.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <map>

namespace panside {
namespace {

struct JumpTally {
    int draws = 0, held = 0, asked = 0, scorch = 0;
    std::vector<double> early, misses; // of the wait, by what was said at its middle: signed, and without the sign
};

// Sap of 2 brix, then concentrate of 8 into a tank that has nearly run down; `told`: its sugar was entered.
void boilWithJump(std::uint64_t seed, bool told, JumpTally& tally, double to = 8) {
    RehearsalOptions options = anyBoil(seed);
    options.feedFault = FeedFault::none;
    options.sap.sugar = Brix::degrees(2);
    options.sap.sweetLeft = 0.9;
    const double hour = options.rig.rate.litrePerHour();
    options.sap.atStart = Volume::litre(4.2 * hour);
    options.rig.tank = Volume::litre(20 * hour);
    options.sap.deliveries = {{Duration{3.8 * 3600}, Volume::litre(8 * hour), Brix::degrees(to)}};
    options.crew.boilFor = std::chrono::hours{9};
    Rehearsal plant{options, seed};
    Boil boil;
    FactId id = 0;
    struct Said {
        Instant at;
        double p10, p50, p90;
    };
    std::vector<Said> said;
    Instant shut{};
    bool drawing = true, under = false, raced = false;
    const Instant end = options.begins + std::chrono::hours{7};
    for (Instant now = options.begins; now < end && !plant.ended(); now += std::chrono::seconds{10}) {
        for (Fact& fact : plant.advance(now)) {
            if (auto* sap = std::get_if<SapIn>(&fact.what); sap && !told)
                sap->sugar.reset();
            boil.add(++id, std::move(fact));
        }
        const RehearsalTruth& truth = plant.truth();
        const bool after = secondsBetween(options.begins, now) > 3.8 * 3600;
        const Picture picture = boil.fold().pictureAt(now);
        raced = raced || (after && std::any_of(picture.alarms.begin(), picture.alarms.end(), [](const auto& one) {
                              return one.alarm == Alarm::scorch_risk && one.stands();
                          }));
        if (truth.drawing) {
            drawing = true;
            under = false;
            continue;
        }
        if (drawing) {
            drawing = false;
            shut = now;
            said.clear();
        }
        under = under || truth.reading < truth.mark - TemperatureDifference::kelvin(0.1);
        if (picture.drawEta && picture.drawEta->p90)
            said.push_back(
                {now, seconds(picture.drawEta->p10), seconds(picture.drawEta->p50), seconds(*picture.drawEta->p90)});
        if (!under || truth.reading < truth.mark || !after)
            continue;
        const double wait = secondsBetween(shut, now);
        ++tally.draws;
        for (const Said& one : said) {
            const double came = secondsBetween(one.at, now);
            if (came < 60)
                continue;
            ++tally.asked;
            tally.held += one.p10 <= came && came <= one.p90;
            if (std::abs(came - wait / 2) <= 5) {
                tally.early.push_back((one.p50 - came) / wait);
                tally.misses.push_back(std::abs(one.p50 - came) / wait);
            }
        }
        under = false;
    }
    tally.scorch += raced;
}

double middle(std::vector<double> values) {
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2), values.end());
    return values[values.size() / 2];
}

// Boiled once for all tests.
const JumpTally& boilsWithJump(bool told, double to) {
    static std::map<std::pair<bool, double>, JumpTally> boiled;
    const auto [tally, isNew] = boiled.try_emplace({told, to});
    for (std::uint64_t seed = 7001; isNew && seed <= 7004; ++seed)
        boilWithJump(seed, told, tally->second, to);
    return tally->second;
}

// Half way to the next draw, and as a share of the wait; what is left is no more than on a night without a jump.
TEST(FeedJump, TheForecastOfTheDrawFollowsAtOnce) {
    const JumpTally &even = boilsWithJump(true, 2), &told = boilsWithJump(true, 8), &silent = boilsWithJump(false, 8);
    fmt::print("no jump {:+.3f}, told {:+.3f}, not told {:+.3f} of the wait; held {:.3f}, {:.3f}, {:.3f}\n",
               middle(even.early), middle(told.early), middle(silent.early),
               static_cast<double>(even.held) / even.asked, static_cast<double>(told.held) / told.asked,
               static_cast<double>(silent.held) / silent.asked);
    EXPECT_GT(told.draws, 1.3 * even.draws) << "draws come oftener";
    EXPECT_LT(middle(told.early), middle(silent.early) - 0.05);
    EXPECT_LT(middle(told.misses), middle(even.misses) + 0.06);
    EXPECT_GE(told.held, 0.75 * told.asked);
}

// ---- the tank, and syrup everywhere

struct NightAt {
    Rehearsal plant;
    Boil boil;
    FactId id = 0;
    void runTo(double hours) {
        const Instant until = plant.options().begins + Duration{hours * 3600};
        for (Instant now = plant.now(); now <= until; now += std::chrono::seconds{10})
            for (Fact& fact : plant.advance(now))
                boil.add(++id, std::move(fact));
    }
    Picture picture() { return boil.fold().pictureAt(plant.now()); }
};
constexpr double jumpAfter = 3.8; // hours
NightAt nightWithJump(std::uint64_t seed, double from, double to, double blindAfter = 99) {
    RehearsalOptions options = anyBoil(seed);
    options.feedFault = FeedFault::none;
    options.sap.sugar = Brix::degrees(from);
    options.sap.sweetLeft = 0.9;
    options.crew.noVolume = 0;
    options.spacing = std::chrono::seconds{5};
    options.crew.boilFor = std::chrono::hours{12};
    options.crew.blindAfter = Duration{blindAfter * 3600};
    const double hour = options.rig.rate.litrePerHour();
    options.sap.atStart = Volume::litre(4.2 * hour);
    options.rig.tank = Volume::litre(20 * hour);
    options.sap.deliveries = {{Duration{jumpAfter * 3600}, Volume::litre(8 * hour), Brix::degrees(to)}};
    return {Rehearsal{options, seed}, {}};
}

// Ten minutes after it: the tank lasts as long as it will, and holds the syrup that its sugar makes, not that of all
// the sap of the night.
TEST(FeedJump, ThePansRunDryWhenTheTankSaysAndItHoldsFourTimesTheSyrup) {
    std::vector<double> late, missed;
    for (std::uint64_t seed = 7001; seed <= 7004; ++seed) {
        NightAt night = nightWithJump(seed, 2, 8);
        night.runTo(jumpAfter - 0.05);
        const double stood = night.plant.truth().tank.litre();
        night.runTo(jumpAfter + 1.0 / 6);
        const Picture then = night.picture();
        const double tank = night.plant.truth().tank.litre(), came = 8 * night.plant.options().rig.rate.litrePerHour();
        ASSERT_TRUE(then.sapLeft && then.fuel.syrupExpected) << seed;
        const double sugar = (stood * 2 + came * 8) / (stood + came);
        // 87 over the sugar, 0.3 less: the trade's revised rule for 66.9 brix (88.2 / x - 0.32).
        missed.push_back(std::abs(then.fuel.syrupExpected->litre() / (tank / (88.2 / sugar - 0.32)) - 1));
        night.runTo(jumpAfter + 3);
        const double used = (tank - night.plant.truth().tank.litre()) / (3 - 1.0 / 6);
        late.push_back(std::abs(tank / (seconds(*then.sapLeft) / 3600) / used - 1));
        fmt::print("{}: sap's use off by {:.3f}, syrup in the tank by {:.3f}\n", seed, late.back(), missed.back());
    }
    EXPECT_LT(middle(late), 0.08);
    EXPECT_LT(middle(missed), 0.06);
}

// Nobody draws any more: the syrup pan turns to syrup from end to end, with concentrate in a fraction of the time.
TEST(FeedJump, SyrupEverywhereIsForetoldAtOnce) {
    std::vector<double> off, shorter;
    for (std::uint64_t seed = 7001; seed <= 7004; ++seed) {
        const auto said = [&](double to, double after) {
            NightAt night = nightWithJump(seed, 2, to, jumpAfter + after);
            night.runTo(jumpAfter + after);
            const auto foretold = night.picture().fuel.allSyrup;
            const double begin = jumpAfter + after;
            double came = begin;
            while (night.plant.truth().syrupPan < Brix::degrees(66.9) && came < begin + 6)
                night.runTo(came += 1.0 / 60);
            off.push_back(seconds(foretold.value_or(Duration{0})) / 3600 / (came - begin));
            fmt::print("{} to {} after {} h: foretold {:.2f} h, came {:.2f} h\n", seed, to, after,
                       seconds(foretold.value_or(Duration{0})) / 3600, came - begin);
            return seconds(foretold.value_or(Duration{0}));
        };
        const double thin = said(2, 0.3), now = said(8, 0.3), later = said(8, 2.5);
        EXPECT_LT(now, thin) << seed;
        shorter.push_back(later / thin);
    }
    EXPECT_LT(middle(shorter), 0.5);
    for (const double one : off)
        EXPECT_NEAR(std::log(one), 0, std::log(1.6));
}

// It thickens faster than this pan ever did, and neither runs dry nor turns to syrup: no call, whoever told of it.
TEST(FeedJump, IsTakenForNoPanThatIsBeingEmptied) {
    for (const bool told : {false, true})
        EXPECT_EQ(boilsWithJump(told, 8).scorch, 0);
}

} // namespace
} // namespace panside
