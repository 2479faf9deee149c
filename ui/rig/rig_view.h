#pragma once
// The rig and the day's choices as a person sees them: every setting of the shift log, in words and in their own units.
#include "core/boil/boil.h"
#include "core/boil/place.h"
#include "ui/look/units.h"
#include "ui/words/setting_words.h"

#include <QString>
#include <variant>
#include <vector>

namespace panside {

struct RigRow {
    Setting key;
    QString label;
    QString answer; // the number or the words in force, empty while unknown
    Unit unit;      // what it is typed in
    QString usual;  // what counts if it is never set
    bool operator==(const RigRow&) const = default;
};

// Where a place is said, what its law asks stands there with its source.
QString settingUsual(Setting key, Units units, const PlaceLaw* law = nullptr);
Unit settingUnit(Setting key, Units units);
// The row of one setting, as it is in force among these.
RigRow rigRow(Setting key, const std::vector<Set>& inForce, Units units, const PlaceLaw* law = nullptr);
// The rows of the rig, then those of the house, each as the latest `set` among the facts left it.
std::vector<RigRow> rigRows(const Facts& facts, Units units);
// A typed answer as the fact that sets it, or what is wrong with it.
std::variant<Fact, QString> settingFact(const RigRow& row, const QString& typed, Instant now);

} // namespace panside
