#include "core/ledger/house_account.h"

#include "core/boil/day_vocabulary.h"
#include "core/physics/pack.h"
#include "core/physics/sap.h"
#include "core/physics/sugar_density.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

double kilogramsALitre(Brix sugar) { return sugarDensity(sugar, bookTemperature)->si() * 1e-3; }
// Syrup of a density that so much sugar makes.
Volume syrupOf(double sugar, Brix wanted) {
    return Volume::litre(sugar / (kilogramsALitre(wanted) * wanted.massFraction()));
}

std::vector<RunAccount> runsOf(const Ledger& ledger, Brix wanted) {
    std::vector<RunAccount> runs;
    std::map<std::string, std::size_t> places;
    for (const GatheredRow& row : ledger.tables().gathered) {
        if (row.bought)
            continue;
        const auto [at, fresh] = places.emplace(nameKey(row.name), runs.size());
        if (fresh)
            runs.push_back({row.name, {}, 0, {}, false, {}});
        RunAccount& run = runs[at->second];
        run.sap += row.liquid.volume();
        run.sugar += row.liquid.sugar;
        run.sugarAssumed |= row.sugarAssumed;
        if (row.taps)
            run.taps = std::max(run.taps.value_or(0), *row.taps);
    }
    for (RunAccount& run : runs)
        run.syrup = syrupOf(run.sugar, wanted);
    return runs;
}

HeavyDraws heavyOf(const Ledger& ledger, Brix wanted) {
    HeavyDraws heavy;
    for (const DrawRow& draw : ledger.tables().draws) {
        if (!draw.measured || draw.liquid.isEmpty())
            continue;
        ++heavy.draws;
        const Brix over = draw.liquid.brix() - wanted;
        if (over <= draw.liquid.error())
            continue;
        ++heavy.heavy;
        heavy.drawn += draw.liquid.volume();
        heavy.givenAway += syrupOf(draw.liquid.sugar, wanted) - draw.liquid.volume();
    }
    return heavy;
}

std::string lightOf(const Lot& lot) {
    return !lot.lightClass.empty() ? lot.lightClass : lot.light ? std::string{colourClass(*lot.light)} : std::string{};
}

std::vector<StockLine> stockOf(const Ledger& ledger) {
    std::map<std::pair<double, std::string>, StockLine> lines;
    for (const Lot& lot : ledger.lots())
        for (const LotSize& size : lot.sizes) {
            if (size.here() <= 0)
                continue;
            StockLine& line = lines[{-size.size.si(), lightOf(lot)}];
            line.size = line.size.empty() ? size.written : line.size;
            line.light = lightOf(lot);
            line.count += size.here();
            line.volume += size.size * static_cast<double>(size.here());
            line.held += lot.held ? size.here() : 0;
        }
    std::vector<StockLine> stock;
    stock.reserve(lines.size());
    for (auto& [key, line] : lines)
        stock.push_back(std::move(line));
    return stock;
}

std::vector<SapTrade> tradesOf(const Ledger& ledger, Brix agreed) {
    std::vector<SapTrade> trades;
    const auto add = [&](bool bought, const std::string& who, Instant at, const Liquid& liquid,
                         std::optional<double> price) {
        SapTrade trade{bought, who, at, liquid.volume(), liquid.brix(), {}, price};
        const double ratio = liquid.isEmpty() ? 0 : revisedRule(trade.sugar, agreed).value_or(0);
        if (ratio > 0)
            trade.syrup = trade.sap / ratio;
        trades.push_back(std::move(trade));
    };
    for (const GatheredRow& row : ledger.tables().gathered)
        if (row.bought && !row.syrup)
            add(true, row.name, row.at, row.liquid, row.price);
    for (const SoldRow& row : ledger.tables().sold)
        if (!row.syrup)
            add(false, row.buyer, row.at, row.liquid, row.price);
    return trades;
}

std::optional<double> pricePerLitreOf(const Ledger& ledger) {
    double paid = 0, litres = 0;
    for (const Delivery& one : ledger.tables().deliveries)
        if (one.sizeKnown && one.pricedCount > 0) {
            paid += one.paid;
            litres += ledger.lots()[one.lot].sizes[one.size].size.litre() * static_cast<double>(one.pricedCount);
        }
    return litres > 0 ? std::optional{paid / litres} : std::nullopt;
}

