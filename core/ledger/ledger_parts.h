#pragma once
// What the ledger's picture is made of: plain values.
#include "core/boil/day_row.h"
#include "core/boil/place.h"
#include "core/boil/settings.h"
#include "core/ledger/liquid.h"
#include "core/ledger/marks.h"
#include "core/ledger/thread.h"
#include "core/physics/tank.h"

#include <map>
#include <string>
#include <vector>

namespace panside {

enum class VesselKind : std::uint8_t { unknown, gather, truck, hold, feed, concentrate, pail, filter, drum, canner };
// Sap stands in it, not syrup.
bool isTankKind(VesselKind kind);
VesselKind vesselKindNamed(std::string_view word);

// What runs downstream of a row, by name.
struct Taint {
    bool milk = false, lead = false, ropy = false;
    std::string milkOf = {}, off = {}; // what the milk was; the word of the off-flavour
    Taint& operator|=(const Taint& other);
    bool operator==(const Taint&) const = default;
};

// From when to when nobody wrote anything.
struct Silence {
    Instant from{}, to{};
};

struct Vessel {
    std::string name; // as first declared
    VesselKind kind = VesselKind::unknown;
    std::optional<Volume> capacity;
    std::optional<TankShape> shape;
    std::string material, lead;
    bool out = false;
    Instant since{};   // its first row
    Instant touched{}; // its last row
    Liquid content;
    bool sugarAssumed = false; // nobody measured some of it
    bool volumeUntold = false; // its sugar is known, and nobody said how much of it there is
    Taint taint;
    bool leadOver = false; // its own, until a test says otherwise
    std::optional<double> light;
    std::string lightClass, flavour;
    std::optional<Instant> oldest;                            // when the oldest part of it came in
    std::optional<Temperature> temperature, coldest, warmest; // as told, of the blend; the coldest and warmest told
    std::optional<Instant> temperatureTold;
    std::vector<std::pair<Instant, double>> cameIn; // litres, of a tank
    Duration over40F{0}, over50F{0};                // how long it was known to be so warm, the oldest part of it
    Volume lastVolume, mostHeld;                    // before it was emptied; ever
    std::optional<Silence> unwritten;               // since this nobody has measured what it holds
    Knot knot = noKnot;                             // of its content
    Knot last = noKnot;                             // of what was in it last
    bool joinsLast = false;                         // the book went below nothing: what was in it may be so still
    std::vector<std::pair<Knot, double>> filling;   // all that ever came in, and what dips found beside it: sugar
    Volume taken;                                   // of all that
    std::vector<int> shifts;                        // that drew into it since it was last empty
};

struct Night {
    int shift = -1;
    Instant id{}, first{}, last{};
    std::string date; // local
    Volume drawn;
    double drawnSugar = 0;
    std::vector<std::pair<Knot, double>> draws;   // knots and sugar
    std::vector<std::pair<Knot, double>> drained; // out of its pans while it went on, into pails
    std::vector<Knot> pans;
    Knot endKnot = noKnot; // what the pans held at its end
    double left = 0;       // sugar in them then, kg
    // The fire, and what went into the pans.
    std::optional<Instant> lit, lastLoad;
    int loads = 0, unmeasured = 0;    // unmeasured: draws without a volume
    std::optional<double> cords;      // full ones; none: not all the wood is known
    Liquid entered;                   // the pans, all night
    std::optional<Liquid> fired;      // of that, from lighting to the last load
    std::optional<Volume> kept;       // stood in the feed tank at the last load
    double before = 0;                // sugar in the pans at its begin, kg
    bool emptied = false;             // nothing was in them then
    std::optional<Instant> firstDraw; // shut
    double ready = 0;                 // sugar in the pans then, before it left them, kg
    std::vector<Instant> swapped;     // sides of the syrup pan
    double wood = 0;                  // kg; 0: not all of it is known
    std::string woodKind;             // most of it
};

struct LotSize {
    Volume size;
    std::string written;
    long long made = 0, broken = 0, shipped = 0, back = 0, destroyed = 0;
    double sugar = 0;
    std::vector<std::pair<Knot, double>> knots;
    std::string of;
    long long here() const { return made - shipped + back - destroyed; }
};

struct Lot {
    std::string code; // as first declared
    Instant packed{};
    std::size_t vessel = 0;
    std::chrono::year_month_day day{};
    std::vector<LotSize> sizes;
    std::optional<Temperature> coolest, filler;
    std::optional<Brix> read; // at packing
    Brix book{}, bookSd{};    // by the ledger
    std::optional<double> light;
    std::string lightClass, flavour, by;
    Taint taint;
    bool held = false;
    std::optional<Duration> laid;
    Volume volume() const;
    double sugar() const;
};

// What left for somebody, by lot and size.
struct Delivery {
    std::string buyer;
    std::size_t lot;
    std::size_t size;
    Instant first{};
    long long sent = 0, back = 0;
    double paid = 0; // for `pricedCount` of them
    long long pricedCount = 0;
    bool sizeKnown = true;
    long long count() const { return sent - back; }
};

struct GatheredRow {
    std::string name, to, by;
    Instant at{};
    Liquid liquid;
    bool bought = false;
    bool sugarAssumed = false;
    std::string clear;
    std::optional<double> taps = {};
    std::optional<double> price = {}; // as paid, if it was a number
    bool syrup = false;
};
struct DrawRow {
    int night;
    Instant at{};
    std::string to;
    Liquid liquid;
    Knot knot = noKnot;
    bool measured = true;
};
struct CheckRow {
    int night;
    Instant at{};
    std::string name;
    std::size_t draw; // it was taken of; SIZE_MAX: of none
    int pan = 0;      // it was taken from: pans and sides, counted from the season's first
    std::optional<TemperatureDifference> apart = {}, apartSd = {}; // reading over physics, where both were known
    std::optional<Brix> sugar = {};                                // behind what was read
};
struct PressRow {
    Instant at{};
    std::string from, to, aid, result;
    Volume through;
    Knot knot = noKnot;
    std::optional<Temperature> temperature;
};
struct DefoamerRow {
    Instant at{};
    std::string name;
    bool milk = false;
    Knot firstPans = noKnot, lastPans = noKnot; // of the pans that it was in, from the first to the last
};
struct SoldRow {
    std::string buyer;
    Instant at{};
    Liquid liquid;
    Knot knot = noKnot;
    bool syrup = true;
    std::optional<double> price = {};
};
// A run of the concentrator.
struct ConcentratorRun {
    Instant at{};
    std::string from, to;
    Liquid in, out;
    bool sugarRead = false; // of what went in
    std::optional<Duration> took;
    std::string washed;
    Volume water() const { return in.volume() - out.volume(); }
};
struct LostRow {
    std::string why, from;
    Instant at{};
    Liquid liquid;
};
// A stretch of time in which nothing was written, or sugar that no row explains.
struct Hole {
    Instant from{}, to{};
    bool source = false; // sugar came out of it that nobody had put in
    std::string vessel = {};
};
// A glass, a prism, a probe.
struct InstrumentRow {
    std::string name;
    std::optional<Instant> used, checked;
    std::optional<Temperature> boiled; // at the last check, in boiling water
    std::string found;                 // or by a test of it, as it was written
};
struct BookRow {
    Instant at{};
    DayRow row;
    std::string subject, by; // a vessel as it was first named
};

// What the pans hold between the nights.
struct PansNow {
    Liquid content;
    bool isShort = false;             // more was drawn than the book had in them: nobody knows
    std::optional<Instant> oldest;    // of the sap in them
    std::optional<Instant> since;     // nothing went in or out
    double sugarSd = 0;               // kg, one standard deviation
    double most = 0;                  // kg: that may be in them after a long silence
    std::optional<Silence> unwritten; // since this nobody has emptied them
};

struct LedgerTables {
    std::vector<GatheredRow> gathered;
    std::vector<DrawRow> draws;
    std::vector<CheckRow> checks;
    std::vector<PressRow> presses;
    std::vector<DefoamerRow> defoamers;
    std::vector<SoldRow> sold;
    std::vector<ConcentratorRun> concentrated;
    std::vector<LostRow> lost;
    std::vector<Volume> drained; // out of the pans into pails
    std::vector<Hole> holes;     // sources first to last, then the silent stretches
    std::vector<Delivery> deliveries;
    std::vector<BookRow> cleaned, tested, graded;
    std::vector<InstrumentRow> instruments;
    std::optional<std::size_t> place;
    const PlaceLaw& law() const { return allPlaces()[place.value_or(0)]; } // until it is told: the federal one
    Brix least{Brix::degrees(66.0)}, most{Brix::degrees(68.9)};
    Temperature cappedLeast = Temperature::fahrenheit(180);
    std::string lotScheme;
    Settings settings; // in force after the last row
    PansNow pans;
};

// Sugar of the season, kilograms. What does not close is a line of its own, never spread over the others.
struct Balance20 {
    double gathered = 0, bought = 0;    // came in
    double sold = 0, packed = 0;        // went out
    std::map<std::string, double> lost; // by cause
    double inVessels = 0, inPans = 0;   // is here
    double nowhere = 0;                 // was drawn or bought, and nobody said into what
    double doesNotClose = 0;            // came from nowhere, less what went nowhere
    double doesNotCloseSd = 0;
    double in() const { return gathered + bought; }
};

} // namespace panside
