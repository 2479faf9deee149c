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
    std::vector<Entry> facts;
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
    std::vector<Entry>::iterator find(FactId id);
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

// What is withdrawn was mostly entered just now.
std::vector<Boil::Entry>::iterator Boil::Inside::find(FactId id) {
    const auto entry = std::find_if(facts.rbegin(), facts.rend(), [id](const Entry& one) { return one.id == id; });
    return entry == facts.rend() ? facts.end() : std::prev(entry.base());
}

Boil::Boil() : inside_{std::make_unique<Inside>()} {}
Boil::Boil(Alarms alarms) : Boil{} { inside_->alarms = alarms; }
Boil::~Boil() = default;
Boil::Boil(Boil&&) noexcept = default;
Boil& Boil::operator=(Boil&&) noexcept = default;

void Boil::reserve(std::size_t facts) { inside_->facts.reserve(facts); }

void Boil::add(FactId id, Fact fact) {
    auto& facts = inside_->facts;
    // Those of equal times stand in the order of their ids, so that it does not matter in which order they were added.
    const auto later = [](const Entry& a, const Entry& b) {
        return a.fact.at != b.fact.at ? a.fact.at < b.fact.at : a.id < b.id;
    };
    Entry entry{id, std::move(fact)};
    if (facts.empty() || !later(entry, facts.back())) {
        facts.push_back(std::move(entry));
    } else {
        const auto place = std::upper_bound(facts.begin(), facts.end(), entry, later);
        inside_->backTo(static_cast<std::size_t>(place - facts.begin()));
        facts.insert(place, std::move(entry));
    }
}

bool Boil::withdraw(FactId id) {
    const auto entry = inside_->find(id);
    if (entry == inside_->facts.end())
        return false;
    inside_->backTo(static_cast<std::size_t>(entry - inside_->facts.begin()));
    inside_->facts.erase(entry);
    return true;
}

Boil& Boil::fold() {
    while (inside_->folded < inside_->facts.size())
        inside_->fold(inside_->facts[inside_->folded].fact);
    return *this;
}

const State& Boil::state() const { return inside_->state; }

Picture Boil::pictureAt(Instant now) const {
    const auto& inside = *inside_;
    if (inside.folded == 0 || inside.state.now <= now)
        return picture(inside.state, now);
    // A moment of the past: from the kept state before it.
    const auto end =
        std::upper_bound(inside.facts.begin(), inside.facts.begin() + static_cast<std::ptrdiff_t>(inside.folded), now,
                         [](Instant time, const Entry& one) { return time < one.fact.at; });
    const auto count = static_cast<std::size_t>(end - inside.facts.begin());
    auto from = inside.checkpoints.rbegin();
    while (from->folded > count)
        ++from;
    State state = from->state;
    for (std::size_t i = from->folded; i < count; ++i)
        inside.foldInto(state, inside.facts[i].fact);
    return picture(state, now);
}

std::optional<Fact> Boil::noticed() const { return inside_->state.fire.loads().noticed(); }

const std::vector<Boil::Entry>& Boil::facts() const { return inside_->facts; }

const std::vector<RisePoint>& Boil::rise() const { return inside_->traces.rise; }
const std::vector<SteamPoint>& Boil::steam() const { return inside_->traces.steam; }

std::optional<Instant> Boil::started() const {
    return inside_->facts.empty() ? std::nullopt : std::optional{inside_->facts.front().fact.at};
}

std::uint64_t Boil::rewritten() const { return inside_->rewritten; }

} // namespace panside
