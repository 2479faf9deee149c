#pragma once
// Where sugar came from and where it went: a net of knots, each made of parts of earlier ones. A knot is never changed;
// what flows into a vessel makes a new one of what was there and what came. Shares of sugar are worked out when they
// are asked for, in one sweep over the knots, so that the fold costs the same for each row however long the season.
#include "core/quantity/quantity.h"

#include <cstdint>
#include <span>
#include <vector>

namespace panside {

using Knot = std::uint32_t;
inline constexpr Knot noKnot = UINT32_MAX;

enum class KnotKind : std::uint8_t {
    gathered,
    bought,
    content,
    pans,
    draw,
    drained,
    press,
    lot,
    sold,
    lost,
    unwritten
};

// Some sugar of an earlier knot; `unknown`: nobody knows how much, and yet there is some.
struct Strand {
    Knot from;
    bool unknown;
    double sugar; // kg, as it counts in the new knot
    double left;  // kg, as it left the earlier one: less where a dip found more than the book had
};
inline Strand strandOf(Knot from, double sugar) { return {from, false, sugar, sugar}; }
inline Strand unmeasured(Knot from) { return {from, true, 0, 0}; }

struct KnotData {
    std::int64_t at;       // microseconds since 1970 UTC
    double sugar;          // kg, all of it when it was made
    std::uint32_t strands; // where its own begin
    std::uint32_t what;    // which gathering, vessel, draw … by kind
    KnotKind kind;
};

// What reaches a knot from the one that is asked about.
struct Reach {
    double share = 0;     // of the sugar asked about
    bool unknown = false; // some way to it leads through a strand that nobody measured
    bool is() const { return share > 0 || unknown; }
};

class Thread {
public:
    // Strands without sugar that are known hold nothing together and are left out.
    Knot tie(KnotKind kind, std::uint32_t what, Instant at, double sugar, std::span<const Strand> strands);
    std::size_t size() const { return knots_.size(); }
    const KnotData& operator[](Knot knot) const { return knots_[knot]; }
    std::span<const Strand> strandsOf(Knot knot) const;

    struct Begin {
        Knot knot;
        double share; // of all that is asked about; they add up to 1
    };
    // For each knot, which share of what is asked about came through it. A knot that only an unknown strand reaches has
    // no share. What comes again into `vessel` out of another counts where it first came in, and is not followed here.
    std::vector<Reach> behind(std::span<const Begin> of, std::uint32_t vessel = noKnot) const;
    bool comesAgain(Knot knot, Knot from, std::uint32_t vessel) const {
        const auto isIn = [&](Knot one) { return knots_[one].kind == KnotKind::content && knots_[one].what == vessel; };
        return vessel != noKnot && isIn(from) && !isIn(knot);
    }
    // The share of it that comes again.
    double again(std::span<const Begin> of, std::uint32_t vessel) const;
    // For each knot, which share of what is asked about went into it.
    std::vector<Reach> before(std::span<const Begin> of) const;

private:
    std::vector<KnotData> knots_;
    std::vector<Strand> strands_;
};

} // namespace panside
