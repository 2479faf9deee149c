#pragma once
// Which registers to ask for, and what stands in them. Pure: no port, no Qt.
#include "core/probe/probe_file.h"

#include <optional>
#include <span>

namespace panside {

// One request on the line, and the port's fields that its answer serves.
struct RegisterRead {
    int slave, function;
    int first, count;               // registers
    std::vector<std::size_t> rules; // indices of the fields
    bool operator==(const RegisterRead&) const = default;
};

constexpr int registersIn(RegisterType type) {
    return type == RegisterType::int16 || type == RegisterType::uint16 ? 1 : 2;
}

// As few requests as serve all fields. Only registers that follow on without a gap are asked for together, at most 125
// (the Modbus standard's limit): a slave may refuse a whole request for one register in between that it does not have.
std::vector<RegisterRead> requestsFor(const std::vector<FieldRule>& fields);

// The number that a field has in an answer, scaled. nullopt when the answer is too short for it, or holds no finite
// number.
std::optional<double> numberAt(const RegisterPlace& place, const RegisterRead& read,
                               std::span<const std::uint16_t> registers);

} // namespace panside
