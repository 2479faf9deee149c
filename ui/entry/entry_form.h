#pragma once
// What a sheet asks for an action, and the fact that its answers make. Pure: the sheet shows it, tests drive it without
// one.
#include "core/boil/fact.h"
#include "core/boil/picture.h"
#include "ui/keys/actions.h"
#include "ui/look/units.h"
#include "ui/look/wall_clock.h"

#include <QString>
#include <QStringList>
#include <optional>
#include <variant>
#include <vector>

namespace panside {

struct EntryField {
    enum class Kind { number, words, choice };
    Kind kind = Kind::number;
    QString name;           // what the tests and the screen readers call it
    QString label;          // what stands before it
    Unit unit = Unit::none; // what a typed number is meant in
    QString answer = {};    // as typed, or the chosen word
    QStringList choices = {};
    bool needed = false;
    QStringList offers = {}; // words that one press puts in
    bool operator==(const EntryField&) const = default;
};

struct EntryForm {
    Action action;
    std::vector<EntryField> fields;
    Instant pressedAt{}; // when the key was pressed: this is when it happened, unless it is put earlier
    Duration earlier{0};
    QString by = {};                // who, if a name was chosen
    QStringList crew = {};          // who may be chosen
    std::vector<Alarm> alarms = {}; // those the action is about
    QString loss;                   // what keeping it would break off: asked first, and never answered by Enter
    // What tells a barometer's pressure from one that was reduced to the sea: the height here, and the air outside.
    std::optional<Length> elevation = {};
    std::optional<Temperature> air = {};
    std::vector<Fact> draws = {}; // of the shift, opened and shut: what this one may only tell again

    const EntryField* field(const QString& name) const;
    void answer(const QString& name, const QString& text);
    void offer(const QString& name, const QStringList& words);
    Instant at() const { return pressedAt - std::chrono::round<std::chrono::microseconds>(earlier); }
};

// Does this action make a fact by a sheet? Undo and the screens do not; an alarm is seen without any.
bool makesFact(Action action);
EntryForm formFor(Action action, const Picture& picture, Units units, Instant pressedAt);

// What keeps the form from becoming a fact, in the person's words, and at which field (by name; empty: none of them).
struct EntryProblem {
    QString field;
    QString words;
};
std::variant<std::vector<Fact>, EntryProblem> factsOf(const EntryForm& form);
// What is asked once before it is kept, where leaving it out is allowed and costs something: keeping it again is the
// answer that it stays out. nullopt where nothing is missing.
std::optional<EntryProblem> askedFirst(const EntryForm& form);
// A typed barometer that is far from what the height here makes of the air and near to what a weather report says,
// which is reduced to sea level: asked before it is kept, and never converted unasked. nullopt where it is in no doubt.
struct SeaLevelQuestion {
    QString words;    // what would have to be true, either way
    QString here;     // the choice that it is the pressure at the pan
    QString reported; // the choice that it is a report's
};
std::optional<SeaLevelQuestion> isItSeaLevel(const EntryForm& form, Units units);
// The answer that it is a report's: the same number, kept as one, from which the console reckons with the height.
void takeAsReported(EntryForm& form);
// A draw that two hands may have told, minutes apart: the other telling, in words. nullopt where it counts by itself.
std::optional<QString> toldBefore(const EntryForm& form, Units units, const WallClock& clock);
// What will be written, before it is: "fired, 18:42".
QString willWrite(const EntryForm& form, Units units, const WallClock& clock);

} // namespace panside
