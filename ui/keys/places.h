#pragma once
// The places of the console, in the order of the work. Each has a key that goes there from anywhere, and screens in it.
#include <QString>
#include <span>

namespace panside {

enum class Place { sap, boil, syrup, nights, season, rig, sums, help };

struct PlaceRow {
    Place place;
    int key; // a Qt::Key
    const char* word;
};
std::span<const PlaceRow> railPlaces();
const PlaceRow& rowOf(Place place);
QString wordOf(Place place); // "Boil"
QString keyOf(Place place);  // "F3"

} // namespace panside
