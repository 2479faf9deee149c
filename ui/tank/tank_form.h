#pragma once
// The tank page's answers as they are typed, and what they come to. Pure: the page shows it, tests drive it without
// one.
#include "core/boil/fact.h"
#include "core/boil/picture.h"
#include "ui/frame/yard.h"
#include "ui/look/units.h"

#include <QStringList>
#include <array>
#include <variant>

namespace panside {

enum class TankKind { upright, lying, box, table };
QString kindName(TankKind kind);

struct TankForm {
    TankKind kind = TankKind::upright;
    std::array<QString, 3> sizes; // of the kind, in its order
    QString marks;                // of a table: "10 100; 20 260", depth and volume
    std::array<QString, 3> pile;  // length, height, stick
    QString price;
    bool operator==(const TankForm&) const = default;
};

// Labels of the sizes; as many as the kind has.
QStringList sizeLabels(TankKind kind);
QStringList pileLabels();
// Lengths of a yard are told in feet or metres, of a stick and of a dip in inches or millimetres.
Unit yardUnit(Units units);

TankForm formOf(const Yard& yard, Units units);
// What keeps the answers from being a yard, in the person's words. Nothing typed is nothing known.
std::variant<Yard, QString> yardOf(const TankForm& form, Units units);

// A dip: what it comes to, and what is odd about it.
struct Dip {
    std::optional<Fact> fact; // none: it cannot be kept
    QString words, warning;
    bool operator==(const Dip&) const = default;
};
// `sapSince`: sap was entered since the level was last read.
Dip dipOf(const QString& typed, const Yard& yard, Units units, const Picture& picture, bool sapSince, Instant now);

} // namespace panside
