// The density of draws by the engine alone, against a made-up boil whose truth is known.
#include "core/ledger/draw_density.h"
#include "core/ledger/liquid.h"
#include "core/rehearsal/rehearsal.h"
#include "core/rehearsal/rehearse.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

struct DrumOfANight {
    double truth = 0, said = 0, sd = 0; // brix
    std::size_t draws = 0;
};

// All draws of a night into one drum: what is in it, and what their own densities make of it.
DrumOfANight drumOf(std::uint64_t seed) {
    auto options = anEvening(seed);
    options.spacing = Duration{2};
    options.crew.boilFor = std::chrono::hours{4};
    options.sap.atStart = Volume::litre(options.rig.rate.litrePerHour() * 5.5);
    options.rig.tank = options.sap.atStart * 1.3;
    Rehearsal boil{options, seed};
    DrawDensities watch;
    for (const Fact& fact : boil.advance(options.begins + std::chrono::hours{6}))
        watch.add(fact);
    DrumOfANight drum;
    const RehearsalTruth truth = boil.truth();
    drum.truth = liquidHolding(truth.drawn, truth.sugarDrawn.kilogram()).brix().degrees();
    const auto found = watch.found();
    drum.draws = found.size();
    for (const auto& draw : found) {
        drum.said += draw.density.sugar.degrees() / static_cast<double>(found.size());
        drum.sd += draw.density.sd.degrees() / static_cast<double>(found.size());
    }
    return drum;
}

TEST(DrawDensities, HoldTheTruthOfADrumWithinWhatTheySay) {
    for (const std::uint64_t seed : {1U, 6U, 10U}) {
        const DrumOfANight drum = drumOf(seed);
        ASSERT_GE(drum.draws, 3U) << seed;
        EXPECT_NEAR(drum.said, drum.truth, 2 * drum.sd) << seed;
        EXPECT_LT(drum.sd, 0.6) << seed;
    }
}

} // namespace
} // namespace panside
