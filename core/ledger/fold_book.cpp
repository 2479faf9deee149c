// The rows of the day book that move sap and syrup.
#include "core/boil/sap_sugar.h"
#include "core/ledger/book_rows.h"
#include "core/ledger/fold.h"
#include "core/ledger/shape.h"
#include "core/physics/sap.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

constexpr Brix usualSapBrix = Brix::degrees(2), usualSyrupBrix = Brix::degrees(66.9);
constexpr double readSapSd = 0.001, readSyrupSd = 0.003, notReadSd = 0.01; // mass fraction
constexpr Brix leastSapBrix = Brix::degrees(0.2);                          // thinner is as good as water

std::optional<double> priceIn(const DayRow& row) { return numberIn(row.text(Key::price)); }

} // namespace

Volume Ledger::Fold::at20(const DayRow& row, Brix sugar) const {
    const Volume said = row.volume().value_or(Volume{});
    const auto temp = row.temperature();
    return temp ? liquidOf(said, sugar, *temp).volume() : said;
}

Ledger::Fold::Taken Ledger::Fold::source(GatheredRow told, KnotKind kind) {
    Taken taken;
    taken.liquid = told.liquid;
    taken.oldest = told.at;
    taken.sugarAssumed = told.sugarAssumed;
    taken.taint.ropy = told.clear == "ropy";
    (told.bought ? balance.bought : balance.gathered) += told.liquid.sugar;
    closeVariance += std::pow(told.liquid.mass * told.liquid.sd, 2);
    const Knot knot = thread.tie(kind, static_cast<std::uint32_t>(tables.gathered.size()), now, told.liquid.sugar, {});
    taken.strands = {strandOf(knot, told.liquid.sugar)};
    tables.gathered.push_back(std::move(told));
    return taken;
}

void Ledger::Fold::declare(const DayRow& row) {
    Vessel& vessel = vessels[this->vessel(row.text(Key::name))];
    if (const auto capacity = row.volume())
        vessel.capacity = capacity;
    if (row.of(Key::kind))
        vessel.kind = vesselKindNamed(row.text(Key::kind));
    if (row.of(Key::shape)) {
        vessel.shape = shapeIn(row.text(Key::shape));
        if (!vessel.shape)
            mark(MarkKind::shapeUnread, vessel.name, {}, {}, {}, std::string{row.text(Key::shape)});
    }
    if (row.of(Key::material))
        vessel.material = row.text(Key::material);
    if (row.of(Key::lead))
        vessel.lead = row.text(Key::lead);
    if (row.of(Key::out))
        vessel.out = isYes(row.text(Key::out));
    feedTank.see(row);
    if (const auto fed = known(feedTank.key()))
        feedVessel = fed;
}

void Ledger::Fold::gathered(const DayRow& row) {
    const auto read = sapSugar(row);
    if (read && *read > sweetestSap)
        mark(MarkKind::sugarOdd, {}, read->degrees());
    const std::size_t to = vessel(row.text(Key::to), false);
    GatheredRow told;
    told.name = row.of(Key::from) ? std::string{row.text(Key::from)} : vessels[to].name;
    told.to = vessels[to].name;
    told.by = in.rows[line].fact->by;
    told.at = now;
    told.clear = row.text(Key::clear);
    told.taps = row.si(Key::taps);
    told.sugarAssumed = !read;
    told.liquid = liquidOf(*row.volume(), read.value_or(usualSapBrix), row.temperature().value_or(bookTemperature),
                           read ? readSapSd : notReadSd);
    Taken taken = source(std::move(told), KnotKind::gathered);
    taken.temperature = row.temperature();
    put(to, taken);
    markTaint(vessels[to].name, taken.taint);
}

// An off-flavour keeps a vessel apart.
void Ledger::Fold::offComesIn(std::size_t to, const Taken& what) {
    const Vessel& vessel = vessels[to];
    const std::string& mine = vessel.taint.off;
    if (!what.taint.off.empty() && mine != what.taint.off)
        mark(MarkKind::offFlavour, vessel.name, {}, {}, {}, what.taint.off);
    else if (!mine.empty() && what.taint.off != mine)
        mark(MarkKind::offFlavour, vessel.name, {}, {}, {}, mine);
}

