#pragma once
// The one sentence over the board: what is wrong and what to do first; on a calm boil a calm line.
#include "core/boil/picture.h"
#include "ui/board/card_view.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

struct SentenceView {
    QString wrong;  // "The syrup pan scorches in 4 min", or the calm line
    QString first;  // "flood the pan with sap, …"; empty on a calm boil
    QString others; // "also: sap low, clock moved"
    QString state;  // "gone, not yet seen"
    Tone tone = Tone::calm;
    bool flashing = false;      // not yet seen
    bool canBeSeen = false;     // the key that says so is shown
    std::optional<Alarm> alarm; // the one shown; none on a calm boil
    bool operator==(const SentenceView&) const = default;
};

SentenceView sentence(const Picture& picture, Units units);
// The alarm the bar shows: not yet seen before seen, then by priority, then the oldest.
const AlarmPicture* shownAlarm(const Picture& picture);

} // namespace panside
