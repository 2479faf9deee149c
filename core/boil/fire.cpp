#include "core/boil/fire.h"

#include "core/boil/state.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// Rhythms a wood fire can have (common practice: loads every 4 to 15 min, trade manuals).
constexpr Duration shortest{3 * 60}, longest{20 * 60};
constexpr std::size_t ofThisWood = 3;
// A load that comes so soon after its call answers it, and bears its interval out: a crew that follows the calls must
// not draw them out, load by load, by what it takes to get to the door.
constexpr double answersWithin = 40; // seconds
// Nor is a call put off, by a crew that is slower still, to where next to nothing of a load's heat is left: crews that
// fire by habit do so at 1.6 to 2.4 times the time in which it is seen to sink to its mean (made-up plants).
constexpr double farSunk = 3;
constexpr double handWorth = 4; // loads of one hand that count as much as having seen none of them
// The call waits for a load that still burns above its mean, in such steps and no longer than this.
constexpr Duration putOffStep{10}, longestPutOff{60};
constexpr Duration worthSaying{20};
// So many loads into other fires since this one fell due, and none into it: it was let go out (no source).
constexpr auto letGoOut = 3;

} // namespace

void Fire::absorb(const State& state, const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    const bool stack = reading && loads_.follows(*reading, fact.at);
    if (stack)
        noteStack(state, reading->temperature().celsius(), fact.at);
    if (const auto* fired = std::get_if<Fired>(&fact.what); fired && !deniesLoad(*fired) && !fact.by.empty())
        lastBy_ = fact.by;
    std::optional<Duration> before;
    loads_.absorb(
        state.settings, state.course, fact, [&](const Load& load) { before = begins(state, load); },
        [&](const Load& load) { begun(state, load, before); });
    if (!reading) // it may tell more of a load that is there
        learnIntervals();
    if (stack && loads_.stackStepped())
        putOff(state, fact.at);
}

void Fire::noteStack(const State& state, double celsius, Instant at) {
    const double passed = stackFor_ > 0 ? std::clamp(secondsBetween(stackAt_, at), 0.0, 60.0) : 1;
    stackAt_ = at;
    stackNow_ += (celsius - stackNow_) * (stackFor_ > 0 ? std::min(1.0, passed / 30) : 1.0);
    stackFor_ += passed;
    // Fed as usual: the mean of a quarter of an hour, for as long as loads come.
    const Load* last = loads_.lastOf(loads_.stackFire());
    if (state.course.firing() && last && secondsBetween(last->at, at) < 900)
        stackMean_ += (celsius - stackMean_) * std::min(1.0, passed / std::min(stackFor_, 900.0));
}

// A fire's call moves from its own, never from that of another fire.
std::optional<Duration> Fire::begins(const State& state, const Load& load) {
    const Load* last = loads_.lastOf(load.fire);
    if (!last)
        return std::nullopt;
    const Duration before = intervalAfter(state, *last);
    if (last->at < load.at)
        learn(state, *last, load.at);
    return before;
}

void Fire::begun(const State& state, const Load& load, const std::optional<Duration>& before) {
    cycleOf(load) = Cycle{};
    if (load.fire == loads_.stackFire())
        putOff_ = Duration{0};
    heatPerKilogram_ += (load.lowerHeat.si() - heatPerKilogram_) / load.number;
    learnIntervals();
    const Duration after = intervalAfter(state, load);
    if (!before || std::chrono::abs(after - *before) < worthSaying || state.settings.fireInterval())
        return;
    moved_ = CallMoved{.at = load.at, .from = *before, .to = after, .sagsAfter = {}};
    const auto sunk = sunkBy(load);
    if (const auto seen = latest(load, &Cycle::stack, false); sunk && after >= *sunk && !seen.empty())
        moved_->sagsAfter = Duration{seen.median()};
}

bool Fire::stackTells(const State& state, const std::string& fire) const {
    return state.sensors.of(Series::stack).lastRead() && loads_.stackFire() == fire;
}

void Fire::learn(const State& state, const Load& load, Instant to) {
    const double length = secondsBetween(load.at, to);
    if (length < shortest.count() || length > longest.count() + 300)
        return;
    const double late = secondsBetween(dueAfter(state, load), to);
    const bool answered = learnedFrom(load.fire) >= loadsToLearn && late >= 0 && late <= answersWithin;
    Cycle& cycle = cycleOf(load);
    cycle.rhythm = static_cast<float>(answered ? length - late : length);
    const auto sag = stackTells(state, load.fire) ? loads_.stack().sag(load.at, to) : std::nullopt;
    if (!sag)
        return;
    cycle.heat = static_cast<float>(seconds(sag->heat));
    if (sag->seen)
        cycle.stack = static_cast<float>(seconds(sag->stack));
}

