#include "house.h"

#include <fmt/format.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

namespace panside {
namespace {

using namespace testing_house;

// A season of anything: sap, moves, dips, losses, packing and selling among a few vessels, in any order.
std::string anySeason() {
    std::string rows;
    for (const char* name : {"a", "b", "c", "d"})
        rows +=
            fmt::format("2027-03-01T06:00:00Z,vessel,1000,L,name={};kind={}\n", name, name[0] < 'c' ? "hold" : "drum");
    const int count = *rc::gen::inRange(1, 60);
    const auto vessel = [] { return std::string(1, static_cast<char>('a' + *rc::gen::inRange(0, 4))); };
    for (int i = 0; i < count; ++i) {
        const std::string time =
            fmt::format("2027-03-{:02}T{:02}:{:02}:00Z", 2 + i / 24, i % 24, *rc::gen::inRange(0, 60));
        const int litres = *rc::gen::inRange(1, 300);
        const std::string from = vessel();
        std::string to = vessel();
        if (to == from)
            to = from == "a" ? "b" : "a";
        switch (*rc::gen::inRange(0, 8)) {
        case 0:
        case 1:
            rows += fmt::format("{},gathered,{},L,to={};from=s{};brix={}.{}\n", time, litres, to, i,
                                *rc::gen::inRange(1, 5), i % 10);
            break;
        case 2:
            rows += fmt::format("{},moved,{},L,from={};to={}\n", time, litres, from, to);
            break;
        case 3:
            rows += fmt::format("{},moved,,,from={};to={}\n", time, from, to);
            break;
        case 4:
            rows += fmt::format("{},dipped,{},L,in={}\n", time, litres - 1, from);
            break;
        case 5:
            rows += fmt::format("{},lost,{},L,from={};why=spilled\n", time, litres / 4 + 1, from);
            break;
        case 6:
            rows += fmt::format("{},packed,{},,lot=L{};from={};size=1qt;broken=1\n", time, litres / 8, i, from);
            break;
        default:
            rows += fmt::format("{},concentrated,{},L,from={};to={};brix=9\n", time, litres / 10 + 1, from, to);
        }
    }
    return rows;
}

RC_GTEST_PROP(LedgerProperties, SugarIsNeitherMadeNorLost, ()) {
    const FoldedHouse house{anySeason()};
    const Balance20& balance = house.ledger->balance();
    double lost = 0;
    for (const auto& [why, sugar] : balance.lost)
        lost += sugar;
    const double out = balance.sold + balance.packed + lost + balance.inVessels + balance.inPans;
    RC_ASSERT(std::abs(balance.in() + balance.doesNotClose - out) < 1e-6 * (1 + balance.in()));
}

RC_GTEST_PROP(LedgerProperties, NoVesselHoldsLessThanNothing, ()) {
    const FoldedHouse house{anySeason()};
    for (const Vessel& vessel : house.ledger->vessels()) {
        RC_ASSERT(vessel.content.mass >= 0);
        RC_ASSERT(vessel.content.sugar >= 0);
        RC_ASSERT(vessel.content.sugar <= vessel.content.mass);
    }
}

// What a thing came from adds up to all of it, where every part was measured.
RC_GTEST_PROP(LedgerProperties, SharesOfWhatItCameFromAddUpToOne, ()) {
    const FoldedHouse house{anySeason()};
    for (const Vessel& vessel : house.ledger->vessels()) {
        if (vessel.content.sugar <= 1e-9)
            continue;
        double sum = 0;
        for (const TraceEntry& entry : house.trace(vessel.name).behind)
            if (entry.kind == TraceKind::gathered || (entry.kind == TraceKind::hole && entry.name != "nothing written"))
                sum += entry.share.value_or(0);
        RC_ASSERT(std::abs(sum - 1) < 1e-9);
    }
}

// Whatever a lot came through says that it went into the lot, and nothing else does.
RC_GTEST_PROP(LedgerProperties, ATraceIsTheSameFromBothEnds, ()) {
    const FoldedHouse house{anySeason()};
    for (const Vessel& vessel : house.ledger->vessels()) {
        if (vessel.filling.empty())
            continue;
        const Trace forward = house.trace(vessel.name);
        for (const Lot& lot : house.ledger->lots()) {
            const Trace back = house.trace(lot.code);
            const auto* behind = entryOf(back.behind, TraceKind::vessel, vessel.name);
            if (!behind)
                behind = entryOf(back.behind, TraceKind::tank, vessel.name);
            const auto* before = entryOf(forward.before, TraceKind::lot, lot.code);
            RC_ASSERT((behind != nullptr) == (before != nullptr));
            if (behind)
                RC_ASSERT(!behind->share || (*behind->share > 0 && *behind->share <= 1));
        }
    }
}

} // namespace
} // namespace panside
