#pragma once
#include "ui/frame/yard.h"
#include "ui/look/inks.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

struct SoundChoices {
    int volume = 100;    // percent, softest to 100: an alarm that cannot be heard is none
    bool spoken = false; // the line of a new alarm is said as well
    bool still = false;  // the frame of an alarm stands instead of flashing
    static constexpr int softest = 20, step = 10;
    bool operator==(const SoundChoices&) const = default;
};

// The look in from a phone: off until somebody switches it on.
struct LookChoices {
    bool on = false;
    QString address; // of this machine; empty: the first that a phone may reach
    int port = 8437;
    QString key; // 128 bits as 32 digits; whoever has it may look in
    bool operator==(const LookChoices&) const = default;
};

// How this person likes the console: kept in a small file of their own, apart from the shifts.
struct Choices {
    Look look = Look::day;
    Units units = Units::metric;
    QString language = QStringLiteral("en"); // a code of languages()
    QString backupFolder;                    // empty: nothing is backed up
    SoundChoices sound = {};
    Yard yard = {};
    LookChoices lookIn = {};
    bool cautioned = false; // the first-start page has been read
    QString askedFor;       // the journal that the first questions were asked for last

    // What was chosen before; for the rest, what the system's language and country suggest.
    static Choices load();
    // A choice that cannot be kept is not worth a message: it holds for this run.
    void save() const;
};

} // namespace panside
