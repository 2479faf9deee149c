#include "core/ledger/sap_nights.h"

#include "core/physics/sap.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr std::ptrdiff_t nightsLearned = 20;              // a rig of two years ago is another one
constexpr double readSapBrix = 0.1, guessedSapBrix = 1.0; // one standard deviation

} // namespace

std::vector<NightBoiled> nightsBoiled(const Ledger& ledger, std::optional<Instant> before) {
    std::vector<NightBoiled> all;
    for (const Night& night : ledger.nights()) {
        if (before && night.first >= *before)
            break;
        if (!night.lit || !night.lastLoad || !night.fired)
            continue;
        NightBoiled boiled;
        boiled.fired = Duration{secondsBetween(*night.lit, *night.lastLoad)};
        boiled.sap = night.fired->volume();
        boiled.sugar = Mass::kilogram(night.fired->sugar);
        boiled.kept = night.kept;
        boiled.cords = night.cords;
        boiled.sugarIn = Mass::kilogram(night.entered.sugar);
        if (!night.draws.empty() && night.unmeasured == 0)
            boiled.sugarDrawn = Mass::kilogram(night.drawnSugar);
        else if (const auto draws = night.draws.size(); draws > 2 && night.unmeasured * 4 <= static_cast<int>(draws))
            // The few that nobody measured were about as large as the others.
            boiled.sugarDrawn = Mass::kilogram(night.drawnSugar * static_cast<double>(draws) /
                                               (static_cast<double>(draws) - night.unmeasured));
        boiled.sugarInPans = Mass::kilogram(std::max(0.0, night.left));
        if (night.firstDraw && night.ready > 0 && night.before >= 0) {
            boiled.firstDraw = Duration{secondsBetween(*night.lit, *night.firstDraw)};
            boiled.sugarBefore = Mass::kilogram(night.before);
            boiled.sugarReady = Mass::kilogram(night.ready);
        }
        all.push_back(boiled);
    }
    return all;
}

std::vector<StandingIn> standingIn(const Ledger& ledger) {
    std::vector<StandingIn> all;
    for (std::size_t i = 0; i < ledger.vessels().size(); ++i) {
        const Vessel& vessel = ledger.vessels()[i];
        if (!isTankKind(vessel.kind) || vessel.out || vessel.content.isEmpty())
            continue;
        const double sd =
            std::max(vessel.content.error().degrees(), vessel.sugarAssumed ? guessedSapBrix : readSapBrix);
        all.push_back({i, {vessel.content.volume(), vessel.content.brix(), Brix::degrees(sd)}});
    }
    return all;
}

std::vector<SapStanding> standing(const Ledger& ledger) {
    std::vector<SapStanding> all;
    for (const StandingIn& one : standingIn(ledger))
        all.push_back(one.what);
    return all;
}

TonightBasis tonightBasis(const Ledger& ledger) {
    const Settings& settings = ledger.tables().settings;
    TonightBasis basis;
    basis.nights = nightsBoiled(ledger);
    if (basis.nights.size() > nightsLearned)
        basis.nights.erase(basis.nights.begin(), basis.nights.end() - nightsLearned);
    basis.syrup = settings.targetDensity();
    if (const auto burnOut = settings.burnOut()) {
        basis.burnOut = *burnOut;
        basis.burnOutLearned = true;
    }
    const PansNow& pans = ledger.tables().pans;
    basis.pansEmpty = !basis.nights.empty() && pans.content.isEmpty();
    if (!pans.isShort && !pans.unwritten)
        basis.sweetInPans = Mass::kilogram(std::max(0.0, pans.content.sugar));
    const auto rate = Tonight{basis}.rate();
    const auto flue = settings.fluePanArea(), syrup = settings.syrupPanArea();
    const auto depth = settings.runningDepth();
    if (rate && (flue || syrup) && depth)
        basis.keepBack =
            sapToKeepBack(flue.value_or(Area{}) + syrup.value_or(Area{}), *depth, rate->p50, basis.burnOut);
    return basis;
}

} // namespace panside
