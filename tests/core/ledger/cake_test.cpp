#include "core/ledger/cake.h"

#include <gtest/gtest.h>
#include <random>
#include <vector>

namespace panside {
namespace {

// The equation of filtration at a constant rate (Ruth 1935; McCabe, Smith and Harriott, Unit Operations of Chemical
// Engineering, chapter on filtration; from memory), with figures of a small press on hot syrup: 20 mPa s, half a square
// metre, 0.1 litre a second, papers of 5e9 1/m, 5 kg of solids a cubic metre and a cake of 2.5e10 m/kg at 100 kPa that
// packs with the pressure to the power `power` (Almy and Lewis 1912).
struct Press {
    double power = 0;
    double viscosity = 0.02, area = 0.5, rate = 1e-4, papers = 5e9, solids = 5, cake = 2.5e10;
    double pressureAt(double volume) const {
        double pressure = 1e5;
        for (int i = 0; i < 200; ++i) // the cake's resistance is that of the pressure on it
            pressure =
                viscosity * rate / area * (cake * std::pow(pressure / 1e5, power) * solids * volume / area + papers);
        return pressure;
    }
    double volumeAt(double pressure) const {
        return (pressure * area / (viscosity * rate) - papers) * area /
               (cake * std::pow(pressure / 1e5, power) * solids);
    }
};

std::vector<CakeReading> readings(const Press& press, int count, double to, double sd = 0, unsigned seed = 1) {
    std::mt19937 dice{seed};
    std::normal_distribution<double> off{0, 1};
    std::vector<CakeReading> all;
    for (int i = 1; i <= count; ++i) {
        const double volume = to * i / count;
        all.push_back({volume, Pressure::pascal(std::max(500.0, press.pressureAt(volume) + sd * off(dice)))});
    }
    return all;
}

TEST(CakeForecast, FindsWhereTheEquationSaysTheLimitIsMet) {
    const Press press;
    const double truth = press.volumeAt(140e3);
    const auto said = cakeForecast(readings(press, 6, truth * 0.6), Pressure::pascal(140e3));
    ASSERT_TRUE(std::holds_alternative<CakeForecast>(said));
    const auto& range = std::get<CakeForecast>(said);
    EXPECT_LT(range.p10, truth);
    ASSERT_TRUE(range.p90);
    EXPECT_GE(*range.p90, truth);
    EXPECT_NEAR(range.p50, truth, 0.15 * truth);
    EXPECT_LT(*range.p90 - range.p10, truth); // and it says something
}

TEST(CakeForecast, HoldsTheTruthInEightOfTenRuns) {
    int held = 0, runs = 0;
    std::mt19937 dice{7};
    for (unsigned seed = 1; seed <= 300; ++seed) {
        Press press;
        press.power = std::uniform_real_distribution<double>{0, 0.3}(dice);
        press.cake *= std::uniform_real_distribution<double>{0.4, 2.5}(dice);
        press.papers *= std::uniform_real_distribution<double>{0.3, 3}(dice);
        const double truth = press.volumeAt(140e3);
        const int count = 3 + static_cast<int>(seed % 6);
        const double until = std::uniform_real_distribution<double>{0.3, 0.8}(dice);
        const auto said = cakeForecast(readings(press, count, truth * until, 2500, seed), Pressure::pascal(140e3));
        const auto* range = std::get_if<CakeForecast>(&said);
        if (!range)
            continue;
        ++runs;
        held += range->p10 <= truth && (!range->p90 || truth <= *range->p90);
    }
    EXPECT_GT(runs, 250);
    EXPECT_GE(held, runs * 8 / 10) << held << " of " << runs;
}

TEST(CakeForecast, SaysNothingBeforeTheThirdReading) {
    const auto said = cakeForecast(readings(Press{}, 2, 0.05), Pressure::pascal(140e3));
    EXPECT_EQ(std::get<CakeSilence>(said), CakeSilence::tooFew);
}

TEST(CakeForecast, EndsWhereABypassOpens) {
    const Press press;
    auto run = readings(press, 6, press.volumeAt(100e3));
    const double step = run[1].through - run[0].through;
    EXPECT_TRUE(std::holds_alternative<CakeForecast>(cakeForecast(run, Pressure::pascal(140e3))));
    for (int i = 1; i <= 2; ++i)
        run.push_back({run[5].through + i * step, run[5].pressure});
    EXPECT_EQ(std::get<CakeSilence>(cakeForecast(run, Pressure::pascal(140e3))), CakeSilence::bypass);
}

TEST(CakeForecast, TellsALimitThatIsMetAndAGaugeThatDoesNotClimb) {
    const Press press;
    const auto run = readings(press, 5, press.volumeAt(150e3));
    EXPECT_EQ(std::get<CakeSilence>(cakeForecast(run, Pressure::pascal(140e3))), CakeSilence::atLimit);
    const std::vector<CakeReading> still{
        {1, Pressure::pascal(30e3)}, {2, Pressure::pascal(30e3)}, {3, Pressure::pascal(29e3)}};
    EXPECT_EQ(std::get<CakeSilence>(cakeForecast(still, Pressure::pascal(140e3))), CakeSilence::notClimbing);
}

TEST(CakeForecast, AGaugeThatHardlyClimbsMayNeverGetThere) {
    const std::vector<CakeReading> slow{
        {1, Pressure::pascal(30e3)}, {2, Pressure::pascal(31e3)}, {3, Pressure::pascal(31.5e3)}};
    const auto said = cakeForecast(slow, Pressure::pascal(140e3));
    ASSERT_TRUE(std::holds_alternative<CakeForecast>(said));
    EXPECT_FALSE(std::get<CakeForecast>(said).p90);
}

} // namespace
} // namespace panside
