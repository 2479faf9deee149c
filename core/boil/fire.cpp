#include "core/boil/fire.h"

#include "core/boil/state.h"
#include "core/physics/wood.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// A press belongs to the load that the stack showed, and one load is not pressed twice, within this time.
constexpr Duration sameLoad{100};
constexpr Duration inferredAndPressed{250};
// The same person on the same key for the same load (a glove that bounced).
constexpr Duration bounced{45};
// Rhythms a wood fire can have (common practice: loads every 4 to 15 min, trade manuals).
constexpr Duration shortest{3 * 60}, longest{20 * 60};
constexpr std::size_t cyclesUsed = 5, ofThisWood = 3;
constexpr double handWorth = 4; // loads of one hand that count as much as having seen none of them
// The call waits for a load that still burns above its mean, in such steps and no longer than this.
constexpr Duration putOffStep{10}, longestPutOff{60};
constexpr Duration worthSaying{20};
// So many loads into other fires since this one fell due, and none into it: it was let go out (no source).
constexpr auto letGoOut = 3;

// What a kilogram gives as fired. A wood that is not known by name is taken for mixed hardwood.
double lowerHeatOf(const std::string& name, double moisture) {
    const Wood wood = woodNamed(name).value_or(woods().front());
    const auto heat = lowerHeat(wood, WetBasis{moisture});
    return heat ? heat->si() : 0;
}

double median(std::vector<double> values) {
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 ? values[half] : (values[half - 1] + values[half]) / 2;
}

} // namespace

void Fire::take(const State& state, const Fact& fact) {
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        if (reading->series != Series::stack || reading->byHand())
            return;
        // Of several probes the one that is believed.
        const Probe* active = state.sensors.of(Series::stack).active(fact.at);
        if (active && active->name() != reading->probe)
            return;
        noteStack(state, reading->temperature().celsius(), fact.at);
        if (stack_.take(fact.at, reading->temperature())) {
            inferLoad(state, fact.at);
            putOff(state, fact.at);
        }
    } else if (const auto* fired = std::get_if<Fired>(&fact.what)) {
        takeLoad(state, {.at = fact.at,
                         .mass = fired->load ? fired->load->value.kilogram() : -1,
                         .lowerHeat = lowerHeatOf(fired->wood, fired->moisture.value_or(state.settings.woodMoisture())),
                         .inferred = fired->inferred,
                         .fire = fired->fire,
                         .wood = fired->wood,
                         .by = fact.by});
    }
}

void Fire::noteStack(const State& state, double celsius, Instant at) {
    const double passed = stackFor_ > 0 ? std::clamp(secondsBetween(stackAt_, at), 0.0, 60.0) : 1;
    stackAt_ = at;
    stackNow_ += (celsius - stackNow_) * (stackFor_ > 0 ? std::min(1.0, passed / 30) : 1.0);
    stackFor_ += passed;
    // Fed as usual: the mean of a quarter of an hour, for as long as loads come.
    const Load* last = lastOf(stackFire_);
    if (state.course.firing() && last && secondsBetween(last->at, at) < 900)
        stackMean_ += (celsius - stackMean_) * std::min(1.0, passed / std::min(stackFor_, 900.0));
}

// The load that the stack had shown already and the press for it, whichever came first: the person's word stands, and
// the time it was seen at.
bool Fire::sameAsLast(const Load& load) {
    const auto last =
        std::find_if(loads_.rbegin(), loads_.rend(), [&](const Load& one) { return one.fire == load.fire; });
    if (last == loads_.rend())
        return false;
    const double since = secondsBetween(last->at, load.at);
    if (last->inferred == load.inferred) {
        // Two rows that say the same: one load keyed twice. A second load for the scale has its own mass.
        const bool twice = since >= 0 && since < bounced.count() && last->by == load.by &&
                           (load.mass < 0 || last->mass < 0 || load.mass == last->mass);
        if (!twice)
            return false;
        if (last->mass < 0 && load.mass >= 0) {
            last->mass = load.mass;
            --massless_;
            woodKnown_ += load.mass;
        }
        return true;
    }
    if (since >= inferredAndPressed.count())
        return false;
    const Instant seen = std::min(last->at, load.at);
    if (last->inferred) {
        if (load.mass >= 0) {
            --massless_;
            woodKnown_ += load.mass;
        }
        *last = load;
    }
    last->at = seen;
    return true;
}

