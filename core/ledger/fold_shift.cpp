// The rows of a shift: sap into the feed tank and into the pans, draws out of them.
#include "core/boil/law_rules.h"
#include "core/boil/sap_sugar.h"
#include "core/ledger/fold.h"
#include "core/physics/sap.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

constexpr Brix usualSap = Brix::degrees(2); // where nobody measured any (common practice, no source)
constexpr double sapSd = 0.001, guessedSapSd = 0.01, guessedSyrupSd = 0.01;
constexpr double measuredPail = 0.02;  // of a draw's volume, as a pail's rings are read (common practice, no source)
constexpr double leastTransfer = 0.01; // litres
constexpr double oneMoment = 0.7;      // brix: by how much a sample may be off the mean of its draw (our judgement)

// A level that stands higher than the book by less is the gauge's noise (common practice, no source).
constexpr double gaugeShare = 0.01, gaugeLitres = 4;

} // namespace

void Ledger::Fold::night(int shift) {
    const auto index = static_cast<std::size_t>(shift);
    current = shift;
    if (nightOf[index] >= 0)
        return;
    nightOf[index] = static_cast<int>(nights.size());
    Night night;
    night.shift = shift;
    night.id = in.shifts[index];
    night.first = night.last = now;
    night.before = pans.sugar;
    night.emptied = pansKnot == noKnot;
    const auto date = in.dateOf(now);
    char text[16];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    night.date = text;
    nights.push_back(std::move(night));
    flowed = {};
    feedDipped = false;
}

void Ledger::Fold::tiePans(std::span<const Strand> strands, double sugar) {
    pansSince = now;
    pansKnot = thread.tie(KnotKind::pans, static_cast<std::uint32_t>(std::max(0, current)), now, sugar, strands);
    if (current >= 0 && nightOf[static_cast<std::size_t>(current)] >= 0)
        nights[static_cast<std::size_t>(nightOf[static_cast<std::size_t>(current)])].pans.push_back(pansKnot);
    for (const std::size_t drop : inPans) {
        if (tables.defoamers[drop].firstPans == noKnot)
            tables.defoamers[drop].firstPans = pansKnot;
        tables.defoamers[drop].lastPans = pansKnot;
    }
}

// So much of the feed tank has entered the pans.
void Ledger::Fold::intoPans(Volume volume) {
    if (volume.litre() < leastTransfer)
        return;
    const Taken taken = pour(feed(), volume);
    std::vector<Strand> strands = taken.strands;
    if (pansKnot != noKnot)
        strands.push_back(pansShort || pans.sugar <= 0 ? unmeasured(pansKnot) : strandOf(pansKnot, pans.sugar));
    pansShort = false;
    pansInSd += taken.liquid.mass * taken.liquid.sd;
    pans += taken.liquid;
    if (current >= 0 && nightOf[static_cast<std::size_t>(current)] >= 0)
        nights[static_cast<std::size_t>(nightOf[static_cast<std::size_t>(current)])].entered += taken.liquid;
    pansTaint |= taken.taint;
    if (taken.oldest)
        pansOldest = pansOldest ? std::min(*pansOldest, *taken.oldest) : taken.oldest;
    tiePans(strands, pans.sugar);
}

// Brings the pans up to now: what has left the feed tank since the last time.
void Ledger::Fold::sync() {
    if (current < 0)
        return;
    const ShiftAid& aid = aids[static_cast<std::size_t>(current)];
    if (aid.hasLevel()) {
        if (now < aid.firstLevel())
            return;
        const Volume level = *aid.levelAt(now);
        const std::size_t tank = feed();
        const Volume book = vessels[tank].content.volume();
        const Volume noise = Volume::litre(gaugeLitres) + level * gaugeShare;
        const bool atEnd = line == ends[static_cast<std::size_t>(current)];
        if (!feedDipped)
            foldToldLater(aid);
        if (!feedDipped || (atEnd && level > book + noise))
            dip(tank, level, {}, now); // what the book has at the shift's begin, or sap that nobody wrote
        else if (level < book)
            intoPans(book - level);
        feedDipped = true;
    } else if (aid.hasFlow()) {
        const Volume through = aid.flowed(now);
        if (through > flowed)
            intoPans(through - flowed);
        flowed = std::max(flowed, through);
    } else if (feedVessel && std::holds_alternative<DrawClosed>(in.rows[line].fact->what)) {
        intoPans(vessels[*feedVessel].content.volume()); // nobody measures it: what came in is in the pans
    }
}

