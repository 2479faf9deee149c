#include "ui/keys/actions.h"

#include "core/quantity/enum_count.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <array>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Actions", text); }

constexpr std::array<ActionRow, 21> actionRows{{
    {Action::drawOpen, Qt::Key_D, Seat::drawCard, KeyReach::everywhere, QT_TR_NOOP("Open the draw"),
     QT_TR_NOOP("the draw-off was opened")},
    {Action::drawClose, Qt::Key_D, Seat::drawCard, KeyReach::everywhere, QT_TR_NOOP("Close the draw"),
     QT_TR_NOOP("the draw-off was closed; then how much came")},
    {Action::densityCheck, Qt::Key_C, Seat::drawCard, KeyReach::everywhere, QT_TR_NOOP("Check"),
     QT_TR_NOOP("what hydrometer and cup thermometer show")},
    {Action::fired, Qt::Key_F, Seat::fireCard, KeyReach::everywhere, QT_TR_NOOP("Fired"),
     QT_TR_NOOP("a load of wood went in")},
    {Action::fireLit, Qt::Key_L, Seat::fireCard, KeyReach::board, QT_TR_NOOP("Fire lit"),
     QT_TR_NOOP("the fire was lit")},
    {Action::sapIn, Qt::Key_S, Seat::lastLoadCard, KeyReach::everywhere, QT_TR_NOOP("Sap in"),
     QT_TR_NOOP("sap came into the tank")},
    {Action::stopFiring, Qt::Key_E, Seat::lastLoadCard, KeyReach::board, QT_TR_NOOP("Stop firing"),
     QT_TR_NOOP("no more wood; the fire may burn out")},
    {Action::alarmSeen, Qt::Key_A, Seat::bar, KeyReach::everywhere, QT_TR_NOOP("Seen"),
     QT_TR_NOOP("the alarm in the bar was seen")},
    {Action::alarmShelve, Qt::Key_Z, Seat::bar, KeyReach::everywhere, QT_TR_NOOP("Shelve"),
     QT_TR_NOOP("put the alarm off for a while")},
    {Action::waterCheck, Qt::Key_W, Seat::boardRow, KeyReach::board, QT_TR_NOOP("Water check"),
     QT_TR_NOOP("the probe stands in plain boiling water")},
    {Action::handReading, Qt::Key_R, Seat::boardRow, KeyReach::board, QT_TR_NOOP("Reading"),
     QT_TR_NOOP("type in a reading")},
    {Action::panSwapped, Qt::Key_P, Seat::boardRow, KeyReach::board, QT_TR_NOOP("Pan swapped"),
     QT_TR_NOOP("another syrup pan, or the flow reversed")},
    {Action::defoamer, Qt::Key_O, Seat::boardRow, KeyReach::board, QT_TR_NOOP("Defoamer"),
     QT_TR_NOOP("drops of defoamer went in")},
    {Action::note, Qt::Key_N, Seat::boardRow, KeyReach::board, QT_TR_NOOP("Note"), QT_TR_NOOP("a note for the log")},
    {Action::crew, Qt::Key_K, Seat::boardRow, KeyReach::board, QT_TR_NOOP("Crew"),
     QT_TR_NOOP("who comes on, who leaves")},
    {Action::undo, Qt::Key_U, Seat::foot, KeyReach::everywhere, QT_TR_NOOP("Undo"),
     QT_TR_NOOP("take back what was entered last")},
    {Action::shiftEnd, Qt::Key_X, Seat::helpOnly, KeyReach::board, QT_TR_NOOP("End of shift"),
     QT_TR_NOOP("the shift is over; the next entry begins another")},
    {Action::dayOrNight, Qt::Key_F9, Seat::foot, KeyReach::everywhere, QT_TR_NOOP("Day or night"),
     QT_TR_NOOP("light for a bright room, dim for the dark")},
    {Action::acrossTheRoom, Qt::Key_F11, Seat::foot, KeyReach::everywhere, QT_TR_NOOP("Far view"),
     QT_TR_NOOP("only the sentence and the three numbers")},
    {Action::why, Qt::Key_Y, Seat::helpOnly, KeyReach::board, QT_TR_NOOP("Why?"),
     QT_TR_NOOP("why an alarm is on, a reading is in doubt, a figure is what it is")},
    {Action::remedy, Qt::Key_V, Seat::helpOnly, KeyReach::board, QT_TR_NOOP("Remedy"),
     QT_TR_NOOP("what the vessel just filled needs")},
}};

static_assert(inOrder(actionRows, &ActionRow::action));

} // namespace

std::span<const ActionRow> allActions() { return actionRows; }
bool isScreen(Action action) { return static_cast<std::size_t>(action) >= actionRows.size(); }
const ActionRow& rowOf(Action action) { return actionRows.at(static_cast<std::size_t>(action)); }
QString wordOf(Action action) { return tr(rowOf(action).word); }
QString sentenceOf(Action action) { return tr(rowOf(action).sentence); }

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
