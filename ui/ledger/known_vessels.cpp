#include "ui/ledger/known_vessels.h"

#include <algorithm>

namespace panside {
namespace {

constexpr std::size_t mostOffered = 6; // two rows of keys
constexpr double fullShare = 0.98;     // of what it holds: nothing more goes in

bool isFull(const Vessel& vessel) { return vessel.capacity && vessel.content.volume() > *vessel.capacity * fullShare; }

bool takesDraws(const Vessel& vessel) {
    const bool syrup = !isTankKind(vessel.kind) && vessel.kind != VesselKind::canner;
    return syrup && !vessel.out && !isFull(vessel);
}
// The feed tank's own sap is in it already.
bool givesSap(const Vessel& vessel) {
    return isTankKind(vessel.kind) && vessel.kind != VesselKind::feed && !vessel.out && !vessel.content.isEmpty();
}

QStringList namesOf(const Ledger& ledger, bool (*isMeant)(const Vessel&)) {
    std::vector<const Vessel*> vessels;
    for (const Vessel& vessel : ledger.vessels())
        if (isMeant(vessel))
            vessels.push_back(&vessel);
    std::ranges::stable_sort(vessels,
                             [](const Vessel* one, const Vessel* other) { return one->touched > other->touched; });
    QStringList names;
    for (std::size_t i = 0; i < std::min(vessels.size(), mostOffered); ++i)
        names << QString::fromStdString(vessels[i]->name);
    return names;
}

} // namespace

void offerVessels(EntryForm& form, const Ledger& ledger) {
    if (form.action == Action::drawClose)
        form.offer(QStringLiteral("to"), namesOf(ledger, takesDraws));
    if (form.action == Action::sapIn)
        form.offer(QStringLiteral("from"), namesOf(ledger, givesSap));
}

std::vector<Fact> drawsIn(const Facts& facts) {
    std::vector<Fact> draws;
    for (const auto& [id, fact] : facts)
        if (std::holds_alternative<DrawOpened>(fact.what) || std::holds_alternative<DrawClosed>(fact.what))
            draws.push_back(fact);
    std::ranges::stable_sort(draws, {}, &Fact::at);
    return draws;
}

} // namespace panside
