// The rows of a shift: sap into the feed tank and into the pans, and its fire.
#include "core/boil/sap_sugar.h"
#include "core/ledger/fold.h"
#include "core/physics/sap.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace panside {
namespace {

constexpr Brix usualSap = Brix::degrees(2); // where nobody measured any (common practice, no source)
constexpr double sapSd = 0.001, guessedSapSd = 0.01;
constexpr double leastTransfer = 0.01; // litres
constexpr std::size_t soon = 8;        // rows to come, of which what they pour is looked at anew

// What sweet is drained into: a pail, or what was named by the draining alone.
bool isPail(const Vessel& vessel) {
    return vessel.kind == VesselKind::pail || (vessel.kind == VesselKind::unknown && !vessel.capacity);
}

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
    if (volume.litre() >= leastTransfer)
        intoPans(pour(feed(), volume));
}

void Ledger::Fold::intoPans(const Taken& taken) {
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

// Brings the pans up to the row that is folded: what has left the feed tank since the last time.
void Ledger::Fold::sync() {
    if (current < 0)
        return;
    ShiftAid& aid = aids[static_cast<std::size_t>(current)];
    if (aid.hasLevel()) {
        if (now < aid.firstLevel())
            return;
        knowPoured(aid);
        if (!feedDipped) {
            aid.findToldLater();
            foldToldLater(aid);
        }
        readFeed(aid);
    } else if (aid.hasFlow()) {
        const Volume through = aid.flowed(now);
        if (through > flowed)
            intoPans(through - flowed);
        flowed = std::max(flowed, through);
    } else if (feedVessel && std::holds_alternative<DrawClosed>(in.rows[line].fact->what)) {
        intoPans(vessels[*feedVessel].content.volume()); // nobody measures it: what came in is in the pans
    }
}

// The feed tank is read: what left it is in the pans.
void Ledger::Fold::readFeed(const ShiftAid& aid) {
    const Volume level = *aid.levelAt(now, line);
    const std::size_t tank = feed();
    const Volume book = vessels[tank].content.volume();
    const bool atEnd = line == ends[static_cast<std::size_t>(current)];
    const auto lit = nights[static_cast<std::size_t>(nightOf[static_cast<std::size_t>(current)])].lit;
    // First read when the fire burns already: the pans were fed meanwhile, or the book was wrong by as much.
    const bool fedBefore = !feedDipped && lit && *lit < aid.firstLevel() && !vessels[tank].unwritten;
    if (level < book && (feedDipped || fedBefore)) {
        if (fedBefore)
            pansInSd += vessels[tank].content.part((book - level) / book).sugar / 2;
        intoPans(book - level);
    } else if (!feedDipped || (atEnd && level > book + gaugeNoise(level))) {
        dip(tank, level, {}, now); // what the book has at the shift's begin, or sap that nobody wrote
    }
    feedDipped = true;
}

// What is not in the rows that bring sap out of a vessel: how much it is that they call *all of it*, and whether the
// gauge of the feed tank shows that a pail went past it into the pans, as sweet that was drained and is put back.
void Ledger::Fold::knowPoured(ShiftAid& aid) {
    std::vector<std::size_t> counted;
    const auto stands = [&](const std::string& name) -> std::optional<Volume> {
        const auto from = known(name);
        if (!from || from == feedVessel)
            return std::nullopt;
        const bool again = std::ranges::find(counted, *from) != counted.end();
        counted.push_back(*from);
        return again ? Volume{} : vessels[*from].content.volume();
    };
    // All that come, when the tank is first read; then the next ones.
    const auto next = [&](const auto& list) {
        const auto from = std::lower_bound(list.begin(), list.end(), line,
                                           [](const auto& one, std::size_t row) { return one.row < row; });
        return std::span{from, feedDipped ? std::min<std::size_t>(soon, static_cast<std::size_t>(list.end() - from))
                                          : static_cast<std::size_t>(list.end() - from)};
    };
    for (const auto& [row, name] : next(aid.wholes()))
        if (const auto all = stands(name))
            aid.know(row, *all);
    for (const ShiftAid::Poured& poured : next(aid.poured())) {
        const auto from = known(poured.from);
        if (!from || !isPail(vessels[*from]))
            continue;
        if (aid.passedBy(poured, poured.volume.value_or(vessels[*from].content.volume()))) {
            aid.know(poured.row, {});
            putBack.insert(poured.row);
        }
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

// Out of the feed tank and into it: nothing comes. Only where more is told so than ever came into it, and no gauge
// knows better, the rest must have been there all the same.
void Ledger::Fold::standsInFeed(const SapIn& sap, std::optional<Brix> read) {
    const std::size_t tank = feed();
    Vessel& vessel = vessels[tank];
    if (read && vessel.sugarAssumed && !vessel.content.isEmpty())
        dip(tank, vessel.content.volume(), read, now);
    const Brix sugar = read.value_or(vessel.content.isEmpty() ? usualSap : vessel.content.brix());
    const Liquid told = liquidOf(sap.volume.value, sugar, sap.temperature ? sap.temperature->value : bookTemperature,
                                 read ? sapSd : guessedSapSd);
    toldOfFeed += told.volume();
    const Volume missing = toldOfFeed - vessel.taken;
    if (!aids[static_cast<std::size_t>(current)].hasLevel() && missing > gaugeNoise(vessel.taken)) {
        mark(MarkKind::belowEmpty, vessel.name, missing.litre(), {}, vessel.touched);
        Taken hole = unwritten(vessel, told.part(std::min(1.0, missing / told.volume())));
        hole.sugarAssumed = !read;
        hole.unseen = true;
        put(tank, hole);
    }
    feel(vessel, sap.temperature ? std::optional{sap.temperature->value} : std::nullopt);
}

void Ledger::Fold::sapIn(const SapIn& sap) {
    const std::size_t from = sap.from.empty() ? SIZE_MAX : known(sap.from).value_or(SIZE_MAX);
    const std::size_t tank = feed();
    const std::optional<Brix> read = sapSugar(sap);
    if (read && *read > sweetestConcentrate)
        mark(MarkKind::sugarOdd, {}, read->degrees());
    if (isOfFeed(sap))
        return standsInFeed(sap, read);
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
        if (putBack.contains(line))
            intoPans(taken);
        else
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
        night.kept = aid.levelAt(now, line);
}

void Ledger::Fold::checked(const DensityCheck& check) {
    const auto index = static_cast<std::size_t>(current);
    char text[32];
    std::snprintf(text, sizeof text, "%.1f %s", check.reading, check.unit == Unit::baume ? "baume" : "brix");
    tables.checks.push_back({nightOf[index], now, text, SIZE_MAX, pan});
    CheckRow& told = tables.checks.back();
    if (const auto known = in.apartOf ? in.apartOf(current, now) : std::nullopt) {
        told.apart = known->apart;
        told.apartSd = known->sd;
    }
    if (const auto sugar = sugarOf(check, aids[index].wanted()))
        told.sugar = sugar->sugar;
    if (const auto of = aids[index].drawOfCheck(line))
        told.draw = *of; // its row until the end, when the draw's own number is known
}

void Ledger::Fold::shiftOver() {
    const auto index = static_cast<std::size_t>(current);
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
        if (std::ranges::find(early, line) == early.end())
            sapIn(*sap);
    } else if (std::holds_alternative<DrawClosed>(fact.what)) {
        sync();
        drawClosed();
    } else if (const auto* drops = std::get_if<Defoamer>(&fact.what)) {
        defoamer(*drops);
    } else if (std::holds_alternative<PanSwapped>(fact.what)) {
        ofFire.swapped.push_back(now);
        ++pan;
    } else if (const auto* check = std::get_if<DensityCheck>(&fact.what)) {
        checked(*check);
    } else if (!feedDipped && aids[index].hasLevel()) {
        sync(); // the first level of the night is a dip of the feed tank
    }
    if (line == ends[index])
        shiftOver();
}

} // namespace panside
