#include "core/boil/replay.h"

#include "core/boil/boil.h"

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

} // namespace

void replay(std::vector<Fact> facts, const ReplayOptions& options, const std::function<void(const Picture&)>& each) {
    if (facts.empty())
        return;
    Boil boil;
    FactId id = 0;
    for (Fact& fact : lacking(facts, options.settings))
        boil.add(id++, std::move(fact));
    const auto known = [&](const Fact& fact) {
        return options.asEntered && fact.entered ? std::max(fact.at, *fact.entered) : fact.at;
    };
    std::vector<std::size_t> order(facts.size());
    std::iota(order.begin(), order.end(), 0);
    if (options.asEntered)
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return known(facts[a]) < known(facts[b]); });
    const Instant last = known(facts[order.back()]);
    const auto step =
        std::max(std::chrono::microseconds{1}, std::chrono::round<std::chrono::microseconds>(options.every));
    auto next = order.begin();
    for (Instant now = std::chrono::ceil<std::chrono::seconds>(facts.front().at);; now += step) {
        for (; next != order.end() && known(facts[*next]) <= now; ++next)
            boil.add(id + static_cast<FactId>(*next), std::move(facts[*next]));
        each(boil.pictureAt(now));
        if (now >= last)
            return;
    }
}

std::vector<Fault> replay(std::string_view log, const ReplayOptions& options,
                          const std::function<void(const Picture&)>& each) {
    ReadLog read = readLog(log);
    if (read.faults.empty())
        replay(std::move(read.facts), options, each);
    return std::move(read.faults);
}

} // namespace panside
