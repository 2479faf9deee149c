// tonight_table: the plan for tonight against the truth of made-up houses, each with one rig and nights of its own sap,
// weather, wood and hands. From the fourth night on the finish (the last load), the syrup and the wood must be held by
// their ranges in eight nights of ten, and the finish must be missed by less than half of what gallons over gallons an
// hour misses it by. Exit 1 if a limit is not kept.
#include "core/boil/cords.h"
#include "core/ledger/sap_nights.h"
#include "core/physics/sap.h"
#include "core/rehearsal/rehearsal.h"
#include "tests/core/ledger/together.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <random>

using namespace panside;

namespace {

double quantile(std::vector<double> values, double share) {
    if (values.empty())
        return std::nan("");
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1) + 0.5)];
}

struct TrueNight {
    Volume sap;
    Brix sugar;
    double lastLoadHours = 0; // from lighting
    double sugarDrawn = 0, cords = 0;
    double steadyLph = 0; // sap out of the tank, from the first hour on: what inches on the hour say
    std::vector<Boil::Entry> facts;
};

// A house: one rig all season; sap, weather, wood and hands differ from night to night.
struct House {
    RehearsalOptions usual;
    std::uint64_t seed;
    bool concentrates;
    std::mt19937_64 dice;
    explicit House(std::uint64_t number) : usual{anyBoil(number)}, seed{number}, dice{number} {
        concentrates = number % 3 == 0;
        usual.readings = {Series::tank_level, Series::stack};
        usual.spacing = std::chrono::seconds{60};
        usual.crew.boilFor = std::chrono::hours{20};
    }
    double between(double low, double high) { return std::uniform_real_distribution<double>{low, high}(dice); }
    TrueNight night(int number) {
        RehearsalOptions one = usual;
        const double rate = usual.rig.rate.litrePerHour();
        one.sap.sugar = Brix::degrees(std::max(1.0, usual.sap.sugar.degrees() + between(-0.4, 0.4)));
        if (concentrates && between(0, 1) < 0.6)
            one.sap.sugar = one.sap.sugar * between(3, 4.5);
        one.sap.atStart = Volume::litre(std::round(rate * between(2.5, 8)));
        one.sap.sweetLeft = between(0.7, 0.95);
        one.weather.seaLevelHpa = 1014 + between(-14, 14);
        one.weather.air = Temperature::celsius(between(-8, 6));
        one.fire.moisture = std::clamp(usual.fire.moisture * between(0.85, 1.15), 0.12, 0.32);
        one.fire.interval = usual.fire.interval * between(0.95, 1.05);
        one.begins = usual.begins + std::chrono::hours{24 * number};
        const std::uint64_t its = seed * 100 + static_cast<std::uint64_t>(number);
        Rehearsal plant{one, its};
        TrueNight truth{one.sap.atStart, one.sap.sugar, 0, 0, 0, 0, {}};
        const Instant end = one.begins + std::chrono::hours{24};
        double lit = -1, tankAt = 0, tankThen = 0;
        for (Instant now = one.begins; now < end && !plant.ended(); now += std::chrono::minutes{1}) {
            for (Fact& fact : plant.advance(now)) {
                if (std::holds_alternative<Lit>(fact.what))
                    lit = secondsBetween(one.begins, fact.at);
                truth.facts.push_back({static_cast<FactId>(truth.facts.size() + 1), std::move(fact)});
            }
            const double since = secondsBetween(one.begins, now) - lit;
            if (std::abs(since - 3600) <= 30)
                tankAt = plant.truth().tank.litre();
            if (std::abs(since - 2 * 3600) <= 30)
                tankThen = plant.truth().tank.litre();
        }
        for (const RehearsalDeed& deed : plant.deeds())
            if (deed.kind == RehearsalDeed::Kind::fired)
                truth.lastLoadHours = (secondsBetween(one.begins, deed.at) - lit) / 3600;
        truth.steadyLph = tankAt - tankThen;
        truth.sugarDrawn = plant.truth().sugarDrawn.kilogram();
        Load all;
        all.mass = plant.truth().woodLoaded;
        all.moisture = WetBasis{one.fire.moisture};
        truth.cords = cordsOf(all).value_or(0);
        return truth;
    }
};

struct Tally {
    int asked = 0, held = 0, syrupHeld = 0, woodHeld = 0, woodAsked = 0, early = 0, late = 0;
    std::vector<double> misses, simple, simpleKept, widths, syrupMisses;
};

