#pragma once
// The filter press: the run that goes on, what its gauge says of the limit, and the runs before. Pure.
#include "core/ledger/cake.h"
#include "core/shift/house_ledger.h"
#include "ui/ledger/list_page.h"
#include "ui/look/units.h"

namespace panside {

// A reading of the gauge since the run began.
struct GaugeReading {
    Instant at{};
    Pressure pressure;
};
// By seconds since the run began.
std::vector<CakeReading> cakeOf(std::span<const GaugeReading> readings, Instant begun);
// The run that was begun and has not ended; what the rows say of it.
struct OpenRun {
    Instant begun{};
    QString from, to, aid, papers;
    std::optional<Temperature> temperature;
};
std::optional<OpenRun> openRun(const HouseLedger& house);
// Runs that are over with the same kind of aid and the same papers, and what their gauge showed, by time since each
// began.
std::vector<CakeRun> runsBefore(const HouseLedger& house, const OpenRun& run);
// Readings of filter_pressure since then, from all facts given, thinned to one in some seconds.
std::vector<GaugeReading> gaugeSince(Instant begun, const Facts& facts, std::span<const GaugeReading> typed);
// Gallons a second of the house's finished runs that told their volume; nullopt: none did.
std::optional<VolumeFlow> usualFlow(const HouseLedger& house);

struct FilterNow {
    std::optional<OpenRun> run;
    std::vector<GaugeReading> readings;
    std::optional<Pressure> limit; // the maker's; never a default
    std::optional<VolumeFlow> flow;
    std::vector<CakeRun> before;
    Instant now{};
};
// "Run of 21:40 from pail 3: 12 psi, at most 20; about 6 gal through, it climbs 1.4 psi a gallon. The limit in 6 to 11
// min, after 9 to 13 gal through it."
QString filterSentence(const FilterNow& now, Units units);
ListView filterView(const HouseLedger* house, const FilterNow& now, Units units);

} // namespace panside
