#pragma once
#include "core/boil/fact.h"

#include <optional>

namespace panside {

// One draw that was told twice: at the pan and at the door, or by a second press of the key.
class RepeatedDraw {
public:
    // To be given the facts by time. True for a draw shut again within a minute, without one opened between, that tells
    // nothing new: no volume, or the same volume into the same vessel.
    bool is(const Fact& fact) {
        if (std::holds_alternative<DrawOpened>(fact.what))
            last_.reset();
        const auto* closed = std::get_if<DrawClosed>(&fact.what);
        if (!closed)
            return false;
        constexpr double within = 60; // seconds
        const bool again = last_ && secondsBetween(at_, fact.at) <= within && (!closed->volume || *closed == *last_);
        if (!again)
            last_ = *closed;
        at_ = fact.at;
        return again;
    }

private:
    std::optional<DrawClosed> last_; // the last one counted since a draw was opened
    Instant at_{};
};

} // namespace panside
