#include "ui/keys/actions.h"

#include "core/quantity/enum_count.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <array>

namespace panside {
namespace {

constexpr std::array<ActionRow, 21> actionRows{{
    {Action::drawOpen, Qt::Key_D, Seat::drawCard, KeyReach::everywhere, QT_TRANSLATE_NOOP("Actions", "Open the draw"),
     QT_TRANSLATE_NOOP("Actions", "the draw-off was opened")},
    {Action::drawClose, Qt::Key_D, Seat::drawCard, KeyReach::everywhere, QT_TRANSLATE_NOOP("Actions", "Close the draw"),
     QT_TRANSLATE_NOOP("Actions", "the draw-off was closed; then how much came")},
    {Action::densityCheck, Qt::Key_C, Seat::drawCard, KeyReach::everywhere, QT_TRANSLATE_NOOP("Actions", "Check"),
     QT_TRANSLATE_NOOP("Actions", "what hydrometer and cup thermometer show")},
    {Action::fired, Qt::Key_F, Seat::fireCard, KeyReach::everywhere, QT_TRANSLATE_NOOP("Actions", "Fired"),
     QT_TRANSLATE_NOOP("Actions", "a load of wood went in")},
    {Action::fireLit, Qt::Key_L, Seat::fireCard, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "Fire lit"),
     QT_TRANSLATE_NOOP("Actions", "the fire was lit")},
    {Action::sapIn, Qt::Key_S, Seat::lastLoadCard, KeyReach::everywhere, QT_TRANSLATE_NOOP("Actions", "Sap in"),
     QT_TRANSLATE_NOOP("Actions", "sap came into the tank")},
    {Action::stopFiring, Qt::Key_E, Seat::lastLoadCard, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "Stop firing"),
     QT_TRANSLATE_NOOP("Actions", "no more wood; the fire may burn out")},
    {Action::alarmSeen, Qt::Key_A, Seat::bar, KeyReach::everywhere, QT_TRANSLATE_NOOP("Actions", "Seen"),
     QT_TRANSLATE_NOOP("Actions", "the alarm in the bar was seen")},
    {Action::alarmShelve, Qt::Key_Z, Seat::bar, KeyReach::everywhere, QT_TRANSLATE_NOOP("Actions", "Shelve"),
     QT_TRANSLATE_NOOP("Actions", "put the alarm off for a while")},
    {Action::waterCheck, Qt::Key_W, Seat::boardRow, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "Water check"),
     QT_TRANSLATE_NOOP("Actions", "the probe stands in plain boiling water")},
    {Action::handReading, Qt::Key_R, Seat::boardRow, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "Reading"),
     QT_TRANSLATE_NOOP("Actions", "type in a reading")},
    {Action::panSwapped, Qt::Key_P, Seat::boardRow, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "Pan swapped"),
     QT_TRANSLATE_NOOP("Actions", "another syrup pan, or the flow reversed")},
    {Action::defoamer, Qt::Key_O, Seat::boardRow, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "Defoamer"),
     QT_TRANSLATE_NOOP("Actions", "drops of defoamer went in")},
    {Action::note, Qt::Key_N, Seat::boardRow, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "Note"),
     QT_TRANSLATE_NOOP("Actions", "a note for the log")},
    {Action::crew, Qt::Key_K, Seat::boardRow, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "Crew"),
     QT_TRANSLATE_NOOP("Actions", "who comes on, who leaves")},
    {Action::undo, Qt::Key_U, Seat::foot, KeyReach::everywhere, QT_TRANSLATE_NOOP("Actions", "Undo"),
     QT_TRANSLATE_NOOP("Actions", "take back what was entered last")},
    {Action::shiftEnd, Qt::Key_X, Seat::helpOnly, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "End of shift"),
     QT_TRANSLATE_NOOP("Actions", "the shift is over; the next entry begins another")},
    {Action::dayOrNight, Qt::Key_F9, Seat::foot, KeyReach::everywhere, QT_TRANSLATE_NOOP("Actions", "Day or night"),
     QT_TRANSLATE_NOOP("Actions", "light for a bright room, dim for the dark")},
    {Action::acrossTheRoom, Qt::Key_F11, Seat::foot, KeyReach::everywhere, QT_TRANSLATE_NOOP("Actions", "Far view"),
     QT_TRANSLATE_NOOP("Actions", "only the sentence and the three numbers")},
    {Action::why, Qt::Key_Y, Seat::helpOnly, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "Why?"),
     QT_TRANSLATE_NOOP("Actions", "why an alarm is on, a reading is in doubt, a figure is what it is")},
    {Action::remedy, Qt::Key_V, Seat::helpOnly, KeyReach::board, QT_TRANSLATE_NOOP("Actions", "Remedy"),
     QT_TRANSLATE_NOOP("Actions", "what the vessel just filled needs")},
}};

static_assert(inOrder(actionRows, &ActionRow::action));

} // namespace

std::span<const ActionRow> allActions() { return actionRows; }
bool isScreen(Action action) { return static_cast<std::size_t>(action) >= actionRows.size(); }
const ActionRow& rowOf(Action action) { return actionRows.at(static_cast<std::size_t>(action)); }
QString wordOf(Action action) { return QCoreApplication::translate("Actions", rowOf(action).word); }
QString sentenceOf(Action action) { return QCoreApplication::translate("Actions", rowOf(action).sentence); }

QString keyOf(Action action) { return QKeySequence{rowOf(action).key}.toString(QKeySequence::NativeText); }

std::optional<Action> actionOf(const QKeyEvent& event, bool drawing, bool lit) {
    const auto held = event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier);
    if (held == Qt::ControlModifier && event.key() == Qt::Key_Z)
        return Action::undo; // what every other program has taught the hand
    if (held != Qt::NoModifier)
        return std::nullopt;
    if (event.key() == Qt::Key_D)
        return drawing ? Action::drawClose : Action::drawOpen;
    if (event.key() == Qt::Key_F && !lit)
        return Action::fireLit; // the first load lights the fire
    for (const ActionRow& row : actionRows)
        if (row.key == event.key())
            return row.action;
    return std::nullopt;
}

} // namespace panside
