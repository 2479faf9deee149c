#include "ui/sound/tone.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace panside {
namespace {

constexpr double edge = 0.012; // seconds to swell and to fade: no click

void addPulse(std::vector<std::int16_t>& samples, double pitch, double length, double volume) {
    const int count = static_cast<int>(length * toneRate);
    for (int i = 0; i < count; ++i) {
        const double t = static_cast<double>(i) / toneRate;
        const double swell = std::clamp(std::min(t, length - t) / edge, 0.0, 1.0);
        const double phase = 2 * std::numbers::pi * pitch * t;
        // Two overtones: small loudspeakers and damped ears lose the ground tone first.
        const double wave = 0.7 * std::sin(phase) + 0.2 * std::sin(2 * phase) + 0.1 * std::sin(3 * phase);
        samples.push_back(static_cast<std::int16_t>(std::lround(32000 * volume * swell * wave)));
    }
}

} // namespace

const AlarmTone& alarmTone(Priority priority) {
    static const AlarmTone high{{880, 880, 660, 880, 880}, 0.14, 0.07, 4};
    static const AlarmTone medium{{587, 740, 587}, 0.22, 0.16, 12};
    static const AlarmTone low{{494}, 0.35, 0, 0};
    switch (priority) {
    case Priority::high:
        return high;
    case Priority::medium:
        return medium;
    case Priority::low:
        break;
    }
    return low;
}

double loudness(int call) { return std::min(1.0, 0.4 + 0.15 * std::max(0, call)); }

std::vector<std::int16_t> samplesOf(Priority priority, double volume) {
    const AlarmTone& tone = alarmTone(priority);
    std::vector<std::int16_t> samples;
    for (const double pitch : tone.pitches) {
        addPulse(samples, pitch, tone.pulse, std::clamp(volume, 0.0, 1.0));
        samples.insert(samples.end(), static_cast<std::size_t>(tone.rest * toneRate), 0);
    }
    return samples;
}

} // namespace panside
