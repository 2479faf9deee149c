#include "core/ledger/trace.h"

#include "core/boil/day_vocabulary.h"
#include "core/boil/shift_log.h"

#include <algorithm>
#include <array>
#include <numeric>

namespace panside {
namespace {

using Begins = std::vector<Thread::Begin>;

// So many knots times sweeps are swept for exact shares of what passes twice; beyond it the plain sum stands.
constexpr std::size_t mostSweeps = 20'000'000;

struct Subject {
    Trace trace;
    Begins behind, before;
    Volume behindVolume, beforeVolume;
    std::optional<std::size_t> vessel, lot;
    int night = -1;
};

Begins beginsOf(const std::vector<std::pair<Knot, double>>& knots) {
    const double all =
        std::accumulate(knots.begin(), knots.end(), 0.0, [](double sum, const auto& one) { return sum + one.second; });
    Begins begins;
    for (const auto& [knot, sugar] : knots)
        begins.push_back({knot, all > 0 ? sugar / all : 0});
    return begins;
}

class Tracer {
public:
    Tracer(const Ledger& ledger, const Subject& subject)
        : ledger_{ledger}, thread_{ledger.thread()}, subject_{subject} {}
    std::vector<TraceEntry> behind();
    std::vector<TraceEntry> before();

private:
    void add(TraceKind kind, std::string name, Instant at, const Reach& reach);
    void addHoles();
    double through(const auto& isOne) const; // backward
    std::vector<TraceEntry> sorted();
    void addPoints(bool back);
    void addVessels(bool back);
    void addNights(bool back);
    void addDefoamers();
    void addLots();
    void addBuyers();
    Reach reachOf(std::size_t lot, const LotSize& size) const;
    bool isOf(Knot knot, KnotKind kind, std::size_t what) const {
        return thread_[knot].kind == kind && thread_[knot].what == what;
    }

