#pragma once
// The whole chain before the fire is lit: for each reading, whether it comes, from where, how old it is, whether it can
// be true, and how it stands with the engine; then what a reading must reach: the disk and the ear. Pure.
#include "core/boil/picture.h"
#include "core/probe/port_status.h"
#include "core/probe/probe_file.h"
#include "ui/look/units.h"

#include <QString>
#include <vector>

namespace panside {

enum class ChainMark { well, look, broken };

struct ChainRow {
    ChainMark mark;
    QString what;    // "syrup pan"
    QString from;    // "pan box"
    QString value;   // as it is now
    QString age;     // of the last reading
    QString verdict; // "arrives, good", or what is wrong
    bool operator==(const ChainRow&) const = default;
};

// What the chain is judged by.
struct ChainEvidence {
    ProbeFile file = {};
    std::vector<const PortStatus*> ports = {}; // one each of the file's; nullptr: nothing is known of it yet
    Picture picture;
    Instant now{};
    QString journalTrouble;  // empty: facts are kept
    bool canBeHeard = false; // there is a loudspeaker
};

std::vector<ChainRow> chainRows(const ChainEvidence& evidence, Units units);
// "All of it works", or how much is to be looked at.
QString chainSentence(const std::vector<ChainRow>& rows);

} // namespace panside
