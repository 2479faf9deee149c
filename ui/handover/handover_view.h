#pragma once
// What the next crew must know, on one page: what stands where, which side is drawn, what each barrel holds, what to
// watch. Pure: from the shift as it stands and the deeds of the shifts before.
#include "core/boil/boil.h"
#include "ui/look/units.h"

#include <QString>
#include <vector>

namespace panside {

struct HandoverSource {
    Picture picture;                // now
    std::vector<Fact> shift;        // this shift's facts that are no plain readings, by time
    std::vector<Fact> before;       // those of the shifts before, by time
    std::optional<Instant> started; // this shift; none: no shift is going on
    bool goesOn = false;
};

// A barrel, pail or tank that syrup was drawn to: what the log tells of it. It may have been emptied since: no fact
// says so.
struct Barrel {
    std::string name; // as written; empty: nobody said where to
    Volume volume = Volume::cubicMetre(0);
    int draws = 0, measured = 0;
    Instant first{}, last{};
    std::optional<DensityCheck> check =
        {}; // the last one made from the opening of a draw to half an hour after it closed
};
// By the last draw into them, the newest first.
std::vector<Barrel> barrelsOf(const std::vector<Fact>& facts);

// Rich text, for the screen and for paper.
QString handoverWords(const HandoverSource& source, Units units);

} // namespace panside
