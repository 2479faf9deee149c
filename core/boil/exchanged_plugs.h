#pragma once
// Are the plugs of the two pans' probes exchanged? What flows to the draw-off thickens on its way and boils the hotter:
// a flue pan that stays hotter than the syrup pan while both boil, or two levels that change places at one moment, is
// no liquid's doing. The doubt is of both and stands until the syrup pan is the hotter one again. Plain numbers, in
// kelvin.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

class ExchangedPlugs {
public:
    // A level that was left for another at once, as no pan does.
    struct Jump {
        Instant at{};
        double from = 0, to = 0;
    };
    struct Pan {
        double kelvin;            // as believed
        std::optional<Jump> jump; // its last
        bool believed;            // nothing else is wrong with it
    };
    // `boils`: water, as well as it is known here.
    void addSample(const Pan& syrup, const Pan& flue, double boils, Instant at);

    std::optional<Instant> since() const { return since_; }
    // From when on no error of two sound thermometers explains it.
    std::optional<Instant> surelySince() const { return surelySince_; }

private:
    void begin(Instant at, bool surely);

    double leapt_ = 0; // of the flue pan alone: a probe that came to stand on metal, or another; kelvin
    std::optional<Instant> leapAt_;
    double hotter_ = 0; // by how much, and for how long, the flue pan was; kelvin seconds
    std::optional<Instant> heardAt_, backSince_, since_, surelySince_;
};

} // namespace panside
