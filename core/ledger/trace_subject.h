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
    std::vector<std::size_t> nights; // of one date
};
std::optional<TraceSubject> traceSubject(const Ledger& ledger, std::string_view name);

} // namespace panside
