#pragma once
// One shift as it stands: its facts, and the fold over them. A plain value: no clock, no file, no thread.
#include "core/boil/facts.h"
#include "core/boil/picture.h"

#include <cstdint>
#include <memory>
#include <vector>

namespace panside {

struct State;                                     // core/boil/state.h
State apply(State state, const Fact& fact);       // facts in the order of their times
Picture picture(const State& state, Instant now); // now is not before the last fact

// What a chart draws of the past, kept as facts arrive: one entry a believed pan reading.
struct RisePoint {
    Instant at;
    float rise; // kelvin above boiling water
    Trust trust;
    bool gapBefore; // nothing was read for so long before it that no line may be drawn across
};

// The same of what boils off, reconciled: one a minute where it is known.
struct SteamPoint {
    Instant at;
    float rate; // cubic metres a second
    bool gapBefore;
};

class Boil {
public:
    // To watch for alarms takes two thirds of the time. A chart of a shift that is over asks for none: with
    // `unwatched` its pictures tell no alarms, nor that one forbids to draw; all else is the same.
    enum class Alarms { watched, unwatched };
    Boil();
    explicit Boil(Alarms alarms);
    ~Boil();
    Boil(Boil&&) noexcept;
    Boil& operator=(Boil&&) noexcept;

    // All the facts of a shift, for one that has none yet.
    void begin(Facts facts);
    // Takes its place in time: a late one makes the fold run again from a kept earlier state.
    void add(FactId id, Fact fact);
    // As if it had never been entered. Unknown ids are left alone; true if there was one.
    bool withdraw(FactId id);
    // What was added and withdrawn takes effect: all but facts() and started() tells of what has been folded.
    Boil& fold();

    // The picture at a moment, from the facts at or before it.
    Picture pictureAt(Instant now) const;
    const State& state() const; // after the last fact

    // A load of wood that the stack showed and no fact tells of yet, as the fact that would (`inferred=yes`): for
    // whoever keeps facts. Added, it changes no picture.
    std::optional<Fact> noticed() const;

    using Entry = FactEntry;
    const Facts& facts() const;                 // by time
    const std::vector<RisePoint>& rise() const; // by time, for the chart
    const std::vector<SteamPoint>& steam() const;
    std::optional<Instant> started() const; // the first fact's time
    // How often what is already drawn may have changed (late fact, withdrawal, new offset): redraw all when it moves.
    std::uint64_t rewritten() const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace panside
