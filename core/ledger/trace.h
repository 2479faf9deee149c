#pragma once
// A trace: behind a lot, a vessel or a night all that its sugar came through; before it all that its sugar went into.
// Shares are of the sugar of what is asked about. What nobody measured joins without a share; a small share is never
// dropped, and what shares nothing is not in it.
#include "core/ledger/ledger.h"

namespace panside {

enum class TraceKind : std::uint8_t {
    gathered,
    bought,
    tank,
    night,
    draw,
    check,
    vessel,
    press,
    aid,
    defoamer,
    lot,
    buyer,
    hole
};
std::string_view nameOf(TraceKind kind);

struct TraceEntry {
    TraceKind kind;
    std::string name;
    Instant at{};                 // the row's own
    std::optional<double> share;  // none: it joins, and nobody knows how much
    std::optional<Volume> volume; // that share of what is asked about, at 20 degC
    std::optional<long long> count = {};
    std::string size = {}, lot = {};   // as first written
    std::optional<Instant> until = {}; // of a hole
};

struct Trace {
    TraceKind kind;
    std::string of;
    Instant at{};
    Volume volume;
    double sugar = 0; // kg
    Brix brix{}, brixSd{};
    std::vector<TraceEntry> behind, before; // by time
};

// By the name of a lot, a vessel or a night (its local date, its shift, or how that begins); else of whoever sold or
// gave sap, of filter aid, of a defoamer. nullopt: nothing has that name.
std::optional<Trace> traceOf(const Ledger& ledger, std::string_view name);
// Names that are like it, the nearest first.
enum class Like { anything, lot };
std::vector<std::string> namesLike(const Ledger& ledger, std::string_view name, Like wanted = Like::anything);

} // namespace panside
