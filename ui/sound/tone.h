#pragma once
// The sounds of the alarms, made here from sines: pulses whose number, pitch and pace tell the priority apart by ear
// alone.
#include "core/boil/picture.h"

#include <cstdint>
#include <vector>

namespace panside {

inline constexpr int toneRate = 22050; // samples a second, one channel

// What a priority sounds like. Pulses in the range in which an old ear and a noisy room still hear (common practice:
// 500 to 1000 Hz); the higher the priority, the more pulses and the shorter the rest between.
struct AlarmTone {
    std::vector<double> pitches; // hertz, one a pulse
    double pulse, rest;          // seconds
    double every;                // seconds from one call to the next; 0: once
};
const AlarmTone& alarmTone(Priority priority);

// How loud the call is, 0 to 1 of what the volume allows: it rises with each call until somebody says it was seen.
double loudness(int call);

// One call as 16-bit samples; volume 0 to 1.
std::vector<std::int16_t> samplesOf(Priority priority, double volume);

} // namespace panside