// What the gauge shows already goes in before it is read.
void Ledger::Fold::foldToldLater(const ShiftAid& aid) {
    const std::size_t row = line;
    for (const std::size_t later : aid.toldLater()) {
        line = later;
        sapIn(std::get<SapIn>(in.rows[later].fact->what));
    }
    line = row;
}

void Ledger::Fold::sapIn(const SapIn& sap) {
    const std::size_t from = sap.from.empty() ? SIZE_MAX : known(sap.from).value_or(SIZE_MAX);
    const std::size_t tank = feed();
    const std::optional<Brix> read = sapSugar(sap);
    if (read && *read > sweetestConcentrate)
        mark(MarkKind::sugarOdd, {}, read->degrees());
    if (from != SIZE_MAX && from != tank) {
        std::optional<Volume> volume;
        if (!sap.all) {
            const Brix sugar = vessels[from].content.isEmpty() ? read.value_or(usualSap) : vessels[from].content.brix();
            volume =
                sap.temperature ? liquidOf(sap.volume.value, sugar, sap.temperature->value).volume() : sap.volume.value;
        }
        if (read && vessels[from].sugarAssumed && !vessels[from].content.isEmpty())
            dip(from, vessels[from].content.volume(), read, now);
        Taken taken = pour(from, volume);
        if (sap.temperature)
            taken.temperature = sap.temperature->value;
        put(tank, taken);
        return;
    }
    if (sap.all)
        return; // all of a vessel that nobody filled
    GatheredRow came;
    came.name = sap.from.empty() ? vessels[tank].name : sap.from;
    came.to = vessels[tank].name;
    came.by = in.rows[line].fact->by;
    came.at = now;
    came.sugarAssumed = !read;
    came.liquid = liquidOf(sap.volume.value, read.value_or(usualSap),
                           sap.temperature ? sap.temperature->value : bookTemperature, read ? sapSd : guessedSapSd);
    Taken taken = source(std::move(came), KnotKind::gathered);
    taken.oldest = now;
    if (sap.temperature)
        taken.temperature = sap.temperature->value;
    put(tank, taken);
}

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

