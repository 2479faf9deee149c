#include "ui/keys/places.h"

#include "core/quantity/enum_count.h"

#include <QCoreApplication>
#include <QKeySequence>
#include <array>

namespace panside {
namespace {

constexpr std::array<PlaceRow, 8> placeRows{{
    {Place::sap, Qt::Key_F2, QT_TRANSLATE_NOOP("Places", "Sap")},
    {Place::boil, Qt::Key_F3, QT_TRANSLATE_NOOP("Places", "Boil")},
    {Place::syrup, Qt::Key_F4, QT_TRANSLATE_NOOP("Places", "Syrup")},
    {Place::nights, Qt::Key_F5, QT_TRANSLATE_NOOP("Places", "Nights")},
    {Place::season, Qt::Key_F6, QT_TRANSLATE_NOOP("Places", "Season")},
    {Place::rig, Qt::Key_F7, QT_TRANSLATE_NOOP("Places", "Rig")},
    {Place::sums, Qt::Key_F8, QT_TRANSLATE_NOOP("Places", "Sums")},
    {Place::help, Qt::Key_F1, QT_TRANSLATE_NOOP("Places", "Help")},
}};

static_assert(inOrder(placeRows, &PlaceRow::place));

} // namespace

std::span<const PlaceRow> railPlaces() { return placeRows; }
const PlaceRow& rowOf(Place place) { return placeRows.at(static_cast<std::size_t>(place)); }
QString wordOf(Place place) { return QCoreApplication::translate("Places", rowOf(place).word); }
QString keyOf(Place place) { return QKeySequence{rowOf(place).key}.toString(QKeySequence::NativeText); }

} // namespace panside
