#include "core/boil/cords.h"

#include "core/physics/wood.h"

#include <algorithm>

namespace panside {

std::optional<double> cordsOf(const Load& load) {
    if (!load.mass)
        return std::nullopt;
    constexpr WetBasis wettest = WetBasis::percent(60); // of what is known of wood
    const auto cord = cordMass(woodNamed(load.wood).value_or(woods().front()), std::min(load.moisture, wettest));
    return cord ? std::optional{*load.mass / *cord} : std::nullopt;
}

double CordSum::cords() const {
    double cords = 0;
    for (const Load& load : loads_.all())
        if (load.at > after_)
            cords += cordsOf(load).value_or(0);
    return cords;
}

} // namespace panside
