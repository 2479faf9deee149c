#include "core/boil/balance.h"

#include "core/boil/state.h"
#include "core/physics/gas.h"
#include "core/physics/sap.h"
#include "core/physics/sugar_heat.h"
#include "core/physics/water.h"
#include "core/physics/wood.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr Temperature usualFeed = Temperature::celsius(4);
constexpr Brix usualSap = Brix::degrees(2);
constexpr Duration usualBurnOut{45 * 60};
// Within so much of boiling water something boils.
constexpr auto nearBoiling = TemperatureDifference::kelvin(1.5);
// Of the wood's heat, what arch, door, smoke and ash take besides the stack (common practice, no source); how well the
// heat of a load is known.
constexpr double otherLosses = 0.15, otherLossesSd = 0.06, woodError = 0.10;
// A fire was found in a roof hours after its boil: they look again an hour after stopping (common practice, no source).
constexpr Duration lookAgainAfter{3600};
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
    const double passed = notedAt_ ? secondsBetween(*notedAt_, now) : 0;
    if (rate && passed < 900) {
        boiledOff_ += rate->steam.litrePerHour * passed / 3600;
        boiledOffFor_ += passed;
    }
    minutes_[static_cast<std::size_t>(minuteCount_++) % minutes_.size()] = {
        now, rate ? static_cast<float>(rate->steam.litrePerHour) : -1};
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

std::optional<Balance::Rate> Balance::syrupDrawn(const Use& use, Instant now) const {
    int missing = 0;
    if (use.rate) {
        const Instant from = use.tankFrom.value_or(now - std::chrono::minutes{30});
        const double hours = secondsBetween(from, now) / 3600, litre = drawn(from, now, missing);
        // A draw is replaced by sap at once; a pail is read to a few percent.
        return missing || hours <= 0 ? std::nullopt : std::optional{Rate{litre / hours, 0.03 * litre / hours + 0.5}};
    }
    if (sugarKnown_ <= 0 || drawCount_ < 4)
        return std::nullopt;
    const int reach = std::min<int>(drawCount_, 8);
    const Instant from = draws_[static_cast<std::size_t>(drawCount_ - reach) % drawsKept].at;
    const Instant until = draws_[static_cast<std::size_t>(drawCount_ - 1) % drawsKept].at;
    const double litre = drawn(from + Duration{1}, until, missing), hours = secondsBetween(from, until) / 3600;
    if (missing || hours <= 0 || secondsBetween(until, now) > 2 * 3600 * hours)
        return std::nullopt;
    return Rate{litre / hours, 0.10 * litre / hours};
}

std::optional<SpecificEnergy> Balance::heatPerKilogram(const State& state, Instant now) const {
    const auto boils = state.weather.boiling(now);
    const auto feed = state.sensors.of(Series::feed).value(now);
    const Temperature sapIs = feed ? Temperature::kelvin(feed->si) : sapTemperature_.value_or(usualFeed);
    return heatToBoilAway(sapIs, boils ? boils->forModel : Pressure::kilopascal(101.325));
}

namespace {

// What of the wood's heat goes up the stack, and how well that is known; the air over what is needed is assumed.
struct Loss {
    double share, sd;
};
std::optional<Loss> stackLoss(const State& state, Instant now) {
    const auto stack = state.fire.usualStack();
    if (!stack)
        return std::nullopt;
    const auto air = state.sensors.of(Series::air).value(now);
    const Temperature outside = air ? Temperature::kelvin(air->si) : usualFeed;
    const WetBasis moisture{std::min(state.settings.woodMoisture(), 0.60)};
    const auto share = flueLoss(woods().front(), moisture, *stack, outside, 1.0);
    const auto sd = flueLossUncertainty(woods().front(), moisture, *stack, outside, 1.0, 0.5);
    return share && sd ? std::optional{Loss{*share, *sd}} : std::nullopt;
}

} // namespace

