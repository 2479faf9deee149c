// The rows of the day book from the grade to the buyer.
#include "core/ledger/fold.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace panside {
namespace {

constexpr double printedDigit = 0.05; // brix: a density is compared as it is printed
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
    std::string what = amountIn(row);
    for (const Key key : {Key::light_class, Key::flavour, Key::off})
        if (row.of(key))
            what += (what.empty() ? "" : ", ") + std::string{row.text(key)};
    tables.graded.push_back(
        {now, std::move(what), std::move(subject), row.of(Key::sample) ? "sample kept" : "", in.rows[line].fact->by});
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

void Ledger::Fold::judge(Lot& lot, const DayRow& row) {
    const auto held = [&](MarkKind kind, double amount, double limit) {
        lot.held = true;
        mark(kind, lot.code, amount, limit);
    };
    const auto capped = row.temperature(Key::capped);
    if (capped)
        lot.coolest = lot.coolest ? std::min(*lot.coolest, *capped) : *capped;
    if (const auto filler = row.temperature(Key::filler))
        lot.filler = lot.filler ? std::min(*lot.filler, *filler) : *filler;
    const auto heat = capped ? capped : row.temperature(Key::filler);
    if (heat && heat->kelvin() < tables.cappedLeast.kelvin() - 0.05)
        held(MarkKind::packedTooCool, heat->celsius(), tables.cappedLeast.celsius());
    const Brix least = leastSet.value_or(tables.least), most = mostSet.value_or(tables.most);
    if (const auto read = row.brix()) {
        lot.read = read;
        if (read->degrees() < least.degrees() - printedDigit / 10)
            held(MarkKind::underDensity, read->degrees(), least.degrees());
        else if (read->degrees() > most.degrees() + printedDigit / 10)
            held(MarkKind::overDensity, read->degrees(), most.degrees());
    } else if (lot.book.si() > 0) {
        // Nobody read it: only what is surely off is said.
        const double sure = 2 * lot.bookSd.degrees();
        if (lot.bookByLaw.degrees() + sure < least.degrees())
            held(MarkKind::underDensity, lot.bookByLaw.degrees(), least.degrees());
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

void Ledger::Fold::packed(const DayRow& row) {
    const std::size_t from = vessel(row.text(Key::from), false);
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
    const std::size_t index = found->second;
    LotSize* size = sizeOf(lots[index], row);
    if (!size) {
        LotSize made;
        made.size = Volume::ofSi(*row.si(Key::size));
        made.written = row.text(Key::size);
        made.of = row.text(Key::of);
        lots[index].sizes.push_back(std::move(made));
        size = &lots[index].sizes.back();
    }
    const auto number = static_cast<std::uint32_t>(size - lots[index].sizes.data());
    const auto good = static_cast<long long>(row.value->si);
    const double broken = row.si(Key::broken).value_or(0), count = static_cast<double>(good) + broken;
    // What is known of its colour and taste before it may be emptied.
    const std::optional<double> light = vessels[from].light;
    const std::string lightClass = vessels[from].lightClass, flavour = vessels[from].flavour;
    Taken taken = pour(from, size->size * count);
    Lot& lot = lots[index];
    size = &lot.sizes[number];
    const auto shareOf = [&taken](double share) {
        std::vector<Strand> strands = taken.strands;
        for (Strand& strand : strands) {
            strand.sugar *= share;
            strand.left *= share;
        }
        return strands;
    };
    const double share = count > 0 ? static_cast<double>(good) / count : 0;
    const double sugar = taken.liquid.sugar * share;
    size->knots.emplace_back(thread.tie(KnotKind::lot, static_cast<std::uint32_t>(index), now, sugar, shareOf(share)),
                             sugar);
    size->made += good;
    size->broken += static_cast<long long>(broken);
    size->sugar += sugar;
    balance.packed += sugar;
    if (broken > 0)
        lose("broken", vessels[from].name, taken.liquid.part(1 - share), shareOf(1 - share));
    lot.taint |= taken.taint;
    lot.book = taken.liquid.brix();
    lot.bookSd = taken.liquid.error();
    lot.bookByLaw = taken.liquid.byLaw();
    if (!lot.light)
        lot.light = light;
    if (lot.lightClass.empty())
        lot.lightClass = lightClass;
    if (lot.flavour.empty())
        lot.flavour = flavour;
    if (const auto laid = row.si(Key::laid))
        lot.laid = Duration{*laid};
    judge(lot, row);
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
    if (!size)
        size = &lot.sizes[0]; // which one nobody said
    const auto count = static_cast<long long>(row.value->si);
    if (row.deed == Deed::destroyed) {
        size->destroyed += count;
    } else {
        const bool back = row.deed == Deed::came_back;
        const Key who = back && row.of(Key::from) ? Key::from : Key::to;
        const std::string buyer{row.text(who)};
        const auto number = static_cast<std::size_t>(size - lot.sizes.data());
        auto there = std::find_if(tables.deliveries.begin(), tables.deliveries.end(), [&](const Delivery& one) {
            return one.lot == found->second && one.size == number && one.sizeKnown == sizeKnown &&
                   nameKey(one.buyer) == nameKey(buyer);
        });
        if (there == tables.deliveries.end()) {
            Delivery made;
            made.buyer = buyer;
            for (const Delivery& other : tables.deliveries)
                if (nameKey(other.buyer) == nameKey(buyer)) {
                    made.buyer = other.buyer;
                    break;
                }
            made.lot = found->second;
            made.size = number;
            made.first = now;
            made.sizeKnown = sizeKnown;
            there = tables.deliveries.insert(tables.deliveries.end(), std::move(made));
        }
        (back ? there->back : there->sent) += count;
        if (const auto price = numberIn(row.text(Key::price)); price && !back) {
            there->paid += *price * static_cast<double>(count);
            there->pricedCount += count;
        }
        (back ? size->back : size->shipped) += count;
    }
    if (size->here() < 0)
        mark(MarkKind::shippedTooMany, lot.code, static_cast<double>(-size->here()));
}

} // namespace panside
