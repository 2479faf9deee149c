#include "core/boil/settings.h"

#include "core/boil/mark_belief.h"

namespace panside {

const PlaceLaw* Settings::law() const {
    const auto& number = si_[static_cast<std::size_t>(Setting::place)];
    return number ? &allPlaces()[static_cast<std::size_t>(*number)] : nullptr;
}

std::optional<double> Settings::si(Setting key) const {
    if (const auto& set = si_[static_cast<std::size_t>(key)])
        return set;
    switch (key) {
    case Setting::target_density:
        return 0.669;
    case Setting::legal_minimum:
        return law() ? law()->least.si() : 0.660;
    case Setting::too_heavy:
        return law() && law()->most ? law()->most->si() : 0.689;
    case Setting::wood_moisture:
        return 0.20;
    case Setting::pressure_offset:
    case Setting::probe_offset:
        return 0.0;
    case Setting::probe_offset_sd:
        return uncheckedSd;
    case Setting::elevation:
    case Setting::flue_pan_area:
    case Setting::syrup_pan_area:
    case Setting::running_depth:
    case Setting::feed_tank_volume:
    case Setting::load_mass:
    case Setting::fire_interval:
    case Setting::burn_out:
    case Setting::filter_limit:
    case Setting::place:
    case Setting::lot_scheme:
        return std::nullopt;
    case Setting::capped_least:
        return Temperature::fahrenheit(180).kelvin();
    case Setting::kept_for:
    case Setting::stack_limit:
    case Setting::learned_hottest_stack:
    case Setting::overflow_rim:
    case Setting::overflow_calls:
    case Setting::learned_pans_sugar:
    case Setting::learned_cycle:
    case Setting::learned_brix:
        return std::nullopt;
    }
    return std::nullopt;
}

} // namespace panside
