#pragma once
// What a rehearsal says of itself: whose doing it is, and in the end what came of it.
#include "core/boil/boil.h"
#include "core/rehearsal/lesson.h"
#include "ui/look/units.h"
#include "ui/look/wall_clock.h"

#include <QStringList>

namespace panside {

// "fired, 21:04": the last so many deeds, the latest first.
QStringList lastDone(const Facts& facts, int most, Units units, const WallClock& clock);

// "the pan probe went out"; and on the key that has it happen: "Probe out".
QString troubleWords(Trouble trouble);
QString troubleKeyWord(Trouble trouble);

struct RehearsalTold {
    std::uint64_t seed = 0;
    bool over = false, crewAway = false;
    std::vector<Trouble> troubles = {}; // of a lesson; said when it is over
    LessonScore score = {};
    QStringList done = {}; // the last deeds, the latest first
    bool teaching = false; // somebody is about to throw something in
};
QString rehearsalWords(const RehearsalTold& told, Units units);

} // namespace panside
