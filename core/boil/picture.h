#pragma once
// The picture: all that a screen or a line of output needs, as a plain value. Views draw it; they compute nothing.
#include "core/boil/end_of_boil.h"
#include "core/boil/fact.h"
#include "core/boil/ground.h"

#include <array>
#include <string>
#include <vector>

namespace panside {

enum class Trust : std::uint8_t { good, doubtful, gone };

// Why a figure is not known, or a reading not believed. Data: whyText() gives the English words, ui/words the person's.
enum class Reason : std::uint8_t {
    none,
    // a reading
    silent, // nothing came for `amount` seconds
    stuck,  // not one last digit moved for `amount` seconds
    jumping,
    outsidePhysics,
    tooFast,
    inSteamOrFoam,
    wrongUnit,
    touchingPan,
    outOfPan,       // far under boiling water while the rig boils
    plugsExchanged, // syrup pan and flue pan: the flue pan reads the hotter
    otherHeight,    // a pressure that no weather makes at the height that is set
    noWeather,      // one that none makes there, whatever it was reduced to
    notYetRead,
    // a figure
    noPressure,   // no barometer, and no water check
    checkDoubted, // no barometer, and a water check that no weather makes
    noBarometer,  // water boils at the last water check
    noElevation,  // sea-level pressure is known, the elevation is not
    noPanReading,
    panReadingDoubtful,
    noGradient, // the rise has not begun to climb
    fireDying,
    drawing,
    notDrawing,
    notLit,
    tooFewDraws,
    stoppedFiring,
    noTankLevel,
    tooShort,   // not watched long enough yet
    noLoadMass, // wood burnt is not known
    noPanArea,
    noSapSugar,
    notBoiling,
    shiftEnded,
    notReached,    // more than one future in ten never gets there
    tankRises,     // and no sap was entered
    nearWater,     // so little over boiling water that it may be plain water
    moreThanBoils, // the tank falls faster than pans of that area can boil off
    noSapRunsIn,   // the tank stands while the fire burns: what boils off comes out of the pans
    pastTables,    // sweeter than any published boiling point
    overfull       // a pan stands far over its running depth
};
// The figures that a reason may be asked of.
enum class Shown : std::uint8_t {
    pressureKPa,
    waterBoilsC,
    syrupPanC,
    riseC,
    targetRiseC,
    targetC,
    brix,
    drawEta,
    closeEta,
    fireDueS,
    keepBackL,
    lastLoadS,
    evaporationLph,
    sapLeftS,
    efficiency
};
struct Why {
    std::variant<Shown, Series> of; // a figure, or a reading
    Reason reason;
    double amount = 0; // seconds, where the reason has a length; GCC 12 doubts a Duration in the variant of ToldGround
    bool operator==(const Why&) const = default;
};
std::string_view nameOf(Shown figure); // as in the output
std::string whyText(const Why& why);

// How a forecast of a draw came out. Errors are what was said (p50) less what came; none where the wait was shorter.
struct DrawScore {
    Instant at{}; // the reading rose through the target
    std::optional<Duration> tenBefore, fiveBefore, twoBefore;
    double inside = 0;                               // share of the wait in which the range held it
    double underP10 = 0, underP50 = 0, underP90 = 0; // shares of the wait in which it came sooner than each quantile
    int forecasts = 0;                               // what the shares rest on; 0: none was made
    bool operator==(const DrawScore&) const = default;
};

// Values are kept in logs by name; the order here is the order within one priority's table row.
enum class Alarm : std::uint8_t {
    scorch_risk,
    pan_low,
    stack_hot,
    filter_pressure_high,
    probe_silent,
    journal_trouble,
    above_target,
    draw_overdue,
    fire_overdue,
    sap_low,
    last_load,
    tank_overflow,
    probe_stuck,
    reading_implausible,
    clock_changed
};
inline constexpr std::size_t alarmCount = 15;
enum class Priority : std::uint8_t { high, medium, low };
// The states of ISA-18.2 / IEC 62682 that show.
enum class AlarmState : std::uint8_t { normal, unseen, seen, goneUnseen, shelved };

struct AlarmPicture {
    Alarm alarm;
    Priority priority;
    AlarmState state;
    Instant since;                     // when it began to stand
    std::optional<Series> series = {}; // which reading, where it is about one
    std::optional<Duration> left = {}; // time to the harm, where there is a figure
    std::vector<Ground> why = {};      // the most urgent first; never empty where it stands
    std::optional<Instant> over = {};  // when it stopped to stand, where it did so unseen
    std::vector<Series> also = {};     // the other readings of a box that fell silent as one
    bool stands() const {
        return state == AlarmState::unseen || state == AlarmState::seen || state == AlarmState::shelved;
    }
    bool operator==(const AlarmPicture&) const = default;
};

// What a scorch comes from decides what to do first: a pan that runs dry is flooded and not drawn from; one that has
// turned to syrup, and stands as deep as ever, is drawn on and thinned at the draw-off (common practice). unknown: the
// rise runs away and no level is read.
enum class ScorchCause : std::uint8_t { runsDry, allSyrup, unknown };
ScorchCause scorchCause(const AlarmPicture& alarm);

struct ReadingPicture {
    std::optional<double> si; // the last believable value; none when gone
    Trust trust = Trust::good;
    Reason reason = Reason::none;
    Duration forSoLong{0}; // how long the trust has been so
    Instant last{};        // when it was last read
    bool byHand = false;
    std::string probe = {}; // which probe gives it
    bool standsIn = false;  // it does so for another that failed
    bool operator==(const ReadingPicture&) const = default;
};

// How the fire stands. Low: a load sets it right; dying: so far down that a load will be slow to catch.
enum class FireStanding : std::uint8_t { unknown, catching, burning, low, dying };
// One fire of several: its own rhythm.
struct FirePicture {
    std::string name; // empty: the only one, or the one that nobody named
    Duration due;     // negative: overdue
    Duration interval;
    Instant lastFired;
    bool operator==(const FirePicture&) const = default;
};
// The call was moved by what was learned. `sagsAfter`: it is bound by the stack, which is seen to sag so long after a
// loading.
struct CallMoved {
    Instant at;
    Duration from, to;
    std::optional<Duration> sagsAfter;
    bool operator==(const CallMoved&) const = default;
};

// The ways to know the water boiled off: the tank less what was drawn by measure; the tank alone, with what the sugar
// says of the syrup; the draws and the sugar alone; the heat of the wood less what goes up the stack.
enum class EvaporationWay : std::uint8_t { massBalance, tankAlone, draws, heat };
struct WayPicture {
    EvaporationWay way;
    VolumeFlow rate, sd;
    bool operator==(const WayPicture&) const = default;
};
// What the ways point to where they disagree by more than their uncertainties bear.
enum class Disagreement : std::uint8_t {
    none,
    tankSaysMore, // a leak, a wrong tank shape, or wood that is lighter or wetter than said
    tankSaysLess, // sap came in that nobody entered, a wrong tank shape, or heavier or drier wood
    drawsSayMore, // the sap is sweeter than entered, or the draws were measured too large
    drawsSayLess, // the sap is thinner than entered, syrup went unentered, or sugar stays in the pans
    tankRises     // sap comes in that nobody entered, or the level misreads
};
// Where the heat of the wood went. What is left over is shown, never spread over the others.
struct HeatAccount {
    Energy fuel, boiling;
    std::optional<Energy> stackLoss;
    Mass wood;
    Duration over;
    Energy rest() const { return fuel - boiling - stackLoss.value_or(Energy{}); }
    bool operator==(const HeatAccount&) const = default;
};
// Sugar that went into the pans, what left them as syrup, what the nights before had left in them, and what is in them
// still.
struct SugarAccount {
    Mass in, out;
    Mass before = {};
    Mass inPans() const { return before + in - out; }
    bool operator==(const SugarAccount&) const = default;
};
struct FuelPicture {
    std::vector<WayPicture> ways;
    std::optional<VolumeFlow> evaporationSd;
    Disagreement doubt = Disagreement::none;
    std::optional<HeatAccount> hour, shift;
    std::optional<Volume> tank;          // sap left now
    std::optional<Volume> syrupExpected; // from the sap left in the tank
    std::optional<Duration> allSyrup;    // if nobody draws: until the syrup pan is syrup from end to end
    std::optional<double> syrupPerCord;  // litres a full cord, of the wood burnt so far; a cord has no type (cords.h)
    std::optional<double> cordPerHour;
    std::optional<double> cords;       // full ones, burnt so far
    std::optional<SugarAccount> sugar; // of the sap of known sugar and the draws that were measured
    std::optional<EndBasis> end;       // what the last load rests on: planEnd() tells what would change it
    std::optional<Duration> burnOut;   // after the last load, as set or usual
    std::optional<Duration> watchPans; // after the shutdown: the pans boil on for so long yet
    std::optional<Duration> lastLook;  // until the last look at roof, fire and pans; negative: past
    bool operator==(const FuelPicture&) const = default;
};

// What stands in the feed tank, as far as its level is read.
struct SapPicture {
    std::optional<Duration> oldest;     // since the oldest that may still be in it came in
    bool older = false;                 // some was there before: it is at least so old
    std::optional<Temperature> warmest; // of what may still be in it, as it was entered
    std::optional<Duration> fullIn;     // it fills, and runs over in so long; zero: it is full
    bool operator==(const SapPicture&) const = default;
};

// What the last density check came to.
enum class CheckWeight : std::uint8_t {
    underLegal,        // surely: by more than the check may err (two standard deviations)
    perhapsUnderLegal, // by less than it may err
    light,             // surely under the density wanted
    right,             // as far as this check can tell
    heavy,
    tooHeavy // surely over the house's limit
};
enum class CheckFate : std::uint8_t {
    learnt,    // the mark rests on it too
    doubted,   // far off what is believed: kept, and the mark did not move; a second one that says the same moves it
    unplaced,  // no pan reading, or no boiling point of water, to hold it against
    unreadable // no sugar stands at such a figure: mistyped, or the wrong unit
};
// What makes a check worth less than it seems.
enum class CheckRemark : std::uint8_t {
    none,
    hotPrism,    // a refractometer further from 20 degC than its correction is known
    cupNotTaken, // the glass stood in a cup whose heat nobody noted
    inBaume,     // it fits the pan if its figure is one of the Baumé scale
    hotScale     // it fits if the glass is made for a hot cup, or the cup's heat is taken out already
};
struct CheckPicture {
    Instant at{};
    std::optional<Brix> sugar = {}; // of the syrup, the cup's heat taken out; none if unreadable
    Brix error{};                   // one standard deviation, the glass's own error within it
    CheckWeight weight = CheckWeight::right;
    CheckFate fate = CheckFate::learnt;
    TemperatureDifference moved{}; // the mark, by this check
    CheckRemark remark = CheckRemark::none;
    // The pan's reading, on its own scale, over what physics says of that sugar; none where neither was known.
    std::optional<TemperatureDifference> apart = {};
    TemperatureDifference apartSd{};
    bool operator==(const CheckPicture&) const = default;
};

struct Picture {
    Instant at{};

