#include "core/boil/loads.h"

#include "core/physics/wood.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// A press belongs to the load that the stack showed within the first time; the stack shows no second load within the
// other; the same person on the same key means the same load within the last (a glove that bounced).
constexpr double noticedAndPressed = 250, noticedAgain = 130, bounced = 45;
constexpr double probeGone = 40; // seconds without a reading: another stack probe is followed

// A wood that is not known by name is taken for mixed hardwood.
SpecificEnergy lowerHeatOf(const std::string& name, WetBasis moisture) {
    const Wood wood = woodNamed(name).value_or(woods().front());
    return lowerHeat(wood, moisture).value_or(SpecificEnergy{});
}

} // namespace

bool deniesLoad(const Fired& fired) { return fired.inferred && fired.load && fired.load->value.kilogram() == 0; }

Fact denialOf(const Fact& noticed, Instant now) {
    Fact denial = noticed;
    denial.entered = now;
    if (auto* fired = std::get_if<Fired>(&denial.what))
        fired->load = Said<Mass>{Mass::kilogram(0), Unit::kg};
    return denial;
}

bool Loads::waits(const Fact& fact) {
    const auto* fired = std::get_if<Fired>(&fact.what);
    return fired && fired->inferred && !deniesLoad(*fired) && fact.entered && *fact.entered > fact.at;
}

const Load* Loads::lastOf(const std::string& fire) const {
    const auto found =
        std::find_if(recent_.rbegin(), recent_.rend(), [&](const Load& one) { return one.fire == fire; });
    return found == recent_.rend() ? nullptr : &*found;
}

Load* Loads::last(const std::string& fire) { return const_cast<Load*>(std::as_const(*this).lastOf(fire)); }

bool Loads::follows(const Reading& reading, Instant at) const {
    return reading.series == Series::stack && !reading.byHand() &&
           (!stackAt_ || reading.probe == stackProbe_ || secondsBetween(*stackAt_, at) > probeGone);
}

std::optional<Load> Loads::hear(const Settings& settings, const Course& course, const Fact& fact) {
    newlyTold_ = stackStepped_ = false;
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        if (!follows(*reading, fact.at))
            return std::nullopt;
        stackProbe_ = reading->probe;
        stackAt_ = fact.at;
        stackStepped_ = stack_.addSample(fact.at, reading->temperature());
        return stackStepped_ ? look(settings, course, fact.at) : std::nullopt;
    }
    if (const auto* fired = std::get_if<Fired>(&fact.what))
        return press(settings, fact, *fired);
    if (const auto* set = std::get_if<Set>(&fact.what); set && set->key == Setting::load_mass && !laterMass_) {
        laterMass_ = Mass::ofSi(set->si);
        weighed_ += unweighed_ * laterMass_->kilogram();
        unweighed_ = 0;
    }
    return std::nullopt;
}

std::optional<Load> Loads::press(const Settings& settings, const Fact& fact, const Fired& fired) {
    if (deniesLoad(fired)) {
        denied_ = fact.at;
        return std::nullopt;
    }
    Load load{.at = fact.at,
              .mass = fired.load ? std::optional{fired.load->value} : settings.loadMass(),
              .wood = fired.wood,
              .fire = fired.fire,
              .by = fact.by,
              .moisture = fired.moisture.value_or(settings.woodMoisture()),
              .moistureSaid = fired.moisture || settings.wasSet(Setting::wood_moisture),
              .inferred = fired.inferred,
              .weighed = fired.load.has_value(),
              .told = true};
    load.lowerHeat = lowerHeatOf(load.wood, load.moisture);
    if (waits(fact)) {
        load.noticed = fact.entered;
        waiting_.push_back(std::move(load));
        return std::nullopt;
    }
    return merged(std::move(load));
}

// The wood of a load that is counted already turns out to be another.
void Loads::weigh(Load& load, std::optional<Mass> mass) {
    const auto before = massOf(load);
    load.mass = mass;
    const auto after = massOf(load);
    weighed_ += (after ? after->kilogram() : 0) - (before ? before->kilogram() : 0);
    unweighed_ += (after ? 0 : 1) - (before ? 0 : 1);
}

// Nothing where the load before it is the same one: what is new of it is taken over.
std::optional<Load> Loads::merged(Load load) {
    Load* before = last(load.fire);
    const double since = before ? secondsBetween(before->at, load.at) : 0;
    if (!before) {
        newlyTold_ = load.told;
        return load;
    }
    if (before->inferred == load.inferred) {
        const bool twice = since >= 0 && since < bounced && before->by == load.by &&
                           (!load.weighed || !before->weighed || load.mass == before->mass);
        if (!twice) {
            newlyTold_ = load.told;
            return load;
        }
        if (load.weighed && !before->weighed) {
            weigh(*before, load.mass);
            before->weighed = true;
        }
        return std::nullopt;
    }
    if (since >= noticedAndPressed) {
        newlyTold_ = load.told;
        return load;
    }
    const Instant seen = std::min(before->at, load.at);
    newlyTold_ = load.told && !before->told;
    if (before->inferred) {
        weigh(*before, load.mass);
        load.mass = before->mass;
        load.number = before->number;
        load.noticed = before->noticed;
        *before = std::move(load);
    } else if (load.noticed) {
        before->noticed = load.noticed;
    }
    before->at = seen;
    before->told = true;
    return std::nullopt;
}

