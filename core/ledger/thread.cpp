#include "core/ledger/thread.h"

#include <algorithm>

namespace panside {

Knot Thread::tie(KnotKind kind, std::uint32_t what, Instant at, double sugar, std::span<const Strand> strands) {
    const auto knot = static_cast<Knot>(knots_.size());
    knots_.push_back({at.time_since_epoch().count(), sugar, static_cast<std::uint32_t>(strands_.size()), what, kind});
    for (const Strand& strand : strands)
        if (strand.from != noKnot && (strand.unknown || strand.sugar > 0))
            strands_.push_back(strand);
    return knot;
}

std::span<const Strand> Thread::strandsOf(Knot knot) const {
    const std::size_t from = knots_[knot].strands;
    const std::size_t to = knot + 1 < knots_.size() ? knots_[knot + 1].strands : strands_.size();
    return {strands_.data() + from, to - from};
}

double Thread::again(std::span<const Begin> of, std::uint32_t vessel) const {
    const auto reach = behind(of, vessel);
    double share = 0;
    for (Knot knot = 0; knot < reach.size(); ++knot)
        for (const Strand& strand : reach[knot].share > 0 ? strandsOf(knot) : std::span<const Strand>{})
            if (!strand.unknown && knots_[knot].sugar > 0 && comesAgain(knot, strand.from, vessel))
                share += reach[knot].share * std::min(1.0, strand.sugar / knots_[knot].sugar);
    return share;
}

std::vector<Reach> Thread::behind(std::span<const Begin> of, std::uint32_t vessel) const {
    Knot last = 0;
    for (const Begin& begin : of)
        last = std::max(last, begin.knot);
    std::vector<Reach> reach(of.empty() ? 0 : last + std::size_t{1});
    for (const Begin& begin : of) {
        reach[begin.knot].share += begin.share;
        reach[begin.knot].unknown |= begin.share <= 0;
    }
    for (std::size_t knot = reach.size(); knot-- > 0;) {
        const Reach here = reach[knot];
        if (!here.is())
            continue;
        const double sugar = knots_[knot].sugar;
        for (const Strand& strand : strandsOf(static_cast<Knot>(knot))) {
            if (comesAgain(static_cast<Knot>(knot), strand.from, vessel))
                continue;
            Reach& there = reach[strand.from];
            if (!strand.unknown && sugar > 0 && here.share > 0)
                there.share += here.share * std::min(1.0, strand.sugar / sugar);
            else
                there.unknown = true;
        }
    }
    return reach;
}

std::vector<Reach> Thread::before(std::span<const Begin> of) const {
    std::vector<Reach> reach(knots_.size());
    Knot first = static_cast<Knot>(knots_.size());
    for (const Begin& begin : of) {
        reach[begin.knot].share += begin.share;
        reach[begin.knot].unknown |= begin.share <= 0;
        first = std::min(first, begin.knot);
    }
    for (std::size_t knot = first; knot < knots_.size(); ++knot)
        for (const Strand& strand : strandsOf(static_cast<Knot>(knot))) {
            const Reach& here = reach[strand.from];
            if (!here.is())
                continue;
            const double sugar = knots_[strand.from].sugar;
            if (!strand.unknown && sugar > 0 && here.share > 0)
                reach[knot].share += here.share * std::min(1.0, strand.left / sugar);
            else
                reach[knot].unknown = true;
        }
    return reach;
}

} // namespace panside
