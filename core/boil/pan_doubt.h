#pragma once
// Can what a probe reads be in a pan? What boiled a minute ago over a burning fire does not stand far under boiling
// water: cold sap that was let in warms again within minutes, and a pan whose fire goes out cools slowly. What does
// neither is a probe on the bench, a wet lead or a meter that was switched to the other unit, and the doubt stands
// until the reading is again what a pan can be. Plain numbers, in kelvin: the same number is also looked at as one of
// the other unit. Nor does a pan that was never seen to boil stand cold over a fire.
#include "core/quantity/quantity.h"

#include <cstdint>
#include <optional>

namespace panside {

class PanDoubt {
public:
    enum class Fire : std::uint8_t { unknown, burns, out };
    struct Around {
        double boils = 0;  // water, on this probe's scale, kelvin
        double margin = 0; // so far under it nothing in this pan can be, kelvin
        Fire fire = Fire::unknown;
        bool firing = false;       // the crew has not stopped
        bool mayStandCold = false; // it is fed cold, and its probe may stand by the feed
    };
    // `kelvin` as believed, `inOtherUnit` the same number in the other unit of temperature. `leapt`: it came there
    // faster than anything in a pan can.
    void addSample(double kelvin, double inOtherUnit, Instant at, bool leapt, const Around& around);

    bool stands() const { return since_.has_value(); }
    std::optional<Instant> since() const { return since_; }
    // From when on it is no cold sap either; nullopt: it may be.
    std::optional<Instant> surelySince() const { return surelySince_; }
    bool otherUnit() const { return otherUnit_; }

private:
    void begin(Instant at, double kelvin);
    void follow(double kelvin, double inOtherUnit, Instant at, bool leapt, const Around& around);
    bool wasThereTooSoon(double kelvin, Instant at) const;
    bool staysUnder(Instant at, const Around& around);
    bool neverWarms(double kelvin, double inOtherUnit, Instant at, const Around& around);

    double boiledAt_ = 0; // kelvin, when it last boiled; 0: it has not, or has cooled since as pans cool
    Instant boiled_{};
    std::uint8_t boilings_ = 0; // readings of a boil on end
    Instant heardAt_{};
    double lowest_ = 0; // since it fell
    Instant lowestAt_{};
    std::uint8_t falls_ = 0; // before this one, lately
    std::optional<Instant> backSince_, endedAt_;
    std::optional<Instant> underSince_, since_, surelySince_, outSince_;
    bool otherUnit_ = false;
    double stoodAt_ = 0; // kelvin, of one that has not boiled yet
    std::optional<Instant> stoodFrom_;
};

} // namespace panside
