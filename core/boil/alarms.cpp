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
    if (!pan || !water || state.sensors.of(Series::syrup_pan).trust(now) != Trust::good)
        return std::nullopt;
    const auto mark = boilingRise(density, water->forModel);
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
    const double doubt = surely * std::hypot(state.mark.offsetSd(now).kelvin(), water->uncertainty.kelvin());
    Condition condition{over > (standing ? -riseDeadband : 0)};
    condition.doubtful = condition.holds && over < std::min(doubt, room);
    return condition;
}

// What is drawn thin on purpose, to be finished elsewhere, is judged by what was wanted.
Condition drawOverdue(const State& state, Series, Instant now, bool standing) {
    if (!state.course.drawing())
        return {false, {}, {}, true};
    const Brix least = std::min(state.settings.legalMinimum(), state.settings.targetDensity());
    const auto against = riseAgainst(state, least, now);
    return {against && against->rise < against->mark + (standing ? riseDeadband : 0)};
}

Condition panLow(const State& state, Series, Instant now, bool standing) {
    const auto depth = state.settings.runningDepth();
    const auto level = state.sensors.of(Series::pan_level).value(now);
    if (!depth || !level || state.sensors.of(Series::pan_level).trust(now) != Trust::good)
        return {};
    return {level->si < (standing ? 0.55 : 0.5) * depth->metre()};
}

// Hotter than it was ever seen to run, by a margin that no ordinary load makes; or past what any stack should see.
Condition stackHot(const State& state, Series, Instant now, bool standing) {
    const auto stack = state.sensors.of(Series::stack).value(now);
    if (!stack || state.sensors.of(Series::stack).trust(now) != Trust::good)
        return {};
    constexpr double margin = 100, deadband = 20;
    double limit = Temperature::celsius(600).kelvin();
    if (const auto hottest = state.trends.hottestStack())
        limit = std::min(limit, std::max(*hottest + margin, Temperature::celsius(350).kelvin()));
    return {stack->si > limit - (standing ? deadband : 0)};
}

Condition filterPressureHigh(const State& state, Series, Instant now, bool standing) {
    const auto limit = state.settings.filterLimit();
    const auto pressure = state.sensors.of(Series::filter_pressure).value(now);
    return {limit && pressure && pressure->si > limit->pascal() * (standing ? 0.95 : 1)};
}

Condition probeSilent(const State& state, Series series, Instant now, bool) {
    Condition condition;
    if (series == Series::sea_level_pressure)
        return condition; // a weather report is no probe
    for (const Probe& probe : state.sensors.of(series).probes()) {
        if (probe.byHand() || !probe.last())
            continue;
        if (probe.silent(now))
            // One long silent while another gives the reading has been taken away.
            condition.holds = condition.holds || secondsBetween(*probe.last(), now) < 900 ||
                              state.sensors.of(series).trust(now) == Trust::gone;
        else
            condition.changes = std::min(condition.changes.value_or(Instant::max()), probe.silentAt());
    }
    return condition;
}

Condition probeStuck(const State& state, Series series, Instant now, bool) {
    for (const Probe& probe : state.sensors.of(series).probes())
        if (probe.stuck() && !probe.silent(now))
            return {true};
    return {};
}

Condition readingImplausible(const State& state, Series series, Instant now, bool) {
    Condition condition;
    for (const Probe& probe : state.sensors.of(series).probes())
        if (probe.implausibleSince() && !probe.silent(now)) {
            const Instant from = *probe.implausibleSince() + Duration{5};
            if (now >= from)
                condition.holds = true;
            else
                condition.changes = from;
        }
    return condition;
}

Condition fireOverdue(const State& state, Series, Instant now, bool) {
    const auto due = state.fire.due(state);
    if (!due)
        return {};
    return now >= *due ? Condition{true} : Condition{false, due};
}

Condition clockChanged(const State& state, Series, Instant now, bool) {
    if (!state.course.clockSteppedAt)
        return {};
    const Instant until = *state.course.clockSteppedAt + Duration{600};
    return now < until ? Condition{true, until} : Condition{};
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
    if (end.keepBack)
        return {tank->si < end.keepBack->cubicMetre() * nearly};
    // Nobody said how large the pans are: an hour's sap stands in for what covers them while the fire burns out.
    return {end.sapLeft && *end.sapLeft < Duration{3600} * nearly};
}

// The load after the next would come when there is no sap left for it to boil.
Condition lastLoad(const State& state, Series, Instant now, bool standing) {
    if (!state.course.firing())
        return {};
    const Picture end = endOfBoil(state, now);
    if (!end.lastLoad || !end.fireDue)
        return {};
    const Duration afterNext = std::max(*end.fireDue, Duration{0}) + end.fireInterval * (standing ? 1.25 : 1);
    return {end.lastLoad->p50 < afterNext};
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
    {Alarm::stack_hot, "stack_hot", Priority::high, 30, 30, 10, 0, false, bits(stack), stackHot},
    {Alarm::filter_pressure_high, "filter_pressure_high", Priority::high, 2, 2, 2, 0, false, bits(filter_pressure),
     filterPressureHigh},
    {Alarm::probe_silent, "probe_silent", Priority::medium, 0, 0, 0, 0, true, 0, probeSilent},
    {Alarm::journal_trouble, "journal_trouble", Priority::high, 0, 0, 0, 0, false, 0, never},
    {Alarm::above_target, "above_target", Priority::medium, 20, 180, 5, 0, false, panAndAir, aboveTarget},
    {Alarm::draw_overdue, "draw_overdue", Priority::medium, 20, 20, 2, 0, false, panAndAir, drawOverdue},
    {Alarm::fire_overdue, "fire_overdue", Priority::medium, 0, 0, 0, 0, false, bits(stack, syrup_pan), fireOverdue},
    {Alarm::sap_low, "sap_low", Priority::medium, 30, 30, 60, 10, false, bits(tank_level), sapLow},
    {Alarm::last_load, "last_load", Priority::medium, 30, 30, 60, 10, false, bits(tank_level), lastLoad},
    {Alarm::probe_stuck, "probe_stuck", Priority::medium, 0, 0, 0, 0, true, 0, probeStuck},
    {Alarm::reading_implausible, "reading_implausible", Priority::medium, 0, 0, 0, 0, true, 0, readingImplausible},
    {Alarm::clock_changed, "clock_changed", Priority::low, 0, 0, 0, 0, false, 0, clockChanged},
}};

constexpr bool inOrder() {
    for (std::size_t i = 0; i < table.size(); ++i)
        if (static_cast<std::size_t>(table[i].alarm) != i)
            return false;
    return true;
}
static_assert(hasCount<Alarm, alarmCount>()); // an alarm without its row does not compile
static_assert(inOrder());
static_assert(seriesCount <= 16); // each reading has its bit in looksAt

} // namespace

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
