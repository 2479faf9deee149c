#include "core/boil/weather.h"

#include "core/boil/height.h"
#include "core/boil/state.h"
#include "core/boil/water_boil.h"
#include "core/physics/air.h"
#include "core/physics/sugar.h"
#include "core/physics/water.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace panside {
namespace {

// How fast a word about the pressure ages: a front moves it by some 0.1 kPa an hour, and 0.028 K goes with 0.1 kPa
// (common practice, no source). A careful look at boiling water is good to about a tenth of a degree.
constexpr double kelvinPerHour = 0.03;
constexpr double barometerPascal = 30, checkKelvin = 0.1;
// From the deepest low to the highest high at one place the boiling point moves by some 2 K, over weeks.
constexpr double leap = 2, sameAgain = 0.5;
// What a fair probe may read wrong beside the weather, kelvin; and what a pressure that no weather makes at its height
// is worth beside a look at boiling water.
constexpr double probeWrong = 0.3, doubtedKelvin = 1;

Duration ageAt(const Weather::Boiling& boiling, Instant now) {
    return Duration{std::max(0.0, secondsBetween(boiling.from, now))};
}

TemperatureDifference uncertain(TemperatureDifference given, Duration age) {
    return TemperatureDifference::kelvin(std::hypot(given.kelvin(), kelvinPerHour * (age.count() / 3600)));
}

// By how much the boiling point moves with a pressure.
double kelvinFor(Pressure pressure, Pressure step) {
    const auto a = waterBoilingPoint(pressure), b = waterBoilingPoint(pressure + step);
    return a && b ? (*b - *a).kelvin() : 0;
}

std::optional<Weather::Boiling> boilingAt(const State& state, Pressure pressure, Pressure uncertainty, Instant from) {
    const auto boils = waterBoilingPoint(pressure);
    if (!boils)
        return std::nullopt;
    return Weather::Boiling{pressure, *boils,   TemperatureDifference::kelvin(kelvinFor(pressure, uncertainty)),
                            from,     pressure, boilingRise(state.settings.targetDensity(), pressure)};
}

} // namespace

TemperatureDifference Weather::Boiling::uncertainty() const { return uncertain(given, age); }

void Weather::takeBarometer(const State& state, Instant at) {
    const auto read = state.sensors.of(Series::pressure).value(at);
    if (!read)
        return;
    const Pressure pressure = Pressure::pascal(read->si) - state.settings.pressureOffset();
    const auto boiling = boilingAt(state, pressure, Pressure::pascal(barometerPascal), read->at);
    if (!boiling)
        return;
    // What it said before it was in doubt holds on, and ages.
    const Sensor& sensor = state.sensors.of(Series::pressure);
    if (sensor.reason(at) == Reason::noWeather)
        return;
    if (sensor.reason(at) == Reason::otherHeight) {
        suspect_ = boiling;
    } else if (sensor.trust(at) == Trust::good || !barometer_) {
        barometer_ = boiling;
        suspect_.reset();
    }
}

void Weather::takeReport(const State& state) {
    const auto elevation = state.settings.elevation();
    if (!reported_ || !elevation)
        return;
    if (isNoWeather(*reported_, Length::metre(0)))
        return report_.reset();
    std::optional<Temperature> air;
    if (const auto read = state.sensors.of(Series::air).value(state.now);
        read && secondsBetween(read->at, state.now) < 3 * 3600)
        air = Temperature::kelvin(read->si);
    const auto station = stationFromSeaLevel(*reported_, *elevation, air);
    const auto uncertainty = stationFromSeaLevelUncertainty(*reported_, *elevation, air);
    if (station && uncertainty)
        report_ = boilingAt(state, *station, *uncertainty, reportedAt_);
    reportDoubted_ = looksUnreduced(*reported_, *elevation, doubtedFrom);
}

// The height made known after the check.
void Weather::takeHeight(const State& state) {
    const auto elevation = state.settings.elevation();
    if (elevation && barometer_ && looksReduced(*barometer_->pressure, *elevation, doubtedFrom))
        suspect_ = std::exchange(barometer_, std::nullopt);
    if (barometer_ && isNoWeather(*barometer_->pressure, elevation))
        barometer_.reset();
    const auto band = elevation ? boilingBand(*elevation) : std::nullopt;
    if (!band || !check_ || checkBorneOut_)
        return;
    const auto wrong = TemperatureDifference::kelvin(probeWrong);
    if (check_->waterBoils < band->lowest - wrong || check_->waterBoils > band->highest + wrong) {
        doubted_ = check_->waterBoils;
        check_.reset();
    }
}

