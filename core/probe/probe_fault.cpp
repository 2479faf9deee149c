#include "core/probe/probe_fault.h"

namespace panside {
namespace {

// %1 the key, %2 what stood there, %3 what may stand there.
Sentence patternOf(ProbeSlip slip) {
    switch (slip) {
    case ProbeSlip::unreadable:
        return say("the probe file cannot be read: %3. Name a probe file that is there.");
    case ProbeSlip::syntax:
        return say("this is not TOML: %2.");
    case ProbeSlip::unknownKey:
        return say("\"%1\" is not a key that is known here. Possible here: %3.");
    case ProbeSlip::missingKey:
        return say("%1 is missing. Write %3.");
    case ProbeSlip::wrongKind:
    case ProbeSlip::notAllowed:
    case ProbeSlip::outOfRange:
        return say("%1 cannot be \"%2\". Write %3.");
    case ProbeSlip::twice:
        return say("%1 \"%2\" is there twice. Write %3.");
    case ProbeSlip::notFor:
        return say("%1 means nothing here: it goes with %3. Take it out, or change that.");
    case ProbeSlip::nothing:
        return say("no port is named. Write a heading [[port]] and under it the port's device.");
    }
    return {};
}

} // namespace

Sentence told(const ProbeFault& fault) {
    const bool bySystem = fault.slip == ProbeSlip::unreadable && !fault.given.empty();
    const Sentence given = asWritten(fault.given);
    return sayWith(patternOf(fault.slip), {asWritten(fault.key), given, bySystem ? given : fault.wanted});
}

std::string sentence(const ProbeFault& fault, std::string_view file) {
    std::string place{file};
    if (fault.line > 0)
        place += ':' + std::to_string(fault.line) + ':' + std::to_string(fault.column);
    return place + ": " + english(told(fault));
}

} // namespace panside
