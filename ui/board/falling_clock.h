#pragma once
// A clock that only falls. What the engine makes of the fire moves its call to and fro by seconds; a number that a
// person waits by must not rise before a load went in.
#include "core/boil/picture.h"

#include <string>

namespace panside {

class FallingClock {
public:
    // The picture with the firing call as it is shown.
    void steady(Picture& picture);

private:
    std::optional<Instant> lastFired_, due_;
    std::string fire_;
};

} // namespace panside
