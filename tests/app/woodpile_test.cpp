#include "app/woodpile.h"

#include "core/boil/shift_log.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant noon = instantIn("2025-03-14T12:00:00Z").value();
Instant hour(int h) { return noon + std::chrono::hours{h}; }

SeasonShift night(int from, int until, double cords) {
    SeasonShift shift{hour(from), false, ShiftAccount{}};
    shift.account->first = hour(from);
    shift.account->last = hour(until);
    shift.account->cords = cords;
    return shift;
}

// Ten cords, measured at noon; `burntBefore` by the shift that ran then.
Yard yard(double burntBefore = 0) {
    Yard yard;
    yard.pile = Woodpile{Length::foot(80), Length::foot(4), Length::foot(4)};
    yard.measured = Yard::Measured{noon, burntBefore};
    return yard;
}

TEST(PileLeft, IsWhatTheNightsSinceItWasMeasuredLeft) {
    const std::vector shifts{night(-40, -30, 3), night(4, 12, 1.5), night(28, 36, 2)};
    EXPECT_NEAR(pileLeft(yard(), shifts, std::nullopt).value(), 6.5, 1e-9);
    // What the running shift burns is told beside it.
    EXPECT_NEAR(pileLeft(yard(), shifts, hour(28)).value(), 8.5, 1e-9);
    EXPECT_FALSE(pileLeft(Yard{}, shifts, std::nullopt));
}

TEST(PileLeft, DoesNotTakeTwiceWhatWasBurntBeforeItWasMeasured) {
    // Measured half way through a shift of 2 cords, of which 0.8 had gone into the fire.
    const std::vector shifts{night(-3, 5, 2), night(28, 36, 1)};
    EXPECT_NEAR(pileLeft(yard(0.8), shifts, std::nullopt).value(), 10 - 1.2 - 1, 1e-9);
    EXPECT_NEAR(pileLeft(yard(0.8), shifts, hour(-3)).value() - 2, 10 - 1.2 - 1, 1e-9);
}

TEST(PileLeft, IsNeverLessThanNothing) {
    const std::vector shifts{night(4, 12, 11)};
    EXPECT_EQ(pileLeft(yard(), shifts, std::nullopt), 0);
}

TEST(PileLeft, IsKeptWithTheChoices) {
    const Yard::Measured measured{noon, 0.8125};
    EXPECT_EQ(measuredIn(textOf(measured)), measured);
    EXPECT_FALSE(measuredIn("yesterday 1"));
    EXPECT_FALSE(measuredIn("2025-03-14T12:00:00Z -1"));
}

} // namespace
} // namespace panside
