// Situation 42: the gradient of a night rests on the sweet that the one before left. When the first draw comes is
// foretold from it by a mass balance of sugar, and held against made-up boils whose equations it does not share.
#include "core/physics/tonight.h"
#include "core/rehearsal/rehearsal.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace panside {
namespace {

struct FirstDrawNight {
    NightBoiled boiled;
    double firstDraw = 0; // hours from lighting
};

// Eight hours of one rig, its pans with so much of yesterday's gradient.
FirstDrawNight firstDrawNight(std::uint64_t rig, double sweet, std::uint64_t seed) {
    RehearsalOptions options = anyBoil(rig);
    options.feedFault = FeedFault::none;
    options.sap.sweetLeft = sweet;
    options.sap.atStart = Volume::litre(12 * options.rig.rate.litrePerHour());
    options.rig.tank = Volume::litre(20 * options.rig.rate.litrePerHour());
    options.crew.boilFor = std::chrono::hours{10};
    options.readings = {Series::tank_level};
    options.spacing = std::chrono::minutes{10};
    Rehearsal plant{options, seed};
    FirstDrawNight night;
    std::optional<double> lit;
    for (double t = 0; t <= 8 * 3600; t += 60) {
        for (const Fact& fact : plant.advance(options.begins + Duration{t}))
            if (std::holds_alternative<Lit>(fact.what))
                lit = t;
        const RehearsalTruth& truth = plant.truth();
        if (t == 0)
            night.boiled.sugarBefore = truth.sugarInPans;
        const auto& deeds = plant.deeds();
        const bool drawn = std::any_of(deeds.begin(), deeds.end(), [](const RehearsalDeed& deed) {
            return deed.kind == RehearsalDeed::Kind::opened;
        });
        if (drawn && !night.boiled.firstDraw) {
            night.firstDraw = (t - lit.value_or(0)) / 3600;
            night.boiled.firstDraw = Duration{night.firstDraw * 3600};
            night.boiled.sugarReady = truth.sugarInPans + truth.sugarDrawn;
        }
    }
    night.boiled.fired = Duration{8 * 3600 - lit.value_or(0)};
    night.boiled.sap = options.sap.atStart - plant.truth().tank;
    night.boiled.sugar = Mass::kilogram(night.boiled.sap.litre() * 1.006 * options.sap.sugar.massFraction());
    return night;
}

TEST(FirstDraw, IsForetoldFromTheSweetThatLastNightLeft) {
    std::vector<double> off;
    int held = 0;
    for (std::uint64_t rig = 7101; rig <= 7106; ++rig) {
        TonightBasis basis;
        for (const double sweet : {0.35, 0.8, 0.6})
            basis.nights.push_back(firstDrawNight(rig, sweet, rig + static_cast<std::uint64_t>(100 * sweet)).boiled);
        for (const double sweet : {0.0, 0.5}) { // drained, and partly
            const FirstDrawNight night = firstDrawNight(rig, sweet, rig + 7);
            basis.sweetInPans = night.boiled.sugarBefore;
            const Brix sugar = anyBoil(rig).sap.sugar;
            const SapStanding stands[] = {{night.boiled.sap, sugar}};
            const auto plan = Tonight{basis}.plan(stands);
            ASSERT_TRUE(plan && plan->firstDraw) << rig;
            const auto hours = [](Duration span) { return span.count() / 3600; };
            const auto& said = *plan->firstDraw;
            fmt::print("{} with {:.1f} of the gradient: first draw after {:.2f} h ({:.2f} to {:.2f}), came {:.2f}\n",
                       rig, sweet, hours(said.p50), hours(said.p10), hours(said.p90), night.firstDraw);
            off.push_back(std::abs(std::log(hours(said.p50) / night.firstDraw)));
            held += hours(said.p10) <= night.firstDraw && night.firstDraw <= hours(said.p90);
        }
    }
    std::sort(off.begin(), off.end());
    EXPECT_LT(off[off.size() / 2], 0.2);
    EXPECT_GE(held, 9) << "eight of ten";
}

} // namespace
} // namespace panside