void Fire::putOff(const State& state, Instant now) {
    const std::string& fire = loads_.stackFire();
    const Load* last = loads_.lastOf(fire);
    if (!last || state.settings.fireInterval() || !stackTells(state, fire) || learnedFrom(fire) < loadsToLearn ||
        putOff_ >= longestPutOff)
        return;
    const double left = secondsBetween(now, dueAfter(state, *last));
    if (left > 0 && left <= putOffStep.count() && loads_.stack().burnsHigh(last->at, now).value_or(false))
        putOff_ += putOffStep;
}

int Fire::learnedFrom(const std::string& fire) const {
    return static_cast<int>(std::count_if(loads_.recent().begin(), loads_.recent().end(), [&](const Load& one) {
        return one.fire == fire && cycleOf(one).rhythm.has_value();
    }));
}

Fire::Cycles Fire::latest(const Load& load, std::optional<float> Cycle::*what, bool thisWood) const {
    Cycles cycles;
    const auto& loads = loads_.recent();
    for (auto one = loads.rbegin(); one != loads.rend() && cycles.count < cycles.each.size(); ++one)
        if (const auto& seen = cycleOf(*one).*what;
            seen && one->fire == load.fire && (!thisWood || one->wood == load.wood))
            cycles.each[cycles.count++] = *seen;
    return cycles;
}

double Fire::Cycles::median() const {
    auto values = each;
    const auto end = values.begin() + static_cast<std::ptrdiff_t>(count);
    std::sort(values.begin(), end);
    const std::size_t half = count / 2;
    return count % 2 ? values[half] : (static_cast<double>(values[half - 1]) + static_cast<double>(values[half])) / 2;
}

std::optional<Duration> Fire::sunkBy(const Load& load) const {
    const auto sags = latest(load, &Cycle::heat, true);
    if (sags.count < static_cast<std::size_t>(loadsToLearn))
        return std::nullopt;
    return Duration{farSunk * sags.median()};
}

Duration Fire::intervalAfter(const State& state, const Load& load) const {
    return state.settings.fireInterval().value_or(cycleOf(load).learned);
}

void Fire::learnIntervals() {
    for (const Load& load : loads_.recent())
        cycleOf(load).learned = learnedAfter(load);
}

Duration Fire::learnedAfter(const Load& load) const {
    if (learnedFrom(load.fire) < loadsToLearn)
        return untilLearned;
    auto cycles = latest(load, &Cycle::rhythm, true);
    if (cycles.count < ofThisWood)
        cycles = latest(load, &Cycle::rhythm, false);
    const double learned = cycles.median();
    double apart = 0, n = 0;
    if (!load.by.empty())
        for (const Load& one : loads_.recent())
            if (one.fire == load.fire && cycleOf(one).rhythm && one.wood == load.wood && one.by == load.by) {
                apart += std::log(*cycleOf(one).rhythm / learned);
                ++n;
            }
    const Duration rhythm{learned * std::exp(apart / (n + handWorth))};
    return std::clamp(std::min(rhythm, sunkBy(load).value_or(rhythm)), shortest, longest);
}

std::vector<const Load*> Fire::lastOfEach() const {
    std::vector<const Load*> each;
    const auto& loads = loads_.recent();
    for (auto load = loads.rbegin(); load != loads.rend(); ++load)
        if (each.empty() || // most houses have one fire: one look at it is enough
            (load->fire != each.front()->fire &&
             std::none_of(each.begin(), each.end(), [&](const Load* later) { return later->fire == load->fire; })))
            each.push_back(&*load);
    return each;
}

std::vector<const Load*> Fire::lastOfFed(const State& state) const {
    auto each = lastOfEach();
    std::erase_if(each, [&](const Load* load) {
        const Instant fellDue = dueAfter(state, *load);
        return std::count_if(loads_.recent().begin(), loads_.recent().end(),
                             [&](const Load& one) { return one.fire != load->fire && one.at > fellDue; }) >= letGoOut;
    });
    return each;
}

const Load* Fire::next(const State& state) const {
    const auto& loads = loads_.recent();
    if (!loads.empty() &&
        std::all_of(loads.begin(), loads.end(), [&](const Load& one) { return one.fire == loads.back().fire; }))
        return &loads.back(); // the only fire
    const auto each = lastOfFed(state);
    const auto first = std::min_element(each.begin(), each.end(), [&](const Load* a, const Load* b) {
        return dueAfter(state, *a) < dueAfter(state, *b);
    });
    return first == each.end() ? nullptr : *first;
}

Instant Fire::dueAfter(const State& state, const Load& load) const {
    return load.at + intervalAfter(state, load) + (load.fire == loads_.stackFire() ? putOff_ : Duration{0});
}

Duration Fire::interval(const State& state) const {
    const Load* load = next(state);
    return load ? intervalAfter(state, *load) : state.settings.fireInterval().value_or(untilLearned);
}

