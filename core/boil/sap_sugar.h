#pragma once
#include "core/boil/fact.h"

namespace panside {

// The sugar of sap behind what was read of it: corrected where the sap's temperature and that of the scale were both
// told, else as read; by a refractometer always as read. A sap hydrometer is made for about 38 degF; 2.3 read at 60
// degF is 2.5. Range      as sugarByHydrometer; outside it as read
std::optional<Brix> sapSugar(std::optional<Brix> read, std::optional<Temperature> sap,
                             std::optional<Temperature> scale);
std::optional<Brix> sapSugar(const SapIn& sap);
std::optional<Brix> sapSugar(const DayRow& row);

} // namespace panside
