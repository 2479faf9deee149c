#pragma once
// What a shift made of what: the account that the season is told by. Worked out by the engine from the facts alone, so
// the same facts give the same account to the last digit. What is not known is none, never zero.
#include "core/boil/alarm_history.h"
#include "core/boil/fact.h"
#include "core/boil/picture.h"

#include <map>
#include <memory>
#include <optional>
#include <string>

namespace panside {

// How the draws of a shift came beside what was foretold: sums over draws, each draw one independent trial.
struct ForecastTally {
    int draws = 0; // scored ones
    // Of each draw's wait the share in which it came sooner than the quantile, or lay inside 10 to 90 %; summed.
    double underP10 = 0, underP50 = 0, underP90 = 0, inside = 0;
    bool operator==(const ForecastTally&) const = default;
};

struct ShiftAccount {
    Instant first{}, last{}; // its first and its last fact
    std::optional<Instant> lit;

    std::optional<Volume> sapIn;    // as entered
    std::optional<Volume> sapTaken; // what left the tank, where its level was read
    std::optional<Brix> sapSugar;   // of the sap of known sugar, by volume
    int draws = 0;                  // closed
    int drawsMeasured = 0;          // of them, with a volume
    Volume syrup{};                 // of the measured ones
    int drawsJudged = 0;            // draws whose density could be estimated while they ran
    int drawsInBand = 0;            // of them, between the legal minimum and too heavy, on the mean of the draw
    int checks = 0;                 // of density

    int loads = 0;
    int loadsWeighed = 0;                 // with a mass, said or set
    Mass wood{};                          // of the weighed ones
    std::map<std::string, Mass> woods;    // by species as written; "" where nobody said
    double cords = 0;                     // of the weighed ones; wood nobody named is reckoned as mixed hardwood
    std::optional<double> moisture;       // wet basis, by mass, where it was said or set
    std::optional<Duration> fireInterval; // between loads, on the mean, from the first load to the last

    // Means over the minutes from lighting to the last load in which the figure was known; none under half an hour.
    std::optional<VolumeFlow> evaporation;
    std::optional<double> efficiency;
    std::optional<Temperature> stack;
    std::optional<Length> depth; // in the syrup pan
    std::optional<Pressure> pressure;

    std::map<Alarm, int> alarms;          // how often each began to stand
    std::map<std::string, Duration> crew; // how long each was signed on
    ForecastTally forecast;

    bool operator==(const ShiftAccount&) const = default;
};

// Takes a shift's facts by time, one at a time, in little memory.
class ShiftAccountant {
public:
    ShiftAccountant();
    ~ShiftAccountant();
    void add(const Fact& fact);
    ShiftAccount account();
    AlarmHistory alarms() const; // each from beginning to end

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

// An account as named numbers, to be kept, and back. `accountForm` moves whenever the same facts would give other
// numbers: what was kept by another form is worked out anew.
inline constexpr int accountForm = 16;
std::map<std::string, double> figuresOf(const ShiftAccount& account);
ShiftAccount accountIn(const std::map<std::string, double>& figures);

} // namespace panside
