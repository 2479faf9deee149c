// What the engine costs: parsing a log, folding a second of boil, one picture, one line of JSON.
#include "core/boil/boil.h"
#include "core/boil/state.h"
#include "tests/bench/night.h"

#include <benchmark/benchmark.h>

namespace panside {
namespace {

const std::string& hour() {
    static const std::string text = bench::night(1);
    return text;
}

void parseLog(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(readLog(hour()));
    const auto rows = readLog(hour()).facts.size();
    state.counters["row"] = benchmark::Counter(
        static_cast<double>(rows), benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}
BENCHMARK(parseLog)->Unit(benchmark::kMillisecond);

void writeRows(benchmark::State& state) {
    const auto facts = readLog(hour()).facts;
    for (auto _ : state)
        benchmark::DoNotOptimize(writeLog(facts));
    state.counters["row"] = benchmark::Counter(
        static_cast<double>(facts.size()), benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}
BENCHMARK(writeRows)->Unit(benchmark::kMillisecond);

void foldSecond(benchmark::State& state) {
    const auto facts = readLog(hour()).facts;
    for (auto _ : state) {
        State boil;
        for (const Fact& fact : facts)
            absorb(boil, fact);
        benchmark::DoNotOptimize(boil);
    }
    state.counters["second"] =
        benchmark::Counter(3600, benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
    state.counters["fact"] = benchmark::Counter(
        static_cast<double>(facts.size()), benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}
BENCHMARK(foldSecond)->Unit(benchmark::kMillisecond);

State afterAnHour() {
    State boil;
    const auto facts = readLog(hour()).facts;
    for (const Fact& fact : facts)
        absorb(boil, fact);
    return boil;
}

void onePicture(benchmark::State& state) {
    const State boil = afterAnHour();
    for (auto _ : state)
        benchmark::DoNotOptimize(picture(boil, boil.now));
}
BENCHMARK(onePicture);

void oneLine(benchmark::State& state) {
    const State boil = afterAnHour();
    const Picture shown = picture(boil, boil.now);
    std::string out;
    for (auto _ : state) {
        out.clear();
        appendJson(out, shown);
        benchmark::DoNotOptimize(out.data());
    }
}
BENCHMARK(oneLine);

// A fact ten minutes late: the fold runs again from a kept state.
void lateFact(benchmark::State& state) {
    const auto facts = readLog(hour()).facts;
    Boil boil;
    FactId id = 0;
    for (const Fact& fact : facts)
        boil.add(id++, fact);
    for (auto _ : state) {
        boil.add(id, Fact{facts.back().at - std::chrono::minutes{10}, Defoamer{}});
        benchmark::DoNotOptimize(boil.fold().pictureAt(facts.back().at));
        boil.withdraw(id);
    }
}
BENCHMARK(lateFact)->Unit(benchmark::kMillisecond);

} // namespace
} // namespace panside
