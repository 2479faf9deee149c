// Vessels: their names and kinds, how warm they stood, what a share of them is.
#include "core/ledger/fold.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

constexpr std::array<std::string_view, 10> kindWords{"",     "gather", "truck", "hold",  "feed", "concentrate",
                                                     "pail", "filter", "drum",  "canner"};

} // namespace

bool isTankKind(VesselKind kind) { return kind >= VesselKind::gather && kind <= VesselKind::concentrate; }

VesselKind vesselKindNamed(std::string_view word) {
    for (std::size_t i = 1; i < kindWords.size(); ++i)
        if (kindWords[i] == word)
            return static_cast<VesselKind>(i);
    return VesselKind::unknown;
}

Taint& Taint::operator|=(const Taint& other) {
    milk |= other.milk;
    lead |= other.lead;
    ropy |= other.ropy;
    if (milkOf.empty())
        milkOf = other.milkOf;
    if (off.empty())
        off = other.off;
    return *this;
}

std::optional<std::size_t> Ledger::Fold::known(std::string_view name) const {
    const auto found = names.find(nameKey(name));
    return found == names.end() ? std::nullopt : std::optional{found->second};
}

std::size_t Ledger::Fold::vessel(std::string_view name, bool declare) {
    if (const auto there = known(name)) {
        Vessel& old = vessels[*there];
        if (old.since == Instant{}) {
            old.since = now;
            old.touched = now;
        }
        return *there;
    }
    if (!declare)
        mark(MarkKind::vesselUnknown, std::string{name});
    names.emplace(nameKey(name), vessels.size());
    Vessel made;
    made.name = name;
    made.since = made.touched = now;
    vessels.push_back(std::move(made));
    return vessels.size() - 1;
}

std::size_t Ledger::Fold::feed() {
    if (!feedVessel) {
        const std::size_t made = vessel("feed tank");
        vessels[made].kind = VesselKind::feed;
        feedVessel = made;
    }
    return *feedVessel;
}

void Ledger::Fold::warm(Vessel& vessel, Instant at) {
    if (vessel.temperature && !vessel.content.isEmpty()) {
        const Duration span{std::max(0.0, secondsBetween(vessel.touched, at))};
        if (*vessel.temperature > Temperature::fahrenheit(40))
            vessel.over40F += span;
        if (*vessel.temperature > Temperature::fahrenheit(50))
            vessel.over50F += span;
    }
    vessel.touched = at;
}

// The coldest and the warmest that anything in it was told to be.
void Ledger::Fold::feel(Vessel& vessel, std::optional<Temperature> told) {
    if (!told)
        return;
    vessel.coldest = vessel.coldest ? std::min(*vessel.coldest, *told) : *told;
    vessel.warmest = vessel.warmest ? std::max(*vessel.warmest, *told) : *told;
}

void Ledger::Fold::empty(Vessel& vessel) {
    if (!vessel.content.isEmpty())
        vessel.lastVolume = vessel.content.volume();
    if (vessel.knot != noKnot)
        vessel.last = vessel.knot;
    vessel.content = {};
    vessel.knot = noKnot;
    vessel.taint = {};
    vessel.taint.lead = vessel.leadOver;
    vessel.oldest.reset();
    vessel.temperature.reset();
    vessel.coldest.reset();
    vessel.warmest.reset();
    vessel.temperatureTold.reset();
    vessel.over40F = vessel.over50F = Duration{0};
    vessel.light.reset();
    vessel.lightClass.clear();
    vessel.flavour.clear();
    vessel.sugarAssumed = false;
    vessel.volumeUntold = false;
    vessel.unwritten.reset();
}

Ledger::Fold::Taken Ledger::Fold::takeShare(Vessel& vessel, double share) {
    Taken taken;
    taken.liquid = vessel.content.part(share);
    // What nobody measured goes with it all the same.
    taken.strands = {vessel.content.isEmpty() ? unmeasured(vessel.knot) : strandOf(vessel.knot, taken.liquid.sugar)};
    taken.taint = vessel.taint;
    taken.oldest = vessel.oldest;
    taken.temperature = vessel.temperature;
    taken.coldest = vessel.coldest;
    taken.warmest = vessel.warmest;
    taken.temperatureTold = vessel.temperatureTold;
    taken.over40F = vessel.over40F;
    taken.over50F = vessel.over50F;
    taken.sugarAssumed = vessel.sugarAssumed;
    taken.volumeUntold = vessel.volumeUntold;
    return taken;
}

Ledger::Fold::Taken Ledger::Fold::unwritten(const Vessel& vessel, const Liquid& liquid) {
    tables.holes.push_back({vessel.touched, now, true, vessel.name});
    const Knot knot =
        thread.tie(KnotKind::unwritten, static_cast<std::uint32_t>(tables.holes.size() - 1), now, liquid.sugar, {});
    Taken taken;
    taken.liquid = liquid;
    taken.strands = {strandOf(knot, liquid.sugar)};
    balance.doesNotClose += liquid.sugar;
    closeVariance += liquid.sugar * liquid.sugar / 12;
    return taken;
}

} // namespace panside
