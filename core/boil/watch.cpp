#include "core/boil/watch.h"

#include "core/boil/alarms.h"
#include "core/boil/state.h"

#include <algorithm>

namespace panside {
namespace {

constexpr std::array perReading{Alarm::probe_silent, Alarm::probe_stuck, Alarm::reading_implausible};

} // namespace

Watch::Place Watch::placeOf(std::size_t index) {
    if (index < alarmCount)
        return {static_cast<Alarm>(index), {}};
    const std::size_t i = index - alarmCount;
    return {perReading[i / seriesCount], static_cast<Series>(i % seriesCount)};
}

void Watch::setNext() {
    next_ = Instant::max();
    for (const Slot& slot : slots_)
        next_ = std::min(next_, slot.wake);
}

void Watch::judge(const State& state, std::size_t index, Instant at) {
    const Place place = placeOf(index);
    const AlarmRow& row = rowOf(place.alarm);
    Slot& slot = slots_[index];
    slot.judged = at;
    const Condition condition = row.judge(state, place.series.value_or(Series::syrup_pan), at, slot.stands);
    if (condition.holds != slot.holds) {
        slot.holds = condition.holds;
        slot.turned = at;
    }
    const double delay = condition.doubtful ? row.doubtfulDelay : row.delay;
    const Instant settles = slot.turned + Duration{slot.holds ? delay : condition.over ? 0 : row.release};
    if (slot.stands != slot.holds && at >= settles) {
        slot.stands = slot.holds;
        slot.stands ? begin(state, index, at) : end(index, at);
    }
    slot.wake = condition.changes.value_or(Instant::max());
    if (slot.stands != slot.holds)
        slot.wake = std::min(slot.wake, settles);
}

// One that was silent already tells of it, but where the syrup pan falls silent too, that is the alarm.
void Watch::begin(const State& state, std::size_t index, Instant at) {
    Slot& slot = slots_[index];
    slot.since = at;
    slot.alarm = AlarmState::unseen;
    slot.toldBy = itself;
    const Place place = placeOf(index);
    if (place.alarm != Alarm::probe_silent || !place.series)
        return;
    for (std::size_t i = alarmCount; i < alarmCount + seriesCount; ++i) {
        Slot& other = slots_[i];
        if (i == index || !other.stands || other.toldBy != itself ||
            !silentTogether(state, *place.series, *placeOf(i).series, at))
            continue;
        const bool takes = priorityOf(place.alarm, *place.series) < priorityOf(place.alarm, *placeOf(i).series);
        for (Slot& told : slots_)
            if (takes && told.toldBy == i)
                told.toldBy = static_cast<std::uint8_t>(index);
        Slot& follows = takes ? other : slot;
        follows.toldBy = static_cast<std::uint8_t>(takes ? index : i);
        follows.alarm = AlarmState::normal;
        follows.judged = at;
        if (!takes)
            return;
    }
}

// What a slot told of the others of its box the next of them tells, seen as it was.
void Watch::end(std::size_t index, Instant at) {
    Slot& slot = slots_[index];
    Slot* heir = nullptr;
    for (std::size_t i = 0; i < slotCount; ++i) {
        if (slots_[i].toldBy != index || !slots_[i].stands)
            continue;
        if (!heir) {
            heir = &slots_[i];
            heir->alarm = slot.alarm;
            heir->since = at;
        }
        slots_[i].toldBy = heir == &slots_[i] ? itself : static_cast<std::uint8_t>(heir - slots_.data());
    }
    slot.over = at;
    slot.alarm = slot.alarm == AlarmState::unseen && !heir ? AlarmState::goneUnseen : AlarmState::normal;
    slot.toldBy = itself;
}

void Watch::judgeAll(const State& state, Instant at) {
    for (std::size_t i = 0; i < slotCount; ++i)
        if (i >= alarmCount || !rowOf(static_cast<Alarm>(i)).perReading) // those have a slot a reading
            judge(state, i, at);
}

void Watch::pass(const State& state, Instant until) {
    while (next_ <= until && !ended_) {
        const Instant at = next_;
        for (std::size_t i = 0; i < slotCount; ++i)
            if (slots_[i].wake <= at) {
                judge(state, i, at);
                // A slot must not ask for the moment it has just been judged at.
                if (slots_[i].wake <= at)
                    slots_[i].wake = at + Duration{1};
            }
        setNext();
    }
}

template <class Change>
void Watch::forName(const std::string& name, Change change) {
    const auto alarm = alarmNamed(name);
    for (std::size_t i = 0; alarm && i < slotCount; ++i)
        if (placeOf(i).alarm == *alarm)
            change(slots_[i]);
}

void Watch::absorb(const State& state, const Fact& fact) {
    if (ended_)
        return;
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        const auto series = static_cast<std::size_t>(reading->series);
        for (std::size_t i = 0; i < alarmCount; ++i) {
            const AlarmRow& row = rowOf(static_cast<Alarm>(i));
            if ((row.looksAt & (1U << series)) != 0 && secondsBetween(slots_[i].judged, fact.at) >= row.rest)
                judge(state, i, fact.at);
        }
        for (std::size_t i = 0; i < perReading.size(); ++i)
            judge(state, alarmCount + i * seriesCount + series, fact.at);
    } else {
        judgeAll(state, fact.at);
    }
    if (const auto* seen = std::get_if<AlarmSeen>(&fact.what))
        forName(seen->name, [](Slot& slot) {
            if (slot.alarm == AlarmState::unseen)
                slot.alarm = AlarmState::seen;
            if (slot.alarm == AlarmState::goneUnseen)
                slot.alarm = AlarmState::normal;
        });
    if (const auto* shelved = std::get_if<AlarmShelved>(&fact.what);
        shelved && shelved->name != nameOf(Alarm::scorch_risk))
        forName(shelved->name, [&](Slot& slot) { slot.shelvedUntil = fact.at + shelved->span; });
    if (std::holds_alternative<ShiftEnd>(fact.what)) {
        *this = Watch{};
        ended_ = true;
    }
    setNext();
}

