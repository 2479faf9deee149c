#pragma once
#include "core/boil/day_vocabulary.h"
#include "core/boil/fact.h"

#include <cmath>
#include <optional>

namespace panside {

// What counts as a draw: the one rule, asked by board, report, season and hand-over alike. One that was told twice, at
// the pan and at the door or by a second press of the key, is one. One that was opened, and that nobody keyed shut,
// counts when the next is opened or the shift ends; the board says so sooner where the pan shows it.
class RepeatedDraw {
public:
    // first: a draw was shut, or must have been. The others tell of the one before. again: nothing new. measured: now
    // its volume. placed: now the vessel it went into.
    enum class Telling { none, first, again, measured, placed };
    // Whether there is a draw or a volume in it that was not counted yet.
    static constexpr bool counts(Telling telling) { return telling == Telling::first || telling == Telling::measured; }

    // To be given the facts by time. One draw is told again where it is shut again within a minute, without one opened
    // between, and either tells no volume, or both the same into the same vessel. Two hands, one of which wrote it down
    // later, have five minutes for the same volume and vessel.
    Telling hear(const Fact& fact) {
        if (std::holds_alternative<ShiftEnd>(fact.what))
            return unkeyed();
        if (std::holds_alternative<DrawOpened>(fact.what))
            return opened(fact);
        const auto* closed = std::get_if<DrawClosed>(&fact.what);
        if (!closed)
            return Telling::none;
        open_.reset();
        const double apart = std::abs(secondsBetween(at_, fact.at));
        const bool twoHands = counted_ && apart > within && apart <= byTwoHands && (fact.entered || entered_) &&
                              closed->volume && closed->volume == counted_->volume &&
                              nameKey(closed->to) == nameKey(counted_->to);
        entered_ = fact.entered.has_value();
        if (twoHands)
            return Telling::again;
        const bool soon = counted_ && apart <= within;
        at_ = fact.at;
        if (soon && (!closed->volume || isSame(*closed))) {
            if (closed->to.empty() || !draw_.to.empty())
                return Telling::again;
            draw_.to = closed->to;
            return Telling::placed;
        }
        const bool measured = soon && !counted_->volume;
        counted_ = *closed;
        if (measured && closed->to.empty())
            draw_.volume = closed->volume;
        else
            draw_ = *closed;
        return measured ? Telling::measured : Telling::first;
    }
    // The fact just heard, a draw that was opened, tells of the one that was open already.
    bool reopened() const { return reopened_; }
    // The last draw that was shut, as all its tellings together say it; empty before the first.
    const DrawClosed& draw() const { return draw_; }

private:
    static constexpr double within = 60, byTwoHands = 300; // seconds

    Telling unkeyed() {
        if (!open_)
            return Telling::none;
        open_.reset();
        counted_.reset();
        draw_ = {};
        return Telling::first;
    }
    Telling opened(const Fact& fact) {
        reopened_ = open_ && secondsBetween(*open_, fact.at) <= (fact.entered ? byTwoHands : within);
        if (reopened_)
            return Telling::none;
        const Telling before = unkeyed();
        if (!fact.entered)
            counted_.reset();
        open_ = fact.at;
        return before;
    }
    bool isSame(const DrawClosed& closed) const {
        return closed.volume == counted_->volume &&
               (nameKey(closed.to) == nameKey(draw_.to) || closed.to.empty() || draw_.to.empty());
    }

    std::optional<Instant> open_; // one that was opened and is not keyed shut
    bool reopened_ = false;
    std::optional<DrawClosed> counted_; // the last telling that counted since a draw was opened
    DrawClosed draw_;
    Instant at_{};
    bool entered_ = false; // the last telling was written down later than it happened
};

} // namespace panside
