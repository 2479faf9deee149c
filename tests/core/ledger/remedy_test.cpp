#include "core/ledger/remedy.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

DensityLimits limits() { return {Brix::degrees(66.0), Brix::degrees(68.9), Brix::degrees(66.9), Brix::degrees(2.0)}; }

Liquid syrupOf(double mass, double brix, double sd = 0.2) { return {mass, mass * brix / 100, sd / 100}; }

// By hand: m kg of b brix want m (b - t) / (t - s) kg of sap of s brix to come to t: 22.8 kg of 68.2 want 0.4567 kg of
// 2.0, and 0.4567 kg of sap of 1.0060 kg a litre (ICUMSA, 2.0 brix at 20 degC: 1006.0 kg/m3) are 0.454 L.
TEST(Remedy, SaysHowMuchSapAHeavyPailWants) {
    const Remedy remedy = remedyOf(syrupOf(22.8, 68.2), limits());
    EXPECT_EQ(remedy.kind, Remedy::Kind::heavy);
    EXPECT_NEAR(remedy.stirIn.litre(), 0.454, 0.001);
    EXPECT_TRUE(remedy.mayBePacked());
}

// By hand: what is boiled off is m (1 - b / t) kg of water: of 184.8 kg at 65.7 for 66.9 it is 3.315 kg, 3.321 L of
// water of 998.2 kg/m3.
TEST(Remedy, SaysHowMuchWaterAThinDrumLoses) {
    const Remedy remedy = remedyOf(syrupOf(184.8, 65.7), limits());
    EXPECT_EQ(remedy.kind, Remedy::Kind::tooThin);
    EXPECT_NEAR(remedy.boilOff.litre(), 3.321, 0.002);
    EXPECT_FALSE(remedy.mayBePacked());
}

TEST(Remedy, LandsWithinATenthOfABrixWhereverItBegins) {
    for (double brix = 60; brix <= 74; brix += 0.5) {
        const Liquid content = syrupOf(50, brix);
        const Remedy remedy = remedyOf(content, limits());
        Liquid then = content;
        then.mass -= remedy.boilOff.cubicMetre() * 998.2;
        then.mass += remedy.stirIn.cubicMetre() * 1006.0;
        then.sugar += remedy.stirIn.cubicMetre() * 1006.0 * 0.02;
        if (remedy.stirIn.si() > 0 || remedy.boilOff.si() > 0)
            EXPECT_NEAR(then.brix().degrees(), 66.9, 0.1) << brix;
        else
            EXPECT_TRUE(brix >= 66 && brix <= 67.5) << brix;
    }
}

TEST(Remedy, CallsNothingGoodThatItsUncertaintyTakesUnderTheLeast) {
    EXPECT_EQ(remedyOf(syrupOf(20, 66.2, 0.1), limits()).kind, Remedy::Kind::good);
    EXPECT_EQ(remedyOf(syrupOf(20, 66.2, 0.3), limits()).kind, Remedy::Kind::maybeThin);
    EXPECT_FALSE(remedyOf(syrupOf(20, 66.2, 0.3), limits()).mayBePacked());
}

TEST(Remedy, NeverAimsUnderTheLeastOfThePlace) {
    DensityLimits vermont = limits();
    vermont.least = Brix::degrees(66.9);
    vermont.aim = Brix::degrees(66.5);
    EXPECT_EQ(remedyOf(syrupOf(20, 66.4, 0.1), vermont).aim, Brix::degrees(66.9));
}

TEST(Remedy, OffersNoneForSapAndForNothing) {
    EXPECT_EQ(remedyOf({}, limits()).kind, Remedy::Kind::empty);
    EXPECT_EQ(remedyOf(syrupOf(100, 2.1), limits()).kind, Remedy::Kind::notSyrup);
    EXPECT_EQ(remedyOf(syrupOf(20, 69.5), limits()).kind, Remedy::Kind::tooHeavy);
    EXPECT_FALSE(remedyOf(syrupOf(20, 69.5), limits()).mayBePacked());
}

} // namespace
} // namespace panside
