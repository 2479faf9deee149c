// The season's page of 200 shifts, from the key to the last pixel; and what the account of one night costs, which is
// worked out once and kept.
#include "app/season_book.h"
#include "core/boil/shift_log.h"
#include "core/journal/log_import.h"
#include "core/season/tuning.h"
#include "tests/bench/night.h"
#include "ui/season/season_screen.h"

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <benchmark/benchmark.h>

#include <cstdlib>
#include <filesystem>
#include <sstream>

namespace panside::bench {
namespace {

namespace fs = std::filesystem;
constexpr int shiftCount = 200;

class Ground {
public:
    Ground() {
        std::string name = (fs::current_path() / "season-bench-XXXXXX").string();
        folder = ::mkdtemp(name.data());
    }
    ~Ground() {
        std::error_code ignored;
        fs::remove_all(folder, ignored);
    }
    fs::path place() const { return folder / "season.journal"; }
    fs::path folder;
};

// An evening a day from late September on, readings two minutes apart, so that the journal is soon made: the page reads
// no readings.
Journal& season() {
    static const Ground ground;
    static Journal journal = [] {
        Journal fresh = Journal::open(ground.place());
        const auto facts = readLog(night(3)).facts;
        for (int day = 0; day < shiftCount; ++day) {
            std::vector<Fact> moved;
            for (std::size_t i = 0; i < facts.size(); ++i)
                if (!std::holds_alternative<Reading>(facts[i].what) ||
                    (facts[i].at - facts[0].at).count() % 120'000'000 == 0) {
                    moved.push_back(facts[i]);
                    moved.back().at += std::chrono::days{day - 170};
                }
            std::istringstream log{writeLog(moved)};
            importLog(fresh, log);
        }
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
            accountant.take(fact);
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
