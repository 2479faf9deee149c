#pragma once
// The desks of all screens, in the order of the rail; ui/console/screens.cpp says which screen each serves.

namespace panside {

class Desk;
class Shell;

// The feed tank: its shape, and a dip of it as a reading.
Desk* tankDesk(Shell& shell);
// Every tank: what stands in it, how warm and how old, and what to boil first.
Desk* tanksDesk(Shell& shell);
// How long it will take tonight, and how much may be started to be in bed by a clock time.
Desk* tonightDesk(Shell& shell);
// The fire and what it burns, with what is left of the woodpile.
Desk* fuelDesk(Shell& shell);
// What the next crew must know, out of this shift and those before it.
Desk* handoverDesk(Shell& shell);
// Where a rehearsal says what it is, and is begun again: the same evening, another, a lesson, or with the person in the
// crew's part.
Desk* rehearsalDesk(Shell& shell);
bool isRehearsal(Shell& shell);
// The vessels of syrup, what each wants, and what is done with it.
Desk* vesselsDesk(Shell& shell);
// The filter press: begun and ended by one key each, its gauge against the maker's limit.
Desk* filterDesk(Shell& shell);
// A house shows it only when it has one: a limit was written, a gauge is read, a run was told of.
bool hasFilter(Shell& shell);
// Packing: what may be packed, what it gives, what a label needs.
Desk* packDesk(Shell& shell);
// The lots: what is here, what is held and why, what went out; labels and tags.
Desk* lotsDesk(Shell& shell);
// The thread of a lot, a vessel, a night: behind it and before it, and a recall on paper.
Desk* traceDesk(Shell& shell);
// Opens its page and asks it about a lot or a vessel; `from` is a page of the same window.
void openTrace(Shell& shell, const QWidget& from, const QString& name);
// The inspector's book: its tables to look at, and the whole of it on paper by one key.
Desk* bookDesk(Shell& shell);
// The nights of the journal, read on a connection of its own so that the shift is never held up.
Desk* reviewDesk(Shell& shell);
// A log on paper, typed the next day: it goes the way of any other log.
Desk* paperDesk(Shell& shell);
// Logs read in, other loggers' tables too, one after another on a thread of its own.
Desk* importDesk(Shell& shell);
// The season: at once what is kept, and what is missing worked out on a thread of its own.
Desk* seasonDesk(Shell& shell);
// The season's sugar from bush to bottle, widths to scale.
Desk* sugarDesk(Shell& shell);
// The house's account: a tap, a run, a night, heavy draws, stock, sap traded.
Desk* accountDesk(Shell& shell);
// What the rig tells over days.
Desk* tellsDesk(Shell& shell);
// The rig and the day's choices: what is typed becomes a setting of the shift, or of the next one.
Desk* rigDesk(Shell& shell);
// The first questions, from the first one each time they are opened: their answers become settings, as on the rig's
// page, and choices of the person's.
Desk* startDesk(Shell& shell);
// The ports and what they read; what is kept goes into the probe file.
Desk* probesDesk(Shell& shell);
// How loud the alarms are, and hearing them.
Desk* soundDesk(Shell& shell);
// Back-ups, checks and salvage of the journal.
Desk* keepingDesk(Shell& shell);
// The board on a phone: who may look in, and how they get there.
Desk* lookDesk(Shell& shell);
// The sums of the trade; they touch neither shift nor journal.
Desk* reckonerDesk(Shell& shell);
// The manual, a page at a time.
Desk* manualDesk(Shell& shell);

} // namespace panside
