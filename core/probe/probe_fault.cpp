#include "core/probe/probe_file.h"

#include <fmt/format.h>

namespace panside {
namespace {

std::string what(const ProbeFault& fault) {
    const auto& [slip, line, column, key, given, wanted] = fault;
    switch (slip) {
    case ProbeSlip::unreadable:
        return fmt::format("the probe file cannot be read: {}. Name a probe file that is there.", given);
    case ProbeSlip::syntax:
        return fmt::format("this is no TOML: {}.", given);
    case ProbeSlip::unknownKey:
        return fmt::format("\"{}\" is no key that is known here. What may stand here: {}.", key, wanted);
    case ProbeSlip::missingKey:
        return fmt::format("{} is missing. Write {}.", key, wanted);
    case ProbeSlip::wrongKind:
    case ProbeSlip::notAllowed:
    case ProbeSlip::outOfRange:
        return fmt::format("{} cannot be \"{}\". Write {}.", key, given, wanted);
    case ProbeSlip::twice:
        return fmt::format("{} \"{}\" stands twice. Write {}.", key, given, wanted);
    case ProbeSlip::notFor:
        return fmt::format("{} means nothing here: it goes with {}. Take it out, or change that.", key, wanted);
    case ProbeSlip::nothing:
        return "no port is named. Write a heading [[port]] and under it the port's device.";
    }
    return {};
}

} // namespace

std::string sentence(const ProbeFault& fault, std::string_view file) {
    if (fault.line == 0)
        return fmt::format("{}: {}", file, what(fault));
    return fmt::format("{}:{}:{}: {}", file, fault.line, fault.column, what(fault));
}

} // namespace panside
