#pragma once
#include "core/boil/fact.h"

#include <optional>

namespace panside {

// One draw that was told twice: at the pan and at the door, or by a second press of the key.
class RepeatedDraw {
public:
    // first: a draw was shut. again: the one before, with nothing new. fuller: the one before, now with its volume.
    enum class Telling { none, first, again, fuller };

    // To be given the facts by time. One draw is told again where it is shut again within a minute, without one opened
    // between, and either tells no volume, or both the same into the same vessel.
    Telling hear(const Fact& fact) {
        if (std::holds_alternative<DrawOpened>(fact.what))
            last_.reset();
        const auto* closed = std::get_if<DrawClosed>(&fact.what);
        if (!closed)
            return Telling::none;
        constexpr double within = 60; // seconds
        const bool soon = last_ && secondsBetween(at_, fact.at) <= within;
        at_ = fact.at;
        if (soon && (!closed->volume || isSame(*closed)))
            return Telling::again;
        const bool fuller = soon && !last_->volume;
        last_ = *closed;
        return fuller ? Telling::fuller : Telling::first;
    }

private:
    bool isSame(const DrawClosed& closed) const {
        return closed.volume == last_->volume && (closed.to == last_->to || closed.to.empty() || last_->to.empty());
    }

    std::optional<DrawClosed> last_; // the last one counted since a draw was opened
    Instant at_{};
};

} // namespace panside