// The wood's heat, less the stack's, less what arch, door, smoke and ash take: open wood rigs give 40 to 60 percent to
// the sap ("Choosing the right fuel", Ohio State University Extension, about 2021).
std::optional<Balance::Rate> Balance::steamByHeat(const State& state, Instant now) const {
    const auto water = waterDensity(cold);
    const auto away = heatPerKilogram(state, now);
    const Instant from = std::max(now - std::chrono::hours{1}, boilingSince_.value_or(now));
    const double hours = secondsBetween(from, now) / 3600;
    const auto burnt = hours >= 0.5 ? state.fire.burnt(state, from, now) : std::nullopt;
    if (!burnt || burnt->wood.kilogram() <= 0 || !water || !away || !state.course.firing())
        return std::nullopt;
    double share = 0.50, sd = 0.08;
    if (const auto loss = stackLoss(state, now)) {
        share = std::clamp(1 - loss->share - otherLosses, 0.2, 0.8);
        sd = std::hypot(loss->sd, otherLossesSd);
    }
    const double litre = share * burnt->lowerHeat.joule() / (*away * (*water * Volume::litre(1))).joule();
    return Rate{litre / hours, std::hypot(sd / share, woodError) * litre / hours};
}

Flows Balance::flows(const State& state, const Use& use, Instant now) const {
    Flows flows{.sap = {},
                .syrup = syrupDrawn(use, now),
                .steam = steamByHeat(state, now),
                .syrupShare = syrupShare(state),
                .shareSd = sugarKnown_ > 0 ? 0.3 : 0.6};
    if (use.rate)
        flows.sap = Rate{use.rate->litrePerHour, std::hypot(use.rate->sd, balanceError * use.rate->litrePerHour)};
    // Draws that were not all measured are taken at their share in the long run; without a tank they say all.
    if (!use.rate && flows.syrup)
        flows.shareSd = 0.1;
    return flows;
}

std::optional<Reconciled> Balance::evaporation(const State& state, const Use& use, Instant now) const {
    const Flows known = flows(state, use, now);
    return known.sap || known.syrup ? reconcile(known) : std::nullopt;
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
        picture.evaporation = VolumeFlow::litrePerHour(rate->steam.litrePerHour);
    else
        picture.why.push_back({"evaporationLph", measured ? Reason::tooShort : Reason::noTankLevel});
    showWays(state, flows(state, use, now), rate, now, picture);
    showEnd(state, now, sapUse(now, Outflow::longestWindow).rate, rate ? std::optional{rate->steam} : std::nullopt,
            picture);
    showEfficiency(state, now, picture);
    showHeat(state, now, picture);
    showYield(state, picture);
    showAfter(state, now, picture);
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
    picture.fuel.tank = Volume::litre(litre);

    const auto flue = state.settings.fluePanArea(), syrup = state.settings.syrupPanArea();
    const auto depth = state.settings.runningDepth();
    if (!rate || !depth || !(flue || syrup))
        return;
    const Area area = flue.value_or(Area{}) + syrup.value_or(Area{});
    // The pans are raised by their running depth again before the fire burns out.
    const auto keep = sapToKeepBack(area, *depth, VolumeFlow::litrePerHour(rate->litrePerHour), burnOut(state));
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
    const auto away = heatPerKilogram(state, now);
    const auto water = waterDensity(cold);
    if (!away || !water)
        return because(Reason::outsidePhysics);
    const Energy heat = *away * (*water * Volume::litre(litre));
    picture.efficiency = heat / burnt->lowerHeat;
    picture.fuel.hour = HeatAccount{.fuel = burnt->lowerHeat,
                                    .boiling = heat,
                                    .stackLoss = {},
                                    .wood = burnt->wood,
                                    .over = Duration{secondsBetween(from, now)}};
    if (const auto loss = stackLoss(state, now))
        picture.fuel.hour->stackLoss = loss->share * burnt->lowerHeat;
}

Duration Balance::burnOut(const State& state) const { return state.settings.burnOut().value_or(usualBurnOut); }

