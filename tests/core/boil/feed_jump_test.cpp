// Situation 28: a concentrator is switched on and the feed's sugar jumps. The boil is made up by the rehearsal, a chain
// of stirred sections, whose equations nothing in the engine shares.
#include "core/boil/boil.h"
#include "core/rehearsal/rehearsal.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

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

JumpTally boilsWithJump(bool told, double to) {
    JumpTally tally;
    for (std::uint64_t seed = 7001; seed <= 7004; ++seed)
        boilWithJump(seed, told, tally, to);
    return tally;
}

// Half way to the next draw, and as a share of the wait; what is left is no more than on a night without a jump.
TEST(FeedJump, TheForecastOfTheDrawFollowsAtOnce) {
    const JumpTally even = boilsWithJump(true, 2), told = boilsWithJump(true, 8), silent = boilsWithJump(false, 8);
    fmt::print("no jump {:+.3f}, told {:+.3f}, not told {:+.3f} of the wait; held {:.3f}, {:.3f}, {:.3f}\n",
               middle(even.early), middle(told.early), middle(silent.early),
               static_cast<double>(even.held) / even.asked, static_cast<double>(told.held) / told.asked,
               static_cast<double>(silent.held) / silent.asked);
    EXPECT_GT(told.draws, 1.3 * even.draws) << "draws come oftener";
    EXPECT_LT(middle(told.early), middle(silent.early) - 0.05);
    EXPECT_LT(middle(told.misses), middle(even.misses) + 0.06);
    EXPECT_GE(told.held, 0.75 * told.asked);
}

// It thickens faster than this pan ever did, and neither runs dry nor turns to syrup: no call, whoever told of it.
TEST(FeedJump, IsTakenForNoPanThatIsBeingEmptied) {
    for (const bool told : {false, true})
        EXPECT_EQ(boilsWithJump(told, 8).scorch, 0);
}

} // namespace
} // namespace panside
