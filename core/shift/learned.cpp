#include "core/shift/learned.h"

#include "core/boil/state.h"

#include <cmath>

namespace panside {
namespace {

// One night's burn-out hangs on its last load: what stood before, set by hand or learned, counts twice as much.
std::optional<Set> burnOutLearned(const State& state) {
    const auto seen = state.balance.burnOutSeen(state);
    if (!seen)
        return std::nullopt;
    const auto stood = state.settings.burnOut();
    const Duration next = stood ? (2 * *stood + *seen) / 3 : *seen;
    const Duration minutes{60 * std::round(next.count() / 60)};
    if (stood && std::chrono::abs(minutes - *stood) < Duration{60})
        return std::nullopt;
    return Set{Setting::burn_out, seconds(minutes), Unit::min};
}

// The hottest that this rig was ever seen to run; a night in which the stack stood too hot does not raise it.
std::optional<Set> hottestStackLearned(const State& state) {
    const auto seen = state.trends.hottestStack();
    const auto before = state.settings.learnedHottestStack();
    if (!seen || (before && seen->kelvin() < before->kelvin() + 1))
        return std::nullopt;
    return Set{Setting::learned_hottest_stack, std::round(seen->kelvin()), Unit::degC};
}

// The draws' rhythm: one night counts half, for the next has other sap and other wood. Less than a twentieth is no
// news.
void addRhythm(std::vector<Set>& learned, const State& state) {
    const auto [cycle, brix] = state.forecast.learned();
    const auto add = [&](Setting key, const std::optional<Duration>& seen, const std::optional<Duration>& before) {
        if (!seen)
            return;
        const double next = before ? std::sqrt(before->count() * seen->count()) : seen->count();
        if (!before || std::abs(std::log(next / before->count())) > 0.05)
            learned.push_back({key, 6 * std::round(next / 6), Unit::min});
    };
    add(Setting::learned_cycle, cycle, state.settings.learnedCycle());
    add(Setting::learned_brix, brix, state.settings.learnedBrix());
}

} // namespace

std::vector<Set> learnedIn(const State& state) {
    std::vector<Set> learned;
    const auto offset = state.mark.offset(state.now);
    const auto sd = state.mark.offsetSd(state.now);
    if (offset != state.settings.probeOffset() || sd != state.settings.probeOffsetSd())
        learned = {{Setting::probe_offset, offset.kelvin(), Unit::K}, {Setting::probe_offset_sd, sd.kelvin(), Unit::K}};
    if (const auto hottest = hottestStackLearned(state))
        learned.push_back(*hottest);
    if (const auto burnOut = burnOutLearned(state))
        learned.push_back(*burnOut);
    addRhythm(learned, state);
    return learned;
}

} // namespace panside
