// Heat: what the wood gave, what of it boiled sap, what went up the stack, and what the wood made of the sap.
#include "core/boil/balance.h"
#include "core/boil/state.h"
#include "core/physics/gas.h"
#include "core/physics/sugar_density.h"
#include "core/physics/sugar_heat.h"
#include "core/physics/water.h"
#include "core/physics/wood.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr Temperature usualFeed = Temperature::celsius(4);
// Of the wood's heat, what arch, door, smoke and ash take besides the stack (common practice, no source); how well the
// heat of a load is known.
constexpr double otherLosses = 0.15, otherLossesSd = 0.06, woodError = 0.10;
// Of the time that something boiled, in which the rate must be known before the sugar is accounted for.
constexpr double fewestKnown = 0.8;
// Litres of water boiled off are cold litres.
constexpr Temperature cold = Temperature::celsius(20);

} // namespace

// The air over what is needed is assumed.
Balance::Heat Balance::heat(const State& state, Instant now) const {
    const auto boils = state.weather.boiling(now);
    const auto feed = state.sensors.of(Series::feed).value(now);
    const Temperature sapIs = feed ? Temperature::kelvin(feed->si) : sapTemperature_.value_or(usualFeed);
    Heat heat{heatToBoilAway(sapIs, boils ? boils->forModel : Pressure::kilopascal(101.325)), std::nullopt};
    const auto stack = state.fire.usualStack();
    if (!stack)
        return heat;
    const auto air = state.sensors.of(Series::air).value(now);
    const Temperature outside = air ? Temperature::kelvin(air->si) : usualFeed;
    const WetBasis moisture = std::min(state.settings.woodMoisture(), WetBasis::percent(60));
    const auto share = flueLoss(woods().front(), moisture, *stack, outside, 1.0);
    const auto sd = flueLossUncertainty(woods().front(), moisture, *stack, outside, 1.0, 0.5);
    if (share && sd)
        heat.stack = Loss{*share, *sd};
    return heat;
}

// The wood's heat, less the stack's, less what arch, door, smoke and ash take: open wood rigs give 40 to 60 percent to
// the sap ("Choosing the right fuel", Ohio State University Extension, about 2021).
std::optional<Balance::Rate> Balance::steamByHeat(const State& state, const Heat& heat, Instant now) const {
    const auto water = waterDensity(cold);
    const auto& away = heat.perKilogram;
    const Instant from = std::max(now - std::chrono::hours{1}, boilingSince_.value_or(now));
    const double hours = secondsBetween(from, now) / 3600;
    const auto burnt = hours >= 0.5 ? state.fire.burnt(state, from, now) : std::nullopt;
    if (!burnt || burnt->wood.kilogram() <= 0 || !water || !away || !state.course.firing())
        return std::nullopt;
    double share = 0.50, sd = 0.08;
    if (const auto& loss = heat.stack) {
        share = std::clamp(1 - loss->share - otherLosses, 0.2, 0.8);
        sd = std::hypot(loss->sd, otherLossesSd);
    }
    const double litre = share * burnt->lowerHeat.joule() / (*away * (*water * Volume::litre(1))).joule();
    return Rate{litre / hours, std::hypot(sd / share, woodError) * litre / hours};
}