// Does the stack show that somebody loaded the fire it stands on?
std::optional<Load> Loads::look(const Settings& settings, const Course& course, Instant now) {
    if (!course.firing())
        return std::nullopt;
    const Load* before = lastOf(stackFire_);
    Instant after = *course.litAt;
    if (before)
        after = std::max(after, before->at + Duration{noticedAgain});
    if (denied_)
        after = std::max(after, *denied_ + Duration{noticedAgain});
    const auto opened = stack_.loading(now, after);
    if (!opened || *opened < after)
        return std::nullopt;
    // The same wood as the load before it.
    Load load{.at = *opened,
              .mass = settings.loadMass(),
              .wood = before ? before->wood : std::string{},
              .fire = stackFire_,
              .by = {},
              .moisture = before ? before->moisture : settings.woodMoisture(),
              .moistureSaid = before ? before->moistureSaid : settings.wasSet(Setting::wood_moisture),
              .inferred = true,
              .noticed = now};
    load.lowerHeat = before ? before->lowerHeat : lowerHeatOf({}, load.moisture);
    const auto same = std::find_if(waiting_.begin(), waiting_.end(), [&](const Load& one) {
        return one.fire == load.fire && std::abs(secondsBetween(one.at, load.at)) < noticedAgain;
    });
    if (same != waiting_.end()) {
        waiting_.erase(same);
        load.kept = true;
    }
    return merged(std::move(load));
}

// One that was noticed when the shift ran and is not seen now: in a log without its stack, or a thinner one.
std::optional<Load> Loads::released(Instant now) {
    const auto one =
        std::find_if(waiting_.begin(), waiting_.end(), [now](const Load& load) { return *load.noticed <= now; });
    if (one == waiting_.end())
        return std::nullopt;
    Load load = std::move(*one);
    waiting_.erase(one);
    load.kept = true;
    const bool told = newlyTold_;
    auto fresh = merged(std::move(load));
    newlyTold_ = told || newlyTold_;
    return fresh ? fresh : released(now);
}

void Loads::append(Load load) {
    if (count_ == 0)
        stackFire_ = load.fire;
    load.number = ++count_;
    if (const auto mass = massOf(load))
        weighed_ += mass->kilogram();
    else
        ++unweighed_;
    if (recent_.size() == kept)
        recent_.erase(recent_.begin());
    recent_.push_back(std::move(load));
}

std::optional<Mass> Loads::wood() const {
    return unweighed_ > 0 ? std::nullopt : std::optional{Mass::kilogram(weighed_)};
}

std::optional<Fact> Loads::noticed() const {
    const auto one = std::find_if(recent_.begin(), recent_.end(), [](const Load& load) {
        return load.inferred && !load.told && !load.kept && load.noticed;
    });
    if (one == recent_.end())
        return std::nullopt;
    return Fact{.at = one->at,
                .what = Fired{.load = {}, .wood = one->wood, .moisture = {}, .fire = one->fire, .inferred = true},
                .entered = one->noticed};
}

bool LoadsOfShift::needs(const Fact& fact) {
    if (const auto* reading = std::get_if<Reading>(&fact.what))
        return reading->series == Series::stack;
    return std::holds_alternative<Set>(fact.what) || std::holds_alternative<Lit>(fact.what) ||
           std::holds_alternative<Fired>(fact.what) || std::holds_alternative<Shutdown>(fact.what) ||
           std::holds_alternative<ShiftEnd>(fact.what);
}

void LoadsOfShift::add(const Fact& fact) {
    if (!needs(fact))
        return;
    if (const auto* set = std::get_if<Set>(&fact.what))
        settings_.put(*set);
    course_.absorb(fact);
    const auto nothing = [](const Load&) {};
    loads_.absorb(settings_, course_, fact, nothing, nothing);
    follow(loads_);
}

void LoadsOfShift::follow(const Loads& loads) {
    all_.resize(static_cast<std::size_t>(loads.count()));
    for (auto load = loads.recent().rbegin(); load != loads.recent().rend(); ++load)
        all_[static_cast<std::size_t>(load->number) - 1] = *load;
    laterMass_ = loads.laterMass();
}

std::vector<Load> LoadsOfShift::all() const {
    auto loads = all_;
    for (Load& load : loads)
        if (!load.mass)
            load.mass = laterMass_;
    return loads;
}

} // namespace panside
