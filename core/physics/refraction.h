#pragma once
// The refractometer: sugar by how far a sample bends light.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// Refractive index at 20 degC in sodium light (589 nm), against air.
// Range      0 to 85 brix
// Outside    nullopt
// Accuracy   1e-5 of the International scale to 30 brix, 3e-5 to 70, 5e-5 above (0.02 brix is 5e-5 near 66). The older
//            scale of handbooks is lower by 3e-5 at 60 and 6e-5 at 70
// Source     ICUMSA scale of 1974 as printed in OIV-MA-AS2-02, tables I and II; above 30 brix from memory of ICUMSA
//            SPS-3
[[nodiscard]] std::optional<double> refractiveIndex(Brix sugar);

// The sugar of a solution of 20 degC with such an index: the inverse of refractiveIndex.
// Range      index of 0 to 85 brix (1.33299 to 1.50398)
// Outside    nullopt
// Accuracy   1e-9 brix against refractiveIndex
// Source     as refractiveIndex
[[nodiscard]] std::optional<Brix> sugarOfIndex(double index);

// What to add to a reading, in brix, that was taken at another temperature than 20 degC.
// Range      10 to 30 degC, readings of 0 to 75 brix
// Outside    nullopt: let the sample come to the room's temperature
// Accuracy   0.02 brix from 10 to 20 degC, 0.03 at 25, 0.06 at 30; another printed table differs by 0.06 at 10 degC
// Source     OIV-MA-AS2-02, table I (10 to 16 degC); above 20 degC by Lorentz and Lorenz from ICUMSA's density, set to
//            that table; water's own row from IAPWS R9-97
[[nodiscard]] std::optional<Brix> refractometerCorrection(Brix reading, Temperature temperature);

} // namespace panside
