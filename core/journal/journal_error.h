#pragma once
// A broken machine, said so that a person can act: what is wrong, with which file, and what to do.
#include "core/words/sentence.h"

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
    noSuchShift
};

// what() is the English sentence; ui/words says it in the person's language.
class JournalError : public std::runtime_error {
public:
    JournalError(JournalTrouble trouble, std::filesystem::path place, Sentence given = {});

    JournalTrouble trouble() const { return trouble_; }
    const std::filesystem::path& place() const { return place_; }
    // What is wrong and what to do.
    Sentence told() const;
    const Sentence& given() const { return given_; }

private:
    JournalTrouble trouble_;
    std::filesystem::path place_;
    Sentence given_;
};

// What a check found, and a reader stumbles over.
Sentence aFactOf(std::string shift);
Sentence readingsOf(std::string shift);

} // namespace panside
