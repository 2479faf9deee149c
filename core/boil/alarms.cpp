#include "core/boil/alarms.h"

#include "core/boil/state.h"
#include "core/physics/sugar.h"
#include "core/quantity/enum_count.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

// The rise as it is now, and the rise at a density; nullopt where either cannot be known or believed.
struct RiseAgainst {
    double rise, mark;
};
std::optional<RiseAgainst> riseAgainst(const State& state, Brix density, Instant now) {
    const auto pan = state.sensors.of(Series::syrup_pan).value(now);
    const auto water = state.weather.boiling(now);
    const Probe* probe = state.sensors.of(Series::syrup_pan).active(now);
    // What leapt may be true, and is no reason to be silent.
    const bool leapt = probe && probe->leap() && probe->reason(now) != Reason::plugsExchanged;
    if (!pan || !water || (state.sensors.of(Series::syrup_pan).trust(now) != Trust::good && !leapt))
        return std::nullopt;
    const auto mark =
        density == state.settings.targetDensity() ? water->targetRise : boilingRise(density, water->forModel);
    if (!mark)
        return std::nullopt;
    return RiseAgainst{pan->si - state.mark.offset(now).kelvin() - water->waterBoils.kelvin(), mark->kelvin()};
}

constexpr double riseDeadband = 0.05; // kelvin

// The target is no better known than the probe. Over it by less than that doubt a pan may well be under it still, and
// the call can wait some minutes; but never so far that the syrup would be more than a third of the way to too heavy.
Condition aboveTarget(const State& state, Series, Instant now, bool standing) {
    if (state.course.drawing())
        return {false, {}, {}, true};
    const auto against = riseAgainst(state, state.settings.targetDensity(), now);
    const auto water = state.weather.boiling(now);
    // What was read before the draw was shut has been drawn: by hand that may be minutes ago.
    const auto read = state.sensors.of(Series::syrup_pan).lastRead();
    if (!against || !water || (read && state.course.closedAt && *read <= *state.course.closedAt))
        return {};
    const double over = against->rise - against->mark;
    const auto heavy = boilingRise(state.settings.tooHeavy(), water->forModel);
    const double room = heavy ? std::max(0.0, heavy->kelvin() - against->mark) / 3 : 0;
    constexpr double surely = 1.645; // 95 of 100, one-sided
    // An automatic valve lets the pan stand over the target as it always does.
    constexpr double beyond = 0.1;
    const double usual = std::min(state.ownDraw.opensAt().value_or(-beyond) + beyond, std::max(0.0, 3 * room));
    const double doubt = surely * std::hypot(state.mark.offsetSd(now).kelvin(), water->uncertainty().kelvin());
    Condition condition{over > std::max(0.0, usual) - (standing ? riseDeadband : 0) && !state.ownDraw.hangs(now)};
    condition.doubtful = condition.holds && over < std::min(doubt, room);
    condition.grounds.add({GroundKind::overTarget, TemperatureDifference::kelvin(against->rise),
                           TemperatureDifference::kelvin(against->mark)});
    if (condition.doubtful)
        condition.grounds.add({GroundKind::withinDoubt, TemperatureDifference::kelvin(doubt)});
    return condition;
}

// What is drawn thin on purpose, to be finished elsewhere, is judged by what was wanted.
Condition drawOverdue(const State& state, Series, Instant now, bool standing) {
    if (!state.course.drawing())
        return {false, {}, {}, true};
    const Brix least = std::min(state.settings.legalMinimum(), state.settings.targetDensity());
    const auto against = riseAgainst(state, least, now);
    if (!against)
        return {};
    Condition condition{against->rise < against->mark + (standing ? riseDeadband : 0)};
    condition.grounds.add({GroundKind::underLegal, TemperatureDifference::kelvin(against->rise),
                           TemperatureDifference::kelvin(against->mark)});
    return condition;
}

