// What leaves the pans, by the draw-off and when they are emptied; how dense it is; what is in them against foam.
#include "core/boil/law_rules.h"
#include "core/ledger/fold.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

constexpr double readSd = 0.003, guessedSyrupSd = 0.01; // mass fraction: read, and where nobody did
constexpr double measuredPail = 0.02; // of a draw's volume, as a pail's rings are read (common practice, no source)
constexpr double anySd = 0.35;        // mass fraction, of a pail that may hold water or syrup
constexpr double oneMoment = 0.7;     // brix: by how much a sample may be off the mean of its draw (our judgement)

} // namespace

// The engine's word for the whole time the draw was open, on the mark that the checks have taught it. A check is of one
// moment, and while a draw is open the sugar falls by some brix: only where the engine knows nothing it stands for all.
Ledger::Fold::Density Ledger::Fold::densityOf(const ShiftAid::Draw& draw) const {
    if (in.densityOf)
        if (const auto known = in.densityOf(current, now))
            return {known->sugar, known->sd, DrawDensity::alone};
    if (draw.cups.empty())
        return {aids[static_cast<std::size_t>(current)].wanted(), Brix::ofSi(guessedSyrupSd), {}};
    double mean = 0, variance = 0;
    for (const ShiftAid::Cup& cup : draw.cups) {
        mean += cup.sugar.sugar.degrees() / static_cast<double>(draw.cups.size());
        variance += std::pow(cup.sugar.scatter.degrees(), 2);
    }
    const double scatter = std::sqrt(variance) / static_cast<double>(draw.cups.size());
    return {Brix::degrees(mean), glassError, Brix::degrees(std::hypot(scatter, oneMoment))};
}

Knot Ledger::Fold::fromPans(Taken& draw, Brix sd) {
    const double out = draw.liquid.sugar;
    const auto number = static_cast<std::uint32_t>(tables.draws.size());
    if (pansKnot == noKnot || pans.sugar <= 0) {
        // Sugar that nobody saw go in.
        tables.holes.push_back({pansOldest.value_or(now), now, true, "pans"});
        const Knot hole =
            thread.tie(KnotKind::unwritten, static_cast<std::uint32_t>(tables.holes.size() - 1), now, out, {});
        balance.doesNotClose += out;
        closeVariance += out * out / 12;
        draw.strands = {strandOf(hole, out)};
        if (pansKnot != noKnot)
            draw.strands.push_back(unmeasured(pansKnot));
        return thread.tie(KnotKind::draw, number, now, out, draw.strands);
    }
    const double left = std::min(out, pans.sugar);
    balance.doesNotClose += out - left;
    closeVariance += std::pow(out * sd.si(), 2) + std::pow(out - left, 2);
    pansOutSd += draw.liquid.mass * sd.si() + measuredPail * out;
    pansShort |= out > pans.sugar;
    pansOwed += out - left;
    pans = pans.part(std::max(0.0, 1 - left / pans.sugar));
    const std::array<Strand, 1> strand{Strand{pansKnot, false, out, left}};
    return thread.tie(KnotKind::draw, number, now, out, strand);
}

// Where the law has a chart of its own, by how much more sugar it reads the cups of the draw, or else of its night.
Brix Ledger::Fold::chartApart(const ShiftAid::Draw& draw) const {
    if (!tables.place || leastSet)
        return {};
    const auto& ofNight = aids[static_cast<std::size_t>(current)].cups();
    double sum = 0;
    int count = 0;
    for (const ShiftAid::Cup& cup : draw.cups.empty() ? ofNight : draw.cups)
        if (const auto read = sugarByChart(*cup.told, allPlaces()[*tables.place])) {
            sum += (*read - cup.sugar.sugar).degrees();
            ++count;
        }
    return Brix::degrees(count > 0 ? sum / count : 0);
}

