#include "core/boil/balance.h"

#include "core/boil/state.h"
#include "core/physics/sap.h"
#include "core/physics/sugar_heat.h"
#include "core/physics/water.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr Temperature usualFeed = Temperature::celsius(4);
constexpr Brix usualSap = Brix::degrees(2);
constexpr Duration usualBurnOut{45 * 60};
// Within so much of boiling water something boils.
constexpr auto nearBoiling = TemperatureDifference::kelvin(1.5);
// How wrong a balance over the tank is apart from the readings: pans not quite at level, hot and cold litres.
constexpr double balanceError = 0.015;
// How far the next hour of a crew differs from the ones before: loads and hands vary (measured by fire_table).
constexpr double unevenFiring = 0.08;

// Litres of water boiled off are cold litres.
constexpr Temperature cold = Temperature::celsius(20);

} // namespace

void Balance::take(const State& state, const Fact& fact) {
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        takeReading(state, *reading, fact.at);
    } else if (const auto* sap = std::get_if<SapIn>(&fact.what)) {
        const double litre = sap->volume.value.litre();
        sapIn_ += litre;
        if (sap->sugar) {
            sugarKnown_ += litre;
            sugarMass_ += litre * sap->sugar->massFraction();
        }
        if (sap->temperature)
            sapTemperature_ = sap->temperature->value;
    } else if (const auto* draw = std::get_if<DrawClosed>(&fact.what)) {
        const double litre = draw->volume ? draw->volume->value.litre() : -1;
        draws_[static_cast<std::size_t>(drawCount_++) % drawsKept] = {fact.at, litre};
        if (litre >= 0)
            syrupOut_ += litre;
        else
            ++unmeasured_;
    } else if (std::holds_alternative<Lit>(fact.what) || std::holds_alternative<Shutdown>(fact.what)) {
        // What leaves the tank before the fire is lit, or when the pans are raised for the burn-out, is not boiled off.
        tank_.forget();
        feed_.forget();
    }
}

void Balance::takeReading(const State& state, const Reading& reading, Instant at) {
    const auto believed = state.sensors.of(reading.series).value(at);
    if (!believed || believed->at != at)
        return;
    if (reading.series == Series::tank_level) {
        tank_.take(at, Volume::ofSi(believed->si));
    } else if (reading.series == Series::feed_flow) {
        // Across a silence the meter is not made up.
        if (fedAt_ && secondsBetween(*fedAt_, at) < 900)
            fed_ += VolumeFlow::ofSi(believed->si).litrePerHour() * secondsBetween(*fedAt_, at) / 3600;
        fedAt_ = at;
        feed_.take(at, Volume::litre(-fed_));
    } else if (reading.series == Series::syrup_pan) {
        noteBoiling(state, Temperature::kelvin(believed->si), at);
    }
    noteEvaporation(state, at);
}

void Balance::noteBoiling(const State& state, Temperature pan, Instant at) {
    const auto water = state.weather.boiling(at);
    if (!water)
        return;
    const bool boils = pan - state.mark.offset(at) > water->waterBoils - nearBoiling;
    if (boils && !boilingSince_) {
        // While the pans came up nothing boiled off; what left the tank then was no evaporation.
        tank_.forget();
        feed_.forget();
        boilingSince_ = at;
    }
}

void Balance::noteEvaporation(const State& state, Instant now) {
    if (notedAt_ && secondsBetween(*notedAt_, now) < 60)
        return;
    const auto rate = evaporation(state, sapUse(now), now);
    minutes_[static_cast<std::size_t>(minuteCount_++) % minutes_.size()] = {
        now, rate ? static_cast<float>(rate->litrePerHour) : -1};
    notedAt_ = now;
}

double Balance::syrupShare(const State& state) const {
    const Brix sap = sugarKnown_ > 0 ? Brix::massFraction(sugarMass_ / sugarKnown_) : usualSap;
    const auto ratio = sapPerSyrup(sap, state.settings.targetDensity());
    return ratio ? 1 / *ratio : 0;
}