Condition panLow(const State& state, Series, Instant now, bool standing) {
    const auto depth = state.settings.runningDepth();
    const auto level = state.sensors.of(Series::pan_level).value(now);
    if (!depth || !level || state.sensors.of(Series::pan_level).trust(now) != Trust::good)
        return {};
    Condition condition{level->si < (standing ? 0.55 : 0.5) * depth->metre()};
    condition.grounds.add({GroundKind::panUnderHalf, Length::metre(level->si), *depth * 0.5, Series::pan_level});
    return condition;
}

// Over the limit that was set; where none was, hotter than this rig was ever seen to run, by a margin that no ordinary
// load makes; where nothing was seen yet, past what most stacks see.
Condition stackHot(const State& state, Series, Instant now, bool standing) {
    const auto stack = state.sensors.of(Series::stack).value(now);
    if (!stack || state.sensors.of(Series::stack).trust(now) != Trust::good)
        return {};
    constexpr double margin = 100, deadband = 20;
    constexpr Temperature least = Temperature::celsius(350), unseen = Temperature::celsius(600);
    Ground ground{GroundKind::stackOverUsual, Temperature::kelvin(stack->si), unseen};
    const auto hottest = state.trends.hottestStack();
    const auto before = state.settings.learnedHottestStack();
    if (const auto set = state.settings.stackLimit()) {
        ground = {GroundKind::stackOverSet, ground.seen, *set};
    } else if (hottest || before) {
        const double seen = std::max(hottest ? hottest->kelvin() : 0, before ? before->kelvin() : 0);
        ground = {GroundKind::stackOverSeen, ground.seen, std::max(Temperature::kelvin(seen + margin), least)};
    }
    Condition condition{stack->si > std::get<Temperature>(ground.limit).kelvin() - (standing ? deadband : 0)};
    // Flue gas never stands still: what does, hotter than a flue, may be an open thermocouple that shows the top of its
    // scale (common practice, no source: 999 of its units, 1000 degC or more).
    constexpr double stands = 20, spacings = 1.5;
    constexpr Temperature scaleEnds = Temperature::celsius(950);
    const Probe* probe = state.sensors.of(Series::stack).active(now);
    condition.doubtful = probe && stack->si > scaleEnds.kelvin() &&
                         secondsBetween(probe->unchangedSince(), now) > std::max(stands, spacings * probe->spacing());
    condition.grounds.add(ground);
    return condition;
}

Condition filterPressureHigh(const State& state, Series, Instant now, bool standing) {
    const auto limit = state.settings.filterLimit();
    const auto pressure = state.sensors.of(Series::filter_pressure).value(now);
    if (!limit || !pressure)
        return {};
    Condition condition{pressure->si > limit->pascal() * (standing ? 0.95 : 1)};
    condition.grounds.add({GroundKind::pressOverLimit, Pressure::pascal(pressure->si), *limit});
    return condition;
}

Condition probeSilent(const State& state, Series series, Instant now, bool) {
    Condition condition;
    if (series == Series::sea_level_pressure)
        return condition; // a weather report is no probe
    for (const Probe& probe : state.sensors.of(series).probes()) {
        if (probe.byHand() || !probe.last())
            continue;
        if (probe.silent(now)) {
            // One long silent while another gives the reading has been taken away; a press is worked now and then.
            const bool putBy = secondsBetween(*probe.last(), now) >= Probe::putBy;
            const bool press = series == Series::filter_pressure && (putBy || probe.pauses() > 0);
            if (press || (putBy && state.sensors.of(series).trust(now) != Trust::gone))
                continue;
            if (!putBy)
                condition.changes =
                    std::min(condition.changes.value_or(Instant::max()), *probe.last() + Duration{Probe::putBy});
            condition.holds = true;
            condition.grounds.add({GroundKind::nothingRead, Duration{secondsBetween(*probe.last(), now)},
                                   Duration{secondsBetween(*probe.last(), probe.silentAt())}, series});
        } else
            condition.changes = std::min(condition.changes.value_or(Instant::max()), probe.silentAt());
    }
    return condition;
}

