#pragma once
// The probe file: which ports there are, and what their fields mean. One small TOML file, read and written by the
// set-up screen and taken by --probe.
#include "core/boil/fact.h"
#include "core/physics/thermocouple.h"
#include "core/probe/line_fields.h"
#include "core/probe/probe_fault.h"

#include <filesystem>
#include <string>
#include <variant>
#include <vector>

namespace panside {

enum class Protocol : std::uint8_t { lines, modbusRtu };
enum class Parity : std::uint8_t { none, even, odd };
enum class RegisterType : std::uint8_t { int16, uint16, int32, uint32, float32 };
enum class WordOrder : std::uint8_t { big, little }; // which word of a pair comes first: the high one, or the low one

// Where a Modbus slave keeps a number.
struct RegisterPlace {
    int slave = 1;    // 1 to 247
    int function = 4; // 3 holding registers, 4 input registers
    int address = 0;  // as sent on the line, from 0 to 65535
    RegisterType type = RegisterType::int16;
    WordOrder order = WordOrder::big;
    double scale = 1; // the number is what stands in the register times this
    bool operator==(const RegisterPlace&) const = default;
};

// The other end of a thermocouple: at a temperature that is known, or read by another field of the same port. A field
// of a line that has no rule of its own is taken to be in degC.
using Junction = std::variant<Said<Temperature>, std::string>;

struct FieldRule {
    std::string is; // a pair's or a member's name, a column's number; of a register, a name for it
    std::optional<RegisterPlace> place = {}; // Modbus only
    std::optional<Series> reads = {};        // nullopt: it serves only as another field's junction
    Unit unit = Unit::none;                  // one that the reading takes; a temperature may also come in mV or ohm
    double offset = 0;                       // in the unit, added to what is read
    std::optional<Thermocouple> thermocouple = {}; // with mV
    std::optional<Junction> junction = {};         // with mV
    bool operator==(const FieldRule&) const = default;
};

struct PortRule {
    std::string name = {};   // shown to people; the readings' probe=
    std::string device = {}; // a path, best one under /dev/serial/by-id
    Protocol protocol = Protocol::lines;
    std::optional<Encoding> encoding = {}; // nullopt: recognised
    bool checksum = false;                 // every line must carry *HH
    int baud = 9600;
    Parity parity = Parity::none;
    int stopBits = 1;
    double every = 1.0; // Modbus: seconds from poll to poll
    std::vector<FieldRule> fields = {};
    bool operator==(const PortRule&) const = default;
};

struct ProbeFile {
    std::vector<PortRule> ports;
    bool operator==(const ProbeFile&) const = default;
};

// Every fault is found, not only the first; a file with any of them is refused whole.
std::variant<ProbeFile, std::vector<ProbeFault>> readProbeFile(std::string_view text);
std::variant<ProbeFile, std::vector<ProbeFault>> loadProbeFile(const std::filesystem::path& path);

// As TOML, without what is left at its default.
std::string writeProbeFile(const ProbeFile& file);
// Replaces the file at once or not at all; the one that stood there stays beside it with a ~ behind its name, since a
// person may have written notes in it. The reason when it fails, else empty.
std::string saveProbeFile(const ProbeFile& file, const std::filesystem::path& path);

// The units a field of this reading may have: those of the shift log, and for a temperature mV and ohm.
std::vector<Unit> unitsFor(Series series);

} // namespace panside
