#pragma once
// Logs read in: what came of each, in words: what is in now, what was refused and why, what must be mapped first. Pure;
// the app does the work.
#include "core/journal/log_import.h"
#include "ui/page/keyed_page.h"

#include <QString>
#include <optional>
#include <vector>

namespace panside {

struct ImportLine {
    QString name;                     // the file's, as people see it
    std::optional<Imported> imported; // none: it waits, or could not be opened, or must be mapped first
    QString trouble;                  // why it could not be opened, or what the journal said
    bool unmapped = false;            // another logger's table that nobody has mapped yet
    std::uint64_t blanks = 0;         // of such a table: cells without a reading
};

struct ImportState {
    std::vector<ImportLine> lines; // in the order chosen
    bool working = false;
    int at = 0;           // the one being read, from 0
    bool stopped = false; // by hand: those after it were not begun
    bool mayWrite = true;
};

QString importWords(const ImportState& state);
std::vector<KeyedPage::Key> importKeys(const ImportState& state);
// "added as shift Sat 14 Mar 2026, 18:05: 4,411 facts"; without the file's name.
QString importedWords(const Imported& imported);

} // namespace panside
