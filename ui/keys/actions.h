#pragma once
// What a person can do at the console: one table of keys, words and places, shared by the board, the help and the
// sheets.
#include <QKeySequence>
#include <QString>
#include <optional>
#include <span>

class QKeyEvent;

namespace panside {

enum class Action {
    drawOpen,
    drawClose,
    densityCheck,
    fired,
    fireLit,
    sapIn,
    stopFiring,
    alarmSeen,
    alarmShelve,
    waterCheck,
    handReading,
    panSwapped,
    defoamer,
    note,
    crew,
    undo,
    shiftEnd,
    help,
    review,
    season,
    reckoner,
    probes,
    rig,
    handover,
    keeping,
    paper,
    sound,
    fuel,
    importing,
    tank,
    dayOrNight,
    acrossTheRoom
};

// Where an action stands: in the card whose number it changes, in the bar of the alarm, in the row of keys, or only on
// a key.
enum class Place { drawCard, fireCard, lastLoadCard, sentence, keyRow, keyOnly };

struct ActionRow {
    Action action;
    int key; // a Qt::Key; one key, no modifier
    Place place;
    const char* word;     // on the button: short
    const char* sentence; // in the help: what it does
};

std::span<const ActionRow> allActions();
const ActionRow& rowOf(Action action);
QString wordOf(Action action);     // "Open the draw"
QString sentenceOf(Action action); // "The draw-off was opened, now."
QString keyOf(Action action);      // "D", as it stands on the keyboard
// The action a key means. One key opens and closes the draw, one lights and feeds the fire: which it is, the picture
// says.
std::optional<Action> actionOf(const QKeyEvent& event, bool drawing, bool lit);

} // namespace panside
