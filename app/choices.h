#pragma once
#include "ui/look/inks.h"
#include "ui/look/units.h"
#include "ui/sound/sound_screen.h"
#include "ui/tank/yard.h"

#include <QString>

namespace panside {

// How this person likes the console: kept in a small file of their own, apart from the shifts.
struct Choices {
    Look look = Look::day;
    Units units = Units::metric;
    QString language = QStringLiteral("en"); // or "fr"
    QString backupFolder;                    // empty: nothing is backed up
    SoundChoices sound = {};
    Yard yard = {};
    bool cautioned = false; // the first-start page has been read

    // What was chosen before; for the rest, what the system's language and country suggest.
    static Choices load();
    // A choice that cannot be kept is not worth a message: it holds for this run.
    void save() const;
};

} // namespace panside
