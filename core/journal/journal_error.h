#pragma once
// A broken machine, said so that a person can act: what is wrong, with which file, and what to do.
#include <cstdint>
#include <filesystem>
#include <stdexcept>
#include <string>

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

class JournalError : public std::runtime_error {
public:
    // `given` is what the words need beside the place: who holds it, which version, what the system said.
    JournalError(JournalTrouble trouble, std::filesystem::path place, std::string given = {});

    JournalTrouble trouble() const { return trouble_; }
    const std::filesystem::path& place() const { return place_; }
    const std::string& given() const { return given_; }

private:
    JournalTrouble trouble_;
    std::filesystem::path place_;
    std::string given_;
};

// The English sentence: what, where, what to do.
std::string sentence(JournalTrouble trouble, const std::filesystem::path& place, const std::string& given);

} // namespace panside
