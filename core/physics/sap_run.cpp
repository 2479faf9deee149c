#include "core/physics/sap_run.h"

namespace panside {

std::optional<SapRun> sapRun(Temperature night, Temperature day) {
    const auto c = [](double celsius) { return Temperature::celsius(celsius); };
    if (night < c(-40) || night > c(20) || day < c(-30) || day > c(30) || day < night)
        return std::nullopt;
    const auto run = [](RunDay kind, double low, double high) {
        return SapRun{kind, Volume::gallon(low), Volume::gallon(high)};
    };
    constexpr Temperature freezes = Temperature::celsius(0), thaws = Temperature::fahrenheit(34);
    constexpr Temperature hard = Temperature::fahrenheit(25), mild = Temperature::fahrenheit(40),
                          hot = Temperature::fahrenheit(55);
    if (day < thaws)
        return run(RunDay::frozen, 0, 0.1);
    if (night > freezes)
        return run(RunDay::noFreeze, 0, 0.3);
    if (night <= hard && day >= mild && day <= hot)
        return run(RunDay::heavy, 0.7, 1.3);
    return run(RunDay::fair, 0.2, 0.7);
}

} // namespace panside