    std::optional<Pressure> pressure; // station pressure in use
    std::optional<Temperature> waterBoils;
    std::optional<Temperature> usuallyBoils; // at the height that is set; weather moves it by boilingBand()
    Duration waterBoilsAge{0};               // age of what it rests on
    std::optional<Temperature> syrupPan;     // filtered, on the probe's own scale
    TemperatureDifference probeOffset{};
    std::optional<TemperatureDifference> rise, targetRise;
    std::optional<TemperatureDifference> legalRise, heavyRise; // the band's lower and upper edge
    std::optional<Temperature> target;
    std::optional<TemperatureDifference> targetUncertainty;
    std::optional<TemperatureDifference> targetUncertaintyAfterCheck; // what a density check now would make of it
    std::optional<Brix> brix;
    int checks = 0;           // density checks the mark rests on
    int questionedChecks = 0; // those that could not be believed; kept, but the mark does not rest on them
    std::optional<Instant> lastCheck;
    std::optional<CheckPicture> check;              // the last one told, whatever became of it
    std::optional<TemperatureDifference> markCrept; // since this pan's first checks, where that is no scatter: niter?

    std::optional<Range> drawEta, closeEta;
    std::optional<DrawScore> lastScore; // of the last draw that was foretold
    bool drawDue = false;               // the call to draw stands
    bool drawing = false;
    std::optional<Instant> drawOpenedAt;
    int draws = 0;

