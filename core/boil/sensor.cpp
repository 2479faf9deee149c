#include "core/boil/sensor.h"

#include "core/boil/height.h"
#include "core/boil/state.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// Where nothing tells where water boils: high up, under a deep low.
constexpr Temperature lowestBoil = Temperature::celsius(96);

// A pressure reduced to sea level that was taken for one read here, or the other way round; or one that is read
// nowhere.
Reason ofHeight(const Settings& settings, const Reading& reading) {
    const auto elevation = settings.elevation();
    const bool station = reading.series == Series::pressure;
    if (!station && reading.series != Series::sea_level_pressure)
        return Reason::none;
    const Pressure read = station ? reading.pressure() - settings.pressureOffset() : reading.pressure();
    if (elevation && (station ? looksReduced : looksUnreduced)(read, *elevation, doubtedFrom))
        return Reason::otherHeight;
    return isNoWeather(read, station ? elevation : Length::metre(0)) ? Reason::noWeather : Reason::none;
}

} // namespace

Probe& Sensor::probe(const std::string& name, Series series) {
    for (Probe& probe : probes_)
        if (probe.name() == name)
            return probe;
    return probes_.emplace_back(name, series);
}

// The first probe that was seen gives the reading as long as it is good; else the best of the others, probes before
// hands.
const Probe* Sensor::active(Instant now) const {
    if (probes_.empty())
        return nullptr;
    auto best = probes_.begin();
    for (auto probe = best + 1; probe != probes_.end(); ++probe)
        if (probe->trust(now) < best->trust(now) ||
            (best->byHand() && !probe->byHand() && probe->trust(now) == best->trust(now)))
            best = probe;
    return &*best;
}

const Probe* Sensor::first() const {
    for (const Probe& probe : probes_)
        if (!probe.byHand())
            return &probe;
    return probes_.empty() ? nullptr : &probes_.front();
}

std::optional<Sensor::Believed> Sensor::value(Instant now) const {
    const Probe* probe = active(now);
    if (!probe || !probe->hasValue() || probe->trust(now) == Trust::gone)
        return std::nullopt;
    // Another probe that stands in speaks on the scale of the one it stands in for.
    const double above = probe == first() ? 0 : probe->above();
    return Believed{probe->value() - above, probe->noise(), probe->believedAt(), probe->slope(),
                    probe->accepted() - above};
}

Trust Sensor::trust(Instant now) const {
    const Probe* probe = active(now);
    return probe ? probe->trust(now) : Trust::gone;
}

Reason Sensor::reason(Instant now) const {
    const Probe* probe = active(now);
    return probe ? probe->reason(now) : Reason::notYetRead;
}

std::optional<Instant> Sensor::lastRead() const {
    std::optional<Instant> last;
    for (const Probe& probe : probes_)
        last = std::max(last, probe.last());
    return last;
}

bool Sensor::byHand(Instant now) const {
    const Probe* probe = active(now);
    return probe && probe->byHand();
}

bool Sensors::boiling(const State& state, Instant now) const {
    const auto water = state.weather.boiling(now);
    const double boils = water ? water->waterBoils.kelvin() : lowestBoil.kelvin();
    for (const Series series : {Series::syrup_pan, Series::flue_pan})
        for (const Probe& probe : of(series).probes())
            if (probe.hasValue() && probe.value() > boils - 3 && !probe.silent(now))
                return true;
    return false;
}

bool Sensors::otherMoved(const Probe& probe) const {
    for (const Series series : {Series::syrup_pan, Series::flue_pan, Series::stack})
        for (const Probe& other : of(series).probes())
            if (&other != &probe && other.last() && other.unchangedSince() > probe.unchangedSince())
                return true;
    return false;
}

// A fed fire's stack stands far over the boiling pan; loads tell it where there is no probe.
PanDoubt::Fire Sensors::fire(const State& state, double boils, Instant at) const {
    constexpr double burns = 0.5, out = 0.3; // of the usual height of the stack over boiling water
    constexpr double stackStale = 120, lateFor = 1.5, outFor = 3;
    const auto usual = state.fire.usualStack();
    const auto stack = of(Series::stack).value(at);
    if (usual && stack && usual->kelvin() > boils + 50 && secondsBetween(stack->at, at) < stackStale &&
        of(Series::stack).trust(at) == Trust::good) {
        const double share = (stack->si - boils) / (usual->kelvin() - boils);
        return share > burns ? PanDoubt::Fire::burns : share < out ? PanDoubt::Fire::out : PanDoubt::Fire::unknown;
    }
    const auto fed = state.fire.lastFired();
    if (!fed)
        return PanDoubt::Fire::unknown;
    const double since = secondsBetween(*fed, at) / seconds(state.fire.interval(state));
    return since < lateFor ? PanDoubt::Fire::burns : since > outFor ? PanDoubt::Fire::out : PanDoubt::Fire::unknown;
}

