#include "core/boil/boil.h"

#include "core/boil/chart_traces.h"
#include "core/boil/state.h"

#include <algorithm>

namespace panside {
namespace {

// Moments kept to fold again from. At one an interval a shift of twelve hours keeps 144.
constexpr std::chrono::minutes keepEvery{5};

} // namespace

struct Boil::Inside {
    struct Checkpoint {
        std::size_t folded = 0; // how many facts are in it
        std::size_t rises = 0;  // how long the traces were
        std::size_t steams = 0;
        State state;
    };
    Facts facts;
    std::vector<Checkpoint> checkpoints = std::vector<Checkpoint>(1); // the first is the state before any fact
    State state;
    std::size_t folded = 0; // facts that `state` holds
    ChartTraces traces;
    std::uint64_t rewritten = 0;
    Alarms alarms = Alarms::watched;

    void foldInto(State& into, const Fact& fact) const {
        alarms == Alarms::watched ? absorb(into, fact) : absorbUnwatched(into, fact);
    }

    void fold(const Fact& fact);
    // What follows the first `count` facts is to be folded again.
    void backTo(std::size_t count);
};

void Boil::Inside::fold(const Fact& fact) {
    if (folded > checkpoints.back().folded && fact.at - checkpoints.back().state.now >= keepEvery)
        checkpoints.push_back({folded, traces.rise.size(), traces.steam.size(), state});
    foldInto(state, fact);
    ++folded;
    traces.absorb(state, fact);
}

void Boil::Inside::backTo(std::size_t count) {
    if (count >= folded)
        return;
    ++rewritten;
    while (checkpoints.back().folded > count)
        checkpoints.pop_back();
    state = checkpoints.back().state;
    folded = checkpoints.back().folded;
    traces.rise.resize(checkpoints.back().rises);
    traces.steam.resize(checkpoints.back().steams);
}

Boil::Boil() : inside_{std::make_unique<Inside>()} {}
Boil::Boil(Alarms alarms) : Boil{} { inside_->alarms = alarms; }
Boil::~Boil() = default;
Boil::Boil(Boil&&) noexcept = default;
Boil& Boil::operator=(Boil&&) noexcept = default;

void Boil::begin(Facts facts) { inside_->facts = std::move(facts); }

void Boil::add(FactId id, Fact fact) { inside_->backTo(inside_->facts.add(id, std::move(fact))); }

bool Boil::withdraw(FactId id) {
    const auto place = inside_->facts.placeOf(id);
    if (place) {
        inside_->backTo(*place);
        inside_->facts.erase(*place);
    }
    return place.has_value();
}

Boil& Boil::fold() {
    Fact scratch{};
    while (inside_->folded < inside_->facts.size())
        inside_->fold(inside_->facts.fact(inside_->folded, scratch));
    return *this;
}

const State& Boil::state() const { return inside_->state; }

Picture Boil::pictureAt(Instant now) const {
    const auto& inside = *inside_;
    if (inside.folded == 0 || inside.state.now <= now)
        return picture(inside.state, now);
    // A moment of the past: from the kept state before it.
    const std::size_t count = std::min(inside.facts.upTo(now), inside.folded);
    auto from = inside.checkpoints.rbegin();
    while (from->folded > count)
        ++from;
    State state = from->state;
    Fact scratch{};
    for (std::size_t i = from->folded; i < count; ++i)
        inside.foldInto(state, inside.facts.fact(i, scratch));
    return picture(state, now);
}

std::optional<Fact> Boil::noticed() const { return inside_->state.fire.loads().noticed(); }

const Facts& Boil::facts() const { return inside_->facts; }

const std::vector<RisePoint>& Boil::rise() const { return inside_->traces.rise; }
const std::vector<SteamPoint>& Boil::steam() const { return inside_->traces.steam; }

std::optional<Instant> Boil::started() const {
    return inside_->facts.empty() ? std::nullopt : std::optional{inside_->facts.at(0)};
}

std::uint64_t Boil::rewritten() const { return inside_->rewritten; }

} // namespace panside
