#include "core/ledger/tracer.h"

#include <algorithm>
#include <array>

namespace panside {
namespace {

// So many knots times sweeps are swept for exact shares of what passes twice; beyond it the plain sum stands.
constexpr std::size_t mostSweeps = 20'000'000;

} // namespace

void Tracer::add(TraceKind kind, std::string name, Instant at, const Reach& reach) {
    if (!reach.is())
        return;
    TraceEntry entry{kind, std::move(name), at, std::nullopt, std::nullopt};
    if (reach.share > 0) {
        entry.share = std::min(1.0, reach.share);
        entry.volume = volume_ * *entry.share;
    }
    entries_.push_back(std::move(entry));
}

// What is a knot of its own: gatherings, draws with their checks, press runs with their aid, sugar from nowhere.
bool Tracer::isPoint(KnotKind kind, bool back) const {
    return kind == KnotKind::draw || kind == KnotKind::press ||
           (back ? kind == KnotKind::gathered || kind == KnotKind::unwritten : kind == KnotKind::sold);
}

void Tracer::addPoint(Knot knot, bool back) {
    const LedgerTables& tables = ledger_.tables();
    const Reach& reach = reach_[knot];
    const KnotData& data = thread_[knot];
    if (data.kind == KnotKind::gathered) {
        const GatheredRow& row = tables.gathered[data.what];
        add(row.bought ? TraceKind::bought : TraceKind::gathered, row.name, row.at,
            row.sugarAssumed ? Reach{0, true} : reach);
    } else if (data.kind == KnotKind::draw) {
        const DrawRow& row = tables.draws[data.what];
        add(TraceKind::draw, row.to.empty() ? "where to?" : row.to, row.at, reach);
    } else if (data.kind == KnotKind::press) {
        const PressRow& row = tables.presses[data.what];
        add(TraceKind::press, row.to, row.at, reach);
        if (!row.aid.empty() && back)
            add(TraceKind::aid, row.aid, row.at, reach);
    } else if (data.kind == KnotKind::sold) {
        const SoldRow& row = tables.sold[data.what];
        add(TraceKind::buyer, row.buyer, row.at, reach);
    } else {
        const Hole& hole = tables.holes[data.what];
        add(TraceKind::hole, hole.vessel, hole.from, reach);
        entries_.back().until = hole.to;
    }
}

void Tracer::addPoints(bool back) {
    const LedgerTables& tables = ledger_.tables();
    std::vector<Knot> points;
    for (const Knot knot : reached_)
        if (isPoint(thread_[knot].kind, back))
            points.push_back(knot);
    // Entries are large: room for them is made once.
    entries_.reserve(points.size() + tables.checks.size() + ledger_.vessels().size() + ledger_.nights().size());
    for (const Knot knot : points)
        addPoint(knot, back);
    for (const CheckRow& check : tables.checks)
        if (check.draw != SIZE_MAX) {
            const Knot knot = tables.draws[check.draw].knot;
            if (knot < reach_.size())
                add(TraceKind::check, check.name, check.at, reach_[knot]);
        }
}

Reach Tracer::reachOf(std::size_t lot, const LotSize& size) const {
    Reach sum;
    if (subject_.lot == lot) { // nothing comes after a lot but its buyers
        const double all = ledger_.lots()[lot].sugar();
        return {all > 0 ? size.sugar / all : 0, true};
    }
    for (const auto& [knot, sugar] : size.knots)
        if (knot < reach_.size()) {
            sum.share += reach_[knot].share;
            sum.unknown |= reach_[knot].is();
        }
    return sum;
}

void Tracer::addLots() {
    const auto& lots = ledger_.lots();
    for (std::size_t i = 0; i < lots.size(); ++i)
        for (const LotSize& size : lots[i].sizes) {
            const std::size_t before = entries_.size();
            add(TraceKind::lot, lots[i].code, lots[i].packed, reachOf(i, size));
            if (entries_.size() > before) {
                entries_.back().count = size.made;
                entries_.back().size = size.written;
            }
        }
}

void Tracer::addBuyers() {
    const auto& lots = ledger_.lots();
    for (const Delivery& delivery : ledger_.tables().deliveries) {
        const LotSize& size = lots[delivery.lot].sizes[delivery.size];
        if (delivery.count() <= 0 || (subject_.lot && *subject_.lot != delivery.lot))
            continue; // all of it came back, or it is of another lot
        Reach reach = reachOf(delivery.lot, size);
        if (!reach.is())
            continue;
        const double part = size.made > 0 ? static_cast<double>(delivery.count()) / static_cast<double>(size.made) : 0;
        reach.share = delivery.sizeKnown ? reach.share * part : 0;
        reach.unknown = true;
        add(TraceKind::buyer, delivery.buyer, delivery.first, reach);
        entries_.back().count = delivery.count();
        entries_.back().size = delivery.sizeKnown ? size.written : "";
        entries_.back().lot = lots[delivery.lot].code;
    }
}

std::vector<TraceEntry> Tracer::sorted() {
    const auto earlier = [](const TraceEntry& a, const TraceEntry& b) { return a.at < b.at; };
    // Most of them came by time already: those behind them are sorted in.
    const auto middle = std::is_sorted_until(entries_.begin(), entries_.end(), earlier);
    std::stable_sort(middle, entries_.end(), earlier);
    std::inplace_merge(entries_.begin(), middle, entries_.end(), earlier);
    return std::move(entries_);
}

void Tracer::sweep() {
    for (std::size_t knot = 0; knot < reach_.size(); ++knot)
        if (reach_[knot].is())
            reached_.push_back(static_cast<Knot>(knot));
}

std::vector<TraceEntry> Tracer::behind() {
    volume_ = subject_.behindVolume;
    reach_ = thread_.behind(subject_.behind, subject_.cut);
    const auto found = thread_.behind(subject_.found);
    reach_.resize(std::max(reach_.size(), found.size()));
    for (std::size_t knot = 0; knot < found.size(); ++knot) {
        reach_[knot].share += found[knot].share;
        reach_[knot].unknown |= found[knot].unknown;
    }
    sweep();
    const auto& tables = ledger_.tables();
    exact_ =
        reach_.size() * (ledger_.vessels().size() + ledger_.nights().size() + tables.defoamers.size()) < mostSweeps;
    addPoints(true);
    addVessels(true);
    addNights(true);
    addDefoamers();
    addHoles();
    return sorted();
}

std::vector<TraceEntry> Tracer::before() {
    volume_ = subject_.beforeVolume;
    if (subject_.lot) {
        addBuyers();
        return sorted();
    }
    reach_ = thread_.before(subject_.before);
    sweep();
    addPoints(false);
    addVessels(false);
    addNights(false);
    addLots();
    addBuyers();
    addHoles();
    return sorted();
}

std::string_view nameOf(TraceKind kind) {
    constexpr std::array<std::string_view, 13> names{"gathered", "bought", "tank",  "night", "draw",
                                                     "check",    "vessel", "press", "aid",   "defoamer",
                                                     "lot",      "buyer",  "hole"};
    return names[static_cast<std::size_t>(kind)];
}

std::optional<Trace> traceOf(const Ledger& ledger, std::string_view name) {
    auto subject = traceSubject(ledger, name);
    if (!subject)
        return std::nullopt;
    if (!subject->behind.empty())
        subject->trace.behind = Tracer{ledger, *subject}.behind();
    if (!subject->before.empty())
        subject->trace.before = Tracer{ledger, *subject}.before();
    return std::move(subject->trace);
}

} // namespace panside
