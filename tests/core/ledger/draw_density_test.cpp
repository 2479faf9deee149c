// The density of draws by the engine alone, against a made-up boil whose truth is known.
#include "core/boil/shift_log.h"
#include "core/ledger/draw_density.h"
#include "core/ledger/liquid.h"
#include "core/rehearsal/rehearsal.h"
#include "core/rehearsal/rehearse.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

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
    int within = 0;
    const std::vector<std::uint64_t> seeds{1U, 6U, 10U, 11U};
    for (const std::uint64_t seed : seeds) {
        const DrumOfANight drum = drumOf(seed);
        ASSERT_GE(drum.draws, 3U) << seed;
        const double sd = std::hypot(drum.sd, DrawDensity::alone.degrees() / std::sqrt(double(drum.draws)));
        EXPECT_NEAR(drum.said, drum.truth, 2 * sd) << seed;
        EXPECT_LT(sd, 0.45) << seed;
        within += std::abs(drum.said - drum.truth) <= sd;
    }
    EXPECT_GE(within, 2); // of one standard deviation: 0.68 of them
}

// A boil by hand: 102 degC over water that boils at 98, then a draw in which foam stands about the probe and it reads
// steam. No syrup thins so fast and thickens again with the draw open.
TEST(DrawDensities, FoamAboutTheProbeIsNoThinSyrup) {
    const auto draw = [](bool foam) {
        DrawDensities watch;
        const Instant begin = *instantIn("2027-03-14T20:00:00Z");
        const auto read = [&](int second, Series series, double si, Unit unit) {
            watch.add({begin + std::chrono::seconds{second}, Reading{series, si, unit, {}}});
        };
        read(0, Series::pressure, 94300, Unit::kPa);
        for (int second = 0; second <= 900; second += 2) {
            const double thinned = second > 600 && second < 700 ? (second - 600) * 0.005 : 0;
            const bool steam = foam && second > 630 && second < 655;
            read(second, Series::syrup_pan, 273.15 + (steam ? 98.5 : 102.3 - thinned), Unit::degC);
            if (second % 60 == 0)
                read(second, Series::pressure, 94300, Unit::kPa);
            if (second == 600)
                watch.add({begin + std::chrono::seconds{second}, DrawOpened{}});
            if (second == 700)
                watch.add({begin + std::chrono::seconds{second}, DrawClosed{}});
        }
        const auto found = watch.found();
        return found.empty() ? 0 : found[0].density.sugar.degrees();
    };
    const double calm = draw(false);
    ASSERT_GT(calm, 60);
    EXPECT_NEAR(draw(true), calm, 0.35); // it reads 4 K low for a quarter of the draw: 5 brix of the plain mean
}

} // namespace
} // namespace panside
