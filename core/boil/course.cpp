#include "core/boil/course.h"

#include "core/boil/loads.h"

#include <algorithm>

namespace panside {

void Course::absorb(const Fact& fact) {
    // A key that comes after the pan has told of it tells of no other draw.
    if (repeatedDraw_.hear(fact) == RepeatedDraw::Telling::first) {
        draws += countedUnkeyed_ ? 0 : 1;
        countedUnkeyed_ = false;
    }
    if (!begun)
        begun = fact.at;
    std::visit(Overloaded{
                   [&](const Lit&) {
                       // Lit twice is one fire: the first time counts, unless the crew had stopped firing in between.
                       if (!litAt || shutdownAt)
                           litAt = fact.at;
                       shutdownAt.reset();
                   },
                   [&](const Fired& fired) {
                       // A load with no fire lit: somebody lit it and said nothing.
                       if (!litAt && !deniesLoad(fired))
                           litAt = fact.at;
                   },
                   [&](const DrawOpened&) {
                       if (repeatedDraw_.reopened())
                           return;
                       if (meantShut())
                           return shut(fact.at);
                       shutUnkeyed = false;
                       openedAt = fact.at; // the one before ended, though nobody keyed it
                   },
                   [&](const DrawClosed&) { shut(fact.at); },
                   [&](const PanSwapped&) { swappedAt = fact.at; },
                   [&](const Crew& change) {
                       std::erase(crew, change.off);
                       if (!fact.by.empty() && fact.by != change.off &&
                           std::find(crew.begin(), crew.end(), fact.by) == crew.end())
                           crew.push_back(fact.by);
                   },
                   [&](const Shutdown&) { shutdownAt = fact.at; },
                   [&](const ShiftEnd&) { endedAt = fact.at; },
                   [&](const ClockStep&) { clockSteppedAt = fact.at; },
                   [](const auto&) {},
               },
               fact.what);
}

void Course::shut(Instant at) {
    openedAt.reset();
    if (!shutUnkeyed)
        closedAt = at;
}

void Course::seenShut(Instant at) {
    if (!openedAt)
        return;
    ++draws;
    countedUnkeyed_ = true;
    openedAt.reset();
    closedAt = at;
    shutUnkeyed = true;
}

void Course::show(const State&, Instant, Picture& picture) const {
    picture.drawing = drawing();
    picture.drawOpenedAt = openedAt;
    picture.draws = draws;
    picture.litAt = litAt;
    picture.shutdownAt = shutdownAt;
    picture.endedAt = endedAt;
    picture.crew = crew;
}

} // namespace panside
