#include "core/ledger/cake.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <gtest/gtest.h>
#include <optional>
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

// Runs whose gauge climbs by other laws than the forecast's own.
// A run's gauge in pascal at what has gone through, and where the limit is met.
struct OtherRun {
    std::function<double(double)> pressureAt;
    double end;
};
constexpr double limit = 140e3;

// Papers that blind (Hermia 1982, constant rate; from memory): the standard law (pores narrow) and the intermediate
// one.
OtherRun blinding(std::mt19937& dice) {
    std::uniform_real_distribution<double> unit{0, 1};
    const double begin = 12e3 + 25e3 * unit(dice), end = 0.5 + unit(dice), ratio = limit / begin;
    if (unit(dice) < 0.5) {
        const double k = std::log(ratio) / end;
        return {[=](double v) { return begin * std::exp(k * v); }, end};
    }
    const double k = (1 - 1 / std::sqrt(ratio)) / end;
    return {[=](double v) { return begin / std::pow(1 - k * v, 2); }, end};
}
// A worn pump: the more it is pressed the more slips back, so that the gauge bends down.
OtherRun slipping(std::mt19937& dice) {
    std::uniform_real_distribution<double> unit{0, 1};
    const double begin = 10e3 + 20e3 * unit(dice), slip = (0.1 + 0.25 * unit(dice)) / limit,
                 rate = 60e3 + 60e3 * unit(dice);
    std::vector<double> pressure{begin};
    const double step = 0.001;
    double through = 0;
    while (pressure.back() < limit && pressure.size() < 20000) {
        const double flow = 1 - slip * pressure.back();
        through += step;
        // In time: less goes through, and what goes is pressed less.
        pressure.push_back(begin * flow + rate * flow * (through * (1 - slip * pressure.back() / 2)));
    }
    const double end = step * static_cast<double>(pressure.size() - 1);
    return {[=](double v) { return pressure[std::min(pressure.size() - 1, static_cast<std::size_t>(v / step))]; }, end};
}
// A gauge that climbs as the run to some power and beats with the stroke of a diaphragm pump.
OtherRun beating(std::mt19937& dice) {
    std::uniform_real_distribution<double> unit{0, 1};
    const double begin = 30e3 + 15e3 * unit(dice), power = 1 + 0.8 * unit(dice), end = 0.5 + unit(dice);
    return {[=](double v) { return begin + (limit - begin) * std::pow(v / end, power); }, end};
}

struct Tally {
    int held = 0, shown = 0, all = 0;
    double width = 0;
};
Tally tallyOf(OtherRun (*made)(std::mt19937&), double noise, double beat, bool learned, unsigned first) {
    Tally tally;
    for (unsigned seed = first; seed < first + 200; ++seed) {
        std::mt19937 dice{seed};
        std::uniform_real_distribution<double> unit{0, 1};
        std::normal_distribution<double> off{0, noise};
        const auto seen = [&](const OtherRun& run, int count, double until) {
            std::vector<CakeReading> all;
            for (int i = 1; i <= count; ++i) {
                const double v = run.end * until * i / count;
                all.push_back({v, Pressure::pascal(std::max(500.0, run.pressureAt(v) + off(dice) +
                                                                       beat * std::sin(40 * v + 3 * i)))});
            }
            return all;
        };
        const OtherRun run = made(dice);
        std::vector<CakeRun> before;
        for (int i = 0; learned && i < 3; ++i) { // the same sand and papers, a little more or less of it
            const double more = std::exp(std::normal_distribution<double>{0, 0.2}(dice));
            const OtherRun was{[&run, more](double v) { return run.pressureAt(v * more); }, run.end / more};
            before.push_back({seen(was, 8, 0.9), i == 2});
        }
        const int count = 3 + static_cast<int>(seed % 8);
        const auto said = cakeForecast(seen(run, count, 0.3 + 0.5 * unit(dice)), Pressure::pascal(limit), before);
        ++tally.all;
        const auto* range = std::get_if<CakeForecast>(&said);
        if (!range)
            continue;
        ++tally.shown;
        tally.held += range->p10 <= run.end && (!range->p90 || run.end <= *range->p90);
        tally.width += std::min(5.0, (range->p90.value_or(1e9) - range->p10) / run.end) / 200;
    }
    return tally;
}

