#pragma once
// How a port is doing, for people: plain values, one sentence each.
#include "core/probe/mapping.h"
#include "core/words/sentence.h"

#include <map>

namespace panside {

enum class PortState : std::uint8_t {
    // shut; it is tried again by itself
    starting,
    noSuchPort,
    noPermission,
    taken,     // another program has it
    notSerial, // there, but no serial port
    failed,    // the system's own words say why
    lost,      // it was open and went away
    // open
    listening, // nothing has come yet
    reading,
    silent,     // nothing for 10 s
    wrongSpeed, // what comes is no text
    unended,    // text comes, but no line end
    refused,    // lines come, and none can be believed; or a slave answers with exceptions only
    noAnswer    // no Modbus slave answers
};

// What the polls of a Modbus port came to.
struct PollCounts {
    std::uint64_t answered = 0, timedOut = 0, garbled = 0;
    std::map<int, std::uint64_t> exceptions = {}; // by the code that the slave sent
    std::uint64_t skipped = 0;                    // polls not begun since the one before was not done
    Sentence lastFault = {};                      // "slave 3: no answer"
    bool operator==(const PollCounts&) const = default;
};
// The words of the Modbus standard's exception codes.
std::string_view exceptionText(int code);

// Why a Modbus field's last poll gave nothing.
enum class PollFault : std::uint8_t { none, noAnswer, garbled, exception };
Sentence told(PollFault fault, int exception); // "illegal data address (exception 2)"

struct FieldStatus {
    std::optional<Reading> last; // of the last line or poll; none: `why` says why not
    NoReading why = NoReading::none;
    std::optional<Instant> lastAt = {}; // when the last reading came, however long ago
    std::uint64_t readings = 0;
    std::optional<double> number = {};         // as the probe said it, before offset and unit
    std::vector<std::uint16_t> registers = {}; // Modbus: what stands in them
    PollFault fault = PollFault::none;
    int exception = 0; // the code that the slave sent, with PollFault::exception
};

struct PortStatus {
    std::string name;
    std::string device;  // as the probe file has it
    std::string at = {}; // the path that is open, empty when shut
    PortState state = PortState::starting;
    std::string words = {};                // the system's own, where it failed; the group, where permission lacks
    std::optional<Instant> lastHeard = {}; // the last good line or answer
    std::optional<Encoding> encoding = {};
    std::string lastLine = {}; // what is not ASCII as a point
    LineCounts lines = {};
    PollCounts polls = {};
    std::vector<FieldStatus> fields = {}; // one each of the port's fields
    std::uint64_t returns = 0;            // how often it came back after it was lost

    bool isOpen() const { return state >= PortState::listening; }
};

// What is so, and what to do: "pan box: /dev/ttyUSB0 is not there. Plug it in; reading goes on by itself."
std::string sentence(const PortStatus& status);
Sentence told(const PortStatus& status); // the same without the port's name

} // namespace panside
