#pragma once
// What the probe read too high at a time of the shift, by all checks of it: those made later too. The engine knows it
// from those before; it drifts, so that the last word of a night is no word for its first draw.
#include "core/quantity/quantity.h"

#include <optional>
#include <vector>

namespace panside {

class MarkHindsight {
public:
    struct Offset {
        double kelvin, sd; // the glass's own error, the same in all of them, is not in it
    };
    // All by time. What was known when it began, or begins anew: another pan, another word of the crew.
    void begin(Instant at, Offset known);
    // Since the last of these it was believed to have moved by so much, and to be less sure by such a variance.
    void drift(double kelvin, double variance);
    // A check saw so much. `alike`: the part of its variance that is the same in every cup of this crew.
    void check(Instant at, Offset seen, double alike);
    // Asks what it was; answers() has the answers in the order of the questions.
    void ask(Instant at);
    std::vector<Offset> answers() const;

private:
    enum class Kind : std::uint8_t { begins, seen, asked };
    struct Event {
        Kind kind;
        Instant at;
        double drift, grows; // since the event before it
        double kelvin = 0, variance = 0;
        double less = 1; // by how much a check far off the others counts less
    };
    struct Belief {
        double mean, variance;
    };
    std::vector<Belief> smoothed() const;
    void add(Kind kind, Instant at, double kelvin, double variance);

    std::vector<Event> events_;
    double drift_ = 0, grows_ = 0;
    double weight_ = 0, untoldWeight_ = 0, alike_ = 0; // sums over the checks
};

} // namespace panside
