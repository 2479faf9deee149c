#include "core/shift/session.h"

#include "core/boil/loads.h"
#include "core/boil/settings.h"
#include "core/ledger/sap_page.h"
#include "core/shift/house_ledger.h"
#include "core/shift/learned.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace panside {
namespace {

using namespace std::chrono_literals;

constexpr auto closestReadings = 225ms; // four a second, with room for a port's jitter
constexpr auto lateFrom = 2s;           // a fact this old on arrival is one entered late
constexpr auto furthestAhead = 60s;     // another machine's clock may be ahead by so much
constexpr auto furthestBack = 24h;      // before the shift began
constexpr auto forgottenAfter = 12h;    // an open shift without a fact for so long was left, not interrupted

constexpr auto sameFilling = 15min; // what is in a tank now was in it so long ago (our judgement)

// What a person could take back: what was said, and a load that was taken for one.
bool canBeTakenBack(const Fact& fact) {
    if (const auto* reading = std::get_if<Reading>(&fact.what))
        return reading->byHand();
    if (const auto* fired = std::get_if<Fired>(&fact.what))
        return !deniesLoad(*fired);
    return !std::holds_alternative<ClockStep>(fact.what);
}

} // namespace

Session::Session(std::unique_ptr<Keeper> keeper, ShiftClock clock)
    : keeper_{std::move(keeper)}, clock_{std::move(clock)} {}

void Session::resume(Facts facts) {
    if (facts.empty() || !openShift())
        return;
    shift_ = openShift();
    const Instant first = facts.at(0), last = facts.at(facts.size() - 1);
    Duration steps{0};
    Fact scratch{};
    for (std::size_t i = 0; i < facts.size(); ++i) {
        const Fact& fact = facts.fact(i, scratch);
        if (const auto* step = std::get_if<ClockStep>(&fact.what))
            steps += step->by;
        const bool carriedOver = std::holds_alternative<Set>(fact.what) && fact.at == first;
        if (canBeTakenBack(fact) && !carriedOver)
            entered_.push_back({facts[i].id, fact});
    }
    // Undo walks back in the order of entry, which is that of the journal's numbers.
    std::ranges::sort(entered_, [](const auto& a, const auto& b) { return a.id < b.id; });
    boil_.begin(std::move(facts));
    ++told_;
    const auto setBack = clock_.resume(last, steps);
    if (now() - last >= forgottenAfter) {
        carryLearned();
        keeper_->close();
        entered_.clear();
        boil_ = Boil{};
        shift_.reset();
        clock_.startAtWall();
    } else {
        watched_ = true;
        if (setBack)
            keep({last, ClockStep{*setBack}}, false);
    }
}

void Session::watch(const Facts& facts, const std::string& why) {
    onlyWatches_ = asWritten(why);
    ++told_;
    std::set<FactId> there;
    for (const auto& [id, fact] : facts) {
        there.insert(id);
        if (seen_.insert(id).second)
            boil_.add(id, fact);
    }
    std::erase_if(seen_, [&](FactId id) { return !there.contains(id) && boil_.withdraw(id); });
}

Picture Session::pictureAt(Instant moment) {
    auto picture = boil_.fold().pictureAt(moment);
    if (trouble().empty())
        troubledSince_.reset();
    else
        addTrouble(picture);
    rims_.show(picture);
    return picture;
}

void Session::knows(std::shared_ptr<const HouseLedger> house) {
    if (house && !openShift() && !onlyWatches_)
        carryPans(*house);
    house_ = house;
    rims_.knows(std::move(house));
}

void Session::carryPans(const HouseLedger& house) {
    constexpr Mass noMatter = Mass::kilogram(0.05);
    const auto sweet = sweetInPans(house.ledger(), now());
    const Mass left = sweet && !sweet->unknown ? sweet->sugar : Mass{};
    Settings stands;
    for (const Set& set : settings())
        stands.put(set);
    const Mass carried = stands.learnedPansSugar().value_or(Mass{});
    if (std::max(left, carried) - std::min(left, carried) > noMatter)
        keeper_->carry({now(), Set{Setting::learned_pans_sugar, left.kilogram(), Unit::kg}});
}