    std::optional<Duration> fireDue; // negative: overdue
    Duration fireInterval{480};
    bool fireIntervalLearned = false;
    std::optional<CallMoved> callMoved;
    FireStanding fireStanding = FireStanding::unknown;
    std::vector<FirePicture> fires; // those that are fed, the next to fall due first
    bool lastFiredInferred = false; // nobody pressed: the stack showed it
    std::optional<Instant> litAt, lastFired, shutdownAt, endedAt;
    int loads = 0;
    std::string turn;              // whose turn at the fire, if the crew signed on
    std::vector<std::string> crew; // on the shift now, in the order they came

    std::optional<VolumeFlow> evaporation;
    std::optional<Duration> sapLeft;
    std::optional<Range> lastLoad;  // until the last load should go in
    std::optional<Volume> keepBack; // sap to keep for the shutdown
    std::optional<double> efficiency;
    std::optional<Volume> sapIn, syrupOut; // of the shift
    std::optional<Mass> wood;
    FuelPicture fuel;
    SapPicture store;

    std::vector<AlarmPicture> alarms; // all that are not normal; highest priority first, then oldest first
    std::array<std::optional<ReadingPicture>, seriesCount> readings;
    std::vector<Why> why;

    const std::optional<ReadingPicture>& reading(Series series) const {
        return readings[static_cast<std::size_t>(series)];
    }
    bool operator==(const Picture&) const = default;
};

std::string_view nameOf(Alarm alarm);
std::optional<Alarm> alarmNamed(std::string_view name);
Priority priorityOf(Alarm alarm);
std::string_view nameOf(Trust trust);
// Puts an alarm in its place: highest priority first, then oldest first. For those that no fact tells of
// (journal_trouble).
void insertAlarm(Picture& picture, const AlarmPicture& alarm);

// The picture as one line of JSON (formats: `panside replay`), without line end, appended to `out`.
void appendJson(std::string& out, const Picture& picture);

} // namespace panside