void Ledger::Fold::moved(const DayRow& row) {
    const std::size_t from = vessel(row.text(Key::from), false), to = vessel(row.text(Key::to), false);
    const auto volume = row.value ? std::optional{at20(row, vessels[from].content.brix())} : std::nullopt;
    const Taken taken = pour(from, volume);
    if (taken.liquid.isEmpty() && taken.strands[0].from == noKnot)
        return;
    if (!vessels[to].content.isEmpty())
        offComesIn(to, taken);
    put(to, taken);
    markTaint(vessels[to].name, taken.taint);
}

void Ledger::Fold::dipped(const DayRow& row) {
    const std::size_t where = vessel(row.text(Key::in), false);
    std::optional<Volume> volume = row.volume();
    if (const auto depth = row.value_as(Dimension::length)) {
        const auto& shape = vessels[where].shape;
        volume = shape ? tankVolume(*shape, Length::ofSi(*depth)) : std::nullopt;
        if (!volume) {
            mark(MarkKind::depthNoShape, vessels[where].name);
            return;
        }
    }
    auto read = sapSugar(row);
    if (const auto temp = row.temperature(); temp && volume)
        volume = liquidOf(*volume, read.value_or(vessels[where].content.brix()), *temp).volume();
    dip(where, *volume, read, now);
    if (row.temperature() && !vessels[where].content.isEmpty()) {
        vessels[where].temperature = row.temperature();
        vessels[where].temperatureTold = now;
        feel(vessels[where], row.temperature());
    }
}

void Ledger::Fold::concentrated(const DayRow& row) {
    const std::size_t from = vessel(row.text(Key::from), false), to = vessel(row.text(Key::to), false);
    const Brix out = *row.brix();
    const Liquid made = liquidOf(*row.volume(), out, row.temperature().value_or(bookTemperature), readSapSd);
    Vessel& tank = vessels[from];
    const auto readIn = row.si(Key::brix_in);
    if (readIn && tank.sugarAssumed && !tank.content.isEmpty())
        dip(from, tank.content.volume(), Brix::ofSi(*readIn), now);
    Brix before = tank.content.isEmpty() ? Brix::ofSi(readIn.value_or(usualSapBrix.si())) : tank.content.brix();
    if (before < leastSapBrix)
        before = usualSapBrix; // no membrane makes concentrate of water: it was misread
    if (out < (readIn ? Brix::ofSi(*readIn) : before))
        mark(MarkKind::thinner, {}, out.degrees(), readIn ? *readIn * 100 : before.degrees());
    // All the sugar stays on this side of the membrane: it tells how much went in.
    const double share = before.si();
    const Volume needed = liquidOf(Mass::ofSi(made.sugar / share), before).volume();
    Taken taken = pour(from, needed);
    ConcentratorRun run;
    run.at = now;
    run.from = vessels[from].name;
    run.to = vessels[to].name;
    run.in = liquidOf(Mass::ofSi(made.sugar / share), Brix::ofSi(share));
    run.out = made;
    run.sugarRead = readIn.has_value();
    if (const auto hours = row.si(Key::hours))
        run.took = Duration{*hours * 3600};
    run.washed = row.text(Key::washed);
    tables.concentrated.push_back(std::move(run));
    for (Strand& strand : taken.strands)
        strand.sugar *= taken.liquid.sugar > 0 ? made.sugar / taken.liquid.sugar : 1;
    balance.doesNotClose += made.sugar - taken.liquid.sugar;
    taken.liquid = made;
    if (row.temperature()) { // pumps warm it
        taken.temperature = row.temperature();
        taken.temperatureTold = now;
        taken.warmest = taken.warmest ? std::max(*taken.warmest, *row.temperature()) : row.temperature();
    }
    put(to, taken);
}

