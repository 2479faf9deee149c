#pragma once
// What a person can do at the console: one table of keys, words and places, shared by the board, the help and the
// sheets. Screens are no actions: they stand in ui/console/screens.cpp.
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
    dayOrNight,
    acrossTheRoom,
    why,
    remedy,
    // The screens, by the name that a desk asks for: their words and keys are their rows'.
    board,
    fuel,
    handover,
    tank,
    review,
    paper,
    importing,
    season,
    rig,
    probes,
    sound,
    keeping,
    reckoner,
    help,
    cautions,
    manual,
    lookIn,
    vessels,
    filter,
    pack,
    lots,
    trace,
    book,
    tanks,
    tonight,
    sugar,
    account,
    tells,
    start,
    rehearsal,
    nightAlarms,
    nightEntries,
    whatPays,
    forecastKept
};

// Where an action stands on the screen: on a card, in the bar beside the sentence, in the row under the board, at the
// foot, or on the page of all keys alone.
enum class Seat { drawCard, fireCard, lastLoadCard, bar, boardRow, foot, helpOnly };
// Where its key works, outside of a field.
enum class KeyReach { everywhere, board };

struct ActionRow {
    Action action;
    int key; // a Qt::Key; one key, no modifier
    Seat seat;
    KeyReach reach;
    const char* word;     // on the button: short
    const char* sentence; // in the help: what it does
};

std::span<const ActionRow> allActions();
const ActionRow& rowOf(Action action); // of an action, not of a screen
bool isScreen(Action action);
QString wordOf(Action action);     // "Open the draw"
QString sentenceOf(Action action); // "The draw-off was opened, now."
QString keyOf(Action action);      // "D", as it stands on the keyboard
// The action a key means. One key opens and closes the draw, one lights and feeds the fire: which it is, the picture
// says.
std::optional<Action> actionOf(const QKeyEvent& event, bool drawing, bool lit);

} // namespace panside
