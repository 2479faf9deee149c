#pragma once
// The one sentence over the board: what is wrong and what to do first; what is called for now; what is over; on a calm
// boil a calm line. Folded from the same picture as the cards, and from the same calls.
#include "core/boil/picture.h"
#include "ui/look/units.h"
#include "ui/look/urgency.h"

#include <QStringList>

namespace panside {

struct SentenceView {
    enum class State { calm, over, due, alarm };
    State state = State::calm;
    QString wrong;     // "The syrup pan scorches in 4 min", "Draw now", or the calm line
    QStringList steps; // what to do, in this order: at most three, a verb each
    QString next;      // where there is nothing to do: what comes next
    QString others;    // "also: sap low, clock moved"
    Tone tone = Tone::calm;
    bool flashing = false;      // an alarm that stands and was not yet seen
    bool canBeSeen = false;     // the key that says so is shown
    bool canBeShelved = false;  // so is the one that puts it away
    std::optional<Alarm> alarm; // the one shown
    QString first() const { return steps.join(QStringLiteral(", ")); }
    bool operator==(const SentenceView&) const = default;
};

SentenceView sentence(const Picture& picture, Units units);
// The alarm the bar shows, of those that stand: not yet seen before seen, then by priority, then the oldest.
const AlarmPicture* shownAlarm(const Picture& picture);
// One that ended before anybody saw it, for as long as that is news and no deed has answered it; nullptr for none.
const AlarmPicture* overAlarm(const Picture& picture);
// "fire in 4 min (Odile), draw in 12 min": what comes next, the sooner first.
QString nextLine(const Picture& picture);

} // namespace panside
