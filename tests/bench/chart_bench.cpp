// A shift's chart: from its key to the last pixel, and each frame while a hand drags or zooms it with twenty more
// shifts laid over. Nights of 12 h, six series at one sample a second.
#include "core/journal/shift_summary.h"
#include "tests/bench/night.h"
#include "tests/bench/season_ground.h"
#include "ui/chart/shift_chart.h"
#include "ui/review/night_story.h"
#include "ui/review/review_screen.h"

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <benchmark/benchmark.h>

#include <memory>

namespace panside::bench {
namespace {

constexpr int laidOver = 20;

struct Ground {
    SeasonGround season;
    std::vector<ShiftId> shifts = season.repeat(readLog(night(12)).facts, laidOver + 1, 0);
};

std::unique_ptr<Ground> groundOfAll;
const Ground& ground() {
    if (!groundOfAll)
        groundOfAll = std::make_unique<Ground>();
    return *groundOfAll;
}

// What Enter on a shift does before the next key is taken.
void openAShift(benchmark::State& state) {
    const ShiftId shift = ground().shifts.front();
    ReviewScreen screen;
    screen.wear(Dress{});
    screen.resize(1366, 768);
    screen.show();
    QApplication::processEvents();
    for ([[maybe_unused]] auto _ : state) {
        auto journal = Journal::open(ground().season.place(), Journal::Access::read);
        const auto summary = summaryOf(journal, shift);
        auto [trace, last] = shiftChart(journal, shift);
        screen.showShift(shift, std::move(trace), last, shiftStory(summary, Units::us), Units::us);
        benchmark::DoNotOptimize(screen.grab());
    }
    state.counters["goal_ms"] = 150;
}
BENCHMARK(openAShift)->Iterations(10)->Unit(benchmark::kMillisecond);

class Laid {
public:
    Laid() {
        const auto journal = Journal::open(ground().season.place(), Journal::Access::read);
        screen.wear(Dress{});
        screen.resize(1366, 768);
        for (const ShiftId shift : ground().shifts) {
            auto [trace, last] = shiftChart(journal, shift);
            if (shift == ground().shifts.front())
                screen.showShift(shift, std::move(trace), last, {}, Units::us);
            else
                screen.layOver(shift, std::move(trace));
        }
        screen.show();
        QApplication::processEvents(); // only what is on the screen is painted
    }
    RiseChart& chart() { return screen.chart(); }
    ReviewScreen screen;
};
std::unique_ptr<Laid> laidOfAll;
Laid& laid() {
    if (!laidOfAll)
        laidOfAll = std::make_unique<Laid>();
    return *laidOfAll;
}

// Another shift laid over, or another size of the window: all lines are thinned anew.
void redrawAllLaidOver(benchmark::State& state) {
    RiseChart& chart = laid().chart();
    chart.showWhole();
    bool closer = true;
    for ([[maybe_unused]] auto _ : state) {
        chart.zoomAbout(closer ? 1.3 : 1 / 1.3, 700);
        closer = !closer;
        chart.repaint();
    }
    state.counters["goal_ms"] = 40;
    state.counters["paintings"] = chart.paintings();
}
BENCHMARK(redrawAllLaidOver)->Iterations(60)->Unit(benchmark::kMillisecond);

void dragAllLaidOver(benchmark::State& state) {
    RiseChart& chart = laid().chart();
    chart.showWhole();
    chart.zoom(2);
    chart.pan(-0.5);
    bool later = true;
    for ([[maybe_unused]] auto _ : state) {
        chart.pan(later ? 0.02 : -0.02);
        later = !later;
        chart.repaint();
    }
    state.counters["goal_ms"] = 40;
    state.counters["paintings"] = chart.paintings();
}
BENCHMARK(dragAllLaidOver)->Iterations(60)->Unit(benchmark::kMillisecond);

} // namespace

void end() {
    laidOfAll.reset();
    groundOfAll.reset();
}

} // namespace panside::bench

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application{argc, argv};
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    panside::bench::end(); // widgets go before the application does
}
