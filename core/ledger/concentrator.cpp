#include "core/ledger/concentrator.h"

#include "core/ledger/sap_nights.h"

namespace panside {

std::vector<ConcentratorSaving> concentratorSavings(const Ledger& ledger) {
    const auto& runs = ledger.tables().concentrated;
    std::vector<ConcentratorSaving> savings;
    if (runs.empty())
        return savings;
    const TonightBasis basis = tonightBasis(ledger);
    const auto rate = Tonight{basis}.rate();
    double cords = 0, hours = 0;
    for (const NightBoiled& night : basis.nights)
        if (night.cords) {
            cords += *night.cords;
            hours += night.fired.count() / 3600;
        }
    for (std::size_t i = 0; i < runs.size(); ++i) {
        if (runs[i].water() <= Volume{})
            continue;
        ConcentratorSaving saving{i, runs[i].water(), {}, {}};
        if (rate) {
            // The slower the rig, the more is saved.
            saving.boil = {saving.water / rate->p90, saving.water / rate->p50, saving.water / rate->p10};
            if (hours > 0)
                saving.cords = cords / hours * saving.boil->p50.count() / 3600;
        }
        savings.push_back(saving);
    }
    return savings;
}

} // namespace panside
