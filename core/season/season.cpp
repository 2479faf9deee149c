#include "core/season/season.h"

#include "core/quantity/enum_count.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <set>

namespace panside {
namespace {

using enum SeasonFigure;

constexpr std::array<FigureRow, seasonFigureCount> figureRows{{
    {hours, "hours", Dimension::time, Together::sum},
    {sapIn, "sap_in", Dimension::volume, Together::sum},
    {sapTaken, "sap_taken", Dimension::volume, Together::sum},
    {sapSugar, "sap_sugar", Dimension::sugar, Together::ratio},
    {syrup, "syrup", Dimension::volume, Together::sum},
    {draws, "draws", Dimension::none, Together::sum},
    {inBand, "draws_in_band", Dimension::share, Together::ratio},
    {wood, "wood", Dimension::mass, Together::sum},
    {loads, "loads", Dimension::none, Together::sum},
    {evaporation, "evaporation", Dimension::volumeFlow, Together::mean},
    {efficiency, "efficiency", Dimension::share, Together::mean},
    {syrupPerCord, "syrup_per_cord", Dimension::volume, Together::ratio},
    {alarms, "alarms", Dimension::none, Together::sum},
    {checks, "density_checks", Dimension::none, Together::sum},
    {fireInterval, "firing_interval", Dimension::time, Together::mean},
    {loadMass, "load", Dimension::mass, Together::ratio},
    {moisture, "wood_moisture", Dimension::share, Together::mean},
    {depth, "pan_level", Dimension::length, Together::mean},
    {stack, "stack", Dimension::temperature, Together::mean},
    {pressure, "pressure", Dimension::pressure, Together::mean},
}};

static_assert(hasCount<SeasonFigure, seasonFigureCount>());
static_assert(inOrder(figureRows, &FigureRow::figure));

template <class Quantity>
std::optional<Told> told(const std::optional<Quantity>& value) {
    return value ? std::optional{Told{value->si()}} : std::nullopt;
}
std::optional<Told> told(const std::optional<double>& value) {
    return value ? std::optional{Told{*value}} : std::nullopt;
}

// A sum over things of which only some were measured.
std::optional<Told> partial(double sum, int measured, int all) {
    if (measured == 0)
        return std::nullopt;
    return Told{sum, measured < all};
}

double hoursOf(const ShiftAccount& account) { return secondsBetween(account.first, account.last); }

// Both numbers of a ratio, where the shift knows both.
struct Pair {
    double over, under;
    bool atLeast = false;
};
std::optional<Pair> pairOf(const ShiftAccount& account, SeasonFigure figure) {
    switch (figure) {
    case sapSugar:
        if (account.sapSugar && account.sapIn && account.sapIn->si() > 0)
            return Pair{account.sapSugar->si() * account.sapIn->si(), account.sapIn->si()};
        return std::nullopt;
    case inBand:
        if (account.drawsJudged > 0)
            return Pair{static_cast<double>(account.drawsInBand), static_cast<double>(account.drawsJudged)};
        return std::nullopt;
    case syrupPerCord:
        // Wood that nobody weighed would make the syrup look cheap: then nothing is said.
        if (account.drawsMeasured > 0 && account.cords > 0 && account.loadsWeighed == account.loads)
            return Pair{account.syrup.si(), account.cords, account.drawsMeasured < account.draws};
        return std::nullopt;
    case loadMass:
        if (account.loadsWeighed > 0)
            return Pair{account.wood.si(), static_cast<double>(account.loadsWeighed)};
        return std::nullopt;
    default:
        return std::nullopt;
    }
}

Total ratioOf(std::span<const SeasonShift> shifts, SeasonFigure figure) {
    Total total{.all = static_cast<int>(shifts.size())};
    Pair sum{0, 0};
    for (const SeasonShift& shift : shifts)
        if (const auto pair = shift.account ? pairOf(*shift.account, figure) : std::nullopt) {
            sum = {sum.over + pair->over, sum.under + pair->under, sum.atLeast || pair->atLeast};
            ++total.known;
        }
    if (total.known)
        total.told = Told{sum.over / sum.under, sum.atLeast};
    return total;
}

} // namespace

const FigureRow& rowOf(SeasonFigure figure) { return figureRows[static_cast<std::size_t>(figure)]; }
std::span<const FigureRow> allSeasonFigures() { return figureRows; }

int seasonOf(Instant shift) {
    const std::chrono::year_month_day day{std::chrono::floor<std::chrono::days>(shift)};
    return static_cast<int>(day.year()) + (day.month() >= std::chrono::July ? 1 : 0);
}

std::vector<int> seasonsOf(std::span<const SeasonShift> shifts) {
    std::set<int, std::greater<>> years;
    for (const SeasonShift& shift : shifts)
        years.insert(seasonOf(shift.id));
    return {years.begin(), years.end()};
}

std::optional<Told> figureOf(const ShiftAccount& account, SeasonFigure figure) {
    if (rowOf(figure).together == Together::ratio) {
        const auto pair = pairOf(account, figure);
        if (!pair) // the sugar alone may be known where the volume is not
            return figure == sapSugar ? told(account.sapSugar) : std::nullopt;
        return Told{pair->over / pair->under, pair->atLeast};
    }
    switch (figure) {
    case hours:
        return Told{hoursOf(account)};
    case sapIn:
        return told(account.sapIn);
    case sapTaken:
        return told(account.sapTaken);
    case syrup:
        return partial(account.syrup.si(), account.drawsMeasured, account.draws);
    case draws:
        return Told{static_cast<double>(account.draws)};
    case wood:
        return partial(account.wood.si(), account.loadsWeighed, account.loads);
    case loads:
        return Told{static_cast<double>(account.loads)};
    case evaporation:
        return told(account.evaporation);
    case efficiency:
        return told(account.efficiency);
    case alarms: {
        double count = 0;
        for (const auto& [alarm, times] : account.alarms)
            count += times;
        return Told{count};
    }
    case checks:
        return Told{static_cast<double>(account.checks)};
    case fireInterval:
        return account.fireInterval ? std::optional{Told{account.fireInterval->count()}} : std::nullopt;
    case moisture:
        return told(account.moisture);
    case depth:
        return told(account.depth);
    case stack:
        return account.stack ? std::optional{Told{account.stack->kelvin()}} : std::nullopt;
    case pressure:
        return told(account.pressure);
    case sapSugar:
    case inBand:
    case syrupPerCord:
    case loadMass:
        break; // ratios, above
    }
    return std::nullopt;
}

std::optional<Told> figureOf(const SeasonShift& shift, SeasonFigure figure) {
    return shift.account ? figureOf(*shift.account, figure) : std::nullopt;
}

Total totalOf(std::span<const SeasonShift> shifts, SeasonFigure figure) {
    const Together together = rowOf(figure).together;
    if (together == Together::ratio)
        return ratioOf(shifts, figure);
    Total total{.all = static_cast<int>(shifts.size())};
    double sum = 0, weight = 0;
    bool atLeast = false;
    for (const SeasonShift& shift : shifts) {
        const auto value = figureOf(shift, figure);
        if (!value)
            continue;
        ++total.known;
        const double counts = together == Together::mean ? std::max(hoursOf(*shift.account), 1.0) : 1;
        sum += counts * value->si;
        weight += counts;
        atLeast = atLeast || value->atLeast;
    }
    if (total.known == 0)
        return total;
    if (together == Together::mean)
        total.told = Told{sum / weight};
    else
        total.told = Told{sum, atLeast || total.known < total.all};
    return total;
}

ShareInterval wilsonInterval(double share, int trials) {
    constexpr double z = 1.959963984540054;
    const double n = trials, zz = z * z / n;
    const double middle = (share + zz / 2) / (1 + zz);
    const double half = z / (1 + zz) * std::sqrt(std::max(share * (1 - share), 0.0) / n + zz / (4 * n));
    return {std::max(middle - half, 0.0), std::min(middle + half, 1.0)};
}

CalibrationPicture calibrationOf(std::span<const SeasonShift> shifts) {
    ForecastTally sum;
    for (const SeasonShift& shift : shifts)
        if (shift.account) {
            const ForecastTally& tally = shift.account->forecast;
            sum.draws += tally.draws;
            sum.underP10 += tally.underP10;
            sum.underP50 += tally.underP50;
            sum.underP90 += tally.underP90;
            sum.inside += tally.inside;
        }
    CalibrationPicture picture{.draws = sum.draws, .levels = {}};
    if (sum.draws == 0)
        return picture;
    const auto add = [&](double nominal, bool range, double summed) {
        const double share = std::clamp(summed / sum.draws, 0.0, 1.0);
        const auto interval = wilsonInterval(share, sum.draws);
        picture.levels.push_back({nominal, range, share, interval.low, interval.high});
    };
    add(0.1, false, sum.underP10);
    add(0.5, false, sum.underP50);
    add(0.9, false, sum.underP90);
    add(0.8, true, sum.inside);
    return picture;
}

} // namespace panside