PanDoubt::Around Sensors::aroundPan(const State& state, const Probe& probe, Series series, Instant at) const {
    // Within the least of these no pan is doubted; where water's boiling point is not known, by much more. A flue pan
    // is fed cold, and its probe may stand by the feed.
    constexpr double least = 0.8, most = 2.5, surely = 4, byHeight = 2.5, nothingKnown = 6, fluePan = 8;
    PanDoubt::Around around;
    if (const auto water = state.weather.boiling(at)) {
        const bool syrup = series == Series::syrup_pan;
        const double offset = syrup ? state.mark.offset(at).kelvin() : 0;
        const double sd = std::hypot(water->uncertainty().kelvin(), syrup ? state.mark.offsetSd(at).kelvin() : 0.3);
        around.boils = water->waterBoils.kelvin() + offset;
        around.margin = std::clamp(surely * sd, least, most);
    } else {
        const auto elevation = state.settings.elevation();
        const auto band = elevation ? boilingBand(*elevation) : std::nullopt;
        around.boils = band ? band->usual.kelvin() : lowestBoil.kelvin();
        around.margin = band ? byHeight : nothingKnown;
    }
    around.mayStandCold = series == Series::flue_pan;
    if (around.mayStandCold)
        around.margin = std::max(around.margin, fluePan);
    around.firing = !state.course.shutdownAt && !state.course.endedAt;
    if (probe.hasValue() && probe.value() < around.boils)
        around.fire = fire(state, around.boils, at);
    return around;
}

void Sensors::absorb(const State& state, const Fact& fact) {
    if (std::holds_alternative<PanSwapped>(fact.what) || std::holds_alternative<DensityCheck>(fact.what))
        for (Probe& probe : sensors_[static_cast<std::size_t>(Series::syrup_pan)].probes_) {
            handsAt_ = fact.at;
            probe.seenByHand();
        }
    const auto* reading = std::get_if<Reading>(&fact.what);
    if (!reading)
        return;
    Sensor& sensor = sensors_[static_cast<std::size_t>(reading->series)];
    Probe& probe = sensor.probe(reading->probe, reading->series);
    Probe::Around around;
    around.boiling = boiling(state, fact.at);
    around.drawing = state.course.drawing();
    constexpr double justNow = 120; // seconds
    const auto lately = [&](const auto& then) { return then && secondsBetween(*then, fact.at) < justNow; };
    around.handsAtPan = around.drawing || lately(state.course.closedAt) || lately(handsAt_);
    around.firing = !state.course.shutdownAt;
    if (reading->series == Series::syrup_pan)
        if (const auto water = state.weather.boiling(fact.at))
            around.waterBoils = (water->waterBoils + state.mark.offset(fact.at)).kelvin();
    if (reading->series == Series::syrup_pan || reading->series == Series::flue_pan)
        around.pan = aroundPan(state, probe, reading->series, fact.at);
    around.height = ofHeight(state.settings, *reading);
    if (probe.last() && secondsBetween(probe.unchangedSince(), fact.at) > 30)
        around.othersMove = otherMoved(probe);
    probe.addSample(rowOf(reading->series), reading->si, reading->unit, fact.at, around);
    if (reading->series == Series::syrup_pan || reading->series == Series::flue_pan)
        watchPlugs(around.pan.boils, fact.at);
    const Probe* first = sensor.first();
    if (first != &probe && !probe.byHand() && first->trust(fact.at) == Trust::good &&
        probe.trust(fact.at) == Trust::good)
        probe.compare(*first);
}

void Sensors::watchPlugs(double boils, Instant at) {
    Probe* syrup = sensors_[static_cast<std::size_t>(Series::syrup_pan)].first();
    Probe* flue = sensors_[static_cast<std::size_t>(Series::flue_pan)].first();
    if (!syrup || !flue || syrup->byHand() || flue->byHand() || syrup->silent(at) || flue->silent(at))
        return;
    plugs_.addSample(syrup->asPan(at), flue->asPan(at), boils, at);
    syrup->exchanged(plugs_.since(), plugs_.surelySince());
    flue->exchanged(plugs_.since(), {}); // one alarm tells of both
}

void Sensors::show(const State&, Instant now, Picture& picture) const {
    for (const ReadingRow& row : allReadings()) {
        const Sensor& sensor = of(row.series);
        const Probe* probe = sensor.active(now);
        if (!probe)
            continue;
        ReadingPicture shown;
        shown.trust = probe->trust(now);
        shown.reason = probe->reason(now);
        shown.forSoLong = Duration{secondsBetween(probe->reasonSince(now), now)};
        shown.last = probe->last().value_or(now);
        shown.byHand = probe->byHand();
        shown.probe = probe->name();
        shown.standsIn = probe != sensor.first();
        if (const auto value = sensor.value(now))
            shown.si = value->si;
        if (shown.trust != Trust::good)
            picture.why.push_back({row.series, shown.reason, seconds(shown.forSoLong)});
        picture.readings[static_cast<std::size_t>(row.series)] = shown;
    }
    if (const auto pan = of(Series::syrup_pan).value(now))
        picture.syrupPan = Temperature::kelvin(pan->si);
    else
        picture.why.push_back({Shown::syrupPanC, Reason::noPanReading});
}

} // namespace panside
