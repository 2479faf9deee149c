#include "core/boil/sensor.h"

#include "core/boil/state.h"

#include <algorithm>

namespace panside {

Probe& Sensor::probe(const std::string& name, Series series) {
    for (Probe& probe : probes_)
        if (probe.name() == name)
            return probe;
    return probes_.emplace_back(name, series);
}

// The first probe that was seen gives the reading as long as it is good; else the best of the others, probes before
// hands.
const Probe* Sensor::active(Instant now) const {
    const Probe* best = nullptr;
    for (const Probe& probe : probes_) {
        if (!best || probe.trust(now) < best->trust(now) ||
            (best->byHand() && !probe.byHand() && probe.trust(now) == best->trust(now)))
            best = &probe;
    }
    return best;
}

const Probe* Sensor::first() const {
    for (const Probe& probe : probes_)
        if (!probe.byHand())
            return &probe;
    return probes_.empty() ? nullptr : &probes_.front();
}

std::optional<Sensor::Filtered> Sensor::value(Instant now) const {
    const Probe* probe = active(now);
    if (!probe || !probe->hasValue() || probe->trust(now) == Trust::gone)
        return std::nullopt;
    // Another probe that stands in speaks on the scale of the one it stands in for.
    const double above = probe == first() ? 0 : probe->above();
    return Filtered{probe->value() - above, probe->noise(), probe->believedAt(), probe->slope(),
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
    const double boils = water ? water->waterBoils.kelvin() : Temperature::celsius(96).kelvin();
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

void Sensors::take(const State& state, const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    if (!reading)
        return;
    Sensor& sensor = sensors_[static_cast<std::size_t>(reading->series)];
    Probe& probe = sensor.probe(reading->probe, reading->series);
    Probe::Around around;
    around.boiling = boiling(state, fact.at);
    around.drawing = state.course.drawing();
    around.firing = !state.course.shutdownAt;
    if (reading->series == Series::syrup_pan)
        if (const auto water = state.weather.boiling(fact.at))
            around.waterBoils = (water->waterBoils + state.mark.offset(fact.at)).kelvin();
    if (probe.last() && secondsBetween(probe.unchangedSince(), fact.at) > 30)
        around.othersMove = otherMoved(probe);
    probe.take(rowOf(reading->series), reading->si, reading->unit, fact.at, around);
    const Probe* first = sensor.first();
    if (first != &probe && !probe.byHand() && first->trust(fact.at) == Trust::good &&
        probe.trust(fact.at) == Trust::good)
        probe.compare(*first);
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
            picture.why.push_back({row.name, shown.reason, seconds(shown.forSoLong)});
        picture.readings[static_cast<std::size_t>(row.series)] = shown;
    }
    if (const auto pan = of(Series::syrup_pan).value(now))
        picture.syrupPan = Temperature::kelvin(pan->si);
    else
        picture.why.push_back({"syrupPanC", Reason::noPanReading});
}

} // namespace panside
