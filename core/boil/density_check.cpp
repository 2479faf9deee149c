#include "core/boil/density_check.h"

#include "core/boil/square.h"
#include "core/physics/baume.h"
#include "core/physics/hydrometer.h"
#include "core/physics/refraction.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double readingBrix = 0.12;       // the eye at the line, from one check to the next
constexpr double carelessBrix = 0.4;       // nobody noted the cup's temperature
constexpr double hotPrismBrix = 2;         // off the pan: nothing is known of it (extension advises against it)
constexpr double refractometerBrix = 0.25; // a hot, cloudy drop on the prism

std::optional<Brix> byScale(const DensityCheck& check, Temperature scale) {
    if (check.unit == Unit::baume)
        return sugarOfBaume({check.reading}, scale);
    return check.reading >= 0 && check.reading <= 85 ? std::optional{Brix::degrees(check.reading)} : std::nullopt;
}

std::optional<CheckedSugar> byHydrometer(Brix shown, Temperature cup, Temperature scale, double cupKelvin) {
    const auto sugar = sugarByHydrometer(shown, cup, scale);
    const auto error = hydrometerUncertainty(shown, cup, scale, TemperatureDifference::kelvin(cupKelvin));
    if (!sugar || !error)
        return std::nullopt;
    const double rest = std::sqrt(std::max(0.0, std::pow(error->degrees(), 2) - square(glassError.degrees())));
    return CheckedSugar{*sugar, Brix::degrees(std::hypot(rest, readingBrix))};
}

std::optional<CheckedSugar> byRefractometer(Brix shown, const std::optional<Said<Temperature>>& sample) {
    if (!sample)
        return CheckedSugar{shown, Brix::degrees(std::hypot(refractometerBrix, carelessBrix))};
    const auto correction = refractometerCorrection(shown, sample->value);
    if (!correction)
        return CheckedSugar{shown, Brix::degrees(hotPrismBrix), CheckRemark::hotPrism};
    return CheckedSugar{shown + *correction, Brix::degrees(refractometerBrix)};
}

} // namespace

bool mayBeSyrup(const DensityCheck& check) {
    return check.unit == Unit::baume ? check.reading >= 11 && check.reading <= 43
                                     : check.reading >= 20 && check.reading <= 80;
}

std::optional<CheckedSugar> sugarOf(const DensityCheck& check, Brix wanted) {
    if (!mayBeSyrup(check))
        return std::nullopt;
    const Temperature scale = check.scale ? check.scale->value : Temperature::fahrenheit(60);
    const auto shown = byScale(check, scale);
    if (!shown)
        return std::nullopt;
    if (check.with == Instrument::refractometer)
        return byRefractometer(*shown, check.cup);
    if (check.cup)
        return byHydrometer(*shown, check.cup->value, scale, 1);
    if (std::abs((*shown - wanted).degrees()) < 4)
        return CheckedSugar{*shown, Brix::degrees(carelessBrix), CheckRemark::cupNotTaken};
    auto hot = byHydrometer(*shown, Temperature::celsius(93), scale, 8);
    if (hot)
        hot->remark = CheckRemark::cupNotTaken;
    return hot;
}

} // namespace panside