TEST(CakeForecast, HoldsTheTruthOfRunsThatFollowOtherLaws) {
    const struct {
        const char* what;
        OtherRun (*made)(std::mt19937&);
        double noise, beat;
    } laws[] = {{"blinding papers", &blinding, 2000, 0},
                {"a slipping pump", &slipping, 2000, 0},
                {"a beating gauge", &beating, 4000, 12000},
                {"a power of the time", &beating, 2500, 0}};
    for (const auto& law : laws)
        for (const bool learned : {false, true}) {
            const Tally tally = tallyOf(law.made, law.noise, law.beat, learned, 1000);
            if (std::getenv("TELL"))
                std::printf("%s%s: %d of %d held, %d runs, width %.2f\n", law.what, learned ? ", learned" : "",
                            tally.held, tally.shown, tally.all, tally.width);
            EXPECT_GE(tally.held, tally.shown * 8 / 10) << law.what << (learned ? ", learned" : "");
            EXPECT_GT(tally.shown, 150) << law.what;
        }
}

// What a house has seen narrows what it is told.
TEST(CakeForecast, LearnsFromRunsBefore) {
    for (auto* made : {&blinding, &slipping, &beating})
        EXPECT_LT(tallyOf(made, 2500, 0, true, 5000).width, tallyOf(made, 2500, 0, false, 5000).width);
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

// Nobody ended the run before, and the gauge is read on: where it stops climbing after hours is seen all the same.
TEST(CakeForecast, EndsWhereABypassOpensLateInALongRun) {
    const Press press;
    auto run = readings(press, 900, press.volumeAt(100e3));
    const double step = run[1].through - run[0].through;
    EXPECT_TRUE(std::holds_alternative<CakeForecast>(cakeForecast(run, Pressure::pascal(140e3))));
    for (int i = 1; i <= 200; ++i)
        run.push_back({run[899].through + i * step, run[899].pressure});
    EXPECT_EQ(std::get<CakeSilence>(cakeForecast(run, Pressure::pascal(140e3))), CakeSilence::bypass);
}

// A bypass that opens ends the forecast of the run, however long the gauge then stands, creeps on or climbs again.
TEST(CakeForecast, StaysEndedAfterABypassHasOpened) {
    const Press press;
    const auto before = readings(press, 6, press.volumeAt(100e3));
    const double step = before[1].through - before[0].through, climb = before[5].pressure.pascal() / 6;
    for (const double share : {0.0, 0.15, 1.0}) {
        auto run = before;
        for (int i = 1; i <= 10; ++i) {
            const double more = i <= 3 ? 0 : share * climb * (i - 3) * 0.3;
            run.push_back({before[5].through + i * step, Pressure::pascal(before[5].pressure.pascal() + more)});
            if (i < 2)
                continue;
            const auto said = cakeForecast(run, Pressure::pascal(240e3));
            ASSERT_TRUE(std::holds_alternative<CakeSilence>(said)) << share << " after " << i;
            EXPECT_EQ(std::get<CakeSilence>(said), CakeSilence::bypass) << share << " after " << i;
        }
    }
}

// A pump that is off for a while has opened none.
TEST(CakeForecast, GoesOnAfterThePumpWasOff) {
    const Press press;
    auto run = readings(press, 6, press.volumeAt(100e3));
    const double step = run[1].through - run[0].through, end = run[5].through;
    for (int i = 1; i <= 3; ++i)
        run.push_back({end + i * step, Pressure::pascal(2e3)});
    for (int i = 1; i <= 2; ++i)
        run.push_back({end + (3 + i) * step, Pressure::pascal(press.pressureAt(end + i * step))});
    const auto said = cakeForecast(run, Pressure::pascal(240e3));
    EXPECT_FALSE(std::holds_alternative<CakeSilence>(said) && std::get<CakeSilence>(said) == CakeSilence::bypass);
}

// The same equation in time, for a flow that is not quite steady, sand that comes thicker as a drum runs out, syrup
// that cools, and a pump whose flow falls to nothing at `stall` (Ruth 1935 and Perry's, Filtration, from memory):
// pressure = flow * viscosity * (papers + cake). In shares of the limit; the unit of time is the run's at a full flow.
std::optional<OtherRun> wornRun(std::mt19937& dice, bool air) {
    const auto from = [&dice](double low, double high) {
        return std::uniform_real_distribution<double>{low, high}(dice);
    };
    const double papers = from(0.04, 0.25), power = from(0, 0.6), sand = from(-0.2, 0.9), cools = from(0, 0.3);
    const double stall = air ? from(1.15, 2.5) : from(8, 30), beats = from(0, 0.05);
    std::vector<double> pressure;
    double cake = 0, gone = 0, wanders = 0, now = papers / 2;
    constexpr double step = 2e-3;
    for (int i = 0; now < 1 && i < 3000; ++i) {
        wanders = 0.98 * wanders + std::normal_distribution<double>{0, 0.2 * beats}(dice);
        double flow = 1;
        for (int k = 0; k < 40; ++k) { // what is pressed sets the flow, and the flow what is pressed
            const double resists = papers + (1 - papers) * cake * std::pow(std::max(0.01, 2 * now), power);
            const double full = (1 + cools * i * step) * (1 + wanders) * resists;
            flow = (1 + wanders) / (1 + full / stall);
            now += 0.4 * (full / (1 + full / stall) - now);
        }
        gone += flow * step;
        cake += flow * step * (1 + sand * gone);
        pressure.push_back(now * limit);
    }
    if (now < 1)
        return std::nullopt; // hardly anything flows: it never gets there
    const double end = step * static_cast<double>(pressure.size() - 1);
    return OtherRun{
        [=](double at) {
            return pressure[std::min(pressure.size() - 1, static_cast<std::size_t>(std::max(0.0, at) / step))];
        },
        end};
}

TEST(CakeForecast, HoldsTheTruthOfSteadyAndOfAirPumps) {
    for (const bool air : {false, true}) {
        int held = 0, shown = 0, runs = 0;
        double width = 0;
        for (unsigned seed = 1; runs < 200; ++seed) {
            std::mt19937 dice{seed};
            const auto run = wornRun(dice, air);
            if (!run)
                continue;
            ++runs;
            std::vector<CakeReading> seen;
            const int count = seed % 3 == 0 ? 40 : 3 + static_cast<int>(seed % 8); // a probe's, and typed ones
            const double until = run->end * std::uniform_real_distribution<double>{0.3, 0.85}(dice);
            std::normal_distribution<double> off{0, seed % 2 == 0 ? 1000.0 : 3000.0};
            for (int i = 1; i <= count; ++i) {
                const double at = until * i / count, read = std::round((run->pressureAt(at) + off(dice)) / 3447) * 3447;
                seen.push_back({at, Pressure::pascal(std::max(500.0, read))}); // half a psi
            }
            const auto said = cakeForecast(seen, Pressure::pascal(limit));
            const auto* range = std::get_if<CakeForecast>(&said);
            if (!range)
                continue;
            ++shown;
            held += range->p10 <= run->end && (!range->p90 || run->end <= *range->p90);
            width += std::min(5.0, (range->p90.value_or(1e9) - range->p10) / run->end);
        }
        if (std::getenv("TELL"))
            std::printf("%s: %d of %d held, width %.2f\n", air ? "air" : "steady", held, shown, width / shown);
        EXPECT_GE(held, shown * 8 / 10) << (air ? "air" : "steady");
        EXPECT_GT(shown, air ? 170 : 190) << (air ? "air" : "steady");
        EXPECT_LT(width / shown, 2.5) << (air ? "air" : "steady");
    }
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