void Fire::takeLoad(const State& state, Load load) {
    if (!load.by.empty())
        lastBy_ = load.by;
    if (sameAsLast(load))
        return;
    if (count_ == 0)
        stackFire_ = load.fire;
    // A fire's call moves from its own, never from that of another fire.
    std::optional<Duration> before;
    float lastSag = -1;
    const auto last =
        std::find_if(loads_.rbegin(), loads_.rend(), [&](const Load& one) { return one.fire == load.fire; });
    if (last != loads_.rend()) {
        before = intervalAfter(state, *last);
        if (last->at < load.at)
            learn(state, *last, load.at);
        lastSag = last->stackSag;
    }
    if (load.fire == stackFire_)
        putOff_ = Duration{0};
    ++count_;
    heatPerKilogram_ += (load.lowerHeat - heatPerKilogram_) / count_;
    if (load.mass >= 0)
        woodKnown_ += load.mass;
    else
        ++massless_;
    if (loads_.size() == loadsKept)
        loads_.erase(loads_.begin());
    loads_.push_back(std::move(load));
    const Duration after = intervalAfter(state, loads_.back());
    if (!before || std::chrono::abs(after - *before) < worthSaying || state.settings.fireInterval())
        return;
    moved_ = CallMoved{.at = loads_.back().at, .from = *before, .to = after, .sagsAfter = {}};
    if (lastSag > 0 && stackTells(state, loads_.back().fire)) {
        std::vector<double> seen;
        for (auto one = loads_.rbegin(); one != loads_.rend() && seen.size() < cyclesUsed; ++one)
            if (one->fire == loads_.back().fire && one->stackSag > 0)
                seen.push_back(one->stackSag);
        moved_->sagsAfter = Duration{median(seen)};
    }
}

bool Fire::stackTells(const State& state, const std::string& fire) const {
    return state.sensors.of(Series::stack).lastRead() && stackFire_ == fire;
}

void Fire::learn(const State& state, Load& load, Instant to) {
    const double length = secondsBetween(load.at, to);
    if (length < shortest.count() || length > longest.count() + 300)
        return;
    if (!stackTells(state, load.fire)) {
        load.sag = static_cast<float>(length); // the crew's own rhythm is all there is to follow
        return;
    }
    const auto sag = stack_.sag(load.at, to);
    if (!sag)
        return;
    load.sag = static_cast<float>(seconds(sag->heat));
    if (sag->seen)
        load.stackSag = static_cast<float>(seconds(sag->stack));
}

void Fire::inferLoad(const State& state, Instant now) {
    if (!state.course.firing())
        return;
    const auto last =
        std::find_if(loads_.rbegin(), loads_.rend(), [&](const Load& one) { return one.fire == stackFire_; });
    Instant after = *state.course.litAt;
    if (last != loads_.rend())
        after = std::max(after, last->at + Duration{1.3 * sameLoad.count()});
    const auto opened = stack_.loading(now, after);
    if (!opened || *opened < after)
        return;
    takeLoad(state,
             {.at = *opened,
              // The same wood as the load before it.
              .lowerHeat = last == loads_.rend() ? lowerHeatOf({}, state.settings.woodMoisture()) : last->lowerHeat,
              .inferred = true,
              .fire = stackFire_,
              .wood = last == loads_.rend() ? std::string{} : last->wood,
              .by = {}});
}

void Fire::putOff(const State& state, Instant now) {
    const Load* last = lastOf(stackFire_);
    if (!last || state.settings.fireInterval() || !stackTells(state, stackFire_) ||
        learnedFrom(stackFire_) < loadsToLearn || putOff_ >= longestPutOff)
        return;
    const double left = secondsBetween(now, dueAfter(state, *last));
    if (left > 0 && left <= putOffStep.count() && stack_.burnsHigh(last->at, now).value_or(false))
        putOff_ += putOffStep;
}

int Fire::learnedFrom(const std::string& fire) const {
    return static_cast<int>(
        std::count_if(loads_.begin(), loads_.end(), [&](const Load& one) { return one.fire == fire && one.sag > 0; }));
}

