#pragma once
// What the rig tells over days: each with its ground and its doubt. Too little to tell is an answer.
#include "core/ledger/ledger.h"

namespace panside {

enum class RigVerdict : std::uint8_t { tooLittle, steady, falling, rising };
struct RigTrend {
    RigVerdict verdict = RigVerdict::tooLittle;
    int nights = 0;                       // it rests on
    std::string wood;                     // of which all of them were fired
    double first = 0, last = 0;           // litres of water a kilogram of wood, by the line
    double changeLow = 0, changeHigh = 0; // share from the first night to the last, 95 percent of belief
};
struct NiterTell {
    int switches = 0;                     // of the pan's side
    std::optional<Duration> usual, since; // hours of fire between two switches, the middle one; since the last
    Duration shortest{0}, longest{0};     // of those between two switches
};
inline constexpr int leastGlassDraws = 6, leastGlassPans = 3; // with fewer it says tooLittle
struct GlassTell {
    RigVerdict verdict = RigVerdict::tooLittle; // steady: apart by the same amount on every pan
    int draws = 0, pans = 0;                    // checked draws, and the pans or sides they came from
    TemperatureDifference apart, sd;
    double brix = 0; // what it is in the glass
};
struct RigTells {
    RigTrend trend; // evaporation a mass of wood
    NiterTell niter;
    GlassTell glass;
};
RigTells rigTells(const Ledger& ledger);

} // namespace panside