Balance::Use Balance::sapUse(Instant now, double window) const {
    const auto tank = tank_.rate(now, window), feed = feed_.rate(now, window);
    const auto from = tank ? std::optional{tank->from} : std::nullopt;
    if (!tank || tank->litrePerHour < 0)
        return {feed ? std::optional{Rate{feed->litrePerHour, feed->sd}} : std::nullopt, from};
    if (!feed)
        return {Rate{tank->litrePerHour, tank->sd}, from};
    const double a = 1 / (tank->sd * tank->sd), b = 1 / (feed->sd * feed->sd);
    return {Rate{(a * tank->litrePerHour + b * feed->litrePerHour) / (a + b), 1 / std::sqrt(a + b)}, from};
}

double Balance::drawn(Instant since, Instant until, int& missing) const {
    double litre = 0;
    missing = 0;
    for (int i = 0; i < std::min<int>(drawCount_, drawsKept); ++i) {
        const Draw& draw = draws_[static_cast<std::size_t>(i)];
        if (draw.at < since || draw.at > until)
            continue;
        if (draw.litre >= 0)
            litre += draw.litre;
        else
            ++missing;
    }
    return litre;
}

std::optional<Balance::Rate> Balance::evaporationFromSap(const State& state, const Use& use, Instant now) const {
    if (!use.rate)
        return std::nullopt;
    const Instant from = use.tankFrom.value_or(now - std::chrono::minutes{30});
    int missing = 0;
    const double litre = drawn(from, now, missing);
    const double hours = secondsBetween(from, now) / 3600;
    // A draw is replaced by sap at once. One without a measure is taken at its share in the long run.
    const double perHour = use.rate->litrePerHour;
    const double syrup = missing ? syrupShare(state) * perHour : litre / hours;
    return Rate{std::max(perHour - syrup, 0.0), std::hypot(use.rate->sd, balanceError * perHour)};
}

std::optional<Balance::Rate> Balance::evaporationFromDraws(const State& state, Instant now) const {
    if (sugarKnown_ <= 0 || drawCount_ < 4)
        return std::nullopt;
    const int reach = std::min<int>(drawCount_, 8);
    const Instant from = draws_[static_cast<std::size_t>(drawCount_ - reach) % drawsKept].at;
    const Instant until = draws_[static_cast<std::size_t>(drawCount_ - 1) % drawsKept].at;
    int missing = 0;
    const double litre = drawn(from + Duration{1}, until, missing);
    const double hours = secondsBetween(from, until) / 3600;
    if (missing || hours <= 0 || secondsBetween(until, now) > 2 * 3600 * hours)
        return std::nullopt;
    const double sap = 1 / syrupShare(state);
    return Rate{litre / hours * (sap - 1), 0.15 * litre / hours * sap};
}

std::optional<Balance::Rate> Balance::evaporation(const State& state, const Use& use, Instant now) const {
    const auto sap = evaporationFromSap(state, use, now), draws = evaporationFromDraws(state, now);
    if (!sap || !draws)
        return sap ? sap : draws;
    const double a = 1 / (sap->sd * sap->sd), b = 1 / (draws->sd * draws->sd);
    return Rate{(a * sap->litrePerHour + b * draws->litrePerHour) / (a + b), 1 / std::sqrt(a + b)};
}

void Balance::show(const State& state, Instant now, Picture& picture) const {
    if (sapIn_ > 0)
        picture.sapIn = Volume::litre(sapIn_);
    if (drawCount_ > unmeasured_)
        picture.syrupOut = Volume::litre(syrupOut_);

    const bool measured = tank_.last() || feed_.last();
    const auto use = sapUse(now);
    const auto rate = evaporation(state, use, now);
    if (rate)
        picture.evaporation = VolumeFlow::litrePerHour(rate->litrePerHour);
    else
        picture.why.push_back({"evaporationLph", measured ? Reason::tooShort : Reason::noTankLevel});
    showEnd(state, now, sapUse(now, Outflow::longestWindow).rate, rate, picture);
    showEfficiency(state, now, picture);
}