// What was drawn, with what leads back from it.
Ledger::Fold::Taken Ledger::Fold::drawn(const ShiftAid::Draw& draw, DrawRow& told) {
    Taken taken;
    if (draw.told.volume) {
        const auto [sugar, sd, alone] = densityOf(draw);
        const Temperature at = draw.told.temperature ? draw.told.temperature->value : drawTemperature;
        taken.liquid = liquidOf(draw.told.volume->value, sugar, at, sd.si());
        taken.liquid.alone = std::pow(taken.liquid.mass * alone.si(), 2);
        taken.liquid.chart = taken.liquid.mass * chartApart(draw).si();
        told.knot = fromPans(taken, taken.liquid.error());
    } else {
        const std::array<Strand, 1> strand{unmeasured(pansKnot)};
        told.knot = thread.tie(KnotKind::draw, static_cast<std::uint32_t>(tables.draws.size()), now, 0, strand);
    }
    told.measured = draw.told.volume.has_value();
    told.liquid = taken.liquid;
    taken.strands = {told.measured ? strandOf(told.knot, taken.liquid.sugar) : unmeasured(told.knot)};
    taken.taint = pansTaint;
    taken.oldest = now;
    return taken;
}

void Ledger::Fold::drawClosed() {
    const ShiftAid& aid = aids[static_cast<std::size_t>(current)];
    const ShiftAid::Draw* draw = aid.drawAt(line);
    if (!draw) {
        if (aid.isTwice(line))
            mark(MarkKind::drawTwice, std::get<DrawClosed>(in.rows[line].fact->what).to);
        return;
    }
    DrawRow told{nightOf[static_cast<std::size_t>(current)], now, draw->told.to, {}};
    Night& night = nights[static_cast<std::size_t>(told.night)];
    if (night.draws.empty() && !pansShort && pansKnot != noKnot) {
        night.firstDraw = now;
        night.ready = pans.sugar;
    }
    const Taken taken = drawn(*draw, told);
    night.unmeasured += told.measured ? 0 : 1;
    night.drawn += taken.liquid.volume();
    night.drawnSugar += taken.liquid.sugar;
    night.draws.emplace_back(told.knot, taken.liquid.sugar);
    tables.draws.push_back(told);
    pansSince = now;
    if (told.to.empty()) {
        mark(MarkKind::noVessel);
        balance.nowhere += taken.liquid.sugar;
        return;
    }
    const std::size_t to = vessel(told.to);
    tables.draws.back().to = vessels[to].name;
    if (!vessels[to].content.isEmpty())
        offComesIn(to, taken);
    put(to, taken, told.night);
    markTaint(vessels[to].name, taken.taint);
}

void Ledger::Fold::defoamer(const Defoamer& drops) {
    const std::string key = nameKey(drops.kind);
    const bool milk = key.find("butter") != std::string::npos || key.find("cream") != std::string::npos ||
                      key.find("milk") != std::string::npos;
    sync();
    DefoamerRow told;
    told.at = now;
    told.name = drops.kind.empty() ? "defoamer" : drops.kind;
    told.milk = milk;
    if (milk) {
        pansTaint.milk = true;
        pansTaint.milkOf = drops.kind;
    }
    inPans.push_back(tables.defoamers.size());
    tables.defoamers.push_back(std::move(told));
    // From here on it is in them: a knot of its own parts what was drawn before from what is drawn after.
    const std::array<Strand, 1> same{pans.sugar > 0 && !pansShort ? strandOf(pansKnot, pans.sugar)
                                                                  : unmeasured(pansKnot)};
    tiePans(pansKnot == noKnot ? std::span<const Strand>{} : std::span<const Strand>{same}, pans.sugar);
}

