#pragma once
// The rehearsal's own nature: what sap and syrup do. Other equations than the engine's on purpose, fitted straight to
// published tables, so that the engine is not judged by itself.
namespace panside::rehearsal {

// Boiling point of water, degC, at `pascal`. Range 65 to 110 kPa; within 0.0001 K of the steam tables (IAPWS-IF97).
double waterBoils(double pascal);

// How far syrup or sap of `sugar` (mass fraction) boils above water, K: by grams of sugar to a gram of
// water, and a cubic drawn through the published boiling tables of sucrose (1.82 at 50, 2.94 at 60, 4.20 at 66.9, 4.99
// at 70 Brix). Range 0 to 0.85, 65 to 110 kPa; within 0.01 K of them up to 0.75 at sea level.
double risesBy(double sugar, double pascal);

// Mass of a litre, kg, at the boil and at 20 degC. Within 0.4 percent of the sucrose density tables.
double hotDensity(double sugar);
double coldDensity(double sugar);

// What a hydrometer for 60 degF reads, degrees Brix, floating in syrup of `brix` at `celsius`. A parabola through the
// float balance worked with the sucrose density tables; within 0.05 Brix, 60 to 70 Brix, 10 to 100 degC.
double hydrometerReads(double brix, double celsius);

inline constexpr double evaporationHeat = 2.257e6; // J/kg, water at 100 degC (steam tables)
double heatCapacity(double sugar);                 // J/(kg K), handbook line

} // namespace panside::rehearsal
