#pragma once
// The shift log as text: RFC 4180, one row a fact. Reading and writing are pure; files are read elsewhere.
#include "core/boil/fact.h"
#include "core/words/sentence.h"

#include <functional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace panside {

// RFC 3339 with Z or a numeric offset, whole seconds to microseconds; nullopt for anything else.
std::optional<Instant> instantIn(std::string_view text);
// RFC 3339 with Z, as many decimals as there are (none for a whole second). What has no year of four digits, as in a
// file that is damaged, is told as the first or last moment that has.
std::string textOf(Instant at);

// What is wrong with a row. Data, not words: sentence() gives the English one, ui/words the person's.
enum class Slip : std::uint8_t {
    noHeader, // the first line is not time,what,value,unit,detail
    notUtf8,
    columns, // not five fields
    quoting, // a quote that does not close, or stands where none may
    time,
    number,
    notWhole,    // a count that is no whole number
    unitInValue, // `wanted`: the two apart
    unitMissing,
    unitUnknown,
    unitWrong, // a unit that this reading or setting does not take
    valueMissing,
    valueUnwanted,
    outOfRange,
    detailPair,     // no key=value where one must be
    detailValue,    // a key whose value cannot be read
    settingUnknown, // a warning: kept
    whatUnknown,    // a warning: kept
    empty,          // no row at all
    detailUnknown,  // a warning: a key this version does not know, kept
    alarmUnknown,   // a warning: an alarm of another version, kept
    implausible,    // a warning: a reading that cannot be true here; kept, and doubted by the engine
    toldTwice,      // a mark: a draw that an earlier row tells of already; it counts once
    detailMissing,  // a detail that the row needs; `wanted` says which
    wordUnknown,    // a warning: a word that is none of those a key has; kept
    placeUnknown,   // a place that the program carries no law of; `wanted` is the one most like it
    intoItself,     // moved from a vessel into the same
    vesselUnknown,  // a vessel nobody named; `wanted` is the one most like it, if any
    codeTwice,      // a lot code that stands for another packing already; `wanted` is the next free one
    cells,          // a row of another logger's table: `given` cells, `wanted` or more are mapped
    // over what a log may ask of the program (log_limits.h)
    rowLength, // `wanted` bytes at most; what follows is not read
    span,      // more than `wanted` days from the first row to the last
    probes     // more than `wanted` names of probes
};
struct Fault {
    Slip slip;
    std::size_t line = 0;   // from 1; 0: not of a line
    std::size_t column = 0; // from 1, in characters of that line, where the field begins; 0: the whole line
    std::string field;      // "time", "value", a detail key …
    std::string given;      // what stood there
    Sentence wanted = {};   // what may stand there
    std::string meant =
        {};       // the likely slip: what was probably meant ("67 brix", "29.9 inHg"); empty where none is likely
    int cell = 0; // from 1; the column of another logger's table that `field` names; 0: of a log
    bool operator==(const Fault&) const = default;
};
// One English sentence: `night.csv:128: value "21O.5" is not a number. Write digits with a point, as in 210.5, …`
std::string sentence(const Fault& fault, std::string_view file);
Sentence told(const Fault& fault); // the same without the place

// One row's five fields, already unquoted, into a fact; an unknown `what` or setting gives an Unknown fact.
// `time` must be there, unless `now` is given: then an empty time means now.
std::variant<Fact, Fault> factOf(std::string_view time, std::string_view what, std::string_view value,
                                 std::string_view unit, std::string_view detail, std::optional<Instant> now = {});
// One line of a log (without its line end) into a fact. `line` only numbers the fault.
std::variant<Fact, Fault> factOfLine(std::string_view text, std::size_t line = 1, std::optional<Instant> now = {});

// A fact as one log row, quoted where it must be, without line end.
std::string rowOf(const Fact& fact);
inline constexpr std::string_view logHeader = "time,what,value,unit,detail";

struct ReadLog {
    std::vector<Fact> facts;                // by time, equal times in the order of the file
    std::vector<Fault> faults;              // what makes the log unfit; facts then holds the good rows
    std::vector<Fault> warnings;            // unknown names, kept
    std::vector<std::uint32_t> lines;       // of each fact, where it stands in the file
    std::size_t dayRows = 0, shiftRows = 0; // rows of the day book alone, and of a shift alone
    // All its rows are of the day book, whatever the file is called.
    bool isDayBook() const { return dayRows > 0 && shiftRows == 0; }
};
// A whole log. Every fault is found, not only the first.
ReadLog readLog(std::string_view text);
// The same of one that comes in pieces, each with the header: `limits` is of all of them.
class LogLimits;
ReadLog readLog(std::string_view text, LogLimits& limits);
std::string writeLog(const std::vector<Fact>& facts);

} // namespace panside
