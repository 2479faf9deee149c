#pragma once
#include "core/boil/day_vocabulary.h"
#include "core/boil/fact.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
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

    // To be given the facts by time, readings too: they tell a key that was mistaken for the other. One draw is told
    // again where it is shut again within a minute, without one opened between, and either tells no volume, or both the
    // same into the same vessel. Two hands, one of which wrote it down later, have five minutes for the same volume and
    // vessel.
    Telling hear(const Fact& fact) {
        if (const auto* reading = std::get_if<Reading>(&fact.what)) {
            if (reading->series == Series::syrup_pan)
                follow(reading->si, fact.at);
            return Telling::none;
        }
        if (std::holds_alternative<ShiftEnd>(fact.what))
            return unkeyed();
        if (std::holds_alternative<DrawOpened>(fact.what))
            return opened(fact);
        const auto* closed = std::get_if<DrawClosed>(&fact.what);
        if (!closed)
            return Telling::none;
        // No draw thickens: one that was opened so far under this was none.
        const bool drawn = open_ && !(key_.is == Key::opened && key_.level > 0 && level_ > key_.level + thinned);
        key_ = {fact.at, level_, level_, drawn ? Key::shut : Key::shutUnopened};
        open_.reset();
        const double apart = std::abs(secondsBetween(at_, fact.at));
        const bool twoHands = counted_ && apart > within && apart <= byTwoHands && (fact.entered || entered_) &&
                              closed->volume && isSameVolume(closed->volume, counted_->volume) &&
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
    // It means that the draw was shut, and the key was the other's: nobody opens what is open, or has just been drawn,
    // at a pan that has thinned since the last key and is at its thinnest.
    bool meantShut() const { return meantShut_; }
    // The last draw that was shut, as all its tellings together say it; empty before the first.
    const DrawClosed& draw() const { return draw_; }

private:
    static constexpr double within = 60, byTwoHands = 300; // seconds
    static constexpr double asRounded = 0.002;
    // Common practice, no source: a draw takes the reading down by tenths of a kelvin at the least, and within minutes.
    static constexpr double thinned = 0.3, atThinnest = 0.15, keyLag = 20, longestDraw = 1200; // K, K, s, s
    static constexpr double smoothOver = 8;                                                    // s

    struct Key {
        Instant at{};
        double level = 0, lowest = 0; // K that the syrup pan read at it, and at the least since
        enum : std::uint8_t { none, opened, shut, shutUnopened } is = none;
    };
    void follow(double kelvin, Instant at) {
        const double dt = std::max(0.0, secondsBetween(levelAt_, at));
        level_ += level_ > 0 ? (kelvin - level_) * dt / (dt + smoothOver) : kelvin;
        levelAt_ = at;
        key_.lowest = std::min(key_.lowest, level_);
    }
    bool meansShut(const Fact& fact) const {
        const double since = secondsBetween(key_.at, fact.at);
        const bool mayBe =
            (key_.is == Key::opened && open_ && since > within) || (key_.is == Key::shutUnopened && since > keyLag);
        return mayBe && !fact.entered && since < longestDraw && secondsBetween(levelAt_, fact.at) < within &&
               key_.level > 0 && level_ < key_.level - thinned && level_ < key_.lowest + atThinnest;
    }
    // One that was told with the key before, or counts now.
    Telling shutByOther(Instant at) {
        const bool counts = open_.has_value();
        open_.reset();
        if (counts)
            draw_ = *(counted_ = DrawClosed{});
        at_ = at;
        entered_ = false;
        key_.is = Key::shut;
        return counts ? Telling::first : Telling::none;
    }

    Telling unkeyed() {
        if (!open_)
            return Telling::none;
        open_.reset();
        counted_.reset();
        draw_ = {};
        return Telling::first;
    }
    Telling opened(const Fact& fact) {
        reopened_ = false;
        meantShut_ = meansShut(fact);
        if (meantShut_)
            return shutByOther(fact.at);
        reopened_ = open_ && secondsBetween(*open_, fact.at) <= (fact.entered ? byTwoHands : within);
        if (reopened_)
            return Telling::none;
        key_ = {fact.at, level_, level_, Key::opened};
        const Telling before = unkeyed();
        if (!fact.entered)
            counted_.reset();
        open_ = fact.at;
        return before;
    }
    // One hand writes gallons and the other litres, to three figures.
    static bool isSameVolume(const std::optional<Said<Volume>>& one, const std::optional<Said<Volume>>& other) {
        if (!one || !other)
            return !one && !other;
        return std::abs(one->value.si() - other->value.si()) <= asRounded * one->value.si();
    }
    bool isSame(const DrawClosed& closed) const {
        return isSameVolume(closed.volume, counted_->volume) &&
               (nameKey(closed.to) == nameKey(draw_.to) || closed.to.empty() || draw_.to.empty());
    }

    std::optional<Instant> open_; // one that was opened and is not keyed shut
    bool reopened_ = false, meantShut_ = false;
    double level_ = 0; // K that the syrup pan reads, freed of the boil's noise; 0: it does not
    Instant levelAt_{};
    Key key_;                           // the last of a draw
    std::optional<DrawClosed> counted_; // the last telling that counted since a draw was opened
    DrawClosed draw_;
    Instant at_{};
    bool entered_ = false; // the last telling was written down later than it happened
};

} // namespace panside
