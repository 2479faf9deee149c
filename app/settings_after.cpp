#include "app/session.h"
#include "core/boil/state.h"
#include "core/boil/vocabulary.h"

namespace panside {

namespace {

// What no one has set or learned stays unsaid, so that its default goes on being one.
constexpr double defaultOffsetSd = 0.3;

} // namespace

std::vector<Set> settingsAfter(const std::vector<Boil::Entry>& facts) {
    State state;
    for (const auto& entry : facts)
        state = apply(std::move(state), entry.fact);
    std::vector<Set> settings;
    for (const auto& row : allSettings())
        if (state.settings.wasSet(row.key))
            settings.push_back({row.key, *state.settings.si(row.key), row.exported});
    const auto learn = [&](Setting key, TemperatureDifference value, double unlearned) {
        std::erase_if(settings, [&](const Set& set) { return set.key == key; });
        if (state.settings.wasSet(key) || value.kelvin() != unlearned)
            settings.push_back({key, value.kelvin(), rowOf(key).exported});
    };
    learn(Setting::probe_offset, state.mark.offset(state.now), 0);
    learn(Setting::probe_offset_sd, state.mark.offsetSd(state.now), defaultOffsetSd);
    return settings;
}

} // namespace panside
