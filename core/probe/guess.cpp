#include "core/probe/guess.h"

#include "core/boil/vocabulary.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace panside {
namespace {

struct Telling {
    std::string_view part;
    Series series;
};
// Longer words first: "flue_pan" before "flue".
constexpr std::array telling{Telling{"sea_level", Series::sea_level_pressure},
                             Telling{"flue_level", Series::flue_level},
                             Telling{"flue_pan", Series::flue_pan},
                             Telling{"pan_level", Series::pan_level},
                             Telling{"filter", Series::filter_pressure},
                             Telling{"syrup", Series::syrup_pan},
                             Telling{"draw", Series::syrup_pan},
                             Telling{"stack", Series::stack},
                             Telling{"chimney", Series::stack},
                             Telling{"flow", Series::feed_flow},
                             Telling{"flue", Series::flue_pan},
                             Telling{"baro", Series::pressure},
                             Telling{"press", Series::pressure},
                             Telling{"tank", Series::tank_level},
                             Telling{"level", Series::pan_level},
                             Telling{"depth", Series::pan_level},
                             Telling{"feed", Series::feed},
                             Telling{"sap", Series::feed},
                             Telling{"outside", Series::air},
                             Telling{"air", Series::air},
                             Telling{"pan", Series::syrup_pan}};

std::optional<Series> byName(std::string_view name) {
    std::string lower;
    for (const char c : name)
        lower += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    if (const auto named = seriesNamed(lower)) // as the log calls it
        return named;
    for (const auto& word : telling)
        if (lower.find(word.part) != std::string::npos)
            return word.series;
    return std::nullopt;
}

double middle(std::vector<double> numbers) {
    const auto half = numbers.begin() + static_cast<std::ptrdiff_t>(numbers.size() / 2);
    std::nth_element(numbers.begin(), half, numbers.end());
    return *half;
}

constexpr bool within(double x, double low, double high) { return x >= low && x <= high; }

// Station pressure anywhere that maples grow, to 1000 m, in each unit of it; the three ranges do not meet.
Unit pressureUnit(double number) {
    return within(number, 24.5, 31.5)  ? Unit::inHg
           : within(number, 83, 107)   ? Unit::kPa
           : within(number, 830, 1070) ? Unit::hPa
                                       : Unit::none;
}

// Water boils between 96 and 101 degC where people boil sap, and finished syrup 4 degrees above it.
Unit boilingUnit(double number) {
    return within(number, 94, 112) ? Unit::degC : within(number, 201, 234) ? Unit::degF : Unit::none;
}

Unit unitFor(Series series, double number) {
    if (series == Series::pressure || series == Series::sea_level_pressure)
        return pressureUnit(number);
    if (series == Series::syrup_pan || series == Series::flue_pan)
        return boilingUnit(number);
    return Unit::none; // a stack of 300 may be either
}

// A barometer stands still within minutes, a boiling pan does not: that alone tells 98.7 kPa from 98.7 degC.
Guess byNumber(const FieldSamples& field, double number) {
    constexpr double still = 0.03, wandering = 15;
    const auto [low, high] = std::ranges::minmax(field.numbers);
    const double spread = high - low;
    const Unit pressure = pressureUnit(number), pan = boilingUnit(number);
    if (pressure == Unit::hPa || (pressure != Unit::none && spread < still && field.numbers.size() >= 5))
        return {field.is, Series::pressure, pressure};
    if (pan != Unit::none && spread < wandering)
        return {field.is, Series::syrup_pan, pan};
    if (within(number, 240, 650))
        return {field.is, Series::stack, Unit::none};
    return {.is = field.is};
}

std::optional<double> celsius(const FieldRule& rule, std::optional<double> number) {
    const bool isTemperature = rule.unit == Unit::degC || rule.unit == Unit::degF;
    return number && isTemperature ? std::optional{fromSi(toSi(*number, rule.unit), Unit::degC)} : std::nullopt;
}

bool isPan(const FieldRule& rule) { return rule.reads == Series::syrup_pan || rule.reads == Series::flue_pan; }

// A pan hotter than any syrup boils, beside a stack no hotter than a pan.
std::optional<Question> swapped(const std::vector<FieldRule>& fields, const std::vector<std::optional<double>>& numbers,
                                std::size_t pan) {
    const auto panAt = celsius(fields[pan], numbers[pan]);
    if (!isPan(fields[pan]) || !panAt || *panAt < 130)
        return std::nullopt;
    for (std::size_t i = 0; i < fields.size(); ++i)
        if (const auto at = celsius(fields[i], numbers[i]); fields[i].reads == Series::stack && at && *at < 125)
            return Question{Doubt::swapped, pan, i};
    return std::nullopt;
}

std::optional<Question> unitDoubt(const FieldRule& rule, double number, std::size_t field) {
    if (rule.unit == Unit::degC && isPan(rule) && boilingUnit(number) == Unit::degF)
        return Question{Doubt::unitIsFahrenheit, field, {}, Unit::degF};
    if (rule.unit == Unit::degF && isPan(rule) && boilingUnit(number) == Unit::degC)
        return Question{Doubt::unitIsCelsius, field, {}, Unit::degC};
    if (rule.reads != Series::pressure && rule.reads != Series::sea_level_pressure)
        return std::nullopt;
    const auto likely = pressureUnit(number);
    if (likely != Unit::none && likely != rule.unit)
        return Question{Doubt::otherPressureUnit, field, {}, likely};
    return std::nullopt;
}

} // namespace

std::vector<Guess> guess(const std::vector<FieldSamples>& fields) {
    std::vector<Guess> guesses;
    for (const auto& field : fields) {
        if (const auto series = byName(field.is)) {
            const Unit unit = field.numbers.empty() ? Unit::none : unitFor(*series, middle(field.numbers));
            guesses.push_back({field.is, series, unit});
        } else if (!field.numbers.empty()) {
            guesses.push_back(byNumber(field, middle(field.numbers)));
        } else {
            guesses.push_back({.is = field.is});
        }
    }
    return guesses;
}

std::vector<Question> questions(const std::vector<FieldRule>& fields,
                                const std::vector<std::optional<double>>& lastNumbers) {
    std::vector<Question> asked;
    for (std::size_t i = 0; i < fields.size() && i < lastNumbers.size(); ++i) {
        if (!lastNumbers[i])
            continue;
        if (const auto pair = swapped(fields, lastNumbers, i))
            asked.push_back(*pair);
        else if (const auto doubt = unitDoubt(fields[i], *lastNumbers[i], i))
            asked.push_back(*doubt);
    }
    return asked;
}

} // namespace panside
