#pragma once
// What stirs a real pan and a tidy one not: a boil that heaves liquid back and forth at the draw-off, thin sap pulled
// forward, doors left open. Sizes and times are judgement; no source.
#include "core/rehearsal/dice.h"
#include "core/rehearsal/options.h"

namespace panside::rehearsal {

class Unrest {
public:
    Unrest(const RehearsalUnrest& unrest, std::uint64_t seed) : unrest_{unrest}, dice_{seed, 51} {}
    void step(double dt);

    // Liquid exchanged between the last channel and the one before, and pulled forward past the channels between, in
    // parts of a section a second.
    double heaves() const { return heaves_; }
    double pulls() const { return pullsFor_ > 0 ? pull_ : 0; }
    // Seconds for which somebody has just left the door open; 0: nobody.
    double door() const { return door_; }

private:
    RehearsalUnrest unrest_;
    Dice dice_;
    double swing_ = 0, speed_ = 0, tide_ = 0; // of the heaving, about its mean
    double heaves_ = 0, pullsFor_ = 0, pull_ = 0, door_ = 0;
};

} // namespace panside::rehearsal