Duration Fire::intervalAfter(const State& state, const Load& load) const {
    if (const auto set = state.settings.fireInterval())
        return *set;
    if (learnedFrom(load.fire) < loadsToLearn)
        return untilLearned;
    const auto latest = [&](bool thisWood) {
        std::vector<double> sags;
        for (auto one = loads_.rbegin(); one != loads_.rend() && sags.size() < cyclesUsed; ++one)
            if (one->fire == load.fire && one->sag > 0 && (!thisWood || one->wood == load.wood))
                sags.push_back(one->sag);
        return sags;
    };
    auto sags = latest(true);
    if (sags.size() < ofThisWood)
        sags = latest(false);
    double learned = median(sags);
    double apart = 0, n = 0;
    if (!load.by.empty())
        for (const Load& one : loads_)
            if (one.fire == load.fire && one.sag > 0 && one.wood == load.wood && one.by == load.by) {
                apart += std::log(one.sag / learned);
                ++n;
            }
    learned *= std::exp(apart / (n + handWorth));
    return Duration{std::clamp(learned, shortest.count() * 1.0, longest.count() * 1.0)};
}

std::vector<const Fire::Load*> Fire::lastOfEach() const {
    std::vector<const Load*> each;
    for (auto load = loads_.rbegin(); load != loads_.rend(); ++load)
        if (std::none_of(each.begin(), each.end(), [&](const Load* later) { return later->fire == load->fire; }))
            each.push_back(&*load);
    return each;
}

const Fire::Load* Fire::lastOf(const std::string& fire) const {
    const auto last = std::find_if(loads_.rbegin(), loads_.rend(), [&](const Load& one) { return one.fire == fire; });
    return last == loads_.rend() ? nullptr : &*last;
}

std::vector<const Fire::Load*> Fire::lastOfFed(const State& state) const {
    auto each = lastOfEach();
    std::erase_if(each, [&](const Load* load) {
        const Instant fellDue = dueAfter(state, *load);
        return std::count_if(loads_.begin(), loads_.end(),
                             [&](const Load& one) { return one.fire != load->fire && one.at > fellDue; }) >= letGoOut;
    });
    return each;
}

const Fire::Load* Fire::next(const State& state) const {
    const auto each = lastOfFed(state);
    const auto first = std::min_element(each.begin(), each.end(), [&](const Load* a, const Load* b) {
        return dueAfter(state, *a) < dueAfter(state, *b);
    });
    return first == each.end() ? nullptr : *first;
}

Instant Fire::dueAfter(const State& state, const Load& load) const {
    return load.at + intervalAfter(state, load) + (load.fire == stackFire_ ? putOff_ : Duration{0});
}

Duration Fire::interval(const State& state) const {
    const Load* load = next(state);
    return load ? intervalAfter(state, *load) : state.settings.fireInterval().value_or(untilLearned);
}

std::optional<Instant> Fire::lastFired() const {
    return loads_.empty() ? std::nullopt : std::optional{loads_.back().at};
}

std::optional<Instant> Fire::due(const State& state) const {
    if (state.course.shutdownAt || state.course.endedAt)
        return std::nullopt;
    // Each fire has its own rhythm; the next of them to fall due is called.
    if (const Load* load = next(state))
        return dueAfter(state, *load);
    return state.course.litAt ? std::optional{*state.course.litAt + interval(state)} : std::nullopt;
}

double Fire::loadMass(const State& state, const Load& load) const {
    if (load.mass >= 0)
        return load.mass;
    const auto usual = state.settings.loadMass();
    return usual ? usual->kilogram() : -1;
}

std::optional<Fire::Burnt> Fire::burnt(const State& state, Instant from, Instant to) const {
    Burnt sum{};
    for (auto load = loads_.begin(); load != loads_.end(); ++load) {
        const auto next = std::find_if(load + 1, loads_.end(), [&](const Load& one) { return one.fire == load->fire; });
        const double length =
            next != loads_.end() ? secondsBetween(load->at, next->at) : seconds(intervalAfter(state, *load));
        const double begin = std::max(secondsBetween(from, load->at), 0.0);
        const double end = std::min(secondsBetween(from, load->at) + length, secondsBetween(from, to));
        if (end <= begin || length <= 0)
            continue;
        const double mass = loadMass(state, *load);
        if (mass < 0)
            return std::nullopt;
        const double burnt = mass * (end - begin) / length;
        sum.wood += Mass::kilogram(burnt);
        sum.lowerHeat += Energy::joule(burnt * load->lowerHeat);
    }
    return sum;
}