std::optional<Instant> Fire::lastFired() const {
    return loads_.recent().empty() ? std::nullopt : std::optional{loads_.recent().back().at};
}

std::optional<Instant> Fire::due(const State& state) const {
    if (state.course.shutdownAt || state.course.endedAt)
        return std::nullopt;
    // Each fire has its own rhythm; the next of them to fall due is called.
    if (const Load* load = next(state))
        return dueAfter(state, *load);
    return state.course.litAt ? std::optional{*state.course.litAt + interval(state)} : std::nullopt;
}

std::optional<Fire::Burnt> Fire::burnt(const State& state, Instant from, Instant to) const {
    Burnt sum{};
    const auto& loads = loads_.recent();
    for (auto load = loads.begin(); load != loads.end(); ++load) {
        const auto next = std::find_if(load + 1, loads.end(), [&](const Load& one) { return one.fire == load->fire; });
        const double length =
            next != loads.end() ? secondsBetween(load->at, next->at) : seconds(intervalAfter(state, *load));
        const double begin = std::max(secondsBetween(from, load->at), 0.0);
        const double end = std::min(secondsBetween(from, load->at) + length, secondsBetween(from, to));
        if (end <= begin || length <= 0)
            continue;
        const auto mass = loads_.massOf(*load);
        if (!mass)
            return std::nullopt;
        const double burnt = mass->kilogram() * (end - begin) / length;
        sum.wood += Mass::kilogram(burnt);
        sum.lowerHeat += load->lowerHeat * Mass::kilogram(burnt);
    }
    return sum;
}

std::optional<Fire::Burnt> Fire::burntInAll(const State& state, Instant now) const {
    const auto all = loads_.wood();
    if (loads_.count() == 0 || !all)
        return std::nullopt;
    double wood = all->kilogram();
    for (const Load* last : lastOfEach()) {
        const double gone = std::clamp(secondsBetween(last->at, now) / seconds(intervalAfter(state, *last)), 0.0, 1.0);
        wood -= (1 - gone) * loads_.massOf(*last).value_or(Mass{}).kilogram();
    }
    return Burnt{Mass::kilogram(wood), Energy::joule(wood * heatPerKilogram_)};
}

std::optional<Temperature> Fire::usualStack() const {
    return stackFor_ > 600 ? std::optional{Temperature::celsius(stackMean_)} : std::nullopt;
}

std::optional<Fire::Sagging> Fire::sags(const State& state, Instant now, bool already) const {
    const Load* load = next(state);
    // A door that was just open is no sag; a stack that is not read tells nothing.
    if (!state.course.firing() || !load || load->fire != loads_.stackFire() || stackFor_ < 1200 ||
        secondsBetween(stackAt_, now) > 60 || secondsBetween(load->at, now) < 240 || now < dueAfter(state, *load))
        return std::nullopt;
    const double share = already ? 0.8 : 0.75; // of the height over what the air is
    constexpr double air = 10;
    if (stackNow_ - air > share * (stackMean_ - air))
        return std::nullopt;
    return Sagging{Temperature::celsius(stackNow_), Temperature::celsius(stackMean_)};
}

// Low: a load would set it right. Dying: it has gone so far down that a load will be slow to catch. Of several fires it
// is the one that is called next.
FireStanding Fire::standing(const State& state, Instant now) const {
    const Load* load = next(state);
    if (!state.course.firing() || !load)
        return FireStanding::unknown;
    const double since = secondsBetween(load->at, now);
    const double late = secondsBetween(dueAfter(state, *load), now);
    const bool stackRead = load->fire == loads_.stackFire() && stackFor_ > 1200 && secondsBetween(stackAt_, now) < 60;
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
    picture.loads = loads_.count();
    picture.lastFired = lastFired();
    picture.lastFiredInferred = !loads_.recent().empty() && loads_.recent().back().inferred;
    picture.fireInterval = interval(state);
    const Load* called = next(state);
    picture.fireIntervalLearned = !state.settings.fireInterval() && called && learnedFrom(called->fire) >= loadsToLearn;
    // Why a call was moved is said of the fire that is called.
    const bool ofAnother =
        moved_ && called && std::any_of(loads_.recent().begin(), loads_.recent().end(), [&](const Load& one) {
            return one.at == moved_->at && one.fire != called->fire;
        });
    if (!state.settings.fireInterval() && !ofAnother)
        picture.callMoved = moved_;
    picture.fireStanding = standing(state, now);
    if (const auto call = due(state))
        picture.fireDue = Duration{secondsBetween(now, *call)};
    else
        picture.why.push_back({Shown::fireDueS, state.course.endedAt      ? Reason::shiftEnded
                                                : state.course.shutdownAt ? Reason::stoppedFiring
                                                                          : Reason::notLit});
    showFires(state, now, picture);
    if (loads_.count() > 0)
        picture.wood = loads_.wood();
    showTurn(state, picture);
}

} // namespace panside
