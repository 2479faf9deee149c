#include "core/boil/sap_sugar.h"

#include "core/physics/hydrometer.h"

namespace panside {

std::optional<Brix> sapSugar(std::optional<Brix> read, std::optional<Temperature> sap,
                             std::optional<Temperature> scale) {
    return read && sap && scale ? sugarByHydrometer(*read, *sap, *scale).value_or(*read) : read;
}

std::optional<Brix> sapSugar(const SapIn& sap) {
    const auto value = [](const auto& said) { return said ? std::optional{said->value} : std::nullopt; };
    return sapSugar(sap.sugar, value(sap.temperature), value(sap.scale));
}

std::optional<Brix> sapSugar(const DayRow& row) {
    const bool floats = row.text(Key::with) != "refractometer"; // a prism has no scale of its own heat
    return floats ? sapSugar(row.brix(), row.temperature(), row.temperature(Key::cal)) : row.brix();
}

} // namespace panside
