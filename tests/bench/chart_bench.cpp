// A shift's chart: from its key to the last pixel, and each frame while a hand drags or zooms it with twenty more
// shifts laid over. Nights of 12 h, six series at one sample a second.
#include "app/season_book.h"
#include "core/boil/past_shift.h"
#include "core/boil/shift_log.h"
#include "core/journal/log_import.h"
#include "core/journal/shift_summary.h"
#include "tests/bench/night.h"
#include "ui/review/night_story.h"
#include "ui/review/review_screen.h"

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <benchmark/benchmark.h>

#include <cstdlib>
#include <filesystem>
#include <memory>
#include <sstream>

namespace panside::bench {
namespace {

namespace fs = std::filesystem;
constexpr int laidOver = 20;

class Ground {
public:
    Ground() {
        std::string name = (fs::temp_directory_path() / "chart-bench-XXXXXX").string();
        folder = ::mkdtemp(name.data());
        Journal journal = Journal::open(place());
        const auto facts = readLog(night(12)).facts;
        for (int day = 0; day <= laidOver; ++day) {
            auto moved = facts;
            for (Fact& fact : moved)
                fact.at += std::chrono::days{day};
            std::istringstream log{writeLog(moved)};
            shifts.push_back(importLog(journal, log).shift);
        }
    }
    ~Ground() {
        std::error_code ignored;
        fs::remove_all(folder, ignored);
    }
    fs::path place() const { return folder / "season.journal"; }
    fs::path folder;
    std::vector<ShiftId> shifts;
};

std::unique_ptr<Ground> groundOfAll;
const Ground& ground() {
    if (!groundOfAll)
        groundOfAll = std::make_unique<Ground>();
    return *groundOfAll;
}

struct Charted {
    ShiftTrace trace;
    std::optional<Picture> last; // at the last fact
};
// Its alarms are another matter, and come later.
Charted chartOf(const Journal& journal, ShiftId shift) {
    PastShift past;
    Charted charted;
    journal.visit(shift, [&](FactId, const Fact& fact) {
        past.take(fact);
        charted.trace.take(fact);
        return true;
    });
    for (const RisePoint& point : past.rise())
        charted.trace.take(point);
    for (const SteamPoint& point : past.steam())
        charted.trace.take(point);
    charted.last = past.last();
    return charted;
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
        auto journal = Journal::open(ground().place(), Journal::Access::read);
        const auto summary = summaryOf(journal, shift);
        auto [trace, last] = chartOf(journal, shift);
        screen.showShift(shift, std::move(trace), last, shiftStory(summary, Units::us), Units::us);
        benchmark::DoNotOptimize(screen.grab());
    }
    state.counters["goal_ms"] = 150;
}
BENCHMARK(openAShift)->Iterations(10)->Unit(benchmark::kMillisecond);

class Laid {
public:
    Laid() {
        const auto journal = Journal::open(ground().place(), Journal::Access::read);
        screen.wear(Dress{});
        screen.resize(1366, 768);
        for (const ShiftId shift : ground().shifts) {
            auto [trace, last] = chartOf(journal, shift);
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
