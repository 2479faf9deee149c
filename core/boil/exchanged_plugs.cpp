#include "core/boil/exchanged_plugs.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// Common practice, no source: two sound thermometers differ by some tenths, and with flat sap in both pans so do the
// readings. The more it is, the sooner it is no error of theirs.
constexpr double probesDiffer = 0.6, hotterEnough = 60; // K; kelvin seconds beyond it
constexpr double noError = 1.5;                         // K: more than the errors of both
constexpr double boilsDownTo = 1.5;                     // K under boiling water that a probe in a boiling pan may read
constexpr double oneStandsFor = 120;                    // s that one reading stands for
constexpr double inOneMoment = 10, placesApart = 1,
                 missedBy = 0.35;                   // s; K between the levels; share of it that they may be missed by
constexpr double hotterAgain = 0.2, hotterFor = 30; // K, s

bool changedPlaces(const ExchangedPlugs::Jump& syrup, const ExchangedPlugs::Jump& flue, Instant at) {
    const double gap = syrup.from - flue.from;
    return std::abs(secondsBetween(syrup.at, flue.at)) <= inOneMoment &&
           secondsBetween(syrup.at, at) <= 3 * inOneMoment && gap >= placesApart &&
           std::abs(syrup.to - flue.from) <= missedBy * gap && std::abs(flue.to - syrup.from) <= missedBy * gap;
}

} // namespace

void ExchangedPlugs::begin(Instant at, bool isSure) {
    since_ = since_.value_or(at);
    if (isSure)
        surelySince_ = surelySince_.value_or(at);
    backSince_.reset();
}

void ExchangedPlugs::addSample(const Pan& syrup, const Pan& flue, double boils, Instant at) {
    const double dt = heardAt_ ? std::min(oneStandsFor, secondsBetween(*heardAt_, at)) : 0;
    heardAt_ = at;
    if (!since_ && syrup.jump && flue.jump && changedPlaces(*syrup.jump, *flue.jump, at))
        return begin(at, true);
    if (flue.jump && flue.jump->at != leapAt_) {
        leapAt_ = flue.jump->at;
        leapt_ += flue.jump->to - flue.jump->from;
    }
    if (std::min(syrup.kelvin, flue.kelvin) < boils - boilsDownTo)
        return backSince_.reset();
    const double by = flue.kelvin - syrup.kelvin;
    if (since_) {
        if (by > noError)
            begin(at, true);
        backSince_ = by < -hotterAgain ? std::optional{backSince_.value_or(at)} : std::nullopt;
        if (backSince_ && secondsBetween(*backSince_, at) >= hotterFor)
            *this = {};
    } else if (syrup.believed && flue.believed) {
        hotter_ = std::max(0.0, hotter_ + (by - std::max(0.0, leapt_) - probesDiffer) * dt);
        if (hotter_ >= hotterEnough)
            begin(at, by > noError);
    }
}

} // namespace panside
