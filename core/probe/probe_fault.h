#pragma once
// What is wrong with a probe file, or with another file of tables that is read as one. Data: sentence() gives the
// English words, ui/words those of the person.
#include "core/words/sentence.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace panside {

enum class ProbeSlip : std::uint8_t {
    unreadable, // the file itself; `given` is what the system says, or else `wanted`
    syntax,     // no TOML; `given` says why, in English
    unknownKey,
    missingKey,
    wrongKind,  // text where a number belongs, and the like
    notAllowed, // none of the words that may stand here
    outOfRange,
    twice,  // what must differ from port to port, or from field to field, stands twice
    notFor, // a key of the other protocol, or of another unit
    nothing // no port at all
};

struct ProbeFault {
    ProbeSlip slip;
    std::size_t line = 0, column = 0; // from 1; 0: the whole file
    std::string key = {};
    std::string given = {}; // as it stands in the file
    Sentence wanted = {};   // what may stand there, or what a key goes with
    bool operator==(const ProbeFault&) const = default;
};
// What is wrong and what to do, without the place.
Sentence told(const ProbeFault& fault);
// In English: `probe.toml:3:8: baud cannot be "fast". Write a whole number from 50 to 4000000.`
std::string sentence(const ProbeFault& fault, std::string_view file);

} // namespace panside
