// Probe lines decoded a second, on one core: bare, and with the mapping to readings.
#include "core/probe/mapping.h"

#include <benchmark/benchmark.h>
#include <numeric>

namespace panside {
namespace {

const char* const lines[] = {"103.42,318.5,98.71\r\n", "syrup=103.42 stack=318.5 baro=98.71\r\n",
                             "{\"syrup\":103.42,\"stack\":318.5,\"baro\":98.71}\r\n",
                             "syrup=103.42 stack=318.5 baro=98.71*22\r\n"};

// In pieces of 4096 bytes, as a busy port gives them: some lines lie across two of them.
template <class Sink>
void decode(benchmark::State& state, const Sink& sink) {
    constexpr std::size_t piece = 4096;
    std::string text;
    while (text.size() < 400 * piece)
        text += lines[state.range(0)];
    LineDecoder decoder;
    decoder.restart(false);
    for (auto _ : state)
        for (std::size_t at = 0; at < text.size(); at += piece)
            decoder.feed(std::string_view{text}.substr(at, piece), sink);
    state.counters["lines"] = benchmark::Counter(double(decoder.counts().good), benchmark::Counter::kIsRate);
    const auto& counts = decoder.counts().refused;
    const auto refused = std::accumulate(counts.begin(), counts.end(), std::uint64_t{0});
    if (decoder.counts().good == 0 || refused > std::uint64_t(state.iterations()) * 2)
        state.SkipWithError("lines were refused");
}

void lineDecoder(benchmark::State& state) {
    double sum = 0;
    decode(state, [&](const ProbeLine& line) { sum += line.fields.empty() ? 0 : line.fields[0].number.value_or(0); });
    benchmark::DoNotOptimize(sum);
}
BENCHMARK(lineDecoder)->DenseRange(0, 3);

void lineToReadings(benchmark::State& state) {
    const bool columns = state.range(0) == 0;
    const Mapping mapping{{.name = "pan box",
                           .device = "",
                           .fields = {{.is = columns ? "1" : "syrup", .reads = Series::syrup_pan, .unit = Unit::degC},
                                      {.is = columns ? "2" : "stack", .reads = Series::stack, .unit = Unit::degC},
                                      {.is = columns ? "3" : "baro", .reads = Series::pressure, .unit = Unit::kPa}}}};
    double sum = 0;
    const Mapping::Sink add = [&](const FieldOutcome& outcome) { sum += outcome.reading ? outcome.reading->si : 0; };
    decode(state, [&](const ProbeLine& line) { mapping.map(line, add); });
    benchmark::DoNotOptimize(sum);
}
BENCHMARK(lineToReadings)->DenseRange(0, 3);

} // namespace
} // namespace panside
