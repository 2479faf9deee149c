#pragma once
// A fact: what was read or done, and when. Facts are all that enters the engine, all that the journal keeps and all
// that a shift log holds. Values are SI, typed; the unit they were written in stays beside them, so that a log comes
// back to its owner as it was written.
#include "core/boil/day_row.h"
#include "core/physics/wood.h"
#include "core/quantity/quantity.h"
#include "core/quantity/unit.h"

#include <cstdint>
#include <optional>
#include <string>
#include <variant>

namespace panside {

// The readings of the shift log. Values are kept on disk: never renumber, only append.
enum class Series : std::uint8_t {
    syrup_pan = 0,
    flue_pan = 1,
    stack = 2,
    feed = 3,
    air = 4,
    pressure = 5,
    sea_level_pressure = 6,
    pan_level = 7,
    flue_level = 8,
    tank_level = 9,
    feed_flow = 10,
    filter_pressure = 11
};
inline constexpr std::size_t seriesCount = 12;

// A value with the unit it was written in.
template <class Quantity>
struct Said {
    Quantity value;
    Unit unit;
    bool operator==(const Said&) const = default;
};

// The value of a reading is SI of the series' own dimension (the table in vocabulary.h); the accessors give it its
// type.
struct Reading {
    Series series;
    double si;
    Unit unit;
    std::string probe; // empty: the usual probe; "hand": typed in

    bool byHand() const { return probe == "hand"; }
    Temperature temperature() const { return Temperature::kelvin(si); }
    Pressure pressure() const { return Pressure::pascal(si); }
    Length level() const { return Length::metre(si); }
    Volume volume() const { return Volume::cubicMetre(si); }
    VolumeFlow flow() const { return VolumeFlow::ofSi(si); }
    bool operator==(const Reading&) const = default;
};

struct Lit {
    bool operator==(const Lit&) const = default;
};
struct Fired {
    std::optional<Said<Mass>> load;
    std::string wood; // species as written
    std::optional<WetBasis> moisture;
    std::string fire;      // which, if there are several
    bool inferred = false; // the console noticed it; nobody pressed
    bool operator==(const Fired&) const = default;
};
struct DrawOpened {
    bool operator==(const DrawOpened&) const = default;
};
struct DrawClosed {
    std::optional<Said<Volume>> volume; // as it was measured, at `temperature`
    std::string to;
    std::optional<Said<Temperature>> temperature = {}; // of what was drawn; 104 degC where nobody said
    bool operator==(const DrawClosed&) const = default;
};
enum class Instrument : std::uint8_t { hydrometer, refractometer };
struct DensityCheck {
    double reading; // as read, in `unit`: degrees Brix, or degrees Baumé (modulus 145), which no one type holds
    Unit unit;      // Unit::brix or Unit::baume
    Instrument with = Instrument::hydrometer;
    std::optional<Said<Temperature>> cup;   // temperature of the sample
    std::optional<Said<Temperature>> scale; // temperature the scale is made for
    std::optional<Instant> drawn;           // when the sample was taken, if earlier
    bool operator==(const DensityCheck&) const = default;
};
struct WaterCheck {
    Said<Temperature> boiledAt; // on the probe's own scale
    std::string probe;
    bool operator==(const WaterCheck&) const = default;
};
struct SapIn {
    Said<Volume> volume;
    std::optional<Brix> sugar; // as read, on the scale `scale`
    std::optional<Said<Temperature>> temperature;
    std::string from;
    std::optional<Said<Temperature>> scale = {}; // temperature that the hydrometer's scale was made for
    bool all = false;                            // all that stood in `from`; the volume was not told and is nothing
    bool operator==(const SapIn&) const = default;
};
struct PanSwapped {
    bool operator==(const PanSwapped&) const = default;
};
struct Defoamer {
    std::optional<double> drops;
    std::string kind = {}; // what it is: butter, cream and milk are an allergen
    bool operator==(const Defoamer&) const = default;
};
struct Crew {
    std::string off; // who leaves; who comes on is the fact's `by`
    bool operator==(const Crew&) const = default;
};
struct Shutdown {
    bool operator==(const Shutdown&) const = default;
};
struct ShiftEnd {
    bool operator==(const ShiftEnd&) const = default;
};
struct AlarmSeen {
    std::string name;
    bool operator==(const AlarmSeen&) const = default;
};
struct AlarmShelved {
    std::string name;
    Duration span;
    bool operator==(const AlarmShelved&) const = default;
};
struct ClockStep {
    Duration by;
    bool operator==(const ClockStep&) const = default;
};
struct Note {
    std::string text;
    bool operator==(const Note&) const = default;
};

// The settings of the shift log. Values are kept on disk: never renumber, only append.
enum class Setting : std::uint8_t {
    target_density = 0,
    legal_minimum = 1,
    too_heavy = 2,
    elevation = 3,
    flue_pan_area = 4,
    syrup_pan_area = 5,
    running_depth = 6,
    feed_tank_volume = 7,
    load_mass = 8,
    wood_moisture = 9,
    fire_interval = 10,
    burn_out = 11,
    filter_limit = 12,
    pressure_offset = 13,
    probe_offset = 14,
    probe_offset_sd = 15,
    place = 16,        // a name; `si` is its number in the table of places
    lot_scheme = 17,   // words
    capped_least = 18, // the coolest a container may be when it is closed
    kept_for = 19,     // how long records are kept
    stack_limit = 20,
    learned_hottest_stack = 21,
    overflow_rim = 22,       // a tank calls when so much of it is left
    overflow_calls = 23,     // words: whom it calls
    learned_pans_sugar = 24, // what the nights before left in the pans
    learned_cycle = 25,      // from shut to the mark, as the shifts before went
    learned_brix = 26        // so long a brix at the draw-off took
};
inline constexpr std::size_t settingCount = 27;

struct Set {
    Setting key;
    double si; // of the setting's own dimension (the table in vocabulary.h)
    Unit unit;
    std::string text = {}; // of a setting that is words
    bool operator==(const Set&) const = default;
};

// A row whose `what` (or whose setting) this version does not know: kept and given back, it changes no picture.
struct Unknown {
    std::string what, value, unit, detail;
    bool operator==(const Unknown&) const = default;
};

using What =
    std::variant<Reading, Lit, Fired, DrawOpened, DrawClosed, DensityCheck, WaterCheck, SapIn, PanSwapped, Defoamer,
                 Crew, Shutdown, ShiftEnd, AlarmSeen, AlarmShelved, ClockStep, Note, Set, Unknown, DayRow>;

struct Fact {
    Instant at;
    What what;
    std::string by = {};                 // who
    std::optional<Instant> entered = {}; // when it was entered, if later than it happened
    std::string extra = {};              // key=value pairs this version does not know, as written
    bool operator==(const Fact&) const = default;
};

// GCC 12 and clang 14 both want the deduction guide written out.
template <class... F>
struct Overloaded : F... {
    using F::operator()...;
};
template <class... F>
Overloaded(F...) -> Overloaded<F...>;

} // namespace panside