void Ledger::Fold::drawClosed() {
    const ShiftAid& aid = aids[static_cast<std::size_t>(current)];
    const ShiftAid::Draw* draw = aid.drawAt(line);
    if (!draw) {
        if (aid.isTwice(line))
            mark(MarkKind::drawTwice, std::get<DrawClosed>(in.rows[line].fact->what).to);
        return;
    }
    const auto [sugar, sd, alone] = densityOf(*draw);
    const Temperature at = draw->told.temperature ? draw->told.temperature->value : drawTemperature;
    Taken taken;
    DrawRow told{
        nightOf[static_cast<std::size_t>(current)], now, draw->told.to, {}, noKnot, draw->told.volume.has_value()};
    Night& night = nights[static_cast<std::size_t>(told.night)];
    if (night.draws.empty() && !pansShort && pansKnot != noKnot) {
        night.firstDraw = now;
        night.ready = pans.sugar;
    }
    if (draw->told.volume) {
        taken.liquid = liquidOf(draw->told.volume->value, sugar, at, sd.si());
        taken.liquid.alone = std::pow(taken.liquid.mass * alone.si(), 2);
        taken.liquid.chart = taken.liquid.mass * chartApart(*draw).si();
        told.knot = fromPans(taken, taken.liquid.error());
    } else {
        const std::array<Strand, 1> strand{unmeasured(pansKnot)};
        told.knot = thread.tie(KnotKind::draw, static_cast<std::uint32_t>(tables.draws.size()), now, 0, strand);
    }
    told.liquid = taken.liquid;
    night.unmeasured += told.measured ? 0 : 1;
    night.drawn += taken.liquid.volume();
    night.drawnSugar += taken.liquid.sugar;
    night.draws.emplace_back(told.knot, taken.liquid.sugar);
    taken.strands = {told.measured ? strandOf(told.knot, taken.liquid.sugar) : unmeasured(told.knot)};
    taken.taint = pansTaint;
    taken.oldest = now;
    tables.draws.push_back(told);
    pansSince = now;
    if (told.to.empty()) {
        mark(MarkKind::noVessel);
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

// Lighting and the last load: between them the fire was fed.
void Ledger::Fold::fireRow(Night& night, const ShiftAid& aid) {
    if (line == aid.litRow()) {
        sync();
        night.lit = now;
        enteredAtLit = night.entered;
    }
    if (line != aid.lastLoadRow())
        return;
    sync();
    night.lastLoad = now;
    if (!night.lit || (!aid.hasLevel() && !aid.hasFlow()))
        return;
    night.fired = Liquid{night.entered.mass - enteredAtLit.mass, night.entered.sugar - enteredAtLit.sugar};
    if (aid.hasLevel())
        night.kept = aid.levelAt(now);
}

void Ledger::Fold::shiftRow(const Fact& fact) {
    night(in.rows[line].shift);
    const auto index = static_cast<std::size_t>(current);
    Night& ofFire = nights[static_cast<std::size_t>(nightOf[index])];
    ofFire.last = now;
    fireRow(ofFire, aids[index]);
    gauge(fact);
    instruments(fact);
    if (const auto* sap = std::get_if<SapIn>(&fact.what)) {
        const auto& early = aids[index].toldLater();
        sync();
        if (std::find(early.begin(), early.end(), line) == early.end())
            sapIn(*sap);
    } else if (std::holds_alternative<DrawClosed>(fact.what)) {
        sync();
        drawClosed();
    } else if (const auto* drops = std::get_if<Defoamer>(&fact.what)) {
        defoamer(*drops);
    } else if (std::holds_alternative<PanSwapped>(fact.what)) {
        ofFire.swapped.push_back(now);
        ++pan;
    } else if (std::holds_alternative<DensityCheck>(fact.what)) {
        const auto& check = std::get<DensityCheck>(fact.what);
        char text[32];
        std::snprintf(text, sizeof text, "%.1f %s", check.reading, check.unit == Unit::baume ? "baume" : "brix");
        tables.checks.push_back({nightOf[index], now, text, SIZE_MAX, pan});
        if (const auto known = in.apartOf ? in.apartOf(current, now) : std::nullopt) {
            tables.checks.back().apart = known->apart;
            tables.checks.back().apartSd = known->sd;
        }
        if (const auto sugar = sugarOf(check, aids[index].wanted()))
            tables.checks.back().sugar = sugar->sugar;
        if (const auto of = aids[index].drawOfCheck(line))
            tables.checks.back().draw = *of; // its row until the end, when the draw's own number is known
    } else if (!feedDipped && aids[index].hasLevel()) {
        sync(); // the first level of the night is a dip of the feed tank
    }
    if (line == ends[index]) {
        sync();
        // What is left in the pans is a knot of its own: the nights to come draw on it.
        Night& tonight = nights[static_cast<std::size_t>(nightOf[index])];
        if (pansKnot != noKnot) {
            const std::array<Strand, 1> left{pans.sugar > 0 && !pansShort ? strandOf(pansKnot, pans.sugar)
                                                                          : unmeasured(pansKnot)};
            tiePans(left, pans.sugar);
            tonight.endKnot = pansKnot;
            tonight.left = pans.sugar;
        }
        tonight.loads = aids[index].loads();
        tonight.cords = aids[index].cords();
        tonight.wood = aids[index].wood();
        tonight.woodKind = aids[index].woodKind();
        current = -1;
    }
}

} // namespace panside
