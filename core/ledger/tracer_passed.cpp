// What the sugar passed: vessels, nights, defoamers, days without a row.
#include "core/ledger/tracer.h"

#include <algorithm>

namespace panside {

// The share whose way back meets one of them: the first that it meets counts, so that what came by twice counts once.
double Tracer::through(const auto& isOne) const {
    double met = 0;
    const auto sweep = [&](const TraceSubject::Begins& begins, std::uint32_t cut) {
        std::vector<double> share(begins.empty() ? 0 : reach_.size());
        for (const auto& begin : begins)
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
                if (!strand.unknown && sugar > 0 && !thread_.comesAgain(static_cast<Knot>(knot), strand.from, cut))
                    share[strand.from] += share[knot] * std::min(1.0, strand.sugar / sugar);
        }
    };
    sweep(subject_.behind, subject_.cut);
    sweep(subject_.found, noKnot);
    return met;
}

void Tracer::addVessels(bool back) {
    const auto& vessels = ledger_.vessels();
    std::vector<Reach> sums(vessels.size());
    for (const Knot knot : reached_) {
        const KnotData& data = thread_[knot];
        const Reach& reach = reach_[knot];
        if (data.kind != KnotKind::content)
            continue;
        Reach& sum = sums[data.what];
        sum.unknown = true;
        for (const Strand& strand : thread_.strandsOf(knot)) {
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

bool Tracer::drainedOf(Knot knot, const auto& isOne) const {
    return thread_[knot].kind == KnotKind::drained &&
           std::ranges::any_of(thread_.strandsOf(knot), [&](const Strand& strand) { return isOne(strand.from); });
}

void Tracer::addNights(bool back) {
    const auto& nights = ledger_.nights();
    const auto& draws = ledger_.tables().draws;
    for (std::size_t n = 0; n < nights.size(); ++n) {
        if (std::ranges::find(subject_.nights, n) != subject_.nights.end())
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
        for (const auto& begin : back ? TraceSubject::Begins{} : subject_.before)
            if (isOne(begin.knot) || drainedOf(begin.knot, isOne)) { // what left its pans and is asked about itself
                sum.share += begin.share;
                sum.unknown = true;
            }
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

// Sugar that was there before a silent stretch and is asked about after it has passed through it.
void Tracer::addHoles() {
    const auto& holes = ledger_.tables().holes;
    std::vector<std::size_t> silent;
    for (std::size_t i = 0; i < holes.size(); ++i)
        if (!holes[i].source)
            silent.push_back(i);
    std::vector<Reach> sums(silent.size());
    for (std::size_t k = 0; k < reached_.size() && !silent.empty(); ++k) {
        const Knot knot = reached_[k];
        const KnotData& data = thread_[knot];
        for (const Strand& strand : thread_.strandsOf(knot)) {
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

} // namespace panside
