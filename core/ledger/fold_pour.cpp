// What is poured out of vessels, put into them, and found in them by a dip.
#include "core/ledger/fold.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

// Less than this is nothing: a drop, and the last bits of sums.
constexpr double dropLitres = 0.002;
// A measure may be wrong by so much of what is there before sugar is thought to have come that nobody wrote down
// (common practice, no source: a dip stick and a pail's ring).
constexpr double measureShare = 0.25;
constexpr double rimSlack = 0.005;
constexpr double dippedSd = 0.002, guessedSd = 0.01; // mass fraction: read in it, and where nobody read it

// Where nobody measured it: usual sap, usual syrup (common practice, no source).
Brix guessed(const Vessel& vessel) { return Brix::degrees(isTankKind(vessel.kind) ? 2 : 66.9); }

} // namespace

// Drained from the pans, and nobody said how much it was: the first measure of it tells, and its sugar stays.
void Ledger::Fold::holdIn(Vessel& vessel, Volume volume) {
    if (!vessel.volumeUntold || volume <= vessel.content.volume())
        return;
    const double sd = vessel.content.sd * vessel.content.mass;
    vessel.content = liquidHolding(volume, vessel.content.sugar);
    vessel.content.sd = sd / vessel.content.mass;
    vessel.volumeUntold = false;
}

Ledger::Fold::Taken Ledger::Fold::pour(std::size_t index, std::optional<Volume> volume) {
    const Instant before = vessels[index].touched;
    warm(vessels[index], now);
    Vessel& vessel = vessels[index];
    if (volume)
        holdIn(vessel, *volume);
    if (volume && volume->litre() > dropLitres && vessel.content.isEmpty() && vessel.knot != noKnot) {
        measured(index, liquidOf(*volume, guessed(vessel), bookTemperature, guessedSd), true);
        Taken taken = takeShare(vessel, 1);
        empty(vessel);
        vessel.joinsLast = true; // nobody knows what is left
        return taken;
    }
    const double have = vessel.content.volume().litre();
    const double want = volume ? volume->litre() : have;
    if (want <= have + dropLitres) {
        const bool whole = want >= have - dropLitres;
        Taken taken = takeShare(vessel, have > 0 ? (whole ? 1 : want / have) : 0);
        const auto silence = vessel.unwritten;
        if (silence && volume)
            taken.liquid.sd = std::max(taken.liquid.sd, guessedSd);
        if (whole) {
            if (have > 0 || !volume)
                empty(vessel);
            if (volume)
                vessel.unwritten = silence; // so much of it, not all of it
            else
                taken.unwritten = silence;
        } else {
            vessel.content = vessel.content.part(1 - want / have);
        }
        return taken;
    }
    mark(MarkKind::belowEmpty, vessel.name, want - have, {}, before);
    return pourBeyond(index, want);
}

// More than the book has in it.
Ledger::Fold::Taken Ledger::Fold::pourBeyond(std::size_t index, double want) {
    Vessel& vessel = vessels[index];
    const double have = vessel.content.volume().litre();
    const auto silence = vessel.unwritten;
    Taken taken;
    if (have > 0 && want <= have * (1 + measureShare)) {
        // The measures disagree: there was more of the same.
        const double more = vessel.content.sugar * (want / have - 1);
        balance.doesNotClose += more;
        closeVariance += more * more;
        scaleUp(index, vessel.content.part(want / have), now);
        taken = takeShare(vessel, 1);
    } else {
        const Liquid missing = liquidOf(Volume::litre(want - have), have > 0 ? vessel.content.brix() : guessed(vessel),
                                        bookTemperature, guessedSd);
        // It must have been in there: nobody wrote how it came.
        Taken hole = unwritten(vessel, missing);
        hole.sugarAssumed = true;
        hole.unseen = true;
        if (have <= 0 && vessel.last != noKnot)
            hole.strands.push_back(unmeasured(vessel.last));
        put(index, hole);
        taken = takeShare(vessel, 1);
    }
    empty(vessel);
    vessel.unwritten = silence; // what is left in it nobody knows
    vessel.joinsLast = vessel.last != noKnot;
    return taken;
}

