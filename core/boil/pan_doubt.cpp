#include "core/boil/pan_doubt.h"

#include <algorithm>

namespace panside {
namespace {

// Sizes are common practice, no source. An open pan loses some 5 to 10 kW a square metre near boiling; an inch of
// liquid cools by less than a tenth of a kelvin a second, and over a fire it is warmed by as much and more.
constexpr double coolsBy = 0.12;     // K a second, at most
constexpr double leastFall = 2;      // K: less may be thin sap, or water that is thought to boil elsewhere
constexpr double warmsBy = 1;        // K that cold sap over a fire has warmed by, at the least,
constexpr double warmsWithin = 45;   // in so many seconds
constexpr double coldFor = 120;      // seconds that a pan may stand cold over a burning fire, unexplained
constexpr double warmAgainIn = 300;  // seconds: no cold sap takes longer
constexpr double firstCold = 1200;   // seconds after which a fire that is out lets a pan be as cold as it reads
constexpr double panReaches = 14;    // K over boiling water: the densest that any pan should hold
constexpr std::uint8_t boilsFor = 3; // readings on end, or one of a probe that reads seldom
constexpr double seldom = 20;        // seconds

} // namespace

void PanDoubt::begin(Instant at, double kelvin) {
    since_ = at;
    lowest_ = kelvin;
    lowestAt_ = at;
}

bool PanDoubt::wasThereTooSoon(double kelvin, Instant at) const {
    const double took = std::max(1.0, secondsBetween(boiled_, at));
    return boiledAt_ - kelvin > leastFall && (boiledAt_ - kelvin) / took > coolsBy;
}

// It fell no faster than a pan may cool; but the fire burns, and it does not warm.
bool PanDoubt::standsCold(double kelvin, Instant at, const Around& around) {
    if (around.fire != Fire::burns) {
        underSince_.reset();
        return false;
    }
    if (!underSince_ || kelvin > lowest_ + warmsBy) {
        underSince_ = at;
        lowest_ = kelvin;
    }
    lowest_ = std::min(lowest_, kelvin);
    return secondsBetween(*underSince_, at) >= coldFor;
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

void PanDoubt::take(double kelvin, double inOtherUnit, Instant at, bool leapt, const Around& around) {
    const double back = around.boils - around.margin / 2;
    const bool isSeldom = secondsBetween(heardAt_, at) > seldom;
    heardAt_ = at;
    if (kelvin >= back) {
        boilings_ = isSeldom ? boilsFor : static_cast<std::uint8_t>(std::min<int>(boilings_ + 1, boilsFor));
        underSince_.reset();
        if (boilings_ < boilsFor)
            return;
        since_.reset();
        surelySince_.reset();
        outSince_.reset();
        otherUnit_ = false;
        boiledAt_ = kelvin;
        boiled_ = at;
        return;
    }
    boilings_ = 0;
    const bool out = around.fire == Fire::out || !around.firing;
    outSince_ = out ? std::optional{outSince_.value_or(at)} : std::nullopt;
    if (out && (!since_ || secondsBetween(*outSince_, at) > firstCold)) {
        *this = PanDoubt{};
        outSince_ = heardAt_ = at;
        return;
    }
    if (since_)
        return follow(kelvin, inOtherUnit, at, leapt, around);
    if (boiledAt_ <= 0 || kelvin > around.boils - around.margin)
        return;
    if (wasThereTooSoon(kelvin, at)) {
        begin(at, kelvin);
        follow(kelvin, inOtherUnit, at, leapt, around);
    } else if (standsCold(kelvin, at, around)) {
        begin(at, kelvin);
        surelySince_ = at;
    }
}

} // namespace panside
