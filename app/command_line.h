#pragma once
// What was asked for on the command line, as plain values. Reading it is here; doing it is in <name>_command.cpp.
#include "core/boil/fact.h"

#include <cstdint>
#include <iosfwd>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace panside {

struct ConsoleRequest {
    std::string journal; // empty: the usual place
    std::string probe;   // empty: as set up in the console
    bool rehearsal = false;
    std::optional<std::uint64_t> seed; // of the rehearsal
    double speed = 1;                  // of the rehearsal's clock
    bool night = false;
    bool day = false;
    std::string language; // a code of languages(); empty: the system's
    std::string units;    // "us", "metric"; empty: as last chosen
};
struct ReplayRequest {
    std::string log; // "-": standard input
    double every = 1;
    bool asEntered = false;
    bool why = false; // each change of what it rests on, on the error stream
    std::vector<Set> settings;
};
struct TendRequest {
    std::string probe, journal; // empty: none; the usual place
    bool why = false;
    std::vector<Set> settings;
    std::string serve = {}; // ADDRESS:PORT of the look in; empty: none
};
struct RehearseRequest {
    double hours = 0;
    std::uint64_t seed = 1;
    double every = 1;    // seconds between readings of a kind
    std::string out;     // empty: the terminal
    bool season = false; // two houses' seasons with their truth, into the folder `out`
};
struct CheckRequest {
    std::string log;
    std::string journal = {}; // what a day book is judged with; empty: by itself
    bool json = false;
};
struct ImportRequest {
    std::vector<std::string> logs;
    std::string journal;
    std::string mapping = {}; // of tables that are no shift logs; empty: there are none
    bool json = false;
};
struct ExportRequest {
    std::string journal, shift, out;
    bool json = false;
};
struct ReportRequest {
    std::string journal, shift, out;
    bool season = false;
    bool lots = false, book = false, route = false; // of the ledger
    std::string recall = {};                        // a lot; empty: none
    std::optional<int> year;                        // of the season; none: all
    std::string language, units;                    // as of the console
};
struct TraceRequest {
    std::string name, journal;
    bool forward = false, json = false;
};
struct ReckonRequest {
    std::vector<std::string> words; // the kind and its own options, read by reckonCommand
};

// What needs no command: the text was printed, this is the exit status.
struct Answered {
    int status;
};
using Command = std::variant<Answered, ConsoleRequest, ReplayRequest, TendRequest, RehearseRequest, CheckRequest,
                             ImportRequest, ExportRequest, ReportRequest, TraceRequest, ReckonRequest>;

// `words` without the program's name. Help and version go to `out`, what is wrong to `err`.
Command commandIn(const std::vector<std::string>& words, std::ostream& out, std::ostream& err);

// "target_density=66.9brix", as after --set; a string says what is wrong.
std::variant<Set, std::string> settingIn(const std::string& text);

} // namespace panside
