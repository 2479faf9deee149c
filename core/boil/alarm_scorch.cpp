// Will the syrup pan run dry, or past 75 brix, within five minutes? Judged from whatever there is: the level and how it
// falls, sap that no longer runs in while the fire burns, a rise that runs away. Doubt about a reading does not hide
// it.
#include "core/boil/alarms.h"
#include "core/boil/state.h"
#include "core/physics/air.h"
#include "core/physics/sugar.h"
#include "core/physics/water.h"

#include <algorithm>
#include <array>

namespace panside {
namespace {

constexpr double soon = 300, calmAgain = 480; // seconds: where it begins, where it ends
constexpr double asGoodAsDry = 0.005;         // metre: below this the bottom is bare between the bubbles
constexpr double followedOn = 900;            // seconds: a pan that fell as its probe went silent is dry by then

using Left = std::optional<double>;

// The ways in which the harm may come, the nearest first; each with its ground.
class Ways {
public:
    // `ground.limit` is the time that is left, where the kind asks for it.
    void add(Left left, const Ground& ground) {
        if (!left || count_ == ways_.size())
            return;
        std::size_t place = count_++;
        for (; place > 0 && ways_[place - 1].left > *left; --place)
            ways_[place] = ways_[place - 1];
        ways_[place] = {*left, ground};
    }
    Left nearest() const { return count_ > 0 ? Left{ways_[0].left} : std::nullopt; }
    void tell(Grounds& grounds) const {
        for (std::size_t i = 0; i < count_; ++i)
            if (ways_[i].left <= calmAgain)
                grounds.add(ways_[i].ground);
    }

private:
    struct Way {
        double left = 0; // seconds
        Ground ground{GroundKind::ending};
    };
    std::array<Way, 5> ways_{};
    std::size_t count_ = 0;
};

// From the level and how it falls. A draw lets it fall too, so while one is open only a pan that is low already counts.
Left dryByLevel(const State& state, Series series, Instant now, bool standing) {
    const Sensor& sensor = state.sensors.of(series);
    const bool silent = !sensor.value(now) && sensor.reason(now) == Reason::silent;
    // A line that a draw began anew is short, and would be forgotten soon after its probe fell silent.
    const auto line = state.trends.of(series, now, silent ? followedOn : Trends::patience);
    if (!line && standing && sensor.value(now) && series == Series::pan_level)
        return soon; // the line has just begun anew
    if (!line || sensor.reason(now) == Reason::stuck)
        return std::nullopt;
    // Sap that no longer runs in makes any fall a danger.
    const auto inflow = state.trends.inflow();
    const bool starved = inflow && inflow->stoodSince < now - std::chrono::seconds{120};
    // A pan does not stop falling because its probe falls silent; that a draw still goes on is not known, though.
    const bool falls = line->span > 30 && line->slope < -3 * line->slopeSd && line->slope < -5e-6;
    double age = 0;
    if (!sensor.value(now)) {
        age = secondsBetween(line->at, now);
        if (!silent || !falls || age > followedOn || (state.course.drawing() && !starved))
            return std::nullopt;
    }
    const double level = line->value + std::min(0.0, line->slope) * age;
    auto usual = state.trends.usualLevel(series);
    if (series == Series::pan_level)
        if (const auto depth = state.settings.runningDepth())
            usual = *depth;
    const double left = level - asGoodAsDry;
    if (left <= 0)
        return state.sensors.boiling(state, now) || standing ? Left{0.0} : std::nullopt;
    const double share = starved ? 0.95 : state.course.drawing() ? 0.65 : 0.8;
    const bool low = usual && level < share * usual->metre();
    // Once called, a low pan is over when it rises, not when a draw has just begun the line anew.
    if (low && !falls && standing && (starved || line->span < 30 || line->slope < 2 * line->slopeSd))
        return soon;
    if (!low || !falls)
        return std::nullopt;
    // A starved pan is drawn down faster than it boils down, if they go on drawing.
    const double lasts = left / -line->slope / (starved ? 1.5 : 1);
    // Between two draws a shallow pan only seems to have time: the next draw may take half of what is left.
    const bool shallow = level < 0.5 * usual->metre() || (starved && standing);
    return shallow ? std::min(lasts, soon) : lasts;
}

// The syrup pan stands as deep as it should: it does not run dry.
std::optional<Ground> deepPan(const State& state, Instant now) {
    const Sensor& sensor = state.sensors.of(Series::pan_level);
    const auto level = sensor.value(now);
    const auto depth = state.settings.runningDepth();
    const auto usual = depth ? depth : state.trends.usualLevel(Series::pan_level);
    if (!level || !usual || sensor.trust(now) != Trust::good || level->si < 0.7 * usual->metre())
        return std::nullopt;
    return Ground{GroundKind::levelHolds, Length::metre(level->si), *usual, Series::pan_level};
}

// From sap that has stopped running in, where no level is read: what stands in the pans over what boils off.
Left dryByFeed(const State& state, Instant now) {
    const auto inflow = state.trends.inflow();
    if (!inflow || inflow->stoodSince >= now || !state.course.firing() || !state.sensors.boiling(state, now))
        return std::nullopt;
    constexpr double quickest = 600; // ten minutes from a shut feed to a dry pan, the least in practice
    double lasts = quickest;
    const auto depth = state.settings.runningDepth();
    const auto flue = state.settings.fluePanArea(), syrup = state.settings.syrupPanArea();
    if (depth && flue && syrup)
        lasts = std::max(0.0, depth->metre() - asGoodAsDry) * (flue->squareMetre() + syrup->squareMetre()) /
                (1.25 * inflow->usual.si());
    const double stood = secondsBetween(inflow->stoodSince, now);
    // The syrup pan is fed out of the flue pan, and falls once that is dry. If it does not, sap runs in after all, and
    // it is the tank's gauge that stands.
    constexpr double runsOn = 600;
    return stood > 2 * lasts + runsOn && deepPan(state, now) ? std::nullopt : Left{std::max(0.0, lasts - stood)};
}

// From the pan probe alone, while they go on drawing: no level and no feed, but the sugar races back to the mark.
Left dryByClimb(const State& state, Instant now) {
    const bool fire = state.course.firing() && state.sensors.boiling(state, now);
    // While sap runs in as ever the pans get what boils off and what is drawn; a gauge that is silent tells of neither.
    constexpr double lately = 300; // seconds
    const auto inflow = state.trends.inflow();
    if (inflow && inflow->stoodSince > now && secondsBetween(inflow->readAt, now) < lately)
        return std::nullopt;
    return state.climb.races() && fire ? Left{soon} : std::nullopt;
}

// Boiling water as well as it can be told without a barometer: never too low, so that no alarm comes from not knowing.
Weather::Boiling assumedBoiling(const State& state) {
    const auto expected = standardAtmosphere(state.settings.elevation().value_or(Length::metre(0)));
    const Pressure high = expected.value_or(Pressure::kilopascal(101.325)) + Pressure::kilopascal(3);
    return {std::nullopt,
            waterBoilingPoint(high).value_or(Temperature::celsius(101)),
            TemperatureDifference::kelvin(1),
            {},
            high,
            boilingRise(state.settings.targetDensity(), high)};
}

// A line through half a minute takes a load that catches, or a reading that comes out of spray, for a pan that runs
// away; the climb of the last two minutes does not. So the harm is no nearer than by that climb; while drawing a good
// deal further off, for a reading climbs a little when the draw is opened, and then falls.
double laggardly(const State& state, double rise, double limit, Instant now) {
    const auto climbs = state.climb.rate(now);
    const auto water = state.weather.boiling(now);
    if (!climbs || !water)
        return 0;
    const double ahead = state.course.drawing() ? 0.6 : 1.0;
    // A pan that stands as deep as ever thickens hardly faster than it does on the whole, whatever two minutes say.
    constexpr double deepFaster = 1.3;
    const auto usual = state.forecast.usualRate();
    const double climb = usual && deepPan(state, now) ? std::min(*climbs, deepFaster * *usual) : *climbs;
    const auto at = sugarAtRise(TemperatureDifference::kelvin(rise), water->forModel);
    const auto end = sugarAtRise(TemperatureDifference::kelvin(limit), water->forModel);
    return at && end ? (end->degrees() - at->degrees()) / std::max(climb, 1e-5) / ahead : 0;
}

// From the rise running away: when it passes that of 75 brix if it goes on as it does.
Left tooDense(const State& state, Instant now, bool standing) {
    const Sensor& sensor = state.sensors.of(Series::syrup_pan);
    const auto pan = sensor.value(now);
    if (!pan || sensor.reason(now) == Reason::stuck)
        return std::nullopt;
    // In foam it reads steam for a while, and has not thinned.
    constexpr double foamOver = 60;
    if (standing && sensor.reason(now) == Reason::inSteamOrFoam)
        if (const Probe* probe = sensor.active(now); secondsBetween(probe->reasonSince(now), now) < foamOver)
            return soon;
    const auto known = state.weather.boiling(now);
    const Weather::Boiling water = known ? *known : assumedBoiling(state);
    const double rise = pan->si - state.mark.offset(now).kelvin() - water.waterBoils.kelvin();
    if (!water.targetRise || rise < water.targetRise->kelvin())
        return std::nullopt;
    const auto limit = boilingRise(Brix::degrees(75), water.forModel); // no target is over that
    if (!limit)
        return std::nullopt;
    const auto line = state.trends.of(Series::syrup_pan, now);
    // Metal reads hot at once and then stays; liquid that thickens goes on climbing.
    if (sensor.reason(now) == Reason::touchingPan && (!line || line->slope < 0.03))
        return std::nullopt;
    if (rise >= limit->kelvin())
        return 0.0;
    // So close under it, and so far over any draw, a climb need not be quick: the next load may bring it.
    const double room = limit->kelvin() - rise;
    if (room <= 0.5 && rise > water.targetRise->kelvin() + 0.5)
        return line && line->slope > 0 ? std::min(soon, room / line->slope) : soon;
    if (!line || rise < water.targetRise->kelvin() + 0.2)
        return std::nullopt;
    const double left = room / std::max(line->slope, 1e-5);
    // Once it has run away it is over when it falls or all but stands, not when a lull between two loads slows it.
    if (standing)
        return line->slope > -line->slopeSd && left < 1500 ? Left{std::min(left, soon)} : std::nullopt;
    // A reading that comes back out of foam or spray climbs too, but only to where it was before.
    const auto before = state.trends.panHighBefore();
    if (line->span < 45 || (!state.climb.rate(now) && line->span < 120) || line->slope < 4 * line->slopeSd ||
        (before && pan->si < before->kelvin() + 0.03))
        return std::nullopt;
    return std::max(left, laggardly(state, rise, limit->kelvin(), now));
}

// The rise, against that of 75 brix.
Ground denseGround(const State& state, Instant now) {
    const auto pan = state.sensors.of(Series::syrup_pan).value(now);
    const Weather::Boiling water = state.weather.boiling(now).value_or(assumedBoiling(state));
    const double rise = pan ? pan->si - state.mark.offset(now).kelvin() - water.waterBoils.kelvin() : 0;
    const double limit = boilingRise(Brix::degrees(75), water.forModel).value_or(TemperatureDifference{}).kelvin();
    return {rise >= limit ? GroundKind::riseOver75 : GroundKind::riseRunsAway, TemperatureDifference::kelvin(rise),
            TemperatureDifference::kelvin(limit)};
}

} // namespace

ScorchCause scorchCause(const AlarmPicture& alarm) {
    bool deep = false;
    for (const Ground& ground : alarm.why) {
        // Sugar that races back may be of a pan that runs low, or of one that has all turned: the probe alone cannot
        // tell.
        if (ground.kind == GroundKind::levelFalls || ground.kind == GroundKind::feedStopped)
            return ScorchCause::runsDry;
        deep = deep || ground.kind == GroundKind::levelHolds;
    }
    return deep ? ScorchCause::allSyrup : ScorchCause::unknown;
}

Condition scorchRisk(const State& state, Series, Instant now, bool standing) {
    if (state.course.endedAt)
        return {};
    Ways ways;
    for (const Series series : {Series::pan_level, Series::flue_level}) {
        const auto left = dryByLevel(state, series, now, standing);
        const auto level = state.sensors.of(series).value(now);
        ways.add(left,
                 {GroundKind::levelFalls, Length::metre(level ? level->si : 0), Duration{left.value_or(0)}, series});
    }
    // A level that is read says itself when its pan runs dry. Where the flue pan has none, sap that no longer runs in
    // tells of it, whatever the syrup pan's level: that is fed out of the flue pan for as long as there is any.
    const bool flueRead = state.sensors.of(Series::flue_level).trust(now) == Trust::good;
    const bool panRead = state.sensors.of(Series::pan_level).trust(now) == Trust::good;
    if (!flueRead) {
        const auto left = dryByFeed(state, now);
        const auto inflow = state.trends.inflow();
        ways.add(left, {GroundKind::feedStopped, Duration{inflow ? secondsBetween(inflow->stoodSince, now) : 0},
                        Duration{left.value_or(0)}});
    }
    if (!panRead)
        ways.add(dryByClimb(state, now), {GroundKind::sugarRaces});
    const auto dense = tooDense(state, now, standing);
    if (dense)
        ways.add(dense, denseGround(state, now));
    const Left left = ways.nearest();
    Condition condition;
    ways.tell(condition.grounds);
    if (dense)
        if (const auto level = deepPan(state, now))
            condition.grounds.add(*level);
    // Where nothing is read any more the clock alone brings it nearer.
    if (left && *left > soon) {
        condition.holds = standing && *left <= calmAgain;
        condition.changes = now + Duration{*left - soon};
        condition.left = Duration{*left};
        return condition;
    }
    if (left) {
        condition.holds = true;
        condition.left = Duration{*left};
        return condition;
    }
    // Nothing tells any more: what stood stands until something says that it is over.
    condition.holds = standing && state.sensors.of(Series::syrup_pan).trust(now) == Trust::gone &&
                      state.sensors.of(Series::pan_level).trust(now) == Trust::gone;
    condition.grounds.add({GroundKind::standsBlind});
    return condition;
}

} // namespace panside
