#include "core/ledger/touched.h"

#include "core/boil/day_vocabulary.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <utility>

namespace panside {
namespace {

// Knots that the entry made, each with its sugar; of those whose sugar is no measure of it none.
std::vector<Thread::Begin> knotsOf(const Ledger& ledger, const Fact& entry) {
    std::vector<Thread::Begin> begins;
    const LedgerTables& tables = ledger.tables();
    if (std::holds_alternative<DensityCheck>(entry.what)) {
        for (const CheckRow& check : tables.checks)
            if (check.at == entry.at && check.draw != SIZE_MAX)
                begins.push_back({tables.draws[check.draw].knot, tables.draws[check.draw].liquid.sugar});
        return begins;
    }
    const bool draws = std::holds_alternative<DrawClosed>(entry.what);
    const auto* day = std::get_if<DayRow>(&entry.what);
    const bool comes = std::holds_alternative<SapIn>(entry.what) ||
                       (day && (day->deed == Deed::gathered || day->deed == Deed::bought));
    const std::int64_t at = entry.at.time_since_epoch().count();
    const Thread& thread = ledger.thread();
    for (Knot knot = 0; knot < thread.size(); ++knot) {
        const KnotData& data = thread[knot];
        if (data.at != at || (draws && data.kind != KnotKind::draw))
            continue;
        if (data.kind == KnotKind::draw || (comes && data.kind == KnotKind::gathered))
            begins.push_back({knot, data.sugar});
        else if (!draws && !comes)
            begins.push_back({knot, 0});
    }
    return begins;
}

bool isSame(const Lot& one, const Lot& other) {
    return std::abs((one.book - other.book).degrees()) < 0.05 && one.held == other.held && one.taint == other.taint;
}

void addGoods(TouchedLot& touched, const Ledger& ledger, std::size_t lot) {
    for (const LotSize& size : ledger.lots()[lot].sizes)
        touched.sizes.emplace_back(size.written, size.made);
    for (const Delivery& delivery : ledger.tables().deliveries) {
        if (delivery.lot != lot || delivery.count() <= 0)
            continue;
        const auto known = std::ranges::find_if(
            touched.buyers, [&](const auto& one) { return nameKey(one.first) == nameKey(delivery.buyer); });
        if (known == touched.buyers.end())
            touched.buyers.emplace_back(delivery.buyer, delivery.count());
        else
            known->second += delivery.count();
    }
}

TouchedLot comparedTo(const Ledger& before, std::size_t index, const Lot* now) {
    const Lot& lot = before.lots()[index];
    TouchedLot touched;
    touched.code = lot.code;
    touched.was = lot.book;
    touched.heldWas = lot.held;
    touched.taintWas = lot.taint;
    touched.gone = !now;
    if (now) {
        touched.is = now->book;
        touched.heldIs = now->held;
        touched.taintIs = now->taint;
    }
    addGoods(touched, before, index);
    return touched;
}

std::string goodsOf(const TouchedLot& lot) {
    std::string goods;
    const auto add = [&](std::string_view between, const std::string& words) {
        goods += goods.empty() ? "" : between;
        goods += words;
    };
    for (const auto& [size, count] : lot.sizes)
        add(", ", fmt::format("{} × {}", count, size));
    std::string_view between = "; ";
    for (const auto& [buyer, count] : lot.buyers)
        add(std::exchange(between, ", "), fmt::format("{} {}", buyer, count));
    return goods;
}

} // namespace

std::vector<TouchedLot> lotsChanged(const Ledger& before, const Ledger& after) {
    std::vector<TouchedLot> all;
    for (std::size_t i = 0; i < before.lots().size(); ++i) {
        const auto now = after.lotNamed(before.lots()[i].code);
        if (!now || !isSame(before.lots()[i], after.lots()[*now]))
            all.push_back(comparedTo(before, i, now ? &after.lots()[*now] : nullptr));
    }
    return all;
}

std::string sentence(const TouchedLot& lot) {
    std::vector<std::string> changed;
    if (lot.gone)
        changed.push_back("it is no lot any more");
    else if (std::abs((lot.is - lot.was).degrees()) >= 0.05)
        changed.push_back(fmt::format("{:.1f} °Brix by the book, before {:.1f}", lot.is.degrees(), lot.was.degrees()));
    if (!lot.gone && lot.heldIs != lot.heldWas)
        changed.push_back(lot.heldIs ? "held from now on" : "no longer held");
    if (lot.taintIs.milk && !lot.taintWas.milk)
        changed.push_back("milk in it");
    if (lot.taintIs.lead && !lot.taintWas.lead)
        changed.push_back("lead in it");
    if (lot.taintIs.ropy && !lot.taintWas.ropy)
        changed.push_back("ropy sap in it");
    if (!lot.taintIs.off.empty() && lot.taintIs.off != lot.taintWas.off)
        changed.push_back("an off-flavour: " + lot.taintIs.off);
    return fmt::format("lot {} ({}): {}.", lot.code, goodsOf(lot),
                       changed.empty() ? "its thread is another" : fmt::format("{}", fmt::join(changed, "; ")));
}

std::vector<TouchedLot> lotsTouched(const Ledger& before, const Fact& entry, const Ledger& after) {
    const auto begins = knotsOf(before, entry);
    const auto reach = begins.empty() ? std::vector<Reach>{} : before.thread().before(begins);
    std::vector<TouchedLot> all;
    for (std::size_t i = 0; i < before.lots().size(); ++i) {
        const Lot& lot = before.lots()[i];
        Reach sum;
        for (const LotSize& size : lot.sizes)
            for (const auto& [knot, sugar] : size.knots)
                if (knot < reach.size()) {
                    sum.share += reach[knot].share;
                    sum.unknown |= reach[knot].is();
                }
        const auto now = after.lotNamed(lot.code);
        if (!sum.is() && now && isSame(lot, after.lots()[*now]))
            continue;
        TouchedLot touched = comparedTo(before, i, now ? &after.lots()[*now] : nullptr);
        if (sum.share > 0 && lot.sugar() > 0)
            touched.share = std::min(1.0, sum.share / lot.sugar());
        else if (!sum.is())
            touched.share = 0;
        all.push_back(std::move(touched));
    }
    return all;
}

} // namespace panside