std::optional<Fire::Burnt> Fire::burntInAll(const State& state, Instant now) const {
    const auto usual = state.settings.loadMass();
    if (loads_.empty() || (massless_ > 0 && !usual))
        return std::nullopt;
    double wood = woodKnown_ + (massless_ ? massless_ * usual->kilogram() : 0);
    for (const Load* last : lastOfEach()) {
        const double gone = std::clamp(secondsBetween(last->at, now) / seconds(intervalAfter(state, *last)), 0.0, 1.0);
        wood -= (1 - gone) * loadMass(state, *last);
    }
    return Burnt{Mass::kilogram(wood), Energy::joule(wood * heatPerKilogram_)};
}

std::optional<Temperature> Fire::usualStack() const {
    return stackFor_ > 600 ? std::optional{Temperature::celsius(stackMean_)} : std::nullopt;
}

// Low: a load would set it right. Dying: it has gone so far down that a load will be slow to catch. Of several fires it
// is the one that is called next.
FireStanding Fire::standing(const State& state, Instant now) const {
    const Load* load = next(state);
    if (!state.course.firing() || !load)
        return FireStanding::unknown;
    const double since = secondsBetween(load->at, now);
    const double late = secondsBetween(dueAfter(state, *load), now);
    const bool stackRead = load->fire == stackFire_ && stackFor_ > 1200 && secondsBetween(stackAt_, now) < 60;
    if (stackRead && since > 240) { // the door and the drying of a load are over
        if (stackNow_ < 0.55 * stackMean_)
            return FireStanding::dying;
        return late > 0 ? FireStanding::low : FireStanding::burning;
    }
    if (since < 150)
        return FireStanding::catching;
    if (late > seconds(interval(state)))
        return FireStanding::dying;
    return late > 0 ? FireStanding::low : FireStanding::burning;
}

void Fire::showFires(const State& state, Instant now, Picture& picture) const {
    if (!due(state))
        return;
    for (const Load* load : lastOfFed(state))
        picture.fires.push_back({.name = load->fire,
                                 .due = Duration{secondsBetween(now, dueAfter(state, *load))},
                                 .interval = intervalAfter(state, *load),
                                 .lastFired = load->at});
    std::sort(picture.fires.begin(), picture.fires.end(),
              [](const FirePicture& a, const FirePicture& b) { return a.due < b.due; });
}

// The round goes on from whoever fired last, in the order in which the crew signed on.
void Fire::showTurn(const State& state, Picture& picture) const {
    const auto& crew = state.course.crew;
    if (crew.empty())
        return;
    const auto last = std::find(crew.begin(), crew.end(), lastBy_);
    picture.turn = last == crew.end() || last + 1 == crew.end() ? crew.front() : *(last + 1);
}

void Fire::show(const State& state, Instant now, Picture& picture) const {
    picture.loads = count_;
    picture.lastFired = lastFired();
    picture.lastFiredInferred = !loads_.empty() && loads_.back().inferred;
    picture.fireInterval = interval(state);
    const Load* called = next(state);
    picture.fireIntervalLearned = !state.settings.fireInterval() && called && learnedFrom(called->fire) >= loadsToLearn;
    // Why a call was moved is said of the fire that is called.
    const bool ofAnother = moved_ && called && std::any_of(loads_.begin(), loads_.end(), [&](const Load& one) {
                               return one.at == moved_->at && one.fire != called->fire;
                           });
    if (!state.settings.fireInterval() && !ofAnother)
        picture.callMoved = moved_;
    picture.fireStanding = standing(state, now);
    if (const auto call = due(state))
        picture.fireDue = Duration{secondsBetween(now, *call)};
    else
        picture.why.push_back({"fireDueS", state.course.endedAt      ? Reason::shiftEnded
                                           : state.course.shutdownAt ? Reason::stoppedFiring
                                                                     : Reason::notLit});
    showFires(state, now, picture);
    const auto usual = state.settings.loadMass();
    if (count_ > 0 && (massless_ == 0 || usual))
        picture.wood = Mass::kilogram(woodKnown_ + (massless_ ? massless_ * usual->kilogram() : 0));
    showTurn(state, picture);
}

} // namespace panside
