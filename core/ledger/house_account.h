#pragma once
// The house's account: where the season's sugar went, what a tap and a run gave, what heavy draws gave away, what a
// cord and a night bring, what is in stock, and what a size costs by weight. What is not known is none, never zero.
#include "core/ledger/ledger.h"

namespace panside {

// The season's sugar, from the bush to the bottle, in kilograms. What does not close is a line of its own.
struct SugarFlow {
    double sap = 0, boughtSap = 0, boughtSyrup = 0;             // in
    double nowhere = 0;                                         // drawn or bought, and nobody said into what
    double inTanks = 0, inPans = 0, inVessels = 0, bottled = 0; // here: syrup vessels, packed and not yet sent
    double shipped = 0, soldBulk = 0;                           // gone to somebody
    std::map<std::string, double> lost;                         // by cause
    double throughConcentrator = 0, drawn = 0;                  // on the way: part of the above, not beside it
    double doesNotClose = 0, doesNotCloseSd = 0;                // more than nothing: more is found than came in
    double in() const { return sap + boughtSap + boughtSyrup; }
    double out() const;
};
SugarFlow sugarFlow(const Ledger& ledger);

// What a run (or a bush, or a stop of the route) gave.
struct RunAccount {
    std::string name;
    Volume sap;
    double sugar = 0; // kg
    std::optional<double> taps;
    bool sugarAssumed = false;
    Volume syrup; // that its sugar makes at the density wanted
    std::optional<Volume> syrupPerTap() const {
        return taps && *taps > 0 ? std::optional{syrup / *taps} : std::nullopt;
    }
};

struct NightAccount {
    std::size_t night; // into the ledger's
    Volume syrup;      // drawn, at the density wanted
    std::optional<Duration> fired;
    std::optional<double> cords;
    std::optional<Volume> perCord;
};

// Draws heavier than wanted: what more syrup they would have been.
struct HeavyDraws {
    int draws = 0, heavy = 0; // measured ones; of them over the density wanted by more than their doubt
    Volume drawn, givenAway;  // of the heavy ones
};

struct StockLine {
    std::string size, light; // as written; class by light, or as compared; empty: not graded
    long long count = 0;
    Volume volume;
    long long held = 0; // of them in lots that are held
};

// Sap bought or sold, by the revised rule at the density agreed.
struct SapTrade {
    bool bought;
    std::string who;
    Instant at{};
    Volume sap;
    Brix sugar;
    std::optional<Volume> syrup; // none: the rule knows no such sap
    std::optional<double> price;
};

// The price of a size by the weight of its content at a density.
struct PriceLine {
    Volume size;
    Mass content;
    double price;
};
struct HouseAccount {
    Brix wanted;
    SugarFlow flow;
    std::vector<RunAccount> runs;
    std::optional<Volume> syrupPerTap; // of the runs whose taps are known
    std::vector<NightAccount> nights;
    HeavyDraws heavy;
    std::vector<StockLine> stock;
    std::vector<SapTrade> trades;
    std::optional<double> pricePerLitre; // mean of what was shipped with a price
    std::vector<PriceLine> prices;       // of every size packed, at that mean by weight; the largest first
};
// `agreed`: 66.0, 66.5 or 66.9 brix, that the revised rule is made for.
HouseAccount houseAccount(const Ledger& ledger, Brix agreed = Brix::degrees(66.9));

// Range      sizes above nothing, 40 to 75 brix, a price of 0 or more a kilogram
// Source     ICUMSA SPS-4 (1998) densities at 20 degC
std::vector<PriceLine> priceByWeight(double pricePerKilogram, std::span<const Volume> sizes, Brix sugar);

} // namespace panside
