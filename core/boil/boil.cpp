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
    struct Kept {
        std::size_t folded = 0; // how many facts are in it
        std::size_t rises = 0;  // how long the traces were
        std::size_t steams = 0;
        State state;
    };
    std::vector<Entry> facts;
    std::vector<Kept> kept = std::vector<Kept>(1); // the first is the state before any fact
    State state;
    std::size_t folded = 0; // facts that `state` holds
    ChartTraces traces;
    std::uint64_t rewritten = 0;
    Alarms alarms = Alarms::watched;

    void take(State& into, const Fact& fact) const {
        alarms == Alarms::watched ? absorb(into, fact) : absorbUnwatched(into, fact);
    }

    void fold(const Fact& fact);
    void foldAll() {
        while (folded < facts.size())
            fold(facts[folded].fact);
    }
    // What follows the first `count` facts is to be folded again.
    void backTo(std::size_t count);
    std::vector<Entry>::iterator find(FactId id);
};

void Boil::Inside::fold(const Fact& fact) {
    if (folded > kept.back().folded && fact.at - kept.back().state.now >= keepEvery)
        kept.push_back({folded, traces.rise.size(), traces.steam.size(), state});
    take(state, fact);
    ++folded;
    traces.take(state, fact);
}

void Boil::Inside::backTo(std::size_t count) {
    if (count >= folded)
        return;
    ++rewritten;
    while (kept.back().folded > count)
        kept.pop_back();
    state = kept.back().state;
    folded = kept.back().folded;
    traces.rise.resize(kept.back().rises);
    traces.steam.resize(kept.back().steams);
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

Picture Boil::pictureAt(Instant now) const {
    auto& inside = *inside_;
    inside.foldAll();
    if (inside.facts.empty() || inside.facts.back().fact.at <= now)
        return picture(inside.state, now);
    // A moment of the past: from the kept state before it.
    const auto end = std::upper_bound(inside.facts.begin(), inside.facts.end(), now,
                                      [](Instant time, const Entry& one) { return time < one.fact.at; });
    const auto count = static_cast<std::size_t>(end - inside.facts.begin());
    auto from = inside.kept.rbegin();
    while (from->folded > count)
        ++from;
    State state = from->state;
    for (std::size_t i = from->folded; i < count; ++i)
        inside.take(state, inside.facts[i].fact);
    return picture(state, now);
}

std::optional<Fact> Boil::noticed() const {
    inside_->foldAll();
    return inside_->state.fire.loads().noticed();
}

const std::vector<Boil::Entry>& Boil::facts() const { return inside_->facts; }

const std::vector<RisePoint>& Boil::rise() const {
    inside_->foldAll();
    return inside_->traces.rise;
}

const std::vector<SteamPoint>& Boil::steam() const {
    inside_->foldAll();
    return inside_->traces.steam;
}

std::optional<Instant> Boil::started() const {
    return inside_->facts.empty() ? std::nullopt : std::optional{inside_->facts.front().fact.at};
}

std::uint64_t Boil::rewritten() const { return inside_->rewritten; }

} // namespace panside
