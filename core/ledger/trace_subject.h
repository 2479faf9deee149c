#pragma once
// What a trace is asked about; no one outside this room includes it.
#include "core/ledger/trace.h"

namespace panside {

struct TraceSubject {
    using Begins = std::vector<Thread::Begin>;
    Trace trace;
    Begins behind, before;
    Volume behindVolume, beforeVolume;
    std::optional<std::size_t> vessel, lot;
    // Where all that a vessel ever held is asked for: the vessel, as what came again counts once; and beside `behind`
    // what dips found in it more, which is of all that was in it then.
    std::uint32_t cut = noKnot;
    Begins found;
    std::vector<std::size_t> nights; // of one date
};
std::optional<TraceSubject> traceSubject(const Ledger& ledger, std::string_view name);

} // namespace panside
