#include "core/journal/journal_error.h"

namespace panside {
namespace {

// At %1 stands what is beside the trouble, in brackets where it may be missing.
Sentence patternOf(JournalTrouble trouble) {
    switch (trouble) {
    case JournalTrouble::noSuchFile:
        return say("there is no journal here. Check the path.");
    case JournalTrouble::noFolder:
        return say("the folder cannot be made%1. Choose another place for the journal.");
    case JournalTrouble::noPermission:
        return say("permission is missing%1. Ask the owner of the file, or choose another place.");
    case JournalTrouble::notSqlite:
        return say("this is not a journal but some other file; it was left as it is. Check the path.");
    case JournalTrouble::notOurs:
        return say("this database belongs to another program; it was left as it is. Check the path.");
    case JournalTrouble::newer:
        return say("this journal was written by a later version of Panside%1; it was left as it is. Install that "
                   "version, or open another journal.");
    case JournalTrouble::heldByOther:
        return say(
            "another console is writing in this journal%1; here it can only be read. Close the other one to write.");
    case JournalTrouble::locked:
        return say("another program holds this journal locked. Close that program; it is tried again by itself.");
    case JournalTrouble::diskFull:
        return say("the disk is full. Make room; what was not yet kept is held in memory and tried again.");
    case JournalTrouble::readOnly:
        return say("this journal can only be read%1. Give the right to write, or choose another place.");
    case JournalTrouble::damaged:
        return say("the journal is damaged%1. Salvage what can be read into a new file, or restore a back-up.");
    case JournalTrouble::gone:
        return say("the journal has vanished. Put the disk or stick back; what was not yet kept is held in memory.");
    case JournalTrouble::cannotWrite:
        return say("the disk refuses to write%1. Check the disk; back up to another place.");
    case JournalTrouble::cannotRead:
        return say("the journal cannot be read%1. Check the disk and the path.");
    case JournalTrouble::noSuchShift:
        return say("there is no shift %1 in this journal. Look at the list of its shifts.");
    }
    return {};
}

Sentence worded(JournalTrouble trouble, const Sentence& given) {
    const bool bare = given.text.empty() || trouble == JournalTrouble::noSuchShift;
    return sayWith(patternOf(trouble), {bare ? given : Sentence{.text = " (%1)", .inner = {given}}});
}

} // namespace

Sentence aFactOf(std::string shift) { return say("a fact of the shift %1", {std::move(shift)}); }
Sentence readingsOf(std::string shift) { return say("readings of the shift %1", {std::move(shift)}); }

JournalError::JournalError(JournalTrouble trouble, std::filesystem::path place, Sentence given)
    : std::runtime_error{place.string() + ": " + english(worded(trouble, given))}, trouble_{trouble},
      place_{std::move(place)}, given_{std::move(given)} {}

Sentence JournalError::told() const { return worded(trouble_, given_); }

} // namespace panside
