#pragma once
// What a vessel of syrup wants before it is packed: nothing, a little sap stirred in, or water boiled off.
#include "core/ledger/liquid.h"

namespace panside {

struct Remedy {
    enum class Kind : std::uint8_t {
        empty,
        notSyrup, // too thin to be any: sap, concentrate, or nobody measured it
        good,
        tooThin,   // under the least of the place: not to be packed
        maybeThin, // the uncertainty reaches under it: to be tested first
        tooHeavy,  // over the most of the place: not to be packed
        heavy      // more than the crew wants: it gives syrup away, and may crystallize
    };
    Kind kind = Kind::empty;
    Brix aim{};       // what it is brought to
    Volume stirIn{};  // sap, at 20 degC
    Volume boilOff{}; // as cold water
    Volume within{};  // so much more or less of either still lands within 0.1 brix
    bool mayBePacked() const { return kind == Kind::good || kind == Kind::heavy; }
};

struct DensityLimits {
    Brix least, most; // of the place
    Brix aim;         // what the crew wants; no less than the least counts
    Brix sap;         // of what would be stirred in
};

// Range      content up to 75 brix; sap under the aim
// Accuracy   lands within 0.1 brix of the aim where the content's density is right
// Source     mass balance, densities by ICUMSA SPS-4 (1998)
[[nodiscard]] Remedy remedyOf(const Liquid& content, const DensityLimits& limits);

} // namespace panside
