#pragma once
// Back-ups and the health of the journal, in words: what is kept where, what putting one back would do, what is wrong
// with the file and what could be saved of it. Pure; the app does the work.
#include "core/journal/backup.h"
#include "core/journal/salvage.h"
#include "ui/page/keyed_page.h"

#include <QString>
#include <optional>
#include <vector>

namespace panside {

struct KeepingState {
    QString journal;
    QString folder; // where back-ups go; empty: none was chosen
    std::vector<Backup> backups;
    std::optional<JournalHealth> health;
    bool looking = false; // the journal is being looked through
    bool working = false; // a back-up, a check or a salvage is under way and can be stopped
    // What waits for a yes.
    std::optional<RestorePreview> restoring;
    QString restoringFrom;
    std::optional<Salvaged> salvaged;
    QString salvagedInto;
};

QString keepingWords(const KeepingState& state);
std::vector<KeyedPage::Key> keepingKeys(const KeepingState& state);
// What was saved and what was lost, shift by shift.
QString salvagedWords(const Salvaged& salvaged);

} // namespace panside
