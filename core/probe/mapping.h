#pragma once
// From what a probe said to readings: which field is which reading, in which unit. Pure. A number that cannot be
// converted gives no reading and a reason, never another number.
#include "core/probe/line_decoder.h"
#include "core/probe/probe_file.h"

#include <functional>

namespace panside {

enum class NoReading : std::uint8_t {
    none,
    fieldMissing,    // the line has no such field
    notNumber,       // empty, nan or a word
    noAnswer,        // the slave did not answer, or with an exception
    junctionMissing, // the field that reads the thermocouple's other end gave nothing
    outsideTable,    // no such voltage or resistance: an open or reversed wire, as a rule
    impossible       // below absolute zero
};
inline constexpr std::size_t noReadingCount = 7;
std::string_view noReadingText(NoReading why);

// One field's outcome: a reading, or why there is none.
struct FieldOutcome {
    std::size_t rule; // index of the port's field
    std::optional<Reading> reading;
    NoReading why = NoReading::none;
    std::optional<double> number = {}; // as the probe said it, before offset and unit
};

// The column, from 1, whose number this is; 0: it is none.
std::size_t columnIn(std::string_view is);
// The name that a field's readings carry as probe=: the port's; a second field of the port for the same reading is a
// probe of its own, "pan box 2".
std::string probeNameOf(const PortRule& port, std::size_t field);

class Mapping {
public:
    using Sink = std::function<void(const FieldOutcome&)>;
    explicit Mapping(PortRule port);

    // Every rule that reads something, in the order of the file: its outcome for this good line.
    void map(const ProbeLine& line, const Sink& sink) const;
    // One rule's outcome for a number (a register's, already scaled), and the number of its junction's field, if it has
    // one.
    FieldOutcome outcome(std::size_t rule, std::optional<double> number, std::optional<double> junction = {}) const;
    // The rule that reads the other end of this one's thermocouple; nullopt if that is fixed, or has no rule.
    std::optional<std::size_t> junctionOf(std::size_t rule) const;
    const PortRule& port() const { return port_; }
    // The highest column that is read by its number, from 1; 0: none.
    std::size_t lastColumn() const;

private:
    struct Place {
        std::size_t column = 0; // from 1; 0: the name is no number
        std::string probe;
    };
    const Field* find(const ProbeLine& line, std::string_view is, std::size_t column) const;
    NoReading toSeries(const FieldRule& rule, double number, std::optional<double> junction, double& si) const;
    NoReading thermocouple(const FieldRule& rule, double millivolts, std::optional<double> junction, double& si) const;

    PortRule port_;
    std::vector<Place> places_;
};

} // namespace panside
