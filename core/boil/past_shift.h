#pragma once
#include "core/boil/boil.h"

namespace panside {

// A shift that is over, for its chart: folded as it is read and let go, without its alarms. A third of the time of a
// Boil, and next to no memory.
class PastShift {
public:
    PastShift();
    ~PastShift();
    PastShift(const PastShift&) = delete;
    PastShift& operator=(const PastShift&) = delete;

    void add(const Fact& fact); // in the order of their times, those of equal times in that of their ids
    const std::vector<RisePoint>& rise() const;
    const std::vector<SteamPoint>& steam() const;
    std::optional<Picture> last() const; // at the last fact, without alarms; none: there was no fact

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace panside