// Out of a tank whose sugar the house knows: the engine is told it too, or it would take concentrate for sap.
void Session::tellSugar(Fact& fact, Instant now) const {
    constexpr double step = 0.01; // brix
    auto* sap = std::get_if<SapIn>(&fact.what);
    if (!sap || sap->sugar || sap->scale || sap->from.empty() || !house_ || now - fact.at >= sameFilling)
        return;
    const auto which = house_->ledger().vesselNamed(sap->from);
    if (!which)
        return;
    const Vessel& vessel = house_->ledger().vessels()[*which];
    if (vessel.kind != VesselKind::feed && !vessel.content.isEmpty() && !vessel.sugarAssumed && !vessel.unwritten)
        sap->sugar = Brix::degrees(std::round(vessel.content.brix().degrees() / step) * step);
}

// Whether that is all there is to do: a tank runs over at noon too, and that somebody saw it begins no shift.
bool Session::hearRims(const Fact& fact) {
    const auto* seen = std::get_if<AlarmSeen>(&fact.what);
    const auto* shelved = std::get_if<AlarmShelved>(&fact.what);
    const std::string_view name = seen ? seen->name : shelved ? shelved->name : std::string_view{};
    if (name != nameOf(Alarm::tank_overflow))
        return false;
    if (seen)
        rims_.seen(fact.at);
    else
        rims_.shelved(fact.at + std::chrono::round<std::chrono::microseconds>(shelved->span));
    return !openShift();
}

void Session::addTrouble(Picture& picture) {
    if (!troubledSince_)
        troubledSince_ = picture.at;
    AlarmPicture trouble{Alarm::journal_trouble, priorityOf(Alarm::journal_trouble), AlarmState::unseen,
                         *troubledSince_};
    for (const Undoable& entry : entered_)
        if (const auto* seen = std::get_if<AlarmSeen>(&entry.fact.what);
            seen && seen->name == nameOf(Alarm::journal_trouble) && entry.fact.at >= *troubledSince_)
            trouble.state = AlarmState::seen;
    trouble.why = {{GroundKind::notKept}};
    insertAlarm(picture, trouble);
}

// Numbers a fact, folds it and puts it among those to be kept.
FactId Session::keep(Fact fact, bool entered) {
    const bool begins = !openShift();
    const bool ends = std::holds_alternative<ShiftEnd>(fact.what);
    if (const auto* reading = std::get_if<Reading>(&fact.what); !reading || reading->byHand())
        ++told_;
    auto kept = keeper_->keep(fact);
    shift_ = kept.shift;
    if (begins) {
        boil_ = Boil{};
        entered_.clear();
        lastRead_.clear();
        watched_ = true;
        for (auto& [id, setting] : kept.opening)
            boil_.add(id, std::move(setting));
    }
    if (entered && canBeTakenBack(fact))
        entered_.push_back({kept.id, fact, told_});
    boil_.add(kept.id, std::move(fact));
    if (ends)
        carryLearned();
    return kept.id;
}

// The next shift begins with what this one learned of probe and arch.
void Session::carryLearned() {
    for (const auto& setting : learnedIn(boil_.fold().state()))
        keeper_->carry({now(), setting});
}

bool Session::tooSoon(const Reading& reading, Instant at) {
    const auto [place, isFirst] = lastRead_.try_emplace({reading.series, reading.probe}, at);
    if (!isFirst && at - place->second < closestReadings)
        return true;
    place->second = at;
    return false;
}

void Session::read(Fact fact) {
    if (onlyWatches_ || (!openShift() && watched_))
        return;
    if (const auto* reading = std::get_if<Reading>(&fact.what); !reading || !tooSoon(*reading, fact.at))
        keep(std::move(fact), false);
}

void Session::follow(std::vector<Fact> facts) {
    for (auto& fact : facts) {
        // What a probe still reads after the end begins no other shift.
        if (std::holds_alternative<Reading>(fact.what) && !openShift() && watched_)
            continue;
        keep(std::move(fact), false);
    }
}

std::optional<Sentence> Session::tooFarAhead(const Fact& fact, Instant now) {
    if (fact.at <= now + furthestAhead)
        return std::nullopt;
    return say("Its time is in the future. Write the time it happened, or leave the time empty for now.");
}

