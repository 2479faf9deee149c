#include "core/ledger/house_account.h"

#include "core/boil/day_vocabulary.h"
#include "core/physics/pack.h"
#include "core/physics/sap.h"
#include "core/physics/sugar_density.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr int fewestTrendNights = 5;

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
        if (over.massFraction() <= draw.liquid.sd)
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

// Student's t that 95 percent of belief lie within, two-sided, by degrees of freedom (standard tables).
double studentsT(int freedom) {
    static constexpr double table[] = {12.71, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228};
    return freedom <= 10 ? table[std::max(1, freedom) - 1] : 1.96 + 2.72 / freedom;
}

RigTrend trendOf(const Ledger& ledger) {
    // Like wood only: the kind that was fired on most nights.
    std::map<std::string, int> kinds;
    for (const Night& night : ledger.nights())
        if (night.wood > 0 && night.fired)
            ++kinds[night.woodKind];
    RigTrend trend;
    const auto most =
        std::max_element(kinds.begin(), kinds.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
    if (most == kinds.end())
        return trend;
    trend.wood = most->first;
    std::vector<double> days, logs;
    for (const Night& night : ledger.nights()) {
        if (night.wood <= 0 || !night.fired || night.woodKind != trend.wood)
            continue;
        const double water = night.fired->volume().litre() - syrupOf(night.fired->sugar, Brix::degrees(66.9)).litre();
        if (water < 50)
            continue;
        days.push_back(secondsBetween(ledger.nights().front().first, night.first) / 86400);
        logs.push_back(std::log(water / night.wood));
    }
    trend.nights = static_cast<int>(days.size());
    if (trend.nights < fewestTrendNights)
        return trend;
    const auto n = static_cast<double>(days.size());
    double meanDay = 0, meanLog = 0;
    for (std::size_t i = 0; i < days.size(); ++i) {
        meanDay += days[i] / n;
        meanLog += logs[i] / n;
    }
    double sxx = 0, sxy = 0;
    for (std::size_t i = 0; i < days.size(); ++i) {
        sxx += (days[i] - meanDay) * (days[i] - meanDay);
        sxy += (days[i] - meanDay) * (logs[i] - meanLog);
    }
    if (sxx <= 0)
        return trend;
    const double slope = sxy / sxx, span = days.back() - days.front();
    double rest = 0;
    for (std::size_t i = 0; i < days.size(); ++i)
        rest += std::pow(logs[i] - meanLog - slope * (days[i] - meanDay), 2);
    const double doubt = studentsT(trend.nights - 2) * std::sqrt(rest / (n - 2) / sxx);
    trend.first = std::exp(meanLog + slope * (days.front() - meanDay));
    trend.last = std::exp(meanLog + slope * (days.back() - meanDay));
    trend.changeLow = std::expm1((slope - doubt) * span);
    trend.changeHigh = std::expm1((slope + doubt) * span);
    constexpr double matters = 0.10; // less than that no brush brings back (our judgement)
    if (trend.changeHigh < 0 && trend.last / trend.first - 1 <= -matters)
        trend.verdict = RigVerdict::falling;
    else if (trend.changeLow > 0 && trend.last / trend.first - 1 >= matters)
        trend.verdict = RigVerdict::rising;
    else if (trend.changeLow > -matters && trend.changeHigh < matters)
        trend.verdict = RigVerdict::steady;
    return trend;
}

NiterTell niterOf(const Ledger& ledger) {
    NiterTell tell;
    double fire = 0;
    std::vector<double> between;
    bool counting = false;
    for (const Night& night : ledger.nights()) {
        if (!night.lit || !night.lastLoad)
            continue;
        Instant from = *night.lit;
        for (const Instant swapped : night.swapped) {
            const Instant at = std::clamp(swapped, from, std::max(from, *night.lastLoad));
            fire += secondsBetween(from, at);
            if (counting)
                between.push_back(fire);
            counting = true;
            ++tell.switches;
            fire = 0;
            from = at;
        }
        fire += std::max(0.0, secondsBetween(from, *night.lastLoad));
    }
    if (between.size() >= 2) {
        std::sort(between.begin(), between.end());
        tell.usual = Duration{between[between.size() / 2]};
    }
    if (counting)
        tell.since = Duration{fire};
    return tell;
}

// How far each draw's check lay from physics, pan by pan. On one pan it may be niter or the pan; the same amount on
// every pan points to the glass, or to the probe.
GlassTell glassOf(const Ledger& ledger) {
    GlassTell tell;
    struct Sum {
        double weight = 0, sum = 0;
        void add(double value, double variance) {
            weight += 1 / variance;
            sum += value / variance;
        }
        double mean() const { return sum / weight; }
    };
    std::map<int, Sum> pans;
    Sum all;
    for (const CheckRow& check : ledger.tables().checks) {
        if (!check.apart || !check.apartSd)
            continue;
        const double variance = std::pow(std::max(0.03, check.apartSd->kelvin()), 2);
        pans[check.pan].add(check.apart->kelvin(), variance);
        all.add(check.apart->kelvin(), variance);
        ++tell.draws;
    }
    tell.pans = static_cast<int>(pans.size());
    if (tell.draws < 6 || tell.pans < 3)
        return tell;
    double chi = 0, spread = 0;
    for (const auto& [pan, sum] : pans) {
        const double off = sum.mean() - all.mean();
        chi += off * off * sum.weight;
        spread = std::max(spread, std::abs(off) - 1 / std::sqrt(sum.weight));
    }
    const double mean = all.mean();
    tell.apart = TemperatureDifference::kelvin(mean);
    tell.sd =
        TemperatureDifference::kelvin(std::sqrt(1 / all.weight) * std::max(1.0, std::sqrt(chi / (tell.pans - 1))));
    constexpr double brixAKelvin = 4.4; // near the finish (boiling rise of sucrose at 66.9 brix)
    tell.brix = mean * brixAKelvin;
    if (std::abs(mean) > 2 * tell.sd.kelvin() && spread < 0.5 * std::abs(mean))
        tell.verdict = RigVerdict::steady;
    return tell;
}

} // namespace

double SugarFlow::out() const {
    double all = inTanks + inPans + inVessels + bottled + shipped + soldBulk;
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

RigTells rigTells(const Ledger& ledger) { return {trendOf(ledger), niterOf(ledger), glassOf(ledger)}; }

} // namespace panside