std::vector<Volume> sizesOf(const Ledger& ledger) {
    std::vector<Volume> sizes;
    for (const Lot& lot : ledger.lots())
        for (const LotSize& size : lot.sizes)
            sizes.push_back(size.size);
    std::ranges::sort(sizes, std::greater<>{});
    sizes.erase(std::unique(sizes.begin(), sizes.end()), sizes.end());
    return sizes;
}

std::vector<NightAccount> nightsOf(const Ledger& ledger, Brix wanted) {
    std::vector<NightAccount> nights;
    for (std::size_t i = 0; i < ledger.nights().size(); ++i) {
        const Night& night = ledger.nights()[i];
        NightAccount one{i, syrupOf(night.drawnSugar, wanted), {}, night.cords, {}};
        if (night.lit && night.lastLoad)
            one.fired = Duration{secondsBetween(*night.lit, *night.lastLoad)};
        if (night.cords && *night.cords > 0 && night.unmeasured == 0 && !night.draws.empty())
            one.perCord = one.syrup / *night.cords;
        nights.push_back(one);
    }
    return nights;
}

} // namespace

double SugarFlow::out() const {
    double all = inTanks + inPans + inVessels + nowhere + bottled + shipped + soldBulk;
    for (const auto& [why, kilograms] : lost)
        all += kilograms;
    return all;
}

SugarFlow sugarFlow(const Ledger& ledger) {
    SugarFlow flow;
    for (const GatheredRow& row : ledger.tables().gathered)
        (!row.bought ? flow.sap : row.syrup ? flow.boughtSyrup : flow.boughtSap) += row.liquid.sugar;
    const Balance20& balance = ledger.balance();
    flow.inPans = balance.inPans;
    flow.nowhere = balance.nowhere;
    for (const Vessel& vessel : ledger.vessels())
        (isTankKind(vessel.kind) ? flow.inTanks : flow.inVessels) += vessel.content.sugar;
    flow.inVessels += balance.inVessels - flow.inTanks - flow.inVessels; // the press holds some back
    flow.lost = balance.lost;
    flow.soldBulk = balance.sold;
    for (const Lot& lot : ledger.lots())
        for (const LotSize& size : lot.sizes) {
            const double each = size.made > 0 ? size.sugar / static_cast<double>(size.made) : 0;
            const auto gone = std::min(size.made, std::max(0LL, size.shipped - size.back));
            const auto destroyed = std::min(size.made - gone, std::max(0LL, size.destroyed));
            flow.shipped += each * static_cast<double>(gone);
            flow.bottled += each * static_cast<double>(size.made - gone - destroyed);
            if (destroyed > 0)
                flow.lost["destroyed"] += each * static_cast<double>(destroyed);
        }
    for (const ConcentratorRun& run : ledger.tables().concentrated)
        flow.throughConcentrator += run.out.sugar;
    for (const DrawRow& draw : ledger.tables().draws)
        flow.drawn += draw.liquid.sugar;
    flow.doesNotClose = flow.out() - flow.in();
    flow.doesNotCloseSd = balance.doesNotCloseSd;
    return flow;
}

HouseAccount houseAccount(const Ledger& ledger, Brix agreed) {
    HouseAccount account;
    account.wanted = ledger.tables().settings.targetDensity();
    account.flow = sugarFlow(ledger);
    account.runs = runsOf(ledger, account.wanted);
    double taps = 0;
    Volume tapped;
    for (const RunAccount& run : account.runs)
        if (run.taps && *run.taps > 0) {
            taps += *run.taps;
            tapped += run.syrup;
        }
    if (taps > 0)
        account.syrupPerTap = tapped / taps;
    account.nights = nightsOf(ledger, account.wanted);
    account.heavy = heavyOf(ledger, account.wanted);
    account.stock = stockOf(ledger);
    account.trades = tradesOf(ledger, agreed);
    account.pricePerLitre = pricePerLitreOf(ledger);
    if (account.pricePerLitre)
        account.prices =
            priceByWeight(*account.pricePerLitre / kilogramsALitre(account.wanted), sizesOf(ledger), account.wanted);
    return account;
}

std::vector<PriceLine> priceByWeight(double pricePerKilogram, std::span<const Volume> sizes, Brix sugar) {
    std::vector<PriceLine> lines;
    for (const Volume size : sizes) {
        const Mass content = *sugarDensity(sugar, bookTemperature) * size;
        lines.push_back({size, content, content.kilogram() * pricePerKilogram});
    }
    return lines;
}

} // namespace panside