Condition probeStuck(const State& state, Series series, Instant now, bool) {
    for (const Probe& probe : state.sensors.of(series).probes())
        if (probe.stuck() && !probe.silent(now)) {
            Condition condition{true};
            condition.grounds.add(
                {GroundKind::notMoving, Duration{secondsBetween(probe.unchangedSince(), now)}, {}, series});
            return condition;
        }
    return {};
}

Condition readingImplausible(const State& state, Series series, Instant now, bool) {
    Condition condition;
    for (const Probe& probe : state.sensors.of(series).probes())
        if (probe.implausibleSince() && !probe.silent(now)) {
            const Instant from = *probe.implausibleSince() + Duration{5};
            const bool fast = probe.reason(now) == Reason::tooFast;
            condition.grounds.add({fast ? GroundKind::tooFast : GroundKind::outsidePhysics, {}, {}, series});
            if (now >= from)
                condition.holds = true;
            else
                condition.changes = from;
        }
    return condition;
}

// The call itself is no alarm: a crew answers it within its own scatter. Later than that, or when the fire has begun to
// sag for want of it, it is one.
Condition fireOverdue(const State& state, Series, Instant now, bool standing) {
    const auto due = state.fire.due(state);
    if (!due)
        return {};
    constexpr Duration least{60};
    const Duration scatter = std::max(state.fire.interval(state) / 4, least);
    const double late = secondsBetween(*due, now);
    Condition condition{late >= scatter.count(), *due + scatter};
    condition.grounds.add({GroundKind::loadLate, Duration{late}, scatter});
    if (const auto sags = state.fire.sags(state, now, standing)) {
        condition.holds = true;
        condition.grounds.add({GroundKind::fireSags, sags->now, sags->usual});
    }
    if (condition.holds)
        condition.changes.reset();
    return condition;
}

Condition clockChanged(const State& state, Series, Instant now, bool) {
    if (!state.course.clockSteppedAt)
        return {};
    const Instant until = *state.course.clockSteppedAt + Duration{600};
    if (now >= until)
        return {};
    Condition condition{true, until};
    condition.grounds.add({GroundKind::clockMoved, Duration{secondsBetween(*state.course.clockSteppedAt, now)}});
    return condition;
}

// What the end of the boil asks, as the balance shows it.
Picture endOfBoil(const State& state, Instant now) {
    Picture picture;
    state.fire.show(state, now, picture);
    state.balance.show(state, now, picture);
    return picture;
}

Condition sapLow(const State& state, Series, Instant now, bool standing) {
    const auto tank = state.sensors.of(Series::tank_level).value(now);
    if (!state.course.firing() || !tank || state.sensors.of(Series::tank_level).trust(now) != Trust::good)
        return {};
    const Picture end = endOfBoil(state, now);
    const double nearly = standing ? 1.1 : 1;
    if (end.keepBack) {
        Condition condition{tank->si < end.keepBack->cubicMetre() * nearly};
        condition.grounds.add({GroundKind::sapUnderNeed, Volume::cubicMetre(tank->si), *end.keepBack});
        return condition;
    }
    if (!end.sapLeft)
        return {};
    // Nobody said how large the pans are: an hour's sap stands in for what covers them while the fire burns out.
    constexpr Duration hour{3600};
    Condition condition{*end.sapLeft < hour * nearly};
    condition.grounds.add({GroundKind::sapUnderHour, *end.sapLeft, hour});
    return condition;
}

// The load after the next would come when there is no sap left for it to boil.
Condition lastLoad(const State& state, Series, Instant now, bool standing) {
    if (!state.course.firing())
        return {};
    const Picture end = endOfBoil(state, now);
    if (!end.lastLoad || !end.fireDue)
        return {};
    const Duration afterNext = std::max(*end.fireDue, Duration{0}) + end.fireInterval * (standing ? 1.25 : 1);
    Condition condition{end.lastLoad->p50 < afterNext};
    condition.grounds.add({GroundKind::lastLoadBeforeNext, end.lastLoad->p50, afterNext});
    return condition;
}

Condition never(const State&, Series, Instant, bool) { return {}; }

