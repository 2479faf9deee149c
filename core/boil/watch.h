#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

#include <array>

namespace panside {

struct State;
struct Condition;

// The alarms and their states (ISA-18.2): raised and returned to normal follow from the fold, seen and shelved are
// facts. Each alarm has a slot; the alarms about a reading have one for each reading. A slot is judged when a fact that
// it looks at comes, and at the moments at which the clock alone can change it, so that it begins and ends at its own
// time whenever somebody looks.
class Watch {
public:
    // Time passes up to `until`, it included, with nothing new: what stands by the clock alone begins or ends here.
    void pass(const State& state, Instant until);
    void absorb(const State& state, const Fact& fact);
    void show(const State& state, Instant now, Picture& picture) const;

    static constexpr std::size_t slotCount = alarmCount + 3 * seriesCount;

    // What a history of the alarms is made of. `next`: when the clock alone will change one; `judged`: where it does
    // not stand, and did before the step just taken, that is when it ended.
    struct Place {
        Alarm alarm;
        std::optional<Series> series; // which reading, where it is about one
    };
    struct Standing {
        bool stands;
        Instant since, judged;
    };
    static Place placeOf(std::size_t index);
    Standing standing(std::size_t index) const {
        return {slots_[index].stands && slots_[index].toldBy == itself, slots_[index].since, slots_[index].judged};
    }
    Instant next() const { return next_; }
    bool over() const { return ended_; } // the shift is: nothing is watched any more

private:
    struct Slot {
        AlarmState alarm = AlarmState::normal;
        bool holds = false;     // the condition, apart from its delay
        Instant turned{};       // when `holds` last changed
        Instant since{};        // when it began to stand
        Instant over{};         // when it last stopped to
        Instant shelvedUntil{}; // long ago: not shelved
        Instant wake = Instant::max();
        Instant judged{}; // when it was last looked at
        bool stands = false;
        std::uint8_t toldBy = itself; // the slot that tells of it: a box that falls silent is one alarm
    };
    static constexpr std::uint8_t itself = 255;
    void judge(const State& state, std::size_t index, Instant at);
    void begin(const State& state, std::size_t index, Instant at);
    void end(std::size_t index, Instant at);
    void judgeAll(const State& state, Instant at);
    void setNext();
    static void explain(const Condition& condition, AlarmPicture& shown);
    void tellBox(const State& state, std::size_t index, Instant now, AlarmPicture& shown) const;
    template <class Change>
    void forName(const std::string& name, Change change);

    std::array<Slot, slotCount> slots_;
    Instant next_ = Instant::max();
    bool ended_ = false;
};

} // namespace panside
