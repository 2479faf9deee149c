#include "core/boil/balance.h"

#include "core/boil/sap_sugar.h"
#include "core/boil/state.h"
#include "core/physics/sap.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr Brix usualSap = Brix::degrees(2);
// Within so much of boiling water something boils.
constexpr auto nearBoiling = TemperatureDifference::kelvin(1.5);
// How wrong a balance over the tank is apart from the readings: pans not quite at level, hot and cold litres.
constexpr double balanceError = 0.015;
// Sap runs in for so many seconds after it was entered; a rise that a gauge or a dip cannot be wrong by (common
// practice, no source).
constexpr double sapRunsIn = 3600, riseShare = 0.02, leastRise = 8; // seconds; of the level, litres
constexpr double exchangeTakes = 600; // s, until a pan that was swapped or drained stands at its level (our judgement)

bool exchangesPan(const Fact& fact) {
    const auto* day = std::get_if<DayRow>(&fact.what);
    return std::holds_alternative<PanSwapped>(fact.what) || (day && day->deed == Deed::pans_emptied);
}

} // namespace

void Balance::absorb(const State& state, const Fact& fact) {
    const auto told = repeatedDraw_.hear(fact);
    if (exchangesPan(fact))
        exchangedAt_ = fact.at;
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        takeReading(state, *reading, fact.at);
    } else if (const auto* sap = std::get_if<SapIn>(&fact.what)) {
        sapIn_ += sap->volume.value.litre();
        feedSugar_.came(*sap, stoodBefore(state, *sap, fact.at), fact.at);
        sapCameAt_ = fact.at;
        tank_.came(sap->volume.value);
        roseAt_.reset();
        if (sap->temperature)
            sapTemperature_ = sap->temperature->value;
    } else if (RepeatedDraw::counts(told)) {
        const auto* draw = std::get_if<DrawClosed>(&fact.what); // none: nobody keyed that it was shut
        const auto litre = draw && draw->volume ? std::optional{draw->volume->value.litre()} : std::nullopt;
        if (told == RepeatedDraw::Telling::measured) {
            --drawCount_;
            --unmeasured_;
        }
        draws_[static_cast<std::size_t>(drawCount_++) % drawsKept] = {fact.at, litre};
        if (litre)
            syrupOut_ += *litre;
        else
            ++unmeasured_;
    } else if (std::holds_alternative<Lit>(fact.what) || std::holds_alternative<Shutdown>(fact.what)) {
        // What leaves the tank before the fire is lit, or when the pans are raised for the burn-out, is not boiled off.
        tank_.forget();
        feed_.forget();
        lowest_.reset();
    }
}

// What was in the tank before a load; where it was told only when it had run in, the gauge shows it already.
Volume Balance::stoodBefore(const State& state, const SapIn& sap, Instant at) const {
    const auto level = state.sensors.of(Series::tank_level).value(at);
    if (!level)
        return {};
    const Volume stands = Volume::ofSi(level->si);
    if (!roseAt_ || !lowest_ || secondsBetween(*roseAt_, at) > sapRunsIn)
        return stands;
    return std::min(stands, std::max(Volume::litre(*lowest_), stands - sap.volume.value));
}

// A tank that stands higher than it stood, and nobody entered sap: a truck takes a while to empty.
void Balance::noteRise(double litre, Instant at) {
    if (sapCameAt_ && secondsBetween(*sapCameAt_, at) < sapRunsIn) {
        lowest_ = litre;
        return;
    }
    if (!lowest_ || litre < *lowest_)
        lowest_ = litre;
    else if (litre > *lowest_ * (1 + riseShare) + leastRise)
        roseAt_ = at;
}

