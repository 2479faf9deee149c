#include "core/journal/journal_error.h"

#include <utility>

namespace panside {
namespace {

std::string bracketed(const JournalFinding& given) {
    const std::string words = sentence(given);
    return words.empty() ? words : " (" + words + ")";
}

std::string ofShift(const std::string& shift) {
    return shift.empty() ? " of the list of shifts or of settings for shifts to come" : " of the shift " + shift;
}

} // namespace

std::string sentence(const JournalFinding& finding) {
    using Kind = JournalFinding::Kind;
    switch (finding.kind) {
    case Kind::none:
        return {};
    case Kind::said:
        return finding.first;
    case Kind::fact:
        return "a fact of the shift " + finding.first;
    case Kind::readings:
        return "readings of the shift " + finding.first;
    case Kind::withdrawal:
        return "a withdrawal of the shift " + finding.first;
    case Kind::turn:
        return "an opening or closing of the shift " + finding.first;
    case Kind::shiftEntry:
        return "the shift " + finding.first + " in the list of shifts";
    case Kind::carried:
        return "a setting for shifts to come: " + finding.first;
    case Kind::derived:
        return "figures worked out of the shift " + finding.first + "; have them counted again";
    case Kind::missing:
        return "missing rows, " + finding.second + ofShift(finding.first);
    case Kind::added:
        return "rows that were not kept here, " + finding.second + ofShift(finding.first);
    case Kind::sealed:
        return "rows that are not as they were kept" + ofShift(finding.first);
    case Kind::notGivenBack:
        return "the disk does not give back what was written";
    case Kind::copyNotOpened:
        return "the copy cannot be opened";
    case Kind::fileNotWritable:
        return "the file may not be written";
    case Kind::folderNotWritable:
        return "its folder may not be written: " + finding.first;
    case Kind::otherInPlace:
        return "another journal lies in its place";
    case Kind::openedToRead:
        return "it was opened to read";
    case Kind::alreadyThere:
        return "it is there already; name a new file";
    case Kind::isFolder:
        return "it is a folder";
    case Kind::heldByUnknown:
        return "process unknown";
    case Kind::heldByProcess:
        return "process " + finding.first;
    case Kind::forms:
        return "its form is " + finding.first + ", this program knows forms up to " + finding.second;
    case Kind::number:
        return "number " + finding.first;
    }
    return {};
}

std::string sentence(JournalTrouble trouble, const std::filesystem::path& place, const JournalFinding& given) {
    std::string at = place.string() + ": ";
    switch (trouble) {
    case JournalTrouble::noSuchFile:
        return at + "there is no journal here. Check the path.";
    case JournalTrouble::noFolder:
        return at + "the folder cannot be made" + bracketed(given) + ". Choose another place for the journal.";
    case JournalTrouble::noPermission:
        return at + "permission is missing" + bracketed(given) +
               ". Ask the owner of the file, or choose another place.";
    case JournalTrouble::notSqlite:
        return at + "this is not a journal but some other file; it was left as it is. Check the path.";
    case JournalTrouble::notOurs:
        return at + "this database belongs to another program; it was left as it is. Check the path.";
    case JournalTrouble::newer:
        return at + "this journal was written by a later version of Panside" + bracketed(given) +
               "; it was left as it is. Install that version, or open another journal.";
    case JournalTrouble::heldByOther:
        return at + "another console is writing in this journal" + bracketed(given) +
               "; here it can only be read. Close the other one to write.";
    case JournalTrouble::locked:
        return at + "another program holds this journal locked. Close that program; it is tried again by itself.";
    case JournalTrouble::diskFull:
        return at + "the disk is full. Make room; what was not yet kept is held in memory and tried again.";
    case JournalTrouble::readOnly:
        return at + "this journal can only be read" + bracketed(given) +
               ". Give the right to write, or choose another place.";
    case JournalTrouble::damaged:
        return at + "the journal is damaged" + bracketed(given) +
               ". Salvage what can be read into a new file, or restore a back-up.";
    case JournalTrouble::gone:
        return at + "the journal has vanished. Put the disk or stick back; what was not yet kept is held in memory.";
    case JournalTrouble::cannotWrite:
        return at + "the disk refuses to write" + bracketed(given) + ". Check the disk; back up to another place.";
    case JournalTrouble::cannotRead:
        return at + "the journal cannot be read" + bracketed(given) + ". Check the disk and the path.";
    case JournalTrouble::noSuchShift:
        return at + "there is no shift " + sentence(given) + " in this journal. Look at the list of its shifts.";
    case JournalTrouble::noSuchFact:
        return at + "there is no such fact" + bracketed(given) + " in this journal; nothing was withdrawn.";
    }
    return at;
}

JournalError::JournalError(JournalTrouble trouble, std::filesystem::path place, JournalFinding given)
    : std::runtime_error{sentence(trouble, place, given)}, trouble_{trouble}, place_{std::move(place)},
      given_{std::move(given)} {}

} // namespace panside