void Weather::takeCheck(const State& state, const WaterCheck& check, Instant at) {
    newCheck_ = repeated_.isFirst(check, at);
    if (!newCheck_)
        return;
    const Temperature boiled = check.boiledAt.value;
    // Water that did not boil, a probe in the steam or on the metal: one look may be wrong, two that agree are not.
    const auto known = boiling(at);
    const bool leaps =
        known && std::abs((boiled - known->waterBoils).kelvin()) > std::max(leap, 3 * known->uncertainty().kelvin());
    const bool again = doubted_ && std::abs((boiled - *doubted_).kelvin()) <= sameAgain;
    // Of two looks that nothing else bears out, either may be the slip: then the last one counts.
    const bool alone = known && !known->pressure && !checkBorneOut_;
    // Without a barometer the height bounds what the weather can do.
    const auto elevation = state.settings.elevation();
    const auto band = elevation && !(known && known->pressure) ? boilingBand(*elevation) : std::nullopt;
    const auto wrong = TemperatureDifference::kelvin(probeWrong);
    const bool outside = band && (boiled < band->lowest - wrong || boiled > band->highest + wrong);
    if (((leaps && !alone) || outside || boiled < coldestBoil || boiled > hottestBoil) && !again) {
        doubted_ = boiled;
        return;
    }
    doubted_.reset();
    checkBorneOut_ = again || (known && !leaps);
    // A probe may read further off than any weather goes; the rise over it is that of weather all the same.
    if (const auto pressure = saturationPressure(std::clamp(boiled, coldestBoil, hottestBoil)))
        check_ = Boiling{std::nullopt, boiled,    TemperatureDifference::kelvin(checkKelvin),
                         at,           *pressure, boilingRise(state.settings.targetDensity(), *pressure)};
}

void Weather::takeTarget(const State& state) {
    for (auto* source : {&barometer_, &report_, &check_, &suspect_})
        if (*source)
            (*source)->targetRise = boilingRise(state.settings.targetDensity(), (*source)->forModel);
}

void Weather::absorb(const State& state, const Fact& fact) {
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        if (reading->series == Series::pressure)
            takeBarometer(state, fact.at);
        if (reading->series == Series::sea_level_pressure) {
            if (const auto read = state.sensors.of(Series::sea_level_pressure).value(fact.at)) {
                reported_ = Pressure::pascal(read->si);
                reportedAt_ = read->at;
            }
            takeReport(state);
        } else if (reading->series == Series::air) {
            takeReport(state);
        }
    } else if (const auto* check = std::get_if<WaterCheck>(&fact.what)) {
        takeCheck(state, *check, fact.at);
    } else if (const auto* set = std::get_if<Set>(&fact.what)) {
        // The rig made known later makes what was read before count.
        if (set->key == Setting::elevation) {
            takeReport(state);
            takeHeight(state);
        }
        if (set->key == Setting::pressure_offset)
            takeBarometer(state, fact.at);
        if (set->key == Setting::target_density)
            takeTarget(state);
    } else {
        return;
    }
    why_ = reported_ && !state.settings.elevation() ? Reason::noElevation
           : doubted_ && !check_                    ? Reason::checkDoubted
                                                    : Reason::noPressure;
}

std::optional<Weather::Boiling> Weather::boiling(Instant now) const {
    const std::optional<Boiling>* best = nullptr;
    const auto isDoubted = [&](const std::optional<Boiling>& source) {
        return &source == &suspect_ || (&source == &report_ && reportDoubted_);
    };
    const auto worth = [&](const std::optional<Boiling>& source) {
        return uncertain(source->given, ageAt(*source, now)).kelvin() + (isDoubted(source) ? doubtedKelvin : 0);
    };
    for (const auto* source : {&barometer_, &report_, &check_, &suspect_})
        if (*source && (!best || worth(*source) < worth(*best)))
            best = source;
    if (!best)
        return std::nullopt;
    std::optional<Boiling> boiling = *best;
    boiling->age = ageAt(**best, now);
    boiling->doubted = isDoubted(*best);
    return boiling;
}

void Weather::show(const State& state, Instant now, Picture& picture) const {
    if (const auto elevation = state.settings.elevation())
        if (const auto band = boilingBand(*elevation))
            picture.usuallyBoils = band->usual;
    const auto water = boiling(now);
    if (!water) {
        picture.why.push_back({Shown::pressureKPa, why_});
        picture.why.push_back({Shown::waterBoilsC, why_});
        return;
    }
    picture.pressure = water->pressure;
    picture.waterBoils = water->waterBoils;
    picture.waterBoilsAge = Duration{secondsBetween(water->from, now)};
    if (!water->pressure)
        picture.why.push_back({Shown::pressureKPa, why_ == Reason::noPressure ? Reason::noBarometer : why_});
}

} // namespace panside
