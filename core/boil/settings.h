#pragma once
#include "core/boil/fact.h"
#include "core/boil/place.h"

#include <array>

namespace panside {

// The settings in force, each at its stated default until set.
class Settings {
public:
    void put(const Set& set) {
        si_[static_cast<std::size_t>(set.key)] = set.si;
        if (set.key == Setting::overflow_calls)
            overflowCalls_ = set.text;
    }
    // SI of the setting's own dimension, if it was set or has a default; the accessors give it its type.
    std::optional<double> si(Setting key) const;
    bool wasSet(Setting key) const { return si_[static_cast<std::size_t>(key)].has_value(); }

    // Where the syrup is sold, if it was said: the legal densities that stand until they are set are its.
    const PlaceLaw* law() const;

    Brix targetDensity() const { return Brix::ofSi(*si(Setting::target_density)); }
    Brix legalMinimum() const { return Brix::ofSi(*si(Setting::legal_minimum)); }
    Brix tooHeavy() const { return Brix::ofSi(*si(Setting::too_heavy)); }
    Pressure pressureOffset() const { return Pressure::ofSi(*si(Setting::pressure_offset)); }
    TemperatureDifference probeOffset() const { return TemperatureDifference::ofSi(*si(Setting::probe_offset)); }
    TemperatureDifference probeOffsetSd() const { return TemperatureDifference::ofSi(*si(Setting::probe_offset_sd)); }
    WetBasis woodMoisture() const { return WetBasis{*si(Setting::wood_moisture)}; }
    std::optional<Length> elevation() const { return as<Length>(Setting::elevation); }
    std::optional<Area> fluePanArea() const { return as<Area>(Setting::flue_pan_area); }
    std::optional<Area> syrupPanArea() const { return as<Area>(Setting::syrup_pan_area); }
    std::optional<Length> runningDepth() const { return as<Length>(Setting::running_depth); }
    std::optional<Volume> feedTankVolume() const { return as<Volume>(Setting::feed_tank_volume); }
    std::optional<Volume> overflowRim() const { return as<Volume>(Setting::overflow_rim); }
    const std::string& overflowCalls() const { return overflowCalls_; } // empty: nobody was named
    std::optional<Mass> loadMass() const { return as<Mass>(Setting::load_mass); }
    std::optional<Pressure> filterLimit() const { return as<Pressure>(Setting::filter_limit); }
    std::optional<Temperature> stackLimit() const { return asTemperature(Setting::stack_limit); }
    // Of the shifts before.
    std::optional<Temperature> learnedHottestStack() const { return asTemperature(Setting::learned_hottest_stack); }
    std::optional<Mass> learnedPansSugar() const { return as<Mass>(Setting::learned_pans_sugar); }
    std::optional<Duration> learnedCycle() const { return asDuration(Setting::learned_cycle); }
    std::optional<Duration> learnedBrix() const { return asDuration(Setting::learned_brix); }
    std::optional<Duration> fireInterval() const { return asDuration(Setting::fire_interval); } // nullopt: learn it
    std::optional<Duration> burnOut() const { return asDuration(Setting::burn_out); }           // nullopt: learn it

private:
    template <class Q>
    std::optional<Q> as(Setting key) const {
        const auto value = si(key);
        return value ? std::optional{Q::ofSi(*value)} : std::nullopt;
    }
    std::optional<Temperature> asTemperature(Setting key) const {
        const auto value = si(key);
        return value ? std::optional{Temperature::kelvin(*value)} : std::nullopt;
    }
    std::optional<Duration> asDuration(Setting key) const {
        const auto value = si(key);
        return value ? std::optional{Duration{*value}} : std::nullopt;
    }
    std::array<std::optional<double>, settingCount> si_;
    std::string overflowCalls_;
};

} // namespace panside