void Balance::showWays(const State& state, const Flows& known, const std::optional<Reconciled>& all, Instant now,
                       Picture& picture) const {
    FuelPicture& fuel = picture.fuel;
    const auto add = [&](EvaporationWay way, double rate, double sd) {
        fuel.ways.push_back({way, VolumeFlow::litrePerHour(std::max(rate, 0.0)), VolumeFlow::litrePerHour(sd)});
    };
    const double share = known.syrupShare;
    if (known.sap) {
        if (known.syrup)
            add(EvaporationWay::massBalance, known.sap->litrePerHour - known.syrup->litrePerHour,
                std::hypot(known.sap->sd, known.syrup->sd));
        add(EvaporationWay::tankAlone, known.sap->litrePerHour * (1 - share),
            std::hypot(known.sap->sd, known.shareSd * share * known.sap->litrePerHour));
    } else if (known.syrup && share > 0) {
        add(EvaporationWay::draws, known.syrup->litrePerHour * (1 / share - 1),
            std::hypot(known.syrup->sd / share, known.shareSd * known.syrup->litrePerHour / share));
    }
    if (known.steam)
        add(EvaporationWay::heat, known.steam->litrePerHour, known.steam->sd);
    if (all)
        fuel.evaporationSd = VolumeFlow::litrePerHour(all->steam.sd);
    if (const auto tank = tank_.rate(now); tank && tank->litrePerHour < -2 * tank->sd && state.course.firing())
        fuel.doubt = Disagreement::tankRises;
    else if (all && known.sap && known.steam) {
        const double apart = known.sap->litrePerHour * (1 - share) - known.steam->litrePerHour;
        if (std::abs(apart) > 2 * std::hypot(known.sap->sd, known.steam->sd))
            fuel.doubt = apart > 0 ? Disagreement::tankSaysMore : Disagreement::tankSaysLess;
    }
    if (fuel.doubt != Disagreement::none || !known.sap || drawCount_ < 6 || unmeasured_ > 0 || sugarKnown_ <= 0)
        return;
    // Sugar in against sugar out, over a stretch of several draws; what it takes to sweeten the pans comes first.
    const auto longer = sapUse(now, Outflow::longestWindow);
    const auto syrup = syrupDrawn(longer, now);
    if (!longer.rate || !syrup || secondsBetween(longer.tankFrom.value_or(now), now) < 2 * 3600)
        return;
    const double expected = share * longer.rate->litrePerHour;
    const double off = (syrup->litrePerHour - expected) / (0.2 * expected + syrup->sd);
    if (std::abs(off) > 2)
        fuel.doubt = off > 0 ? Disagreement::drawsSayMore : Disagreement::drawsSayLess;
}

void Balance::showHeat(const State& state, Instant now, Picture& picture) const {
    const auto all = state.fire.burntInAll(state, now);
    const auto away = heatPerKilogram(state, now);
    const auto water = waterDensity(cold);
    if (!all || !away || !water || boiledOffFor_ < 1800 || all->wood.kilogram() <= 0)
        return;
    picture.fuel.shift = HeatAccount{.fuel = all->lowerHeat,
                                     .boiling = *away * (*water * Volume::litre(boiledOff_)),
                                     .stackLoss = {},
                                     .wood = all->wood,
                                     .over = Duration{boiledOffFor_}};
    if (const auto loss = stackLoss(state, now))
        picture.fuel.shift->stackLoss = loss->share * all->lowerHeat;
}

void Balance::showYield(const State& state, Picture& picture) const {
    FuelPicture& fuel = picture.fuel;
    if (fuel.tank && sugarKnown_ > 0)
        fuel.syrupExpected = syrupShare(state) * *fuel.tank;
    const auto cord = cordMass(woods().front(), WetBasis{std::min(state.settings.woodMoisture(), 0.60)});
    if (!cord)
        return;
    if (fuel.shift && picture.syrupOut && unmeasured_ == 0)
        fuel.syrupPerCord = picture.syrupOut->litre() / (fuel.shift->wood / *cord);
    if (fuel.hour && fuel.hour->over.count() > 0)
        fuel.cordPerHour = fuel.hour->wood / *cord / seconds(fuel.hour->over) * 3600;
}

void Balance::showAfter(const State& state, Instant now, Picture& picture) const {
    picture.fuel.burnOut = burnOut(state);
    if (!state.course.shutdownAt || state.course.endedAt)
        return;
    const Instant stopped = *state.course.shutdownAt;
    const Instant lastFed = std::max(state.fire.lastFired().value_or(stopped), stopped);
    const Instant cold = lastFed + burnOut(state);
    if (cold > now)
        picture.fuel.watchPans = Duration{secondsBetween(now, cold)};
    picture.fuel.lastLook = Duration{secondsBetween(now, std::max(cold, stopped + lookAgainAfter))};
}

} // namespace panside
