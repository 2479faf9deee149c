#pragma once
// What is wrong with a probe file, or with another file of tables that is read as one. Data: sentence() gives the
// English words, ui/words those of the person.
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

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

// What may stand there, or what a key goes with.
struct ProbeWant {
    enum class Kind : std::uint8_t {
        none,
        asWritten, // words[0], as it stands in the file: the same in every language
        oneOf,     // of these words
        text,
        flag,
        number,      // from words[0] to words[1]
        wholeNumber, // the same
        numberUnquoted,
        heading, // [[words[0]]]
        file,    // that is one
        fileToRead,
        // of a probe file
        fieldName,
        columnNumber,
        nameInLine,
        slaveAddress,
        registerKind,
        registerAddress,
        roomForTwo,
        notZero,
        thermocoupleLetter,
        junction,
        junctionFilled,
        junctionRange,
        junctionField,
        otherField,
        devicePath,
        devicePathFilled,
        shortName,
        someField,
        onePortEach,
        oneFieldEach,
        ownName,
        ownNameBeside, // another port is called words[0]
        // of a mapping file
        shortNameInMap,
        someColumn,
        columnOfTable,
        columnNamed, // one of these words, or a number
        columnByNumber,
        zone,
        otherReading
    };
    Kind kind = Kind::none;
    std::vector<std::string> words = {};
    bool operator==(const ProbeWant&) const = default;
};

struct ProbeFault {
    ProbeSlip slip;
    std::size_t line = 0, column = 0; // from 1; 0: the whole file
    std::string key = {};
    std::string given = {}; // as it stands in the file
    ProbeWant wanted = {};
    bool operator==(const ProbeFault&) const = default;
};
// In English: `probe.toml:3:8: baud cannot be "fast". Write a whole number from 50 to 4000000.`
std::string sentence(const ProbeFault& fault, std::string_view file);

} // namespace panside
