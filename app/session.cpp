#include "app/session.h"

#include <algorithm>
#include <utility>

namespace panside {

namespace {

using namespace std::chrono_literals;

constexpr auto closestReadings = 225ms; // four a second, with room for a port's jitter
constexpr auto lateFrom = 2s;           // a fact this old on arrival is one entered late
constexpr auto furthestAhead = 60s;     // another machine's clock may be ahead by so much
constexpr auto furthestBack = 24h;      // before the shift began

bool isClockStep(const Fact& fact) { return std::holds_alternative<ClockStep>(fact.what); }

// What a person said, and could take back.
bool isPersons(const Fact& fact) {
    if (const auto* reading = std::get_if<Reading>(&fact.what))
        return reading->byHand();
    if (const auto* fired = std::get_if<Fired>(&fact.what))
        return !fired->inferred;
    return !isClockStep(fact);
}

} // namespace

Session::Session(std::unique_ptr<Keeping> keeping, ShiftClock clock)
    : keeping_{std::move(keeping)}, clock_{std::move(clock)} {}

void Session::carryOver(std::vector<Set> settings) { carried_ = std::move(settings); }

void Session::resume(std::vector<Boil::Entry> entries) {
    if (entries.empty())
        return;
    begun_ = true;
    Duration steps{0};
    const auto first = entries.front().fact.at;
    auto last = first;
    // Undo walks back in the order of entry, which is that of the journal's numbers.
    std::sort(entries.begin(), entries.end(), [](const auto& a, const auto& b) { return a.id < b.id; });
    for (auto& [kept, fact] : entries) {
        last = std::max(last, fact.at);
        if (const auto* step = std::get_if<ClockStep>(&fact.what))
            steps += step->by;
        const bool carried = std::holds_alternative<Set>(fact.what) && fact.at == first;
        const bool persons = isPersons(fact) && !carried;
        const auto id = nextId_++;
        if (persons)
            entered_.push_back({id, kept, fact});
        boil_.add(id, std::move(fact));
    }
    if (const auto setBack = clock_.resume(last, steps))
        take({last, ClockStep{*setBack}});
}

bool Session::inShift() const { return begun_ && !endedAt(); }

std::optional<Instant> Session::endedAt() const {
    for (const auto& said : entered_)
        if (std::holds_alternative<ShiftEnd>(said.fact.what))
            return said.fact.at;
    return std::nullopt;
}

Picture Session::picture() {
    auto picture = boil_.pictureAt(now());
    if (troubledSince_)
        addTrouble(picture);
    return picture;
}

void Session::addTrouble(Picture& picture) const {
    AlarmPicture trouble{Alarm::journal_trouble, priorityOf(Alarm::journal_trouble), AlarmState::unseen,
                         *troubledSince_};
    for (const auto& said : entered_)
        if (const auto* seen = std::get_if<AlarmSeen>(&said.fact.what);
            seen && seen->name == nameOf(Alarm::journal_trouble) && said.fact.at >= *troubledSince_)
            trouble.state = AlarmState::seen;
    const auto place = std::find_if(picture.alarms.begin(), picture.alarms.end(), [&](const AlarmPicture& other) {
        return other.priority > trouble.priority || (other.priority == trouble.priority && other.since > trouble.since);
    });
    picture.alarms.insert(place, trouble);
}

// Folds a fact and puts it among those to be kept.
FactId Session::take(Fact fact) {
    const auto id = nextId_++;
    if (keeping_)
        waiting_.push_back({id, fact, std::exchange(beginsNext_, false)});
    boil_.add(id, std::move(fact));
    return id;
}

void Session::begin(Instant at) {
    if (begun_)
        carried_ = settingsAfter(boil_.facts());
    boil_ = Boil{};
    entered_.clear();
    lastRead_.clear();
    begun_ = beginsNext_ = true;
    for (const auto& setting : carried_)
        take({at, setting});
}

bool Session::tooSoon(const Reading& reading, Instant at) {
    const auto [place, isFirst] = lastRead_.try_emplace({reading.series, reading.probe}, at);
    if (!isFirst && at - place->second < closestReadings)
        return true;
    place->second = at;
    return false;
}

void Session::read(const std::vector<What>& readings) {
    if (begun_ && endedAt())
        return;
    if (!begun_)
        clock_.startAtWall();
    const auto at = now();
    for (const auto& what : readings) {
        if (const auto* reading = std::get_if<Reading>(&what); reading && tooSoon(*reading, at))
            continue;
        if (!begun_)
            begin(at);
        take({at, what});
    }
}

std::optional<std::string> Session::objection(const Fact& fact, Instant now) const {
    if (fact.at > now + furthestAhead)
        return "lies in the future. Write the time it happened, or leave the time empty for now.";
    if (const auto started = boil_.started(); started && fact.at < *started - furthestBack)
        return "lies more than a day before this shift began. Import it as a log of its own.";
    return std::nullopt;
}

std::variant<Session::Entered, Session::Refused> Session::enter(Fact fact) {
    return enter(std::vector{std::move(fact)}).front();
}

std::vector<std::variant<Session::Entered, Session::Refused>> Session::enter(std::vector<Fact> facts) {
    std::vector<std::variant<Entered, Refused>> answers;
    for (auto& fact : facts) {
        if (const auto ended = endedAt();
            !begun_ || (ended && fact.at > *ended && !std::holds_alternative<ShiftEnd>(fact.what))) {
            // Between shifts the wall clock may have been put right without harm.
            if (fact.at >= now())
                clock_.startAtWall();
            if (!objection(fact, now()))
                begin(fact.at);
        }
        const auto at = now();
        if (auto why = objection(fact, at)) {
            answers.emplace_back(Refused{std::move(*why)});
            continue;
        }
        if (!fact.entered && at - fact.at >= lateFrom)
            fact.entered = at;
        const auto id = take(fact);
        if (isPersons(fact))
            entered_.push_back({id, std::nullopt, std::move(fact)});
        answers.emplace_back(Entered{id, false});
    }
    const bool kept = flush();
    for (auto& answer : answers)
        if (auto* entered = std::get_if<Entered>(&answer))
            entered->kept = kept;
    return answers;
}

std::optional<Fact> Session::undo() {
    if (entered_.empty() || !flush())
        return std::nullopt;
    auto& last = entered_.back();
    if (keeping_) {
        try {
            keeping_->withdraw(*last.kept, now());
        } catch (const NotKept& trouble) {
            trouble_ = trouble.what();
            troubledSince_ = troubledSince_.value_or(now());
            return std::nullopt;
        }
    }
    boil_.withdraw(last.id);
    auto fact = std::move(last.fact);
    entered_.pop_back();
    return fact;
}

void Session::tick() {
    if (const auto step = clock_.step(); step && inShift())
        take({now(), ClockStep{*step}});
    flush();
}

bool Session::flush() {
    while (!waiting_.empty())
        if (!keepGroup())
            return false;
    trouble_.clear();
    troubledSince_.reset();
    return true;
}

// Keeps what waits, up to the beginning of another shift.
bool Session::keepGroup() {
    const auto end = std::find_if(waiting_.begin() + 1, waiting_.end(), [](const Waiting& w) { return w.beginsShift; });
    std::vector<Fact> facts;
    std::transform(waiting_.begin(), end, std::back_inserter(facts), [](const Waiting& w) { return w.fact; });
    std::vector<FactId> ids;
    try {
        if (waiting_.front().beginsShift)
            keeping_->beginShift();
        ids = keeping_->append(facts);
    } catch (const NotKept& trouble) {
        trouble_ = trouble.what();
        troubledSince_ = troubledSince_.value_or(now());
        return false;
    }
    // Both stand in the order of entry.
    auto said = entered_.begin();
    for (std::size_t i = 0; i < ids.size(); ++i) {
        while (said != entered_.end() && said->id < waiting_[i].id)
            ++said;
        if (said != entered_.end() && said->id == waiting_[i].id)
            said->kept = ids[i];
    }
    waiting_.erase(waiting_.begin(), end);
    return true;
}

} // namespace panside
