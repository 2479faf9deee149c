#pragma once
// What the reckoner asks for a sum, and what it says. Pure: the screen shows it, tests drive it without one.
#include "core/physics/reckon.h"
#include "ui/look/units.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace panside {

struct ReckonerField {
    std::string argument; // of the sum
    QString label;
    std::vector<Unit> units; // that may be meant, the person's own first; none: a bare number, or a choice
    std::size_t unit = 0;
    QStringList choices; // in place of a number
    bool optional = false;
    QString text; // as typed or chosen
    bool operator==(const ReckonerField&) const = default;
};

// One sum, asked in one way: where water boils may be asked from a barometer, a weather report or an altimeter setting.
struct ReckonerForm {
    std::size_t sum = 0; // of sums::reckonKinds()
    std::size_t way = 0;
    std::vector<ReckonerField> fields;
    Units units = Units::us; // of the figures: the person's own stand first
    bool operator==(const ReckonerForm&) const = default;
};

QStringList reckonerSums();          // their titles
QStringList waysOf(std::size_t sum); // one at least; empty words where there is only one
ReckonerForm reckonerForm(std::size_t sum, std::size_t way, Units units);

// A choice as a person reads it: "sugar-maple" of the log is sugar maple.
QString choiceInWords(const QString& choice);

struct ReckonerAnswer {
    enum class State { waiting, refused, done };
    State state = State::waiting;
    QString name, value; // the chief figure
    std::vector<std::pair<QString, QString>> others;
    QStringList sum;
    QString uncertainty, source, caution;
    QString words;        // waiting: for what; refused: why
    std::string argument; // the field it is about
    bool operator==(const ReckonerAnswer&) const = default;
};
ReckonerAnswer reckonerAnswer(const ReckonerForm& form);

} // namespace panside
