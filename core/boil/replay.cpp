#include "core/boil/replay.h"

#include "core/boil/boil.h"
#include "core/boil/state.h"

#include <algorithm>
#include <bitset>
#include <numeric>

namespace panside {
namespace {

// The settings asked for that the facts lack, in force from the first of them.
std::vector<Fact> lacking(const std::vector<Fact>& facts, const std::vector<Set>& settings) {
    std::bitset<settingCount> there;
    for (const Fact& fact : facts)
        if (const auto* set = std::get_if<Set>(&fact.what))
            there.set(static_cast<std::size_t>(set->key));
    std::vector<Fact> out;
    for (const Set& set : settings)
        if (!there[static_cast<std::size_t>(set.key)])
            out.push_back({facts.front().at, set});
    return out;
}

// Each moment to be shown, from the first fact to the last; `takeUntil` brings in what is known by then.
void eachMoment(Instant first, Instant last, Duration every, const auto& takeUntil, const auto& show) {
    const auto step = std::max(std::chrono::microseconds{1}, std::chrono::round<std::chrono::microseconds>(every));
    for (Instant now = std::chrono::ceil<std::chrono::seconds>(first);; now += step) {
        takeUntil(now);
        show(now);
        if (now >= last)
            return;
    }
}

// Nothing comes late: the facts are folded as they stand, with no earlier moment kept.
void inOrder(const std::vector<Fact>& settings, const std::vector<Fact>& facts, Duration every,
             const std::function<void(const Picture&)>& each) {
    State state;
    for (const Fact& fact : settings)
        absorb(state, fact);
    auto next = facts.begin();
    eachMoment(
        facts.front().at, facts.back().at, every,
        [&](Instant now) {
            for (; next != facts.end() && next->at <= now; ++next)
                absorb(state, *next);
        },
        [&](Instant now) { each(picture(state, now)); });
}

// Each fact when it was entered, so that those entered late change what was believed before.
void asEntered(std::vector<Fact> settings, std::vector<Fact> facts, Duration every,
               const std::function<void(const Picture&)>& each) {
    Boil boil;
    FactId id = 0;
    for (Fact& fact : settings)
        boil.add(id++, std::move(fact));
    const auto known = [](const Fact& fact) { return fact.entered ? std::max(fact.at, *fact.entered) : fact.at; };
    std::vector<std::size_t> order(facts.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return known(facts[a]) < known(facts[b]); });
    const Instant first = facts.front().at, last = known(facts[order.back()]);
    auto next = order.begin();
    eachMoment(
        first, last, every,
        [&](Instant now) {
            for (; next != order.end() && known(facts[*next]) <= now; ++next)
                boil.add(id + static_cast<FactId>(*next), std::move(facts[*next]));
        },
        [&](Instant now) { each(boil.fold().pictureAt(now)); });
}

} // namespace

void replay(std::vector<Fact> facts, const ReplayOptions& options, const std::function<void(const Picture&)>& each) {
    if (facts.empty())
        return;
    std::vector<Fact> settings = lacking(facts, options.settings);
    if (options.asEntered)
        asEntered(std::move(settings), std::move(facts), options.every, each);
    else
        inOrder(settings, facts, options.every, each);
}

std::vector<Fault> replay(std::string_view log, const ReplayOptions& options,
                          const std::function<void(const Picture&)>& each) {
    ReadLog read = readLog(log);
    if (read.faults.empty())
        replay(std::move(read.facts), options, each);
    return std::move(read.faults);
}

} // namespace panside