void Watch::explain(const Condition& condition, AlarmPicture& shown) {
    shown.left = condition.left;
    if (condition.holds)
        shown.why.assign(condition.grounds.begin(), condition.grounds.end());
    if (shown.why.empty())
        shown.why.push_back({GroundKind::ending});
}

void Watch::tellBox(const State& state, std::size_t index, Instant now, AlarmPicture& shown) const {
    for (std::size_t i = alarmCount; i < alarmCount + seriesCount; ++i) {
        if (slots_[i].toldBy != index || !slots_[i].stands)
            continue;
        const Series series = *placeOf(i).series;
        shown.also.push_back(series);
        const Condition condition = rowOf(shown.alarm).judge(state, series, now, true);
        shown.why.insert(shown.why.end(), condition.grounds.begin(), condition.grounds.end());
    }
}

void Watch::show(const State& state, Instant now, Picture& picture) const {
    if (next_ <= now && !ended_) {
        Watch after = *this;
        after.pass(state, now);
        return after.show(state, now, picture);
    }
    for (std::size_t i = 0; i < slotCount; ++i) {
        const Slot& slot = slots_[i];
        if (slot.alarm == AlarmState::normal)
            continue;
        const Place place = placeOf(i);
        const Series series = place.series.value_or(Series::syrup_pan);
        AlarmPicture shown{place.alarm, priorityOf(place.alarm, series), slot.alarm, slot.since};
        if (now < slot.shelvedUntil) {
            if (!slot.stands)
                continue;
            shown.state = AlarmState::shelved;
        }
        shown.series = place.series;
        if (slot.stands)
            explain(rowOf(place.alarm).judge(state, series, now, true), shown);
        tellBox(state, i, now, shown);
        if (slot.alarm == AlarmState::goneUnseen)
            shown.over = slot.over;
        insertAlarm(picture, shown);
    }
}

} // namespace panside