void Ledger::Fold::bought(const DayRow& row) {
    const std::string_view what = row.text(Key::what);
    const bool syrup = what.empty() ? row.brix().value_or(usualSyrupBrix) > Brix::degrees(40) : what == "syrup";
    const auto read = row.brix();
    const Brix sugar = read.value_or(syrup ? usualSyrupBrix : usualSapBrix);
    const double sd = !read ? notReadSd : syrup ? readSyrupSd : readSapSd;
    GatheredRow told;
    told.bought = true;
    told.name = row.of(Key::from) ? std::string{row.text(Key::from)} : std::string{row.text(Key::to)};
    told.by = in.rows[line].fact->by;
    told.at = now;
    told.sugarAssumed = !read;
    told.syrup = syrup;
    told.price = priceIn(row);
    if (const auto mass = row.value_as(Dimension::mass))
        told.liquid = liquidOf(Mass::ofSi(*mass), sugar, sd);
    else
        told.liquid = liquidOf(*row.volume(), sugar, row.temperature().value_or(bookTemperature), sd);
    std::optional<std::size_t> to =
        row.of(Key::vessel) ? std::optional{vessel(row.text(Key::vessel), false)} : std::nullopt;
    if (!to && row.of(Key::to))
        to = known(row.text(Key::to));
    if (to)
        told.to = vessels[*to].name;
    const Taken taken = source(std::move(told), KnotKind::gathered);
    if (to)
        put(*to, taken);
    else
        balance.nowhere += taken.liquid.sugar;
}

void Ledger::Fold::sold(const DayRow& row) {
    std::optional<std::size_t> from =
        row.of(Key::vessel) ? std::optional{vessel(row.text(Key::vessel), false)} : std::nullopt;
    if (!from && row.of(Key::from))
        from = known(row.text(Key::from));
    if (!from && !row.value)
        return; // all of what nobody named
    const Brix usual = row.of(Key::what) && row.text(Key::what) != "syrup" ? usualSapBrix : usualSyrupBrix;
    const Brix sugar =
        !from || vessels[*from].content.isEmpty() ? row.brix().value_or(usual) : vessels[*from].content.brix();
    std::optional<Volume> volume;
    if (const auto mass = row.value_as(Dimension::mass))
        volume = liquidOf(Mass::ofSi(*mass), sugar).volume();
    else if (row.value)
        volume = at20(row, sugar);
    Vessel unnamed;
    unnamed.name = row.text(Key::what);
    unnamed.touched = now;
    const Taken taken =
        from ? pour(*from, volume) : unwritten(unnamed, liquidOf(*volume, sugar, bookTemperature, notReadSd));
    SoldRow told;
    told.buyer = row.text(Key::to);
    told.at = now;
    told.liquid = taken.liquid;
    told.syrup = row.of(Key::what) ? row.text(Key::what) == "syrup" : sugar > Brix::degrees(40);
    told.price = priceIn(row);
    told.knot = thread.tie(KnotKind::sold, static_cast<std::uint32_t>(tables.sold.size()), now, taken.liquid.sugar,
                           taken.strands);
    tables.sold.push_back(std::move(told));
    balance.sold += taken.liquid.sugar;
}

void Ledger::Fold::lose(std::string why, std::string from, const Liquid& liquid, std::span<const Strand> strands) {
    thread.tie(KnotKind::lost, static_cast<std::uint32_t>(tables.lost.size()), now, liquid.sugar, strands);
    balance.lost[why.empty() ? "no cause told" : why] += liquid.sugar;
    tables.lost.push_back({std::move(why), std::move(from), now, liquid});
}

void Ledger::Fold::lost(const DayRow& row) {
    const std::string_view name = row.text(Key::from);
    if (nameKey(name) == "pans" && !known(name)) {
        const Liquid gone = row.value ? liquidOf(at20(row, pans.brix()), pans.brix(), bookTemperature) : pans;
        const double share = pans.sugar > 0 ? std::min(1.0, gone.sugar / pans.sugar) : 0;
        const std::array<Strand, 1> strand{strandOf(pansKnot, pans.sugar * share)};
        // What boils away is not told: it may have been as thick as syrup.
        const double most = row.value ? liquidOf(*row.volume(), usualSyrupBrix, bookTemperature).sugar : pans.sugar;
        closeVariance += std::pow((std::min(most, std::max(0.0, pans.sugar)) - pans.sugar * share) / 2, 2);
        lose(std::string{row.text(Key::why)}, "pans", pans.part(share), strand);
        pans = pans.part(1 - share);
        return;
    }
    const std::size_t from = vessel(name, false);
    const auto volume = row.value ? std::optional{at20(row, vessels[from].content.brix())} : std::nullopt;
    const Taken taken = pour(from, volume);
    lose(std::string{row.text(Key::why)}, vessels[from].name, taken.liquid, taken.strands);
}

} // namespace panside
