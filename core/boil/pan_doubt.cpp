#include "core/boil/pan_doubt.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// Sizes are common practice, no source. An open pan loses some 5 to 10 kW a square metre near boiling; an inch of
// liquid cools by less than a tenth of a kelvin a second, and over a fire it is warmed by as much and more.
constexpr double coolsBy = 0.12;       // K a second, at most
constexpr double leastFall = 2;        // K: less may be thin sap, or water that is thought to boil elsewhere
constexpr double warmsBy = 1;          // K that cold sap over a fire has warmed by, at the least,
constexpr double warmsWithin = 45;     // in so many seconds
constexpr double underFor = 20;        // seconds that a pan may stand cold over a burning fire;
constexpr double coldFor = 120;        // one that is fed cold
constexpr double backFor = 10;         // seconds that it has to stand at what a pan can be again,
constexpr double backAgain = 60;       // so many more for each time before,
constexpr double again = 1200;         // within so many: a wet lead comes and goes
constexpr double warmAgainIn = 300;    // seconds: no cold sap takes longer
constexpr double firstCold = 1200;     // seconds after which a fire that is out lets a pan be as cold as it reads
constexpr double panReaches = 14;      // K over boiling water: the densest that any pan should hold
constexpr double farUnder = 15;        // K under boiling water, and over ice that melts:
constexpr double ice = 276;            // K
constexpr double moves = 4;            // K that what stands there may move
constexpr double coldStart = 1200;     // seconds that a pan may stand so over a burning fire before it ever boiled;
constexpr double inOtherUnitFor = 600; // as long where the number in the other unit is that of a boiling pan
constexpr std::uint8_t boilsFor = 3;   // readings on end, or one of a probe that reads seldom
constexpr double seldom = 20;          // seconds

} // namespace

void PanDoubt::begin(Instant at, double kelvin) {
    falls_ =
        endedAt_ && secondsBetween(*endedAt_, at) < again ? static_cast<std::uint8_t>(std::min(falls_ + 1, 20)) : 0;
    since_ = at;
    lowest_ = kelvin;
    lowestAt_ = at;
}

bool PanDoubt::wasThereTooSoon(double kelvin, Instant at) const {
    const double took = std::max(1.0, secondsBetween(boiled_, at));
    return boiledAt_ - kelvin > leastFall && (boiledAt_ - kelvin) / took > coolsBy;
}

// It fell no faster than a pan may cool; but the fire burns.
bool PanDoubt::staysUnder(Instant at, const Around& around) {
    if (around.fire != Fire::burns) {
        underSince_.reset();
        return false;
    }
    underSince_ = underSince_.value_or(at);
    return secondsBetween(*underSince_, at) >= (around.mayStandCold ? coldFor : underFor);
}

// A meter in the other unit, or a probe on the bench, from the beginning on.
bool PanDoubt::neverWarms(double kelvin, double inOtherUnit, Instant at, const Around& around) {
    if (around.fire != Fire::burns || around.mayStandCold || kelvin < ice || kelvin > around.boils - farUnder) {
        stoodFrom_.reset();
        return false;
    }
    if (!stoodFrom_ || std::abs(kelvin - stoodAt_) > moves) {
        stoodFrom_ = at;
        stoodAt_ = kelvin;
    }
    const bool other = inOtherUnit > around.boils - around.margin && inOtherUnit < around.boils + panReaches;
    return secondsBetween(*stoodFrom_, at) >= (other ? inOtherUnitFor : coldStart);
}

void PanDoubt::follow(double kelvin, double inOtherUnit, Instant at, bool leapt, const Around& around) {
    if (kelvin < lowest_) {
        lowest_ = kelvin;
        lowestAt_ = at;
    }
    otherUnit_ = inOtherUnit > around.boils - around.margin && inOtherUnit < around.boils + panReaches;
    const bool warms = kelvin > lowest_ + warmsBy;
    const double stood = secondsBetween(*since_, at);
    if (!surelySince_ && (leapt || otherUnit_ || stood > warmAgainIn || (stood > warmsWithin && !warms)))
        surelySince_ = at;
}

void PanDoubt::addSample(double kelvin, double inOtherUnit, Instant at, bool leapt, const Around& around) {
    const double back = around.boils - around.margin / 2;
    const bool isSeldom = secondsBetween(heardAt_, at) > seldom;
    heardAt_ = at;
    if (kelvin >= back) {
        boilings_ = isSeldom ? boilsFor : static_cast<std::uint8_t>(std::min<int>(boilings_ + 1, boilsFor));
        underSince_.reset();
        backSince_ = backSince_.value_or(at);
        const bool stood = (isSeldom && falls_ == 0) || secondsBetween(*backSince_, at) >= backFor + falls_ * backAgain;
        if (boilings_ < boilsFor || (since_ && !stood))
            return;
        if (since_)
            endedAt_ = at;
        since_.reset();
        surelySince_.reset();
        outSince_.reset();
        otherUnit_ = false;
        boiledAt_ = kelvin;
        boiled_ = at;
        return;
    }
    boilings_ = 0;
    backSince_.reset();
    const bool out = around.fire == Fire::out || !around.firing;
    outSince_ = out ? std::optional{outSince_.value_or(at)} : std::nullopt;
    if (out && (!since_ || secondsBetween(*outSince_, at) > firstCold)) {
        *this = PanDoubt{};
        outSince_ = heardAt_ = at;
        return;
    }
    if (since_)
        return follow(kelvin, inOtherUnit, at, leapt, around);
    if (boiledAt_ <= 0) {
        if (!neverWarms(kelvin, inOtherUnit, at, around))
            return;
        begin(at, kelvin);
        surelySince_ = at;
        return follow(kelvin, inOtherUnit, at, leapt, around);
    }
    if (kelvin > around.boils - around.margin)
        return;
    if (wasThereTooSoon(kelvin, at)) {
        begin(at, kelvin);
        follow(kelvin, inOtherUnit, at, leapt, around);
    } else if (staysUnder(at, around)) {
        begin(at, kelvin);
    }
}

} // namespace panside
