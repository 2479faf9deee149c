#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"
#include "core/boil/repeated_draw.h"

#include <string>
#include <vector>

namespace panside {

struct State;

// The course of the shift: what was done, and who is there. Nothing here is estimated.
class Course {
public:
    void absorb(const Fact& fact);
    void show(const State& state, Instant now, Picture& picture) const;

    std::optional<Instant> begun, litAt, openedAt, closedAt, shutdownAt, endedAt, swappedAt, clockSteppedAt;
    int draws = 0;                 // closed ones
    std::vector<std::string> crew; // in the order they came on
    bool drawing() const { return openedAt.has_value(); }
    // The fact just heard, a draw that was opened, means that it was shut.
    bool meantShut() const { return repeatedDraw_.meantShut(); }
    // Nobody keyed that the draw was shut, and the pan shows that it was.
    void seenShut(Instant at);
    bool shutUnkeyed = false; // the last draw was, and no key has told of it yet
    bool firing() const { return litAt && !shutdownAt && !endedAt; }

private:
    void shut(Instant at);

    RepeatedDraw repeatedDraw_;
    bool countedUnkeyed_ = false; // the last draw, as the pan showed it; no fact has told of it yet
};

} // namespace panside
