#pragma once
// A made-up night with six series at 1 Hz, as a shift log: only its size and shape matter, no physics is in it.
#include "core/boil/shift_log.h"

#include <fmt/format.h>

#include <cmath>
#include <cstdint>
#include <string>

namespace panside::bench {

inline std::string night(int hours) {
    const Instant begun = instantIn("2025-03-14T18:00:00Z").value();
    std::string out{logHeader};
    out += "\n2025-03-14T18:00:00Z,set,67,brix,key=target_density\n2025-03-14T18:00:00Z,lit,,,\n";
    std::uint32_t random = 12345;
    const auto noise = [&random] {
        random = random * 1664525U + 1013904223U;
        return static_cast<double>(random >> 8U) / (1U << 23U) - 1;
    };
    for (int t = 0; t < hours * 3600; ++t) {
        const auto time = textOf(begun + std::chrono::seconds{t});
        const double load = t % 480, cycle = t % 1500;
        if (t % 480 == 479)
            out += fmt::format("{},fired,25,kg,\n", time);
        if (t % 1500 == 1380)
            out += time + ",draw_open,,,\n";
        if (t % 1500 == 1499)
            out += time + ",draw_close,6,L,\n";
        const double rise = cycle < 1380 ? 2.8 + 1.4 * cycle / 1380 : 4.2 - 1.4 * (cycle - 1380) / 120;
        out += fmt::format("{},syrup_pan,{:.2f},degC,\n", time, 99.6 + rise + 0.1 * noise());
        out += fmt::format("{},flue_pan,{:.2f},degC,\n", time, 100.1 + 0.1 * noise());
        out += fmt::format("{},stack,{:.1f},degC,\n", time, 380 + 80 * std::exp(-load / 200) + 5 * noise());
        out += fmt::format("{},pan_level,{:.1f},mm,\n", time, 40 + noise());
        out += fmt::format("{},tank_level,{:.1f},L,\n", time, 4000 - 0.08 * t + noise());
        out += fmt::format("{},pressure,{:.3f},kPa,\n", time, 100.2 + 0.5 * std::sin(t / 20000.0) + 0.01 * noise());
    }
    return out;
}

} // namespace panside::bench