void Balance::showEnd(const State& state, Instant now, std::optional<Rate> use, std::optional<Rate> rate,
                      Picture& picture) const {
    const auto level = state.sensors.of(Series::tank_level).value(now);
    if (!use && rate)
        use = Rate{rate->litrePerHour / (1 - syrupShare(state)), rate->sd};
    if (!level || !use || use->litrePerHour <= 1) {
        picture.why.push_back({"sapLeftS", !level ? Reason::noTankLevel : Reason::tooShort});
        return;
    }
    // A level read a while ago has gone on falling since.
    const double hoursAgo = secondsBetween(level->at, now) / 3600;
    const double litre = std::max(Volume::ofSi(level->si).litre() - use->litrePerHour * hoursAgo, 0.0);
    picture.sapLeft = Duration{litre / use->litrePerHour * 3600};

    const auto flue = state.settings.fluePanArea(), syrup = state.settings.syrupPanArea();
    const auto depth = state.settings.runningDepth();
    if (!rate || !depth || !(flue || syrup))
        return;
    const Area area = flue.value_or(Area{}) + syrup.value_or(Area{});
    const Duration burnOut = state.settings.burnOut().value_or(usualBurnOut);
    // The pans are raised by their running depth again before the fire burns out.
    const auto keep = sapToKeepBack(area, *depth, VolumeFlow::litrePerHour(rate->litrePerHour), burnOut);
    picture.keepBack = keep;
    if (!keep || !state.course.firing())
        return;
    const auto until = [&](double perHour) { return Duration{std::max(litre - keep->litre(), 0.0) / perHour * 3600}; };
    const double spread = 1.2816 * std::hypot(use->sd, unevenFiring * use->litrePerHour);
    picture.lastLoad = Range{.p10 = until(use->litrePerHour + spread),
                             .p50 = until(use->litrePerHour),
                             .p90 = until(std::max(use->litrePerHour - spread, 0.3 * use->litrePerHour))};
}

void Balance::showEfficiency(const State& state, Instant now, Picture& picture) const {
    const auto because = [&](Reason reason) { picture.why.push_back({"efficiency", reason}); };
    double litre = 0, observed = 0;
    Instant from = now;
    const int reach = std::min<int>(minuteCount_, static_cast<int>(minutes_.size()));
    for (int i = 0; i < reach; ++i) {
        const Minute& minute = minutes_[static_cast<std::size_t>(minuteCount_ - 1 - i) % minutes_.size()];
        const double length = secondsBetween(minute.at, from);
        if (minute.litrePerHour < 0 || secondsBetween(minute.at, now) > 3600 || length > 300)
            break;
        litre += minute.litrePerHour * length / 3600;
        observed += length;
        from = minute.at;
    }
    if (observed < 1800)
        return because(picture.evaporation ? Reason::tooShort : Reason::noTankLevel);
    const auto burnt = state.fire.burnt(state, from, now);
    if (!burnt)
        return because(Reason::noLoadMass);
    if (burnt->wood.kilogram() <= 0)
        return because(Reason::notLit);
    const auto boils = state.weather.boiling(now);
    const auto feed = state.sensors.of(Series::feed).value(now);
    const Temperature sapIs = feed ? Temperature::kelvin(feed->si) : sapTemperature_.value_or(usualFeed);
    const Pressure pressure = boils ? boils->forModel : Pressure::kilopascal(101.325);
    const auto away = heatToBoilAway(sapIs, pressure);
    const auto water = waterDensity(cold);
    if (!away || !water)
        return because(Reason::outsidePhysics);
    const Energy heat = *away * (*water * Volume::litre(litre));
    picture.efficiency = heat / burnt->lowerHeat;
}

} // namespace panside