std::optional<Sentence> Session::objection(const Fact& fact, Instant now) const {
    if (onlyWatches_)
        return onlyWatches_;
    if (auto ahead = tooFarAhead(fact, now))
        return ahead;
    if (std::holds_alternative<DayRow>(fact.what))
        return std::nullopt; // a gathering at noon, a pack in August: of no shift
    if (const auto started = boil_.started(); started && openShift() && fact.at < *started - furthestBack)
        return say("Its time is more than a day before this shift began. Import it as a log of its own.");
    if (!openShift() && !entered_.empty() && fact.at <= entered_.back().fact.at)
        return say("Its time is within the shift that has ended. Take back its end first.");
    return std::nullopt;
}

Session::Answer Session::enter(Fact fact) { return enter(std::vector{std::move(fact)}).front(); }

std::vector<Session::Answer> Session::enter(std::vector<Fact> facts) {
    std::vector<Answer> answers;
    std::vector<std::size_t> inShift;
    for (auto& fact : facts) {
        const auto at = now();
        if (auto why = objection(fact, at)) {
            answers.emplace_back(Refused{std::move(*why)});
            continue;
        }
        if (!fact.entered && at - fact.at >= lateFrom)
            fact.entered = at;
        tellSugar(fact, at);
        if (std::holds_alternative<DayRow>(fact.what)) {
            const auto [id, kept] = book_.enter(*keeper_, std::move(fact), ++told_, patience);
            answers.emplace_back(Entered{id, kept});
        } else if (hearRims(fact)) {
            answers.emplace_back(Entered{0, true});
        } else {
            inShift.push_back(answers.size());
            answers.emplace_back(Entered{keep(std::move(fact), true), false});
        }
    }
    const bool kept = keeper_->flush(patience);
    for (const std::size_t i : inShift)
        std::get<Entered>(answers[i]).kept = kept;
    return answers;
}

std::optional<Session::Refused> Session::set(const Fact& setting) {
    if (openShift() || !boil_.facts().empty()) {
        const Answer answer = enter(setting);
        const auto* refused = std::get_if<Refused>(&answer);
        return refused ? std::optional{*refused} : std::nullopt;
    }
    if (auto why = objection(setting, now()))
        return Refused{std::move(*why)};
    carry(std::get<Set>(setting.what));
    return std::nullopt;
}

// Noticed by the engine, it is made a fact: board, report and woodpile count it, and a person can take it back.
void Session::keepNoticed() {
    if (onlyWatches_ || !openShift())
        return;
    if (auto noticed = boil_.fold().noticed())
        keep(std::move(*noticed), true);
}

void Session::letGo() {
    keeper_->flush(std::chrono::seconds{5});
    held_ = keeper_->unkept();
    keeper_ = keeperOfNothing();
    boil_ = Boil{};
    entered_.clear();
    book_.forgetAll();
    ++told_;
    seen_.clear();
    lastRead_.clear();
    shift_.reset();
    watched_ = false;
    onlyWatches_ = say("The journal is being restored.");
}

void Session::takeUp(std::unique_ptr<Keeper> keeper, Facts facts) {
    keeper_ = std::move(keeper);
    onlyWatches_.reset();
    clock_.startAtWall();
    resume(std::move(facts));
    if (held_.empty())
        return;
    // What never reached the disk is kept now, as a shift of its own.
    if (openShift())
        keeper_->close();
    for (auto& fact : std::exchange(held_, {})) {
        const auto* reading = std::get_if<Reading>(&fact.what);
        const bool byPerson = reading ? reading->byHand() : !std::holds_alternative<ClockStep>(fact.what);
        keep(std::move(fact), byPerson);
    }
}

bool Session::holdsItsShift() const {
    const auto held = keeper_->unkept();
    return !held.empty() && held.size() >= boil_.facts().size();
}

void Session::tick() {
    const auto step = clock_.step();
    if (step && openShift())
        keep({now(), ClockStep{*step}}, false);
    else if (step)
        clock_.startAtWall();
    keepNoticed();
    if (!onlyWatches_)
        told_ += book_.keepHeld(*keeper_);
}

} // namespace panside
