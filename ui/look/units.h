#pragma once
// The edge where SI becomes what a person reads. One choice of units, one formatter for all screens.
#include "core/quantity/quantity.h"
#include "core/quantity/unit.h"

#include <QString>

namespace panside {

// Gallons and degrees Fahrenheit, or litres and degrees Celsius: nobody in the trade mixes them.
enum class Units { us, metric };

// A number and its unit as read, with the decimal sign of the person's language.
struct Figure {
    QString number;
    QString unit;
    QString text() const; // "215.8 °F", never broken between the two
    bool operator==(const Figure&) const = default;
};

Figure figure(Temperature temperature, Units units, int decimals = 1);
Figure figure(TemperatureDifference step, Units units, int decimals = 1);
Figure figure(Pressure pressure, Units units);      // inHg or kPa: the barometer
Figure gaugeFigure(Pressure pressure, Units units); // psi or kPa: the filter press
Figure figure(Volume volume, Units units);          // three digits' worth
Figure figure(VolumeFlow flow, Units units);
Figure figure(Mass mass, Units units);
Figure figure(Length depth, Units units); // in or mm: a depth of sap
Figure figure(Brix sugar);

// The unit that a number typed on a screen is meant in.
Unit unitOf(Dimension dimension, Units units);
// A unit as people write it ("°F", "gal/h"): the symbol is the same in every language.
QString symbolOf(Unit unit);

// How the console writes time, so that 1:30 is read in one way only. No span has a colon: hours carry their h, minutes
// their min. A colon is a time of the day, "01:30" (WallClock). Every span goes through these.
// A span of time: "40 s", "12 min", "1 h 45"; from two days on "3 d 4 h", from ten on "271 d".
QString spanText(Duration span);
// Whole minutes as hours: "0 h 50", "1 h 45".
QString hoursText(long long minutes);
// What is left of a wait: whole minutes, "12 min", "1 h 45"; what is nearer than two is "under 2 min". A second in a
// forecast of minutes would be a digit that nobody knows.
QString leftText(Duration left);
inline constexpr Duration nearest{120}; // from here on a wait is no number any more

} // namespace panside
