#include "core/rehearsal/instruments.h"
#include "core/rehearsal/digits.h"

#include <algorithm>
#include <cmath>

namespace panside::rehearsal {

Instruments::Instruments(const RehearsalOptions& options, std::uint64_t seed)
    : options_{options}, dice_{seed, 51}, barometerBias_{options.weather.barometerBiasHpa * 100} {}

Instruments::Written Instruments::writes(Series series) const {
    const bool us = options_.us;
    switch (series) {
    case Series::syrup_pan:
        return {options_.probe.unit, options_.probe.step};
    case Series::flue_pan:
    case Series::feed:
    case Series::air:
        return {us ? Unit::degF : Unit::degC, 0.1};
    case Series::stack:
        return {us ? Unit::degF : Unit::degC, us ? 1.0 : 0.5};
    case Series::pressure:
        return us ? Written{Unit::inHg, 0.005} : Written{Unit::kPa, 0.01};
    case Series::sea_level_pressure:
        return us ? Written{Unit::inHg, 0.01} : Written{Unit::hPa, 0.1};
    case Series::pan_level:
    case Series::flue_level:
        return us ? Written{Unit::in, 0.01} : Written{Unit::mm, 0.1};
    case Series::tank_level:
        return us ? Written{Unit::gal, 0.5} : Written{Unit::L, 1};
    case Series::feed_flow:
        return us ? Written{Unit::galph, 0.1} : Written{Unit::Lph, 1};
    case Series::filter_pressure:
        return us ? Written{Unit::psi, 0.5} : Written{Unit::kPa, 1};
    }
    return {Unit::none, 1};
}

std::optional<double> Instruments::value(Series series, std::optional<double> shown, const Plant& plant) {
    const double kelvin = 273.15;
    switch (series) {
    case Series::syrup_pan:
        return shown ? std::optional{*shown + kelvin} : std::nullopt;
    case Series::flue_pan:
        return plant.pans().flueCelsius() + dice_.normal(0, 0.1) + kelvin;
    case Series::stack:
        return stack_ + dice_.normal(0, 1.2) + kelvin;
    case Series::feed:
        return 4 + dice_.normal(0, 0.05) + kelvin;
    case Series::air:
        return plant.sky().airCelsius() + dice_.normal(0, 0.1) + kelvin;
    case Series::pressure:
        return plant.sky().pascal() + barometerBias_ + dice_.normal(0, 2);
    case Series::sea_level_pressure:
        return plant.sky().seaLevelPascal() + dice_.normal(0, 15);
    case Series::pan_level:
        return std::max(0.0, plant.pans().syrupDepth() + froth_);
    case Series::flue_level:
        return std::max(0.0, plant.pans().flueDepth() + froth_);
    case Series::tank_level:
        return std::max(0.0, plant.tankLitres() / 1000 + dice_.normal(0, 0.001) * options_.rig.tank.cubicMetre());
    case Series::feed_flow:
        return std::max(0.0, plant.feedLitresPerHour() / 3.6e6 * dice_.normal(1, 0.01));
    case Series::filter_pressure:
        return std::nullopt;
    }
    return std::nullopt;
}

bool Instruments::due(Series series, double since) const {
    double every = seconds(options_.spacing);
    // A barometer is asked less often; a weather report comes twice an hour.
    if (series == Series::pressure || series == Series::air || series == Series::feed)
        every = std::max(every, 10.0);
    if (series == Series::sea_level_pressure)
        every = std::max(every, 1800.0);
    return std::fmod(since, every) < 0.5;
}

void Instruments::read(double since, Instant at, std::optional<double> shown, const Plant& plant,
                       std::vector<Fact>& facts) {
    stack_ += (plant.fire().stackCelsius() - stack_) / 8;
    // The boil heaves the surface about the float's rod by a millimetre or two.
    froth_ += -froth_ / 3 + dice_.normal(0, 0.0012 * std::min(1.0, plant.pans().boilsOff() + 0.1)) * std::sqrt(2.0 / 3);
    for (const auto series : options_.readings) {
        if (!due(series, since))
            continue;
        const auto si = value(series, shown, plant);
        if (!si)
            continue;
        const auto written = writes(series);
        const double number = rounded(fromSi(*si, written.unit), written.step);
        facts.push_back({at, Reading{series, toSi(number, written.unit), written.unit, options_.byHand ? "hand" : ""}});
    }
}

} // namespace panside::rehearsal
