#pragma once
// Questions for the set-up screen: which field is likely which reading, and whether a unit or a pair of probes is
// mistaken. Pure; from what came of late. A guess is asked, never acted on. Limits: common practice, no source.
#include "core/probe/probe_file.h"

namespace panside {

// What came from one field of late, oldest first, as it was written.
struct FieldSamples {
    std::string is;
    std::vector<double> numbers;
};

enum class Doubt : std::uint8_t {
    none,
    unitIsFahrenheit,  // 212 in degC
    unitIsCelsius,     // 100 in degF
    otherPressureUnit, // 29.9 in kPa, 987 in kPa
    swapped            // the stack at 100 degC, the syrup pan at 300
};
struct Guess {
    std::string is;
    std::optional<Series> reads = {}; // which it likely is; nullopt: cannot be told
    Unit unit = Unit::none;
};
struct Question {
    Doubt doubt;
    std::size_t field;                     // index of the port's field
    std::optional<std::size_t> other = {}; // swapped: the other one
    Unit unit = Unit::none;                // the likelier unit
    bool operator==(const Question&) const = default;
};

// For fields without a meaning yet. A name that tells ("syrup", "stack_f") counts before the numbers.
std::vector<Guess> guess(const std::vector<FieldSamples>& fields);
// For fields that have one: `lastNumbers` as they came, one each of the fields, in the fields' units.
std::vector<Question> questions(const std::vector<FieldRule>& fields,
                                const std::vector<std::optional<double>>& lastNumbers);

} // namespace panside