    const Ledger& ledger_;
    const Thread& thread_;
    const Subject& subject_;
    Volume volume_;
    std::vector<Reach> reach_;
    std::vector<TraceEntry> entries_;
    bool exact_ = true;
};

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

// The share whose way back meets one of them: the first that it meets counts, so that what came by twice counts once.
double Tracer::through(const auto& isOne) const {
    std::vector<double> share(reach_.size());
    double met = 0;
    for (const auto& begin : subject_.behind)
        share[begin.knot] += begin.share;
    for (std::size_t knot = share.size(); knot-- > 0;) {
        if (share[knot] <= 0)
            continue;
        if (isOne(static_cast<Knot>(knot))) {
            met += share[knot];
            continue;
        }
        const double sugar = thread_[static_cast<Knot>(knot)].sugar;
        for (const Strand& strand : thread_.strandsOf(static_cast<Knot>(knot)))
            if (!strand.unknown && sugar > 0)
                share[strand.from] += share[knot] * std::min(1.0, strand.sugar / sugar);
    }
    return met;
}

// What is a knot of its own: gatherings, draws with their checks, press runs with their aid, sugar from nowhere.
void Tracer::addPoints(bool back) {
    const LedgerTables& tables = ledger_.tables();
    for (std::size_t knot = 0; knot < reach_.size(); ++knot) {
        const Reach& reach = reach_[knot];
        const KnotData& data = thread_[static_cast<Knot>(knot)];
        if (!reach.is())
            continue;
        if (data.kind == KnotKind::gathered && back) {
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
        } else if (data.kind == KnotKind::sold && !back) {
            const SoldRow& row = tables.sold[data.what];
            add(TraceKind::buyer, row.buyer, row.at, reach);
        } else if (data.kind == KnotKind::unwritten && back) {
            const Hole& hole = tables.holes[data.what];
            add(TraceKind::hole, hole.vessel, hole.from, reach);
            entries_.back().until = hole.to;
        }
    }
    for (const CheckRow& check : tables.checks)
        if (check.draw != SIZE_MAX) {
            const Knot knot = tables.draws[check.draw].knot;
            if (knot < reach_.size())
                add(TraceKind::check, check.name, check.at, reach_[knot]);
        }
}

void Tracer::addVessels(bool back) {
    const auto& vessels = ledger_.vessels();
    std::vector<Reach> sums(vessels.size());
    for (std::size_t knot = 0; knot < reach_.size(); ++knot) {
        const KnotData& data = thread_[static_cast<Knot>(knot)];
        const Reach& reach = reach_[knot];
        if (data.kind != KnotKind::content || !reach.is())
            continue;
        Reach& sum = sums[data.what];
        sum.unknown = true;
        for (const Strand& strand : thread_.strandsOf(static_cast<Knot>(knot))) {
            if (isOf(strand.from, KnotKind::content, data.what) || strand.unknown)
                continue;
            if (back && data.sugar > 0)
                sum.share += reach.share * std::min(1.0, strand.sugar / data.sugar);
            else if (!back && thread_[strand.from].sugar > 0)
                sum.share += reach_[strand.from].share * std::min(1.0, strand.left / thread_[strand.from].sugar);
        }
    }
    for (std::size_t i = 0; i < vessels.size(); ++i) {
        if (!sums[i].unknown || subject_.vessel == i)
            continue;
        if (back && exact_ && sums[i].share > 0)
            sums[i].share = through([&](Knot knot) { return isOf(knot, KnotKind::content, i); });
        add(isTankKind(vessels[i].kind) ? TraceKind::tank : TraceKind::vessel, vessels[i].name, vessels[i].since,
            sums[i]);
    }
}

void Tracer::addNights(bool back) {
    const auto& nights = ledger_.nights();
    const auto& draws = ledger_.tables().draws;
    for (std::size_t n = 0; n < nights.size(); ++n) {
        if (subject_.night == static_cast<int>(n))
            continue;
        const auto isOne = [&](Knot knot) {
            return isOf(knot, KnotKind::pans, static_cast<std::size_t>(nights[n].shift)) ||
                   (thread_[knot].kind == KnotKind::draw && draws[thread_[knot].what].night == static_cast<int>(n));
        };
        Reach sum;
        const auto look = [&](Knot knot) {
            if (knot >= reach_.size() || !reach_[knot].is())
                return;
            sum.unknown = true;
            for (const Strand& strand : thread_.strandsOf(knot))
                if (!back && !strand.unknown && !isOne(strand.from) && thread_[strand.from].sugar > 0)
                    sum.share += reach_[strand.from].share * std::min(1.0, strand.left / thread_[strand.from].sugar);
        };
        for (const Knot knot : nights[n].pans)
            look(knot);
        for (const auto& [knot, sugar] : nights[n].draws)
            look(knot);
        if (back && sum.unknown)
            sum.share = through(isOne);
        add(TraceKind::night, nights[n].date, nights[n].first, sum);
    }
}

void Tracer::addDefoamers() {
    for (const DefoamerRow& row : ledger_.tables().defoamers) {
        if (row.firstPans == noKnot || row.firstPans >= reach_.size())
            continue;
        const auto isOne = [&](Knot knot) {
            return thread_[knot].kind == KnotKind::pans && knot >= row.firstPans && knot <= row.lastPans;
        };
        Reach sum;
        for (Knot knot = row.firstPans; knot <= row.lastPans && knot < reach_.size(); ++knot)
            sum.unknown |= isOne(knot) && reach_[knot].is();
        if (sum.unknown)
            sum.share = through(isOne);
        add(TraceKind::defoamer, row.name, row.at, sum);
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

// Sugar that was there before a silent stretch and is asked about after it has passed through it.
void Tracer::addHoles() {
    const auto& holes = ledger_.tables().holes;
    std::vector<std::size_t> silent;
    for (std::size_t i = 0; i < holes.size(); ++i)
        if (!holes[i].source)
            silent.push_back(i);
    std::vector<Reach> sums(silent.size());
    for (std::size_t knot = 0; knot < reach_.size() && !silent.empty(); ++knot) {
        if (!reach_[knot].is())
            continue;
        const KnotData& data = thread_[static_cast<Knot>(knot)];
        for (const Strand& strand : thread_.strandsOf(static_cast<Knot>(knot))) {
            const std::int64_t from = thread_[strand.from].at;
            for (std::size_t i = 0; i < silent.size(); ++i) {
                const Hole& hole = holes[silent[i]];
                if (from > hole.from.time_since_epoch().count() || data.at < hole.to.time_since_epoch().count())
                    continue;
                sums[i].unknown = true;
                if (!strand.unknown && data.sugar > 0)
                    sums[i].share += reach_[knot].share * std::min(1.0, strand.sugar / data.sugar);
            }
        }
    }
    for (std::size_t i = 0; i < silent.size(); ++i) {
        const std::size_t before = entries_.size();
        const Hole& hole = holes[silent[i]];
        add(TraceKind::hole, "nothing written", hole.from, sums[i]);
        if (entries_.size() > before)
            entries_.back().until = hole.to;
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

std::vector<TraceEntry> Tracer::behind() {
    volume_ = subject_.behindVolume;
    reach_ = thread_.behind(subject_.behind);
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
    addPoints(false);
    addVessels(false);
    addNights(false);
    addLots();
    addBuyers();
    addHoles();
    return sorted();
}

Subject lotSubject(const Ledger& ledger, std::size_t index) {
    const Lot& lot = ledger.lots()[index];
    Subject subject;
    subject.trace = {TraceKind::lot, lot.code, lot.packed, lot.volume(), lot.sugar(), lot.book, lot.bookSd, {}, {}};
    std::vector<std::pair<Knot, double>> knots;
    for (const LotSize& size : lot.sizes)
        knots.insert(knots.end(), size.knots.begin(), size.knots.end());
    subject.behind = subject.before = beginsOf(knots);
    subject.behindVolume = subject.beforeVolume = lot.volume();
    subject.lot = index;
    return subject;
}

Subject vesselSubject(const Ledger& ledger, std::size_t index) {
    const Vessel& vessel = ledger.vessels()[index];
    Subject subject;
    const TraceKind kind = isTankKind(vessel.kind) ? TraceKind::tank : TraceKind::vessel;
    subject.trace = {kind,
                     vessel.name,
                     vessel.since,
                     vessel.content.volume(),
                     vessel.content.sugar,
                     vessel.content.brix(),
                     Brix::ofSi(vessel.content.sd),
                     {},
                     {}};
    subject.before = beginsOf(vessel.filling);
    subject.beforeVolume = vessel.taken;
    if (vessel.knot != noKnot) { // what is in it now
        subject.behind = {{vessel.knot, vessel.content.sugar > 0 ? 1.0 : 0.0}};
        subject.behindVolume = vessel.content.volume();
    } else { // all that it ever held
        subject.behind = subject.before;
        subject.behindVolume = subject.beforeVolume;
    }
    subject.vessel = index;
    return subject;
}

Subject nightSubject(const Ledger& ledger, std::size_t index) {
    const Night& night = ledger.nights()[index];
    Subject subject;
    const double drawn = night.drawnSugar;
    subject.trace = {TraceKind::night, night.date, night.first, night.drawn, drawn, {}, {}, {}, {}};
    if (night.drawn.si() > 0)
        subject.trace.brix = liquidHolding(night.drawn, drawn).brix();
    std::vector<std::pair<Knot, double>> all = night.draws;
    if (night.draws.empty() && night.endKnot != noKnot)
        subject.behind = {{night.endKnot, night.left > 0 ? 1.0 : 0.0}};
    else
        subject.behind = beginsOf(night.draws);
    if (night.endKnot != noKnot)
        all.emplace_back(night.endKnot, std::max(0.0, night.left));
    subject.before = beginsOf(all);
    subject.behindVolume = night.drawn;
    const double whole = drawn + std::max(0.0, night.left);
    subject.beforeVolume = drawn > 0 ? night.drawn * (whole / drawn) : Volume{};
    subject.night = static_cast<int>(index);
    return subject;
}

// Whoever gave or sold sap or syrup, filter aid, or what was used against foam.
std::optional<Subject> otherSubject(const Ledger& ledger, std::string_view name) {
    const std::string key = nameKey(name);
    const LedgerTables& tables = ledger.tables();
    const Thread& thread = ledger.thread();
    std::vector<std::pair<Knot, double>> knots;
    Subject subject;
    subject.trace.kind = TraceKind::gathered;
    const auto found = [&](TraceKind kind, const std::string& its, Instant at, Knot knot, double sugar, Volume volume) {
        if (knots.empty()) {
            subject.trace.kind = kind;
            subject.trace.of = its;
            subject.trace.at = at;
        }
        knots.emplace_back(knot, sugar);
        subject.trace.volume += volume;
        subject.trace.sugar += sugar;
    };
    for (Knot knot = 0; knot < thread.size(); ++knot) {
        const KnotData& data = thread[knot];
        if (data.kind == KnotKind::gathered) {
            const GatheredRow& row = tables.gathered[data.what];
            if (nameKey(row.name) == key)
                found(row.bought ? TraceKind::bought : TraceKind::gathered, row.name, row.at, knot, row.liquid.sugar,
                      row.liquid.volume());
        } else if (data.kind == KnotKind::press) {
            const PressRow& row = tables.presses[data.what];
            if (!row.aid.empty() && nameKey(row.aid) == key)
                found(TraceKind::aid, row.aid, row.at, knot, data.sugar, row.through);
        } else if (data.kind == KnotKind::draw) {
            const DrawRow& draw = tables.draws[data.what];
            for (const DefoamerRow& row : tables.defoamers)
                if (nameKey(row.name) == key)
                    for (const Strand& strand : thread.strandsOf(knot))
                        if (strand.from >= row.firstPans && strand.from <= row.lastPans && row.firstPans != noKnot) {
                            found(TraceKind::defoamer, row.name, row.at, knot, draw.liquid.sugar, draw.liquid.volume());
                            break;
                        }
        }
    }
    if (knots.empty())
        return std::nullopt;
    subject.before = beginsOf(knots);
    subject.beforeVolume = subject.trace.volume;
    return subject;
}

std::optional<Subject> subjectNamed(const Ledger& ledger, std::string_view name) {
    if (const auto lot = ledger.lotNamed(name))
        return lotSubject(ledger, *lot);
    if (const auto vessel = ledger.vesselNamed(name))
        return vesselSubject(ledger, *vessel);
    const auto& nights = ledger.nights();
    const auto instant = instantIn(name);
    for (std::size_t i = 0; i < nights.size(); ++i)
        if (nights[i].date == name || (instant && (nights[i].id == *instant || nights[i].first == *instant)) ||
            textOf(nights[i].id) == name)
            return nightSubject(ledger, i);
    std::optional<std::size_t> begun;
    for (std::size_t i = 0; i < nights.size(); ++i)
        if (name.size() >= 10 && textOf(nights[i].id).starts_with(name)) {
            if (begun)
                return std::nullopt; // more than one begins so
            begun = i;
        }
    if (begun)
        return nightSubject(ledger, *begun);
    return otherSubject(ledger, name);
}

} // namespace

std::string_view nameOf(TraceKind kind) {
    constexpr std::array<std::string_view, 13> names{"gathered", "bought", "tank",  "night", "draw",
                                                     "check",    "vessel", "press", "aid",   "defoamer",
                                                     "lot",      "buyer",  "hole"};
    return names[static_cast<std::size_t>(kind)];
}

std::optional<Trace> traceOf(const Ledger& ledger, std::string_view name) {
    auto subject = subjectNamed(ledger, name);
    if (!subject)
        return std::nullopt;
    if (!subject->behind.empty())
        subject->trace.behind = Tracer{ledger, *subject}.behind();
    if (!subject->before.empty())
        subject->trace.before = Tracer{ledger, *subject}.before();
    return std::move(subject->trace);
}

std::vector<std::string> namesLike(const Ledger& ledger, std::string_view name) {
    const std::string key = nameKey(name);
    std::vector<std::pair<std::size_t, std::string>> all;
    for (const Vessel& vessel : ledger.vessels())
        all.emplace_back(lettersBetween(nameKey(vessel.name), key), vessel.name);
    for (const Lot& lot : ledger.lots())
        all.emplace_back(lettersBetween(nameKey(lot.code), key), lot.code);
    for (const Night& night : ledger.nights())
        all.emplace_back(lettersBetween(night.date, key), night.date);
    std::stable_sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<std::string> names;
    for (const auto& [distance, one] : all)
        if (names.size() < 3 && distance <= std::max<std::size_t>(2, key.size() / 2))
            names.push_back(one);
    return names;
}

} // namespace panside