void Ledger::Fold::put(std::size_t index, const Taken& what, int night) {
    const Instant before = vessels[index].touched;
    warm(vessels[index], now);
    Vessel& vessel = vessels[index];
    if (vessel.out)
        mark(MarkKind::vesselOut, vessel.name);
    const bool fresh = vessel.content.isEmpty();
    std::vector<Strand> strands = what.strands;
    if (!fresh) {
        // What came is a knot of its own, apart from the blend: it is asked for alone when all that ever came in is.
        const Knot came =
            thread.tie(KnotKind::content, static_cast<std::uint32_t>(index), now, what.liquid.sugar, what.strands);
        vessel.filling.emplace_back(came, what.liquid.sugar);
        strands = {what.liquid.sugar > 0 ? strandOf(came, what.liquid.sugar) : unmeasured(came),
                   strandOf(vessel.knot, vessel.content.sugar)};
    } else if (vessel.knot != noKnot) // something that nobody measured
        strands.push_back(unmeasured(vessel.knot));
    else if (vessel.joinsLast)
        strands.push_back(unmeasured(vessel.last));
    if (fresh && vessel.knot == noKnot)
        vessel.shifts.clear();
    vessel.joinsLast = false;
    const double old = vessel.content.mass;
    vessel.content += what.liquid;
    vessel.knot = thread.tie(KnotKind::content, static_cast<std::uint32_t>(index), now, vessel.content.sugar, strands);
    if (fresh)
        vessel.filling.emplace_back(vessel.knot, what.liquid.sugar);
    vessel.taken += what.liquid.volume();
    vessel.mostHeld = std::max(vessel.mostHeld, vessel.content.volume());
    if (what.unwritten)
        vessel.unwritten = what.unwritten;
    if (night >= 0 && (vessel.shifts.empty() || vessel.shifts.back() != night))
        vessel.shifts.push_back(night);
    vessel.taint |= what.taint;
    vessel.taint.lead |= vessel.leadOver;
    vessel.sugarAssumed |= what.sugarAssumed;
    vessel.volumeUntold |= what.volumeUntold;
    if (what.oldest)
        vessel.oldest = vessel.oldest ? std::min(*vessel.oldest, *what.oldest) : what.oldest;
    vessel.over40F = std::max(fresh ? Duration{0} : vessel.over40F, what.over40F);
    vessel.over50F = std::max(fresh ? Duration{0} : vessel.over50F, what.over50F);
    if (isTankKind(vessel.kind))
        vessel.cameIn.emplace_back(now, what.liquid.volume().litre());
    feel(vessel, what.coldest ? what.coldest : what.temperature);
    feel(vessel, what.warmest);
    if (what.temperature) {
        const Instant told = what.temperatureTold.value_or(now);
        vessel.temperatureTold = vessel.temperatureTold ? std::max(*vessel.temperatureTold, told) : told;
    }
    if (what.temperature)
        vessel.temperature = vessel.temperature && old > 0
                                 ? Temperature::kelvin((vessel.temperature->kelvin() * old +
                                                        what.temperature->kelvin() * what.liquid.mass) /
                                                       std::max(1e-9, old + what.liquid.mass))
                                 : what.temperature;
    if (!fresh) {
        vessel.light.reset(); // a blend's colour is not measured
        vessel.lightClass.clear();
    }
    const Volume now20 = vessel.content.volume();
    if (vessel.capacity && !what.unseen && now20 > *vessel.capacity * (1 + rimSlack))
        mark(MarkKind::overRim, vessel.name, (now20 - *vessel.capacity).litre(), vessel.capacity->litre(), before);
}

// Somebody wrote what came in, and nobody how much: a dip tells it.
void Ledger::Fold::measured(std::size_t index, const Liquid& all, bool sugarAssumed) {
    Vessel& vessel = vessels[index];
    // One that came in is all of it; of several nobody knows the parts.
    const auto came = thread.strandsOf(vessel.knot);
    const std::array<Strand, 1> same{Strand{came.size() == 1 ? came[0].from : vessel.knot, false, all.sugar, 0}};
    balance.doesNotClose += all.sugar;
    closeVariance += all.sugar * all.sugar / 12;
    vessel.content = all;
    vessel.sugarAssumed = sugarAssumed;
    vessel.unwritten.reset();
    vessel.knot = thread.tie(KnotKind::content, static_cast<std::uint32_t>(index), now, all.sugar, same);
    vessel.filling.emplace_back(vessel.knot, all.sugar);
    vessel.taken += all.volume();
}

void Ledger::Fold::dip(std::size_t index, Volume volume, std::optional<Brix> sugar, Instant at) {
    const Instant last = vessels[index].touched;
    warm(vessels[index], at);
    Vessel& vessel = vessels[index];
    holdIn(vessel, volume);
    const double have = vessel.content.volume().litre(), found = volume.litre(), before = vessel.content.sugar;
    if (vessel.capacity && volume > *vessel.capacity * (1 + rimSlack))
        mark(MarkKind::overRim, vessel.name, (volume - *vessel.capacity).litre(), vessel.capacity->litre(), last);
    if (found < dropLitres) {
        balance.doesNotClose -= before;
        closeVariance += before * before * 1e-4;
        empty(vessel);
        vessel.joinsLast = false;
        return;
    }
    const bool unwritten = vessel.unwritten.has_value();
    vessel.unwritten.reset();
    if (have <= 0) {
        const Liquid all =
            liquidOf(volume, sugar.value_or(guessed(vessel)), bookTemperature, sugar ? dippedSd : guessedSd);
        if (vessel.knot != noKnot)
            return measured(index, all, !sugar);
        // Nobody wrote how it came in.
        Taken hole = this->unwritten(vessel, all);
        hole.sugarAssumed = !sugar;
        if (vessel.last != noKnot)
            hole.strands.push_back(unmeasured(vessel.last));
        put(index, hole);
        return;
    }
    Liquid now20 = vessel.content.part(found / have);
    if (unwritten)
        now20.sd = std::max(now20.sd, guessedSd);
    if (sugar) {
        now20 = liquidOf(volume, *sugar, bookTemperature, dippedSd);
        vessel.sugarAssumed = false;
    }
    balance.doesNotClose += now20.sugar - before;
    closeVariance += std::pow(now20.sugar - before, 2) / 4;
    if (now20.sugar > before)
        scaleUp(index, now20, at);
    else
        vessel.content = now20;
}

// More of the same: its parts keep their shares of it. A knot is never changed, so it is a new one of the same threads.
void Ledger::Fold::scaleUp(std::size_t index, const Liquid& all, Instant at) {
    Vessel& vessel = vessels[index];
    const Liquid& old = vessel.content;
    const std::array<Strand, 1> same{Strand{vessel.knot, false, all.sugar, old.sugar}};
    vessel.knot = thread.tie(KnotKind::content, static_cast<std::uint32_t>(index), at, all.sugar, same);
    vessel.filling.emplace_back(vessel.knot, all.sugar - old.sugar);
    vessel.taken += std::max(Volume{}, all.volume() - old.volume());
    vessel.content = all;
}

} // namespace panside
