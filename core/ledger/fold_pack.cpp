// The rows of the day book from the grade to the buyer.
#include "core/ledger/fold.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace panside {
namespace {

constexpr double printedDigit = 0.05; // brix: a density is compared as it is printed
constexpr double syrupBoils = 105;    // degC
constexpr double asRounded = 0.5;     // degC: 180 degF are said to be 82
// Processing syrup may be packed from five gallons up (7 CFR 52.5961 to .5966, as quoted).
constexpr Volume processingFrom = Volume::gallon(5);

} // namespace

void Ledger::Fold::graded(const DayRow& row) {
    const auto light = row.value_as(Dimension::share);
    const std::string_view off = row.text(Key::off);
    std::string subject;
    if (row.of(Key::lot)) {
        subject = row.text(Key::lot);
        const auto found = codes.find(nameKey(subject));
        if (found == codes.end()) {
            mark(MarkKind::lotUnknown, subject);
        } else {
            Lot& lot = lots[found->second];
            lot.light = light;
            lot.lightClass = row.text(Key::light_class);
            lot.flavour = row.text(Key::flavour);
            lot.taint.off = off;
            lot.held |= !off.empty();
        }
    } else {
        Vessel& of = vessels[vessel(row.text(Key::vessel), false)];
        subject = of.name;
        of.light = light;
        of.lightClass = row.text(Key::light_class);
        of.flavour = row.text(Key::flavour);
        of.taint.off = off;
        of.touched = now;
    }
    tables.graded.push_back({now, row, std::move(subject), in.rows[line].fact->by});
}

LotSize* Ledger::Fold::sizeOf(Lot& lot, const DayRow& row) {
    if (!row.of(Key::size))
        return lot.sizes.size() == 1 ? &lot.sizes[0] : nullptr;
    const double size = *row.si(Key::size);
    for (LotSize& one : lot.sizes)
        if (std::abs(one.size.si() - size) < 1e-9)
            return &one;
    return nullptr;
}

void Ledger::Fold::judgeHeat(Lot& lot, const DayRow& row) {
    const auto capped = row.temperature(Key::capped);
    if (capped)
        lot.coolest = lot.coolest ? std::min(*lot.coolest, *capped) : *capped;
    if (const auto filler = row.temperature(Key::filler))
        lot.filler = lot.filler ? std::min(*lot.filler, *filler) : *filler;
    const auto heat = capped ? capped : row.temperature(Key::filler);
    if (!heat || heat->kelvin() >= tables.cappedLeast.kelvin() - 0.05)
        return;
    lot.held = true;
    // 82 degF: nobody caps syrup so cool, and the same number of degC is right.
    const auto written = writtenIn(row.text(capped ? Key::capped : Key::filler));
    const bool likely = written && written->unit == Unit::degF && written->number <= syrupBoils &&
                        Temperature::celsius(written->number + asRounded) >= tables.cappedLeast;
    mark(MarkKind::packedTooCool, lot.code, heat->celsius(), tables.cappedLeast.celsius(), {},
         likely ? fmt::format("{} °C", written->number) : "");
}

void Ledger::Fold::judge(Lot& lot, const DayRow& row, const Liquid& content) {
    judgeHeat(lot, row);
    const auto held = [&](MarkKind kind, double amount, double limit) {
        lot.held = true;
        mark(kind, lot.code, amount, limit);
    };
    const Brix least = leastSet.value_or(tables.least), most = mostSet.value_or(tables.most);
    if (const auto read = row.brix()) {
        lot.read = read;
        if (content.byLaw(*read).degrees() < least.degrees() - printedDigit / 10)
            held(MarkKind::underDensity, read->degrees(), least.degrees());
        else if (read->degrees() > most.degrees() + printedDigit / 10)
            held(MarkKind::overDensity, read->degrees(), most.degrees());
    } else if (lot.book.si() > 0) {
        // Nobody read it: only what is surely off is said.
        const double sure = 2 * lot.bookSd.degrees();
        if (content.byLaw().degrees() + sure < least.degrees())
            held(MarkKind::underDensity, content.byLaw().degrees(), least.degrees());
        else if (lot.book.degrees() - sure > most.degrees())
            held(MarkKind::overDensity, lot.book.degrees(), most.degrees());
    }
    if (lot.taint.milk || lot.taint.lead || lot.taint.ropy) {
        lot.held = true;
        markTaint("lot " + lot.code, lot.taint);
    }
    if (!lot.taint.off.empty() && *row.si(Key::size) < processingFrom.si() - 1e-6) {
        lot.held = true;
        mark(MarkKind::offFlavour, "lot " + lot.code, {}, {}, {}, lot.taint.off);
    }
}

// The lot of a row's code: as it stands, or made now.
std::size_t Ledger::Fold::lotOf(const DayRow& row, std::size_t from) {
    const auto day = in.dateOf(now);
    const auto [found, fresh] = codes.emplace(nameKey(row.text(Key::lot)), lots.size());
    if (fresh) {
        Lot made;
        made.code = row.text(Key::lot);
        made.packed = now;
        made.vessel = from;
        made.day = day;
        made.by = in.rows[line].fact->by;
        lots.push_back(std::move(made));
    } else if (lots[found->second].vessel != from || lots[found->second].day != day) {
        mark(MarkKind::codeTwice, lots[found->second].code);
    }
    if (!sizeOf(lots[found->second], row)) {
        LotSize made;
        made.size = Volume::ofSi(*row.si(Key::size));
        made.written = row.text(Key::size);
        made.of = row.text(Key::of);
        lots[found->second].sizes.push_back(std::move(made));
    }
    return found->second;
}