// All rows of one time are of one draining. Where no volume is told the pails are taken to be alike.
void Ledger::Fold::drainPans(const DayRow& row) {
    sync();
    double volume = 0;
    int pails = 0;
    for (std::size_t i = line; i < in.rows.size() && in.rows[i].fact->at == now; ++i)
        if (const auto* other = std::get_if<DayRow>(&in.rows[i].fact->what);
            other && other->deed == Deed::pans_emptied && !isTold(i)) {
            volume += other->volume().value_or(Volume{}).si();
            ++pails;
        }
    const double sugar = std::max(0.0, pans.sugar);
    double doubt = pansUnwritten ? std::max(sugar, pansMost() - sugar) / 2 : 0;
    // Water drove the sweet out before it: what the book still has in them may have gone with the last draws.
    if (row.of(Key::chased) && row.text(Key::chased) != "no")
        doubt = std::max(doubt, sugar / 2);
    draining = Drained{now, sugar, volume, pails, pansKnot, pansShort, doubt, pansTaint};
    pansUnwritten.reset();
    pans = {};
    pansKnot = noKnot;
    pansShort = false;
    pansInSd = pansOutSd = pansOwed = 0;
    pansOldest.reset();
    pansSince.reset();
    const bool washed = row.of(Key::washed) && row.text(Key::washed) != "no";
    if (washed)
        pansTaint = {};
    std::erase_if(inPans, [&](std::size_t drop) { return washed || !tables.defoamers[drop].milk; });
}

// A row's part of what is drained, as it stands in its pail.
Liquid Ledger::Fold::drainedInto(const DayRow& row, double sugar, double doubt) const {
    const auto volume = row.volume();
    if (!volume || volume->si() <= 0)
        return {.mass = sugar, .sugar = sugar, .sd = sugar > 0 ? std::max(0.1, doubt / sugar) : 0};
    const Temperature at = row.temperature().value_or(bookTemperature);
    if (const auto read = row.brix())
        return liquidOf(*volume, *read, at, readSd);
    Liquid liquid = liquidHolding(*volume, sugar);
    if (row.temperature())
        liquid = liquidHolding(liquidOf(*volume, liquid.brix(), at).volume(), sugar);
    liquid.sd = draining->short_ || sugar <= 0 ? anySd : doubt / liquid.mass;
    return liquid;
}

// Pails filled from one draining are several rows of one time: the pans count as one mixed vessel, so they share its
// sugar by volume, and only then the thread is cut.
void Ledger::Fold::pansEmptied(const DayRow& row) {
    if (!draining || draining->at != now)
        drainPans(row);
    const double share = draining->volume > 0 ? row.volume().value_or(Volume{}).si() / draining->volume
                                              : 1.0 / std::max(1, draining->pails);
    const double sugar = draining->sugar * share;
    const Liquid liquid = drainedInto(row, sugar, draining->doubt * share);
    balance.doesNotClose += liquid.sugar - sugar;
    if (!row.brix())
        closeVariance += std::pow(draining->doubt * share, 2);
    const std::string_view to = row.text(Key::to);
    std::array<Strand, 1> strand{draining->short_ || sugar <= 0 ? unmeasured(draining->knot)
                                                                : Strand{draining->knot, false, liquid.sugar, sugar}};
    const std::span<const Strand> strands =
        draining->knot == noKnot ? std::span<const Strand>{} : std::span<const Strand>{strand};
    if (to.empty() || nameKey(to) == "gone") {
        lose("pans emptied", "pans", liquid, strands);
        return;
    }
    Taken taken;
    taken.liquid = liquid;
    const Knot knot =
        thread.tie(KnotKind::drained, static_cast<std::uint32_t>(tables.drained.size()), now, liquid.sugar, strands);
    tables.drained.push_back(liquid.volume());
    if (current >= 0)
        nights[static_cast<std::size_t>(nightOf[static_cast<std::size_t>(current)])].drained.emplace_back(knot,
                                                                                                          liquid.sugar);
    taken.strands = {liquid.sugar > 0 ? strandOf(knot, liquid.sugar) : unmeasured(knot)};
    taken.taint = draining->taint;
    taken.volumeUntold = !row.value;
    taken.oldest = now;
    put(vessel(to), taken);
}

} // namespace panside
