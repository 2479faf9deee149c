// The season's page of 200 shifts, from the key to the last pixel; and what the account of one night costs, which is
// worked out once and kept.
#include "core/season/tuning.h"
#include "core/shift/season_book.h"
#include "tests/bench/night.h"
#include "tests/bench/season_ground.h"
#include "ui/season/season_screen.h"

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <benchmark/benchmark.h>

namespace panside::bench {
namespace {

constexpr int shiftCount = 200;

// An evening a day from late September on, readings two minutes apart, so that the journal is soon made: the page reads
// no readings.
std::vector<Fact> thinEvening() {
    auto facts = readLog(night(3)).facts;
    std::erase_if(facts, [begun = facts[0].at](const Fact& fact) {
        return std::holds_alternative<Reading>(fact.what) && (fact.at - begun).count() % 120'000'000 != 0;
    });
    return facts;
}
Journal& season() {
    static const SeasonGround ground;
    static Journal journal = [] {
        ground.repeat(thinEvening(), shiftCount, -170);
        Journal fresh = Journal::open(ground.place());
        wholeSeason(fresh);
        return fresh;
    }();
    return journal;
}

// What F3 does: the kept accounts, the table and its totals, and the painting.
void openSeason(benchmark::State& state) {
    const auto place = season().place();
    std::size_t lines = 0;
    for ([[maybe_unused]] auto _ : state) {
        SeasonScreen screen;
        screen.resize(1366, 768);
        screen.wear(Dress{});
        screen.display(keptSeason(Journal::open(place, Journal::Access::read)));
        benchmark::DoNotOptimize(screen.grab());
        lines = screen.table().lines.size();
    }
    state.counters["shifts"] = static_cast<double>(lines);
    state.counters["goal_ms"] = 300;
}
BENCHMARK(openSeason)->Iterations(10)->Unit(benchmark::kMillisecond);

void readKeptAccounts(benchmark::State& state) {
    const auto place = season().place();
    for ([[maybe_unused]] auto _ : state)
        benchmark::DoNotOptimize(keptSeason(Journal::open(place, Journal::Access::read)));
}
BENCHMARK(readKeptAccounts)->Unit(benchmark::kMillisecond);

void tuneASeason(benchmark::State& state) {
    const auto shifts = keptSeason(season());
    for ([[maybe_unused]] auto _ : state)
        benchmark::DoNotOptimize(tune(shifts, Outcome::evaporation));
}
BENCHMARK(tuneASeason)->Unit(benchmark::kMillisecond);

// A night of 12 h, six series at 1 Hz.
void accountOfANight(benchmark::State& state) {
    const auto facts = readLog(night(12)).facts;
    for ([[maybe_unused]] auto _ : state) {
        ShiftAccountant accountant;
        for (const Fact& fact : facts)
            accountant.add(fact);
        benchmark::DoNotOptimize(accountant.account());
    }
}
BENCHMARK(accountOfANight)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace panside::bench

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application{argc, argv};
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
}