// What was filled: into good containers and into broken ones.
void Ledger::Fold::fill(std::size_t lot, const DayRow& row, const Taken& taken, const std::string& from) {
    LotSize& size = *sizeOf(lots[lot], row);
    const auto good = static_cast<long long>(row.value->si);
    const double broken = row.si(Key::broken).value_or(0), count = static_cast<double>(good) + broken;
    const auto strandsOf = [&taken](double share) {
        std::vector<Strand> strands = taken.strands;
        for (Strand& strand : strands) {
            strand.sugar *= share;
            strand.left *= share;
        }
        return strands;
    };
    const double share = count > 0 ? static_cast<double>(good) / count : 0;
    const double sugar = taken.liquid.sugar * share;
    size.knots.emplace_back(thread.tie(KnotKind::lot, static_cast<std::uint32_t>(lot), now, sugar, strandsOf(share)),
                            sugar);
    size.made += good;
    size.broken += static_cast<long long>(broken);
    size.sugar += sugar;
    balance.packed += sugar;
    if (broken > 0)
        lose("broken", from, taken.liquid.part(1 - share), strandsOf(1 - share));
}

void Ledger::Fold::packed(const DayRow& row) {
    const std::size_t from = vessel(row.text(Key::from), false), index = lotOf(row, from);
    // What is known of its colour and taste before it may be emptied.
    const std::optional<double> light = vessels[from].light;
    const std::string lightClass = vessels[from].lightClass, flavour = vessels[from].flavour;
    const double count = row.value->si + row.si(Key::broken).value_or(0);
    const Taken taken = pour(from, Volume::ofSi(*row.si(Key::size)) * count);
    fill(index, row, taken, vessels[from].name);
    Lot& lot = lots[index];
    lot.taint |= taken.taint;
    lot.book = taken.liquid.brix();
    lot.bookSd = taken.liquid.error();
    if (!lot.light)
        lot.light = light;
    if (lot.lightClass.empty())
        lot.lightClass = lightClass;
    if (lot.flavour.empty())
        lot.flavour = flavour;
    if (const auto laid = row.si(Key::laid))
        lot.laid = Duration{*laid};
    judge(lot, row, taken.liquid);
}

// Sent to somebody, or come back.
void Ledger::Fold::deliver(std::size_t lot, LotSize& size, bool sizeKnown, const DayRow& row) {
    const bool back = row.deed == Deed::came_back;
    const std::string buyer{row.text(back && row.of(Key::from) ? Key::from : Key::to)};
    const auto number = static_cast<std::size_t>(&size - lots[lot].sizes.data());
    const auto isHis = [&](const Delivery& one) { return nameKey(one.buyer) == nameKey(buyer); };
    auto there = std::ranges::find_if(tables.deliveries, [&](const Delivery& one) {
        return one.lot == lot && one.sizeKnown == sizeKnown && (one.size == number || !sizeKnown) && isHis(one);
    });
    if (there == tables.deliveries.end()) {
        const auto known = std::ranges::find_if(tables.deliveries, isHis);
        Delivery made;
        made.buyer = known == tables.deliveries.end() ? buyer : known->buyer;
        made.lot = lot;
        made.size = number;
        made.first = now;
        made.sizeKnown = sizeKnown;
        there = tables.deliveries.insert(tables.deliveries.end(), std::move(made));
    }
    const auto count = static_cast<long long>(row.value->si);
    (back ? there->back : there->sent) += count;
    if (const auto price = numberIn(row.text(Key::price)); price && !back) {
        there->paid += *price * static_cast<double>(count);
        there->pricedCount += count;
    }
    (back ? size.back : size.shipped) += count;
}

void Ledger::Fold::shipped(const DayRow& row) {
    const auto found = codes.find(nameKey(row.text(Key::lot)));
    if (found == codes.end()) {
        mark(MarkKind::lotUnknown, std::string{row.text(Key::lot)});
        return;
    }
    Lot& lot = lots[found->second];
    LotSize* size = sizeOf(lot, row);
    const bool sizeKnown = size != nullptr;
    if (!size) {
        if (row.of(Key::size))
            mark(MarkKind::sizeUnknown, lot.code, {}, {}, {}, std::string{row.text(Key::size)});
        // Which one nobody said: of that there is most. What comes back is of that most is away of.
        const bool back = row.deed == Deed::came_back;
        size = &*std::ranges::max_element(
            lot.sizes, {}, [back](const LotSize& one) { return back ? one.shipped - one.back : one.here(); });
    }
    const auto count = static_cast<long long>(row.value->si);
    if (row.deed == Deed::destroyed) {
        size->destroyed += count;
    } else {
        deliver(found->second, *size, sizeKnown, row);
    }
    if (size->here() < 0)
        mark(MarkKind::shippedTooMany, lot.code, static_cast<double>(-size->here()));
    if (row.deed == Deed::came_back && size->back > size->shipped)
        mark(MarkKind::backTooMany, lot.code, static_cast<double>(size->back - size->shipped));
}

} // namespace panside
