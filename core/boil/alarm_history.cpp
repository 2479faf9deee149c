#include "core/boil/alarm_history.h"

#include "core/boil/alarms.h"
#include "core/boil/state.h"

#include <algorithm>

namespace panside {

void AlarmRecorder::begin(std::size_t index, Instant at) {
    Slot& slot = slots_[index];
    const auto [alarm, series] = Watch::placeOf(index);
    slot.span = spans_.size();
    spans_.push_back({alarm, series, priorityOf(alarm, series.value_or(Series::syrup_pan)), at});
    if (at < slot.shelf.until)
        spans_.back().shelved.push_back(slot.shelf);
}

// After a step in which each alarm was judged once at most.
void AlarmRecorder::note(const Watch& watch) {
    for (std::size_t i = 0; i < Watch::slotCount; ++i) {
        const Watch::Standing now = watch.standing(i);
        Slot& slot = slots_[i];
        if (now.stands == slot.stands)
            continue;
        slot.stands = now.stands;
        if (now.stands)
            begin(i, now.since);
        else
            spans_[*slot.span].ended = now.judged;
    }
}

// Step by step: between two facts the clock may let an alarm begin and end again.
void AlarmRecorder::step(Watch& watch, const State& state, Instant until) {
    while (!watch.over() && watch.next() <= until) {
        watch.pass(state, watch.next());
        note(watch);
    }
}

void AlarmRecorder::seen(const AlarmSeen& seen, const Fact& fact) {
    for (Slot& slot : slots_) {
        if (!slot.span || spans_[*slot.span].seen || nameOf(spans_[*slot.span].alarm) != seen.name)
            continue;
        spans_[*slot.span].seen = fact.at;
        spans_[*slot.span].seenBy = fact.by;
    }
}

void AlarmRecorder::shelved(const AlarmShelved& shelved, const Fact& fact) {
    const auto alarm = alarmNamed(shelved.name);
    if (!alarm || *alarm == Alarm::scorch_risk) // which cannot be shelved
        return;
    for (std::size_t i = 0; i < slots_.size(); ++i) {
        Slot& slot = slots_[i];
        if (Watch::placeOf(i).alarm != *alarm)
            continue;
        slot.shelf = {fact.at, fact.at + shelved.span, fact.by};
        if (!slot.stands)
            continue;
        auto& shelves = spans_[*slot.span].shelved;
        if (!shelves.empty()) // another shelf takes the place of one that still holds
            shelves.back().until = std::min(shelves.back().until, fact.at);
        if (slot.shelf.until > slot.shelf.from)
            shelves.push_back(slot.shelf);
    }
}

void AlarmRecorder::absorb(State& state, const Fact& fact) {
    slots_.resize(Watch::slotCount);
    from_ = from_.value_or(fact.at);
    last_ = fact.at;
    // As the fold does: what the clock brings at the very moment of the fact waits for the fact.
    step(state.watch, state, fact.at - std::chrono::microseconds{1});
    panside::absorb(state, fact);
    if (over_)
        return;
    if (std::holds_alternative<ShiftEnd>(fact.what)) {
        over_ = fact.at; // what stands, stood to the end
        return;
    }
    note(state.watch);
    if (const auto* by = std::get_if<AlarmSeen>(&fact.what))
        seen(*by, fact);
    if (const auto* by = std::get_if<AlarmShelved>(&fact.what))
        shelved(*by, fact);
}

AlarmHistory AlarmRecorder::history(const State& state, std::optional<Instant> until) const {
    AlarmHistory history{from_.value_or(Instant{}), over_.value_or(until.value_or(last_)), {}};
    if (from_ && !over_) {
        AlarmRecorder after = *this;
        Watch watch = state.watch;
        after.step(watch, state, history.until);
        history.spans = std::move(after.spans_);
    } else {
        history.spans = spans_;
    }
    // Two facts of one moment: begun by the one, ended by the other, it never stood.
    std::erase_if(history.spans, [](const AlarmSpan& span) { return span.ended && *span.ended <= span.began; });
    return history;
}

AlarmHistory alarmHistory(const Facts& facts, std::optional<Instant> until) {
    State state;
    AlarmRecorder recorder;
    Fact scratch{};
    for (std::size_t i = 0; i < facts.size(); ++i)
        recorder.absorb(state, facts.fact(i, scratch));
    return recorder.history(state, until);
}

} // namespace panside
