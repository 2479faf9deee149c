#include "ui/board/actions.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <array>

namespace panside {
namespace {

#define WORD(text) QT_TRANSLATE_NOOP("Actions", text)

constexpr std::array<ActionRow, 25> table{{
    {Action::drawOpen, Qt::Key_D, Place::drawCard, WORD("Open the draw"), WORD("the draw-off was opened")},
    {Action::drawClose, Qt::Key_D, Place::drawCard, WORD("Close the draw"),
     WORD("the draw-off was closed; then how much came")},
    {Action::densityCheck, Qt::Key_C, Place::drawCard, WORD("Check"), WORD("what hydrometer and cup thermometer show")},
    {Action::fired, Qt::Key_F, Place::fireCard, WORD("Fired"), WORD("a load of wood went in")},
    {Action::fireLit, Qt::Key_L, Place::fireCard, WORD("Fire lit"), WORD("the fire was lit")},
    {Action::sapIn, Qt::Key_S, Place::lastLoadCard, WORD("Sap in"), WORD("sap came into the tank")},
    {Action::stopFiring, Qt::Key_E, Place::lastLoadCard, WORD("Stop firing"),
     WORD("no more wood; the fire may burn out")},
    {Action::alarmSeen, Qt::Key_A, Place::sentence, WORD("Seen"), WORD("the alarm in the bar was seen")},
    {Action::alarmShelve, Qt::Key_Z, Place::keyOnly, WORD("Shelve"), WORD("put the alarm away for a while")},
    {Action::waterCheck, Qt::Key_W, Place::keyRow, WORD("Water check"),
     WORD("the probe stands in plain boiling water")},
    {Action::handReading, Qt::Key_R, Place::keyRow, WORD("Reading"), WORD("type in a reading")},
    {Action::panSwapped, Qt::Key_P, Place::keyRow, WORD("Pan swapped"),
     WORD("another syrup pan, or the flow reversed")},
    {Action::defoamer, Qt::Key_O, Place::keyRow, WORD("Defoamer"), WORD("drops of defoamer went in")},
    {Action::note, Qt::Key_N, Place::keyRow, WORD("Note"), WORD("words for the log")},
    {Action::crew, Qt::Key_K, Place::keyRow, WORD("Crew"), WORD("who comes on, who leaves")},
    {Action::undo, Qt::Key_U, Place::keyRow, WORD("Undo"), WORD("take back what was entered last")},
    {Action::shiftEnd, Qt::Key_X, Place::keyOnly, WORD("End of shift"),
     WORD("the shift is over; the next fact begins another")},
    {Action::help, Qt::Key_Question, Place::keyRow, WORD("Keys"), WORD("all keys on one page")},
    {Action::review, Qt::Key_F2, Place::keyOnly, WORD("Review"), WORD("the shifts so far")},
    {Action::season, Qt::Key_F3, Place::keyOnly, WORD("Season"), WORD("from sap to bottle")},
    {Action::reckoner, Qt::Key_F4, Place::keyOnly, WORD("Reckoner"), WORD("the sums of the trade")},
    {Action::probes, Qt::Key_F5, Place::keyOnly, WORD("Probes"), WORD("ports, fields and what they read")},
    {Action::rig, Qt::Key_F6, Place::keyOnly, WORD("Rig"), WORD("pans, tank, target, units, language")},
    {Action::dayOrNight, Qt::Key_F9, Place::keyOnly, WORD("Day or night"),
     WORD("light for a bright room, dim for the dark")},
    {Action::acrossTheRoom, Qt::Key_F11, Place::keyOnly, WORD("Across the room"),
     WORD("only the sentence and the three numbers")},
}};

#undef WORD

constexpr bool tableIsInOrder() {
    for (std::size_t i = 0; i < table.size(); ++i)
        if (static_cast<std::size_t>(table[i].action) != i)
            return false;
    return true;
}
static_assert(tableIsInOrder());

} // namespace

std::span<const ActionRow> allActions() { return table; }
const ActionRow& rowOf(Action action) { return table[static_cast<std::size_t>(action)]; }
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
    for (const ActionRow& row : table)
        if (row.key == event.key())
            return row.action;
    return std::nullopt;
}

} // namespace panside
