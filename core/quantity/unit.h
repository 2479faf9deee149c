#pragma once
// The units that people, logs and probes write, and what each is in SI. One table; every reader and writer uses it.
#include <cstdint>
#include <optional>
#include <string_view>

namespace panside {

enum class Dimension : std::uint8_t {
    none,
    temperature,
    temperatureDifference,
    pressure,
    length,
    area,
    volume,
    volumeFlow,
    mass,
    sugar,
    share,
    time,
    voltage,
    resistance,
    trace, // a mass in a mass, of what is hardly there: lead
    age    // a time in years (of 365.25 days)
};

// Values are kept on disk: never renumber, only append.
enum class Unit : std::uint8_t {
    none = 0,
    degC = 1,
    degF = 2,
    K = 3,
    kPa = 4,
    hPa = 5,
    inHg = 6,
    psi = 7,
    mm = 8,
    in = 9,
    m = 10,
    ft = 11,
    m2 = 12,
    ft2 = 13,
    L = 14,
    gal = 15,
    Lph = 16,
    galph = 17,
    kg = 18,
    lb = 19,
    brix = 20,
    baume = 21,
    percent = 22,
    min = 23,
    s = 24,
    mV = 25,
    ohm = 26,
    impgal = 27,
    qt = 28,
    pt = 29,
    cup = 30,
    mL = 31,
    ppb = 32,
    years = 33
};
inline constexpr int unitCount = 34;

// The unit a person writes so ("degC", "gal/h"); nullopt for a word that is none of ours. Case counts.
std::optional<Unit> unitNamed(std::string_view name);
std::string_view nameOf(Unit unit);
// What a number in this unit measures. K is a difference; degC and degF are points on the scale
// (a difference written in them is read by differenceToSi).
Dimension dimensionOf(Unit unit);

// A number written in this unit, in SI (kelvin, pascal, metre, cubic metre, kilogram, second, volt, ohm, fraction).
// Baumé has no linear SI value: it is returned as written.
double toSi(double number, Unit unit);
double fromSi(double si, Unit unit);
// A step on the temperature scale written in degC, degF or K, in kelvin: never shifted by 32.
double differenceToSi(double number, Unit unit);

// A number as written: an optional sign, digits with a point, an optional exponent, nothing else.
// nullopt for anything else, for what a double cannot hold, and for inf and nan.
std::optional<double> numberIn(std::string_view text);

// A number and its unit written together, as on the command line: "98.7kPa", "-4degC".
struct Written {
    double number;
    Unit unit;
    double si() const { return toSi(number, unit); }
    bool operator==(const Written&) const = default;
};
std::optional<Written> writtenIn(std::string_view text);

} // namespace panside
