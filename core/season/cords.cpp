#include "core/season/cords.h"

#include "core/physics/wood.h"

#include <algorithm>

namespace panside {

std::optional<double> cordsOf(const Fired& fired, const Settings& settings) {
    const auto mass = fired.load ? std::optional{fired.load->value} : settings.loadMass();
    if (!mass)
        return std::nullopt;
    constexpr double wettest = 0.6; // of what is known of wood
    const double moisture = std::min(fired.moisture.value_or(settings.woodMoisture()), wettest);
    const auto cord = cordMass(woodNamed(fired.wood).value_or(woods().front()), WetBasis{moisture});
    return cord ? std::optional{*mass / *cord} : std::nullopt;
}

void CordSum::take(const Fact& fact) {
    if (const auto* set = std::get_if<Set>(&fact.what))
        settings_.take(*set);
    else if (const auto* fired = std::get_if<Fired>(&fact.what); fired && fact.at > after_)
        cords_ += cordsOf(*fired, settings_).value_or(0);
}

} // namespace panside
