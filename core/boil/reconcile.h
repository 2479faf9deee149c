#pragma once
// Evaporation by several ways, reconciled.
#include <optional>

namespace panside {

// A figure with its standard uncertainty, litres an hour: plain numbers of a normal matrix.
struct Rated {
    double litrePerHour;
    double sd;
};

// What is known of the flows at a pan that stands at its level: sap in = water boiled off + syrup out.
struct Flows {
    std::optional<Rated> sap;   // by the tank or the feed meter
    std::optional<Rated> syrup; // by the draws, measured over the same time
    std::optional<Rated> steam; // by the heat that the fire gave
    double syrupShare;          // of the sap that comes in, by the sugar of sap and syrup
    double shareSd;             // relative
};

struct Reconciled {
    Rated steam;
    double syrup; // litres an hour
    // How far each stands off what all together say, in its own uncertainties; none where it is not known.
    std::optional<double> sapOff, syrupOff, steamOff;
};

// The weighted least squares of steam and syrup against all that is known.
// Range      flows of 0 to 10 000 L/h, uncertainties above 0, share 0 to 0.5
// Outside    nullopt; so too where only the share is known
// Accuracy   that of its figures: `steam.sd` is the root of the inverse normal matrix
// Source     Gauss, least squares with weights 1/sd^2, two unknowns
[[nodiscard]] std::optional<Reconciled> reconcile(const Flows& flows);

} // namespace panside