constexpr std::uint16_t bit(Series series) { return static_cast<std::uint16_t>(1U << static_cast<unsigned>(series)); }
constexpr std::uint16_t bits(auto... series) { return static_cast<std::uint16_t>((bit(series) | ... | 0U)); }
constexpr std::uint16_t panAndAir = bits(Series::syrup_pan, Series::pressure, Series::sea_level_pressure);

using enum Series;
constexpr std::uint16_t danger = bits(syrup_pan, pan_level, flue_level, feed_flow, tank_level);
constexpr std::array<AlarmRow, alarmCount> table{{
    {Alarm::scorch_risk, "scorch_risk", Priority::high, 3, 3, 45, 0, false, danger, scorchRisk},
    {Alarm::pan_low, "pan_low", Priority::high, 10, 10, 2, 0, false, bits(pan_level), panLow},
    {Alarm::stack_hot, "stack_hot", Priority::high, 30, 120, 10, 0, false, bits(stack), stackHot},
    {Alarm::filter_pressure_high, "filter_pressure_high", Priority::high, 2, 2, 2, 0, false, bits(filter_pressure),
     filterPressureHigh},
    {Alarm::probe_silent, "probe_silent", Priority::medium, 0, 0, 0, 0, true, 0, probeSilent},
    {Alarm::journal_trouble, "journal_trouble", Priority::high, 0, 0, 0, 0, false, 0, never},
    {Alarm::above_target, "above_target", Priority::medium, 20, 180, 5, 0, false, panAndAir, aboveTarget},
    {Alarm::draw_overdue, "draw_overdue", Priority::medium, 20, 20, 2, 0, false, panAndAir, drawOverdue},
    {Alarm::fire_overdue, "fire_overdue", Priority::medium, 0, 0, 0, 0, false, bits(stack, syrup_pan), fireOverdue},
    {Alarm::sap_low, "sap_low", Priority::medium, 30, 30, 60, 10, false, bits(tank_level), sapLow},
    {Alarm::last_load, "last_load", Priority::medium, 30, 30, 60, 10, false, bits(tank_level), lastLoad},
    {Alarm::tank_overflow, "tank_overflow", Priority::medium, 30, 30, 60, 10, false, bits(tank_level), tankOverflow},
    {Alarm::probe_stuck, "probe_stuck", Priority::medium, 0, 0, 0, 0, true, 0, probeStuck},
    {Alarm::reading_implausible, "reading_implausible", Priority::medium, 0, 0, 0, 0, true, 0, readingImplausible},
    {Alarm::clock_changed, "clock_changed", Priority::low, 0, 0, 0, 0, false, 0, clockChanged},
}};

static_assert(hasCount<Alarm, alarmCount>()); // an alarm without its row does not compile
static_assert(inOrder(table, &AlarmRow::alarm));
static_assert(seriesCount <= 16); // each reading has its bit in looksAt

} // namespace

bool silentTogether(const State& state, Series a, Series b, Instant now) {
    constexpr double spacings = 1.5, atOnce = 3; // seconds
    for (const Probe& one : state.sensors.of(a).probes())
        for (const Probe& other : state.sensors.of(b).probes())
            if (one.silent(now) && other.silent(now) && one.name() == other.name() &&
                std::abs(secondsBetween(*one.last(), *other.last())) <=
                    atOnce + spacings * std::max(one.spacing(), other.spacing()))
                return true;
    return false;
}

const AlarmRow& rowOf(Alarm alarm) { return table[static_cast<std::size_t>(alarm)]; }
std::string_view nameOf(Alarm alarm) { return rowOf(alarm).name; }
Priority priorityOf(Alarm alarm) { return rowOf(alarm).priority; }

Priority priorityOf(Alarm alarm, Series series) {
    return alarm == Alarm::probe_silent && series == Series::syrup_pan ? Priority::high : priorityOf(alarm);
}

std::optional<Alarm> alarmNamed(std::string_view name) {
    for (const AlarmRow& row : table)
        if (row.name == name)
            return row.alarm;
    return std::nullopt;
}

} // namespace panside
