#pragma once
// Sap or syrup as the ledger keeps it: its mass and its sugar. Mass and sugar add up; volumes do not quite. All through
// the ledger they are plain numbers, kilograms: shares, sums and variances of them are what the ledger reckons with.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

struct Liquid {
    double mass = 0;  // kg
    double sugar = 0; // kg
    double sd = 0;    // standard uncertainty of the sugar's share, a mass fraction; of one glass, so it adds up
    double alone = 0; // variance of the sugar, kg2, that each part of it has for itself: it averages out
    double chart = 0; // kg: by how much more sugar a law's own chart reads its checks; 0 where there is none

    bool isEmpty() const { return mass <= 0; }
    Brix brix() const { return Brix::ofSi(mass > 0 ? sugar / mass : 0); }
    // What decides whether it may be packed: of what the book has in it, or of what was read of it.
    Brix byLaw() const { return byLaw(brix()); }
    Brix byLaw(Brix read) const { return read + Brix::ofSi(mass > 0 ? chart / mass : 0); }
    // Standard uncertainty of brix(), all of it.
    Brix error() const;
    // At 20 degC.
    Volume volume() const;
    // The same liquid, so much of it.
    Liquid part(double share) const { return {mass * share, sugar * share, sd, alone * share * share, chart * share}; }
    Liquid& operator+=(const Liquid& more);
};

// A volume measured at a temperature (0 to 105 degC; hotter is taken as 105: the difference is a third of a percent).
Liquid liquidOf(Volume volume, Brix sugar, Temperature at, double sd = 0);
Liquid liquidOf(Mass mass, Brix sugar, double sd = 0);
// A volume at 20 degC that holds so much sugar; no denser than 75 brix, whose sugar is then less than asked.
Liquid liquidHolding(Volume volume, double sugar);

inline constexpr Temperature bookTemperature = Temperature::celsius(20);
inline constexpr Temperature drawTemperature = Temperature::celsius(104); // syrup in the pail, where nobody said

} // namespace panside