void Balance::showEfficiency(const State& state, const Heat& its, Instant now, Picture& picture) const {
    const auto because = [&](Reason reason) { picture.why.push_back({Shown::efficiency, reason}); };
    double litre = 0, observed = 0;
    Instant from = now;
    const int reach = std::min<int>(minuteCount_, static_cast<int>(minutes_.size()));
    for (int i = 0; i < reach; ++i) {
        const Minute& minute = minutes_[static_cast<std::size_t>(minuteCount_ - 1 - i) % minutes_.size()];
        const double length = secondsBetween(minute.at, from);
        if (!minute.litrePerHour || secondsBetween(minute.at, now) > 3600 || length > 300)
            break;
        litre += *minute.litrePerHour * length / 3600;
        observed += length;
        from = minute.at;
    }
    if (observed < 1800) {
        const auto why = std::find_if(picture.why.begin(), picture.why.end(), [](const Why& one) {
            return one.of == std::variant<Shown, Series>{Shown::evaporationLph};
        });
        return because(why == picture.why.end() ? Reason::tooShort : why->reason);
    }
    const auto burnt = state.fire.burnt(state, from, now);
    if (!burnt)
        return because(Reason::noLoadMass);
    if (burnt->wood.kilogram() <= 0)
        return because(Reason::notLit);
    const auto& away = its.perKilogram;
    const auto water = waterDensity(cold);
    if (!away || !water)
        return because(Reason::outsidePhysics);
    const Energy heat = *away * (*water * Volume::litre(litre));
    // More than the wood holds: its mass, the tank or the sap in it was told wrong.
    if (heat > burnt->lowerHeat)
        return because(Reason::outsidePhysics);
    picture.efficiency = heat / burnt->lowerHeat;
    picture.fuel.hour = HeatAccount{.fuel = burnt->lowerHeat,
                                    .boiling = heat,
                                    .stackLoss = {},
                                    .wood = burnt->wood,
                                    .over = Duration{secondsBetween(from, now)}};
    if (const auto& loss = its.stack)
        picture.fuel.hour->stackLoss = loss->share * burnt->lowerHeat;
}

void Balance::showHeat(const Heat& heat, const std::optional<Fire::Burnt>& all, Picture& picture) const {
    const auto& away = heat.perKilogram;
    const auto water = waterDensity(cold);
    if (!all || !away || !water || boiledOffFor_ < 1800 || all->wood.kilogram() <= 0)
        return;
    picture.fuel.shift = HeatAccount{.fuel = all->lowerHeat,
                                     .boiling = *away * (*water * Volume::litre(boiledOff_)),
                                     .stackLoss = {},
                                     .wood = all->wood,
                                     .over = Duration{boiledOffFor_}};
    if (const auto& loss = heat.stack)
        picture.fuel.shift->stackLoss = loss->share * all->lowerHeat;
}

void Balance::showYield(const State& state, const std::optional<Fire::Burnt>& all, Instant now,
                        Picture& picture) const {
    FuelPicture& fuel = picture.fuel;
    if (const auto sap = feedSugar_.tank(); fuel.tank && sap)
        fuel.syrupExpected = syrupShare(state, sap) * *fuel.tank;
    fuel.sugar = sugarAccount(state, now);
    const auto cord = cordMass(woods().front(), std::min(state.settings.woodMoisture(), WetBasis::percent(60)));
    if (cord && all)
        fuel.cords = all->wood / *cord;
    if (fuel.cords && *fuel.cords > 0 && fuel.shift && picture.syrupOut && unmeasured_ == 0)
        fuel.syrupPerCord = picture.syrupOut->litre() / *fuel.cords;
    if (cord && fuel.hour && fuel.hour->over.count() > 0)
        fuel.cordPerHour = fuel.hour->wood / *cord / seconds(fuel.hour->over) * 3600;
}

// What boiled off and what was drawn came as sap. The minutes in which the rate was not known are taken at its mean,
// if they were few.
std::optional<SugarAccount> Balance::sugarAccount(const State& state, Instant now) const {
    if (sweetBoiled_ <= 0 || unmeasured_ > 0 || !boilingSince_ || boiledOffFor_ < 1800)
        return std::nullopt;
    const double boiling = secondsBetween(*boilingSince_, state.course.shutdownAt.value_or(now));
    if (boiledOffFor_ < fewestKnown * boiling)
        return std::nullopt;
    const Brix sap = Brix::massFraction(boiledSugar_ / sweetBoiled_), syrup = state.settings.targetDensity();
    const auto water = waterDensity(cold), thick = sugarDensity(syrup, cold);
    if (!water || !thick)
        return std::nullopt;
    const Mass steam = *water * Volume::litre(boiledOff_ * std::max(1.0, boiling / boiledOffFor_));
    const Mass drawn = *thick * Volume::litre(syrupOut_);
    return SugarAccount{.in = (steam + drawn) * sap.massFraction(),
                        .out = drawn * syrup.massFraction(),
                        .before = state.settings.learnedPansSugar().value_or(Mass{})};
}

} // namespace panside
