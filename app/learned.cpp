#include "app/learned.h"

#include "core/boil/state.h"

namespace panside {

std::vector<Set> learnedIn(const std::vector<Boil::Entry>& facts) {
    State state;
    for (const auto& entry : facts)
        state = apply(std::move(state), entry.fact);
    const auto offset = state.mark.offset(state.now);
    const auto sd = state.mark.offsetSd(state.now);
    if (offset == state.settings.probeOffset() && sd == state.settings.probeOffsetSd())
        return {};
    return {{Setting::probe_offset, offset.kelvin(), Unit::K}, {Setting::probe_offset_sd, sd.kelvin(), Unit::K}};
}

} // namespace panside
