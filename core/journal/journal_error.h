#pragma once
// A broken machine, said so that a person can act: what is wrong, with which file, and what to do.
#include <cstdint>
#include <filesystem>
#include <stdexcept>
#include <string>
#include <utility>

namespace panside {

enum class JournalTrouble : std::uint8_t {
    noSuchFile,   // to be read, and not there
    noFolder,     // the folder cannot be made
    noPermission, // the file or its folder may not be read, or not be written
    notSqlite,    // the file is something else
    notOurs,      // an SQLite file of another program
    newer,        // written by a later version: refused, untouched
    heldByOther,  // another console writes in it; this one reads
    locked,       // another program holds it locked
    diskFull,
    readOnly,
    damaged,
    gone,        // the file vanished while it was open: a stick was pulled
    cannotWrite, // the disk refuses, for another reason
    cannotRead,
    noSuchShift,
    noSuchFact
};

// What stands beside a trouble, or was found by a check: who holds the journal, which shift, what the system said.
// Data: sentence() gives the English words, ui/words those of the person.
struct JournalFinding {
    enum class Kind : std::uint8_t {
        none,
        said,         // `first` as it is: the system's own words, or SQLite's, or a name
        fact,         // of the shift `first`
        readings,     // of the shift `first`
        withdrawal,   // of the shift `first`
        turn,         // an opening or closing of the shift `first`
        shiftEntry,   // of the shift `first` in the list of shifts
        carried,      // `first`: the row of a setting for shifts to come
        derived,      // figures worked out of the shift `first`; they can be counted again
        missing,      // of the shift `first`, or of no one shift: so many rows, `second`
        added,        // the same
        sealed,       // what is there of the shift `first` is not what was kept
        notGivenBack, // by the disk, what was written
        copyNotOpened,
        fileNotWritable,
        folderNotWritable, // `first`: what the system says
        otherInPlace,      // another journal
        openedToRead,
        alreadyThere,
        isFolder,
        heldByUnknown,
        heldByProcess, // `first`: its number
        forms,         // its form is `first`, this program knows forms up to `second`
        number         // `first`: of a fact
    };
    Kind kind = Kind::none;
    std::string first = {}, second = {};

    static JournalFinding said(std::string words) { return {Kind::said, std::move(words)}; }
    bool operator==(const JournalFinding&) const = default;
};
std::string sentence(const JournalFinding& finding);

class JournalError : public std::runtime_error {
public:
    JournalError(JournalTrouble trouble, std::filesystem::path place, JournalFinding given = {});

    JournalTrouble trouble() const { return trouble_; }
    const std::filesystem::path& place() const { return place_; }
    const JournalFinding& given() const { return given_; }

private:
    JournalTrouble trouble_;
    std::filesystem::path place_;
    JournalFinding given_;
};

// The English sentence: what, where, what to do.
std::string sentence(JournalTrouble trouble, const std::filesystem::path& place, const JournalFinding& given);

} // namespace panside