void ask(const Ledger& ledger, const House& house, const TrueNight& truth, std::span<const double> rates, Tally& tally,
         bool print) {
    TonightBasis basis;
    basis.nights = nightsBoiled(ledger);
    const Area pans = house.usual.rig.flueArea + house.usual.rig.syrupArea;
    const SapStanding stands[] = {{truth.sap, truth.sugar, Brix::degrees(0.1)}};
    // The sap to keep back, as the board reckons it from the pans.
    double rate = 0;
    for (const double one : rates)
        rate += one / static_cast<double>(rates.size());
    basis.keepBack = sapToKeepBack(pans, house.usual.rig.depth, VolumeFlow::litrePerHour(rate * 0.95), basis.burnOut);
    const auto plan = Tonight{basis}.plan(stands);
    if (!plan) {
        fmt::print("house {}: no plan\n", house.seed);
        return;
    }
    const auto hours = [](Duration span) { return span.count() / 3600; };
    // Gallons over gallons an hour, as in the head.
    const double simple = truth.sap.litre() / rate;
    ++tally.asked;
    const double came = truth.lastLoadHours;
    tally.held += hours(plan->lastLoad.p10) <= came && came <= hours(plan->lastLoad.p90);
    tally.early += came < hours(plan->lastLoad.p10);
    tally.late += came > hours(plan->lastLoad.p90);
    tally.misses.push_back(std::abs(hours(plan->lastLoad.p50) - came) * 60);
    tally.simple.push_back(std::abs(simple - came) * 60);
    tally.simpleKept.push_back(std::abs((truth.sap - *basis.keepBack).litre() / rate - came) * 60);
    tally.widths.push_back((hours(plan->lastLoad.p90) - hours(plan->lastLoad.p10)) * 60);
    const double syrup = liquidOf(Mass::kilogram(truth.sugarDrawn / 0.669), Brix::degrees(66.9)).volume().litre();
    tally.syrupHeld += plan->syrup.p10.litre() <= syrup && syrup <= plan->syrup.p90.litre();
    tally.syrupMisses.push_back(100 * std::abs(plan->syrup.p50.litre() - syrup) / std::max(1.0, syrup));
    if (plan->cords) {
        ++tally.woodAsked;
        tally.woodHeld += plan->cords->p10 <= truth.cords && truth.cords <= plan->cords->p90;
    }
    if (print)
        fmt::print("  {:4.0f} L of {:4.1f}: last load {:.1f} to {:.1f} to {:.1f} h, came {:.2f}; simple {:.2f}; syrup "
                   "{:.0f} to {:.0f} to {:.0f} L, came {:.0f}; cords {:.2f} to {:.2f}, came {:.2f}\n",
                   truth.sap.litre(), truth.sugar.degrees(), hours(plan->lastLoad.p10), hours(plan->lastLoad.p50),
                   hours(plan->lastLoad.p90), came, simple, plan->syrup.p10.litre(), plan->syrup.p50.litre(),
                   plan->syrup.p90.litre(), syrup, plan->cords ? plan->cords->p10 : 0,
                   plan->cords ? plan->cords->p90 : 0, truth.cords);
}

int broken = 0;
void row(const char* what, const std::string& got, const std::string& wanted, bool kept) {
    fmt::print("{:<52}{:<34}{:<22}{}\n", what, got, wanted, kept ? "kept" : "NOT KEPT");
    broken += kept ? 0 : 1;
}

} // namespace

int main(int count, char** words) {
    int houses = 60, nights = 9;
    std::uint64_t more = 0;
    bool print = false;
    for (int i = 1; i < count; ++i) {
        if (!std::strcmp(words[i], "--short"))
            houses = 24;
        if (!std::strcmp(words[i], "--print"))
            print = true;
        if (!std::strcmp(words[i], "--more") && i + 1 < count)
            more = std::strtoull(words[i + 1], nullptr, 10);
        if (!std::strcmp(words[i], "--houses") && i + 1 < count)
            houses = std::atoi(words[i + 1]);
    }
    Tally tally, all;
    for (int h = 1; h <= houses; ++h) {
        House house{40000 + more + static_cast<std::uint64_t>(h)};
        if (print)
            fmt::print("house {}: {:.0f} L/h, {:.1f} brix{}\n", h, house.usual.rig.rate.litrePerHour(),
                       house.usual.sap.sugar.degrees(), house.concentrates ? ", concentrates" : "");
        std::vector<std::pair<Instant, std::vector<Boil::Entry>>> shifts;
        std::vector<double> rates;
        std::vector<TrueNight> truths;
        for (int n = 0; n < nights; ++n) {
            TrueNight truth = house.night(n);
            if (n >= 3) {
                const Ledger ledger{ledgerInput({}, shifts)};
                ask(ledger, house, truth, rates, tally, print);
            }
            rates.push_back(truth.steadyLph);
            const Instant id = truth.facts.front().fact.at;
            shifts.emplace_back(id, truth.facts);
            truths.push_back(std::move(truth));
        }
        // What is left to chance: the same with every other night of the season known, those to come too.
        for (std::size_t n = 3; n < truths.size(); ++n) {
            auto others = shifts;
            others.erase(others.begin() + static_cast<std::ptrdiff_t>(n));
            const Ledger ledger{ledgerInput({}, others)};
            ask(ledger, house, truths[n], rates, all, false);
        }
    }
    const auto share = [&](int held, int asked) {
        return fmt::format("{} of {} ({:.0f} %)", held, asked, 100.0 * held / asked);
    };
    const auto enough = [](int held, int asked) { return held >= 0.8 * asked; };
    fmt::print("{} houses, from their fourth night on\n", houses);
    row("last load held by its range", share(tally.held, tally.asked), "at least 80 %",
        enough(tally.held, tally.asked));
    row("syrup held by its range", share(tally.syrupHeld, tally.asked), "at least 80 %",
        enough(tally.syrupHeld, tally.asked));
    row("wood held by its range", share(tally.woodHeld, tally.woodAsked), "at least 80 %",
        enough(tally.woodHeld, tally.woodAsked));
    const double miss = quantile(tally.misses, 0.5), simple = quantile(tally.simple, 0.5);
    row("finish missed by, median, min", fmt::format("{:.1f}, simple {:.1f}", miss, simple), "under half of simple",
        miss < simple / 2);
    fmt::print(
        "range of the finish {:.0f} min wide (median); {} came before it, {} after; gallons over gallons an hour "
        "with what is kept back taken off misses by {:.1f} min; syrup missed by {:.1f} %\n",
        quantile(tally.widths, 0.5), tally.early, tally.late, quantile(tally.simpleKept, 0.5),
        quantile(tally.syrupMisses, 0.5));
    fmt::print(
        "with every other night of the season known, those to come too, the finish would be missed by {:.1f} min: "
        "what is left is wood, hands and weather of the night itself\n",
        quantile(all.misses, 0.5));
    return broken == 0 ? 0 : 1;
}