void Balance::takeReading(const State& state, const Reading& reading, Instant at) {
    const auto believed = state.sensors.of(reading.series).value(at);
    if (!believed || believed->at != at)
        return;
    if (reading.series == Series::tank_level) {
        tank_.addSample(at, Volume::ofSi(believed->si));
        noteRise(Volume::ofSi(believed->si).litre(), at);
    } else if (reading.series == Series::feed_flow) {
        // Across a silence the meter is not made up.
        if (fedAt_ && secondsBetween(*fedAt_, at) < 900)
            fed_ += VolumeFlow::ofSi(believed->si).litrePerHour() * secondsBetween(*fedAt_, at) / 3600;
        fedAt_ = at;
        feed_.addSample(at, Volume::litre(-fed_));
    } else if (reading.series == Series::pan_level) {
        syrupPan_.addSample(at, believed->si);
    } else if (reading.series == Series::flue_level) {
        fluePan_.addSample(at, believed->si);
    } else if (reading.series == Series::stack) {
        noteBurning(state, Temperature::kelvin(believed->si), at);
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
    const Flows known = flows(state, sapUse(now), heat(state, now), now);
    auto rate = evaporation(known);
    if (withheld(state, known, rate, now) != Reason::none)
        rate.reset();
    const double passed = notedAt_ ? secondsBetween(*notedAt_, now) : 0;
    if (rate && passed < 900) {
        boiledOff_ += rate->steam.litrePerHour * passed / 3600;
        boiledOffFor_ += passed;
        if (const auto sap = feedSugar_.tank()) {
            const double litre = rate->steam.litrePerHour * passed / 3600;
            sweetBoiled_ += litre;
            boiledSugar_ += litre * sap->massFraction();
        }
    }
    minutes_[static_cast<std::size_t>(minuteCount_++) % minutes_.size()] = {
        now, rate ? std::optional{static_cast<float>(rate->steam.litrePerHour)} : std::nullopt};
    notedAt_ = now;
}

std::optional<Balance::Noted> Balance::lastMinute() const {
    if (minuteCount_ == 0)
        return std::nullopt;
    const Minute& last = minutes_[static_cast<std::size_t>(minuteCount_ - 1) % minutes_.size()];
    return Noted{last.at,
                 last.litrePerHour ? std::optional{VolumeFlow::litrePerHour(*last.litrePerHour)} : std::nullopt};
}

double Balance::syrupShare(const State& state, std::optional<Brix> sap) {
    const auto ratio = sapPerSyrup(sap.value_or(usualSap), state.settings.targetDensity());
    return ratio ? 1 / *ratio : 0;
}

Balance::Use Balance::sapUse(Instant now, double window) const {
    const auto tank = tank_.rate(now, window), feed = feed_.rate(now, window);
    if (!tank || tank->litrePerHour < 0)
        return feed ? Use{Rate{feed->litrePerHour, feed->sd}, tank, feed->from} : Use{{}, tank, now};
    if (!feed)
        return {Rate{tank->litrePerHour, tank->sd}, tank, tank->from};
    const double a = 1 / (tank->sd * tank->sd), b = 1 / (feed->sd * feed->sd);
    return {Rate{(a * tank->litrePerHour + b * feed->litrePerHour) / (a + b), 1 / std::sqrt(a + b)}, tank,
            std::min(tank->from, feed->from)};
}

double Balance::drawn(Instant since, Instant until, int& missing) const {
    double litre = 0;
    missing = 0;
    for (int i = 0; i < std::min<int>(drawCount_, drawsKept); ++i) {
        const Draw& draw = draws_[static_cast<std::size_t>(i)];
        if (draw.at < since || draw.at > until)
            continue;
        if (draw.litre)
            litre += *draw.litre;
        else
            ++missing;
    }
    return litre;
}

std::optional<Balance::Rate> Balance::syrupDrawn(const Use& use, Instant now) const {
    int missing = 0;
    if (use.rate) {
        const Instant from = use.tankFrom().value_or(now - std::chrono::minutes{30});
        const double hours = secondsBetween(from, now) / 3600, litre = drawn(from, now, missing);
        // A draw is replaced by sap at once; a pail is read to a few percent.
        return missing || hours <= 0 ? std::nullopt : std::optional{Rate{litre / hours, 0.03 * litre / hours + 0.5}};
    }
    if (!feedSugar_.tank() || drawCount_ < 4)
        return std::nullopt;
    const int reach = std::min<int>(drawCount_, 8);
    const Instant from = draws_[static_cast<std::size_t>(drawCount_ - reach) % drawsKept].at;
    const Instant until = draws_[static_cast<std::size_t>(drawCount_ - 1) % drawsKept].at;
    const double litre = drawn(from + Duration{1}, until, missing), hours = secondsBetween(from, until) / 3600;
    if (missing || hours <= 0 || secondsBetween(until, now) > 2 * 3600 * hours)
        return std::nullopt;
    return Rate{litre / hours, 0.10 * litre / hours};
}

std::optional<Balance::Rate> Balance::stays(const State& state, Instant from, Instant now) const {
    constexpr double otherPan = 0.5; // of what it would be: how far a pan that nobody reads goes with the other
    const auto flue = state.settings.fluePanArea(), syrup = state.settings.syrupPanArea();
    // What runs into an empty pan, or out of one, is no slow filling: a line through it would say far too much.
    const bool isExchanged = exchangedAt_ && secondsBetween(*exchangedAt_, from) < exchangeTakes;
    if (!syrup || isExchanged)
        return std::nullopt;
    const auto inSyrup = syrupPan_.rate(from, now), inFlue = fluePan_.rate(from, now);
    if (!inSyrup && !(inFlue && flue))
        return std::nullopt;
    const auto litre = [](const Area& area, double metre) { return 1000 * area.squareMetre() * metre; };
    Rate rate{0, 0};
    const auto add = [&](const std::optional<PanFill::Rate>& read, const PanFill::Rate& other, Area area) {
        const auto& of = read ? *read : other;
        rate.litrePerHour += litre(area, of.metrePerHour);
        rate.sd = std::hypot(rate.sd, litre(area, read ? of.sd : std::hypot(of.sd, otherPan * of.metrePerHour)));
    };
    add(inSyrup, inFlue.value_or(PanFill::Rate{}), *syrup);
    if (flue)
        add(inFlue, inSyrup.value_or(PanFill::Rate{}), *flue);
    return rate;
}

Flows Balance::flows(const State& state, const Use& use, const Heat& heat, Instant now) const {
    Flows flows{.sap = {},
                .syrup = syrupDrawn(use, now),
                .steam = steamByHeat(state, heat, now),
                .syrupShare = syrupShare(state, feedSugar_.pans(now)),
                .shareSd = feedSugar_.tank() ? 0.3 : 0.6};
    if (use.rate) {
        const auto stay = stays(state, use.from, now).value_or(Rate{});
        flows.sap = Rate{std::max(0.0, use.rate->litrePerHour - stay.litrePerHour),
                         std::hypot(use.rate->sd, balanceError * use.rate->litrePerHour, stay.sd)};
    }
    // Draws that were not all measured are taken at their share in the long run; without a tank they say all.
    if (!use.rate && flows.syrup)
        flows.shareSd = 0.1;
    return flows;
}

std::optional<Reconciled> Balance::evaporation(const Flows& known) {
    return known.sap || known.syrup ? reconcile(known) : std::nullopt;
}

// A tank that stands, empty or shut, while the fire burns says nothing: the pans boil down.
Reason Balance::withheld(const State& state, const Flows& known, const std::optional<Reconciled>& all, Instant now) {
    constexpr double stands = 120; // seconds
    const auto inflow = state.trends.inflow();
    if ((known.sap || !all) && inflow && secondsBetween(inflow->stoodSince, now) > stands && state.course.firing() &&
        state.sensors.boiling(state, now))
        return Reason::noSapRunsIn;
    return moreThanBoils(state, known, all) ? Reason::moreThanBoils : Reason::none;
}

// Does more leave the tank than pans of that size can boil off? At most 5.6 gal/h a square foot were ever timed, with
// forced air; 2 to 2.5 are usual on natural draft, 3 or more with a good stack (makers' and producers' figures). Where
// the wood says less too, a little over the usual is too much already.
bool Balance::moreThanBoils(const State& state, const Flows& known, const std::optional<Reconciled>& all) {
    constexpr double litrePerGallonFoot = 3.785411784 / 0.09290304; // a square metre
    constexpr double most = 5.6 * litrePerGallonFoot, mostOfWood = 3.5 * litrePerGallonFoot;
    const auto flue = state.settings.fluePanArea(), syrup = state.settings.syrupPanArea();
    const bool onePan =
        syrup && !state.sensors.of(Series::flue_pan).lastRead() && !state.sensors.of(Series::flue_level).lastRead();
    if (!all || !known.sap || !(flue || onePan))
        return false;
    const double area = (flue.value_or(Area{}) + syrup.value_or(Area{})).squareMetre();
    const double away = known.sap->litrePerHour * (1 - known.syrupShare);
    const bool woodSaysLess =
        known.steam && away - known.steam->litrePerHour > 2 * std::hypot(known.sap->sd, known.steam->sd);
    return std::max(away, all->steam.litrePerHour) > (woodSaysLess ? mostOfWood : most) * area;
}

void Balance::show(const State& state, Instant now, Picture& picture) const {
    if (sapIn_ > 0)
        picture.sapIn = Volume::litre(sapIn_);
    if (drawCount_ > unmeasured_)
        picture.syrupOut = Volume::litre(syrupOut_);

    const bool measured = tank_.last() || feed_.last();
    const auto use = sapUse(now);
    const Heat its = heat(state, now);
    const Flows known = flows(state, use, its, now);
    const auto rate = evaporation(known);
    showWays(state, use, known, rate, now, picture);
    const Reason untrue = withheld(state, known, rate, now);
    if (rate && untrue == Reason::none)
        picture.evaporation = VolumeFlow::litrePerHour(rate->steam.litrePerHour);
    else
        picture.why.push_back({Shown::evaporationLph, untrue != Reason::none ? untrue
                                                      : picture.fuel.doubt == Disagreement::tankRises
                                                          ? Reason::tankRises
                                                      : measured ? Reason::tooShort
                                                                 : Reason::noTankLevel});
    const auto longest = sapUse(now, Outflow::longestWindow).rate;
    showEnd(state, now, longest, rate ? std::optional{rate->steam} : std::nullopt, picture);
    showAllSyrup(state, now, longest, picture);
    showEfficiency(state, its, now, picture);
    const auto burnt = state.fire.burntInAll(state, now);
    showHeat(its, burnt, picture);
    showYield(state, burnt, now, picture);
    showAfter(state, now, picture);
}

void Balance::showWays(const State& state, const Use& use, const Flows& known, const std::optional<Reconciled>& all,
                       Instant now, Picture& picture) const {
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
    const bool rises = use.tank && use.tank->litrePerHour < -2 * use.tank->sd;
    if (state.course.firing() && (rises || (roseAt_ && secondsBetween(*roseAt_, now) < sapRunsIn)))
        fuel.doubt = Disagreement::tankRises;
    else if (all && known.sap && known.steam) {
        const double apart = known.sap->litrePerHour * (1 - share) - known.steam->litrePerHour;
        if (std::abs(apart) > 2 * std::hypot(known.sap->sd, known.steam->sd))
            fuel.doubt = apart > 0 ? Disagreement::tankSaysMore : Disagreement::tankSaysLess;
    }
    if (fuel.doubt != Disagreement::none || !known.sap || drawCount_ < 6 || unmeasured_ > 0 || !feedSugar_.tank())
        return;
    // Sugar in against sugar out, over a stretch of several draws; what it takes to sweeten the pans comes first.
    const auto longer = sapUse(now, Outflow::longestWindow);
    const auto syrup = syrupDrawn(longer, now);
    const Instant from = longer.tankFrom().value_or(now);
    if (!longer.rate || !syrup || secondsBetween(from, now) < 2 * 3600)
        return;
    // How fast sweeter sap comes through the flue pan differs from rig to rig.
    const Brix came = *feedSugar_.pansBetween(from, now);
    const double expected = syrupShare(state, came) * longer.rate->litrePerHour;
    const double unsure = 0.2 + std::abs(*feedSugar_.tank() / came - 1);
    const double off = (syrup->litrePerHour - expected) / (unsure * expected + syrup->sd);
    if (std::abs(off) > 2)
        fuel.doubt = off > 0 ? Disagreement::drawsSayMore : Disagreement::drawsSayLess;
}

} // namespace panside
