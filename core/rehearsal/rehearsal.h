#pragma once
// The rehearsal: a made-up boil as one more source of facts. A plant of its own (fire, pans, feed, weather, probes)
// with a crew that reads its probe, opens, closes, fires, forgets and keys in what it did. It shares no equation with
// the engine, and by seed it is the same to the last byte. Beside the facts it knows the truth, which is never among
// them.
#include "core/boil/fact.h"
#include "core/rehearsal/lesson.h"
#include "core/rehearsal/options.h"

#include <cstdint>
#include <memory>
#include <vector>

namespace panside {

// What really is at a moment.
struct RehearsalTruth {
    Instant at{};
    Temperature reading = Temperature::celsius(0); // of the pan probe, freed of its noise
    Temperature mark = Temperature::celsius(0); // reading at which the density wanted (66.9 Brix) boils on this probe
    TemperatureDifference probeOffset;          // what the probe reads too high; this sap's own boiling is in `mark`
    Temperature waterBoils = Temperature::celsius(100);
    Pressure pressure;
    Brix drawOff, syrupPan; // sugar at the draw-off, and of all the syrup pan
    VolumeFlow evaporation; // water boiled off now, as cold litres
    Length panDepth, flueDepth;
    Volume tank;
    Temperature stack = Temperature::celsius(0);
    Power fire, intoSap;  // heat set free from the wood; taken up by the sap
    bool boiling = false; // at the draw-off
    bool drawing = false;
    bool dry = false; // less than 5 mm of liquid in the syrup pan, or none over the flues
    // Since the start.
    Volume boiledOff, drawn; // as cold litres
    Mass sugarDrawn, sugarInPans, woodBurnt, woodLoaded;
    Energy heatTaken, heatOfLoads; // by the sap; lower heating value of what was loaded
};

// What was really done, pressed or not.
struct RehearsalDeed {
    enum class Kind : std::uint8_t { fired, opened, closed, shutDown, feedStopped, feedBack, probeFails, probeBack };
    Kind kind;
    Instant at;
    Mass load{};         // fired
    bool pressed = true; // a fact says so
};

class Rehearsal {
public:
    Rehearsal(RehearsalOptions options, std::uint64_t seed);
    ~Rehearsal();
    Rehearsal(Rehearsal&&) noexcept;
    Rehearsal& operator=(Rehearsal&&) noexcept;

    // Runs on in steps of a second up to and including `until`; the facts of that time, in the order of their times.
    std::vector<Fact> advance(Instant until);
    Instant now() const;
    bool ended() const; // the crew has gone home

    const RehearsalOptions& options() const;
    const RehearsalTruth& truth() const;             // now
    const std::vector<RehearsalDeed>& deeds() const; // so far

    // Somebody else does it: a load, a draw opened or closed, a bucket of sap (SapIn under 40 L). The crew takes note.
    void perform(const What& what);
    // This goes wrong from the next second on, as a teacher has it. Of the seed and the moment.
    void befall(Trouble trouble);
    // From now on the crew only watches, or works again.
    void sendCrewAway(bool away = true);

    // What came of it since the start, or since the lesson began.
    const LessonScore& score() const;
    void beginLesson();

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

// A boil that at `now` is hours old, has drawn already and is some minutes before its next draw; `past` holds its facts
// so far, the readings thinned to one each 10 s. For a console that must have something to show at once.
struct RehearsalUnderWay {
    Rehearsal rehearsal;
    std::vector<Fact> past;
    std::vector<Trouble> troubles; // of a lesson
};
RehearsalUnderWay rehearsalUnderWay(const RehearsalOptions& options, std::uint64_t seed, Instant now);
// The same with things that go wrong from `now` on.
RehearsalUnderWay lessonUnderWay(std::uint64_t seed, Instant now);

} // namespace panside
