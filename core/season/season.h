#pragma once
// A season: its shifts, and what they come to. A hole stays a hole: a total says of how many shifts it is.
#include "core/quantity/unit.h"
#include "core/season/shift_account.h"

#include <span>
#include <vector>

namespace panside {

struct SeasonShift {
    Instant id{}; // names the shift
    bool open = false;
    std::optional<ShiftAccount> account; // none: not worked out yet
    bool operator==(const SeasonShift&) const = default;
};

// The season that a shift belongs to, by the year of its spring: from 1 July of the year before to 30 June (UTC), so
// that an early run in November counts to the spring after it.
int seasonOf(Instant shift);
std::vector<int> seasonsOf(std::span<const SeasonShift> shifts); // the newest first

// What can be told of each shift. The order is that of the columns.
enum class SeasonFigure : std::uint8_t {
    hours,
    sapIn,
    sapTaken,
    sapSugar,
    syrup,
    draws,
    inBand,
    wood,
    loads,
    evaporation,
    efficiency,
    syrupPerCord,
    alarms,
    checks,
    fireInterval,
    loadMass,
    moisture,
    depth,
    stack,
    pressure
};
inline constexpr std::size_t seasonFigureCount = 20;

// How a season's figure comes from those of its shifts.
enum class Together : std::uint8_t {
    sum,
    mean,  // of the shifts that know it, each by its hours
    ratio, // of two sums, over the shifts that know both
};
struct FigureRow {
    SeasonFigure figure;
    std::string_view name; // in files
    Dimension dimension;
    Together together;
};
const FigureRow& rowOf(SeasonFigure figure);
std::span<const FigureRow> allSeasonFigures();

struct Told {
    double si;
    bool atLeast = false; // only what was measured is in it
    bool operator==(const Told&) const = default;
};
// SI; a share as a fraction, syrup per cord as m3 of syrup.
std::optional<Told> figureOf(const ShiftAccount& account, SeasonFigure figure);
std::optional<Told> figureOf(const SeasonShift& shift, SeasonFigure figure); // none where it is not worked out yet

struct Total {
    std::optional<Told> told = {};
    int known = 0; // shifts that know it
    int all = 0;
    bool operator==(const Total&) const = default;
};
Total totalOf(std::span<const SeasonShift> shifts, SeasonFigure figure);

// The share of draws that came inside a nominal level of the forecast, and the 95 % interval about it that so few draws
// allow.
// Source     E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209: the score interval of a binomial share
struct Calibration {
    double nominal; // 0.1, 0.5, 0.8, 0.9
    bool range;     // true: inside 10 to 90 %; false: sooner than the quantile
    double share, low, high;
};
struct CalibrationPicture {
    int draws = 0;
    std::vector<Calibration> levels; // none: no draw was scored
};
CalibrationPicture calibrationOf(std::span<const SeasonShift> shifts);
// `trials` more than 0, share 0 to 1.
struct ShareInterval {
    double low, high;
};
ShareInterval wilsonInterval(double share, int trials);

} // namespace panside
