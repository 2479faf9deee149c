#pragma once
// What stands in the yard and no shift log tells: the tank's shape, the woodpile, what a cord costs. Kept with the
// person's choices; the log holds the litres that a dip comes to.
#include "core/boil/fact.h"
#include "core/physics/tank.h"

#include <QString>
#include <optional>

namespace panside {

// Stacked wood by its measures; a full cord is 128 cubic feet stacked.
struct Woodpile {
    Length length, height, stick;
    double cords() const;
    bool operator==(const Woodpile&) const = default;
};

struct Yard {
    std::optional<TankShape> tank;
    std::optional<Woodpile> pile;
    std::optional<double> pricePerCord = {}; // in the money of the country
    std::optional<Instant> measured = {};    // when the pile was; none: nobody knows
    bool operator==(const Yard&) const = default;
};

// As one line of words and metres, to be kept, and back; nullopt for what is no tank.
QString textOf(const TankShape& shape);
std::optional<TankShape> tankIn(const QString& text);
QString textOf(const Woodpile& pile);
std::optional<Woodpile> pileIn(const QString& text);

} // namespace panside
