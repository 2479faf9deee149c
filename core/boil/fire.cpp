#include "core/boil/fire.h"

#include "core/boil/state.h"
#include "core/physics/wood.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

// A press belongs to the load that the stack showed, and one load is not pressed twice, within this time.
constexpr Duration sameLoad{100};
// Rhythms a wood fire can have (common practice: loads every 4 to 15 min, trade manuals).
constexpr Duration shortest{3 * 60}, longest{20 * 60};

// What a kilogram gives as fired. A wood that is not known by name is taken for mixed hardwood.
double lowerHeatOf(const std::string& name, double moisture) {
    const Wood wood = woodNamed(name).value_or(woods().front());
    const auto heat = lowerHeat(wood, WetBasis{moisture});
    return heat ? heat->si() : 0;
}

float median(std::vector<float> values) {
    std::sort(values.begin(), values.end());
    const std::size_t half = values.size() / 2;
    return values.size() % 2 ? values[half] : (values[half - 1] + values[half]) / 2;
}

} // namespace

void Fire::take(const State& state, const Fact& fact) {
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        const bool stackProbe = reading->series == Series::stack && !reading->byHand();
        if (stackProbe && stack_.take(fact.at, reading->temperature()))
            inferLoad(state, fact.at);
    } else if (const auto* fired = std::get_if<Fired>(&fact.what)) {
        takeLoad(state,
                 {.at = fact.at,
                  .mass = fired->load ? fired->load->value.kilogram() : -1,
                  .lowerHeat = lowerHeatOf(fired->wood, fired->moisture.value_or(state.settings.woodMoisture())),
                  .inferred = fired->inferred,
                  .fire = fired->fire},
                 fact.by);
    }
}

void Fire::takeLoad(const State& state, const Load& load, const std::string& by) {
    if (!by.empty())
        lastBy_ = by;
    if (!loads_.empty()) {
        Load& last = loads_.back();
        const double since = secondsBetween(last.at, load.at);
        if (last.fire == load.fire && last.inferred != load.inferred && since < 2.5 * sameLoad.count()) {
            // The press for a load that the stack had shown already: the person's word stands, the time it was seen at
            // too.
            const Instant seen = std::min(last.at, load.at);
            if (last.inferred) {
                last = load;
                if (load.mass >= 0) {
                    --massless_;
                    woodKnown_ += load.mass;
                }
            }
            last.at = seen;
            return;
        }
        if (last.fire == load.fire && last.at < load.at)
            learn(state, last.at, load.at);
    }
    ++count_;
    if (load.mass >= 0)
        woodKnown_ += load.mass;
    else
        ++massless_;
    if (loads_.size() == loadsKept)
        loads_.erase(loads_.begin());
    loads_.push_back(load);
}

void Fire::learn(const State& state, Instant from, Instant to) {
    const double length = secondsBetween(from, to);
    if (length < shortest.count() || length > longest.count() + 300)
        return;
    // Without a stack the crew's own rhythm is all there is to follow.
    double best = length;
    if (state.sensors.of(Series::stack).lastRead()) {
        const auto sag = stack_.sag(from, to);
        if (!sag)
            return;
        best = seconds(*sag);
    }
    sags_[static_cast<std::size_t>(sagCount_++) % sags_.size()] = static_cast<float>(best);
}

void Fire::inferLoad(const State& state, Instant now) {
    if (!state.course.firing())
        return;
    const auto opened = stack_.loading(now);
    if (!opened)
        return;
    const auto known = std::any_of(loads_.begin(), loads_.end(), [&](const Load& load) {
        return std::abs(secondsBetween(load.at, *opened)) < 1.3 * sameLoad.count();
    });
    if (!known && (loads_.empty() || loads_.back().at < *opened) &&
        !(state.course.litAt && *state.course.litAt > *opened))
        takeLoad(
            state,
            {.at = *opened,
             // The same wood as the load before it.
             .lowerHeat = loads_.empty() ? lowerHeatOf({}, state.settings.woodMoisture()) : loads_.back().lowerHeat,
             .inferred = true,
             .fire = {}},
            {});
}

Duration Fire::interval(const State& state) const {
    if (const auto set = state.settings.fireInterval())
        return *set;
    if (sagCount_ < loadsToLearn)
        return untilLearned;
    const double learned =
        median({sags_.begin(), sags_.begin() + std::min<int>(sagCount_, static_cast<int>(sags_.size()))});
    return Duration{std::clamp(learned, shortest.count(), longest.count())};
}

std::optional<Instant> Fire::lastFired() const {
    return loads_.empty() ? std::nullopt : std::optional{loads_.back().at};
}

std::optional<Instant> Fire::due(const State& state) const {
    if (state.course.shutdownAt || state.course.endedAt)
        return std::nullopt;
    // Each fire has its own rhythm; the next of them to fall due is called.
    std::optional<Instant> next;
    for (auto load = loads_.rbegin(); load != loads_.rend(); ++load) {
        const bool newer =
            std::any_of(loads_.rbegin(), load, [&](const Load& later) { return later.fire == load->fire; });
        if (!newer && (!next || load->at < *next))
            next = load->at;
    }
    if (!next)
        next = state.course.litAt;
    return next ? std::optional{*next + interval(state)} : std::nullopt;
}

double Fire::loadMass(const State& state, const Load& load) const {
    if (load.mass >= 0)
        return load.mass;
    const auto usual = state.settings.loadMass();
    return usual ? usual->kilogram() : -1;
}

std::optional<Fire::Burnt> Fire::burnt(const State& state, Instant from, Instant to) const {
    Burnt sum{};
    for (std::size_t i = 0; i < loads_.size(); ++i) {
        const Load& load = loads_[i];
        const double length =
            i + 1 < loads_.size() ? secondsBetween(load.at, loads_[i + 1].at) : seconds(interval(state));
        const double begin = std::max(secondsBetween(from, load.at), 0.0);
        const double end = std::min(secondsBetween(from, load.at) + length, secondsBetween(from, to));
        if (end <= begin || length <= 0)
            continue;
        const double mass = loadMass(state, load);
        if (mass < 0)
            return std::nullopt;
        const double burnt = mass * (end - begin) / length;
        sum.wood += Mass::kilogram(burnt);
        sum.lowerHeat += Energy::joule(burnt * load.lowerHeat);
    }
    return sum;
}

void Fire::show(const State& state, Instant now, Picture& picture) const {
    picture.loads = count_;
    picture.lastFired = lastFired();
    picture.lastFiredInferred = !loads_.empty() && loads_.back().inferred;
    picture.fireInterval = interval(state);
    picture.fireIntervalLearned = !state.settings.fireInterval() && sagCount_ >= loadsToLearn;
    if (const auto next = due(state))
        picture.fireDue = Duration{secondsBetween(now, *next)};
    else
        picture.why.push_back({"fireDueS", state.course.endedAt      ? Reason::shiftEnded
                                           : state.course.shutdownAt ? Reason::stoppedFiring
                                                                     : Reason::notLit});
    const auto usual = state.settings.loadMass();
    if (count_ > 0 && (massless_ == 0 || usual))
        picture.wood = Mass::kilogram(woodKnown_ + (massless_ ? massless_ * usual->kilogram() : 0));
    // The round goes on from whoever fired last, in the order in which the crew signed on.
    const auto& crew = state.course.crew;
    if (!crew.empty()) {
        const auto last = std::find(crew.begin(), crew.end(), lastBy_);
        picture.turn = last == crew.end() || last + 1 == crew.end() ? crew.front() : *(last + 1);
    }
}

} // namespace panside
