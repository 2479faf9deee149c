// A pan that is drawn empty, told by its probe alone.
#include "core/physics/sugar.h"
#include "tests/core/boil/logs.h"

#include <cmath>

namespace panside {
namespace {

using test::Rows;
using test::stands;

double flicker(int t, double size) { return size * std::sin(t * 12.9898) * std::cos(t * 4.1414); }

// What boils at a density, with a barometer at 101.325 kPa: water's 99.974 degC and the rise.
double boils(double brix) {
    return 99.974 + boilingRise(Brix::degrees(brix), Pressure::kilopascal(101.325)).value().kelvin();
}

// Draws one after the other: sags to `low`, climbs to 67.5 in `wait` seconds, is drawn for 80.
class Shift {
public:
    Shift() {
        rows.add(0, "lit,,,");
        for (int t = 0; t < 120; ++t)
            read(58 + t * 0.01);
    }
    void cycle(double low, int wait, double dipAt = -1) {
        rows.add(now, "draw_open,,,");
        for (int t = 0; t < 80; ++t)
            read(67.5 - (67.5 - low) * t / 80);
        rows.add(now, "draw_close,3,L,");
        for (int t = 0; t < wait; ++t) {
            // Foam: forty seconds at steam, and back up.
            const bool foam = dipAt >= 0 && t >= dipAt && t < dipAt + 40;
            read(foam ? 5 : low + (67.5 - low) * t / wait);
        }
    }
    void read(double brix) {
        if (static_cast<int>(now) % 30 == 0)
            rows.read(now, "pressure", 101.325, "kPa");
        rows.read(now, "syrup_pan", boils(brix) + flicker(static_cast<int>(now), 0.05), "degC");
        if (static_cast<int>(now) % 480 == 0)
            rows.add(now, "fired,,,");
        ++now;
    }
    int scorchFirst() const {
        int first = -1;
        replay(rows.facts, {}, [&](const Picture& picture) {
            if (first < 0 && stands(picture, Alarm::scorch_risk))
                first = static_cast<int>(secondsBetween(test::noon, picture.at));
        });
        return first;
    }
    Rows rows;
    double now = 0;
};

// Four draws as ever, and two of a pan that is being emptied. When the last climb begins.
double drawEmpty(Shift& shift) {
    for (int i = 0; i < 4; ++i)
        shift.cycle(61, 800);
    shift.cycle(63, 500);
    const double racesFrom = shift.now + 80;
    shift.cycle(64, 150);
    return racesFrom;
}

TEST(Climb, APanDrawnEmptyRacesBackToTheMark) {
    Shift shift;
    const double racesFrom = drawEmpty(shift);
    const int first = shift.scorchFirst();
    EXPECT_GT(first, racesFrom);
    EXPECT_LE(first, racesFrom + 130);
}

// The same climb with a tank that falls as ever: whatever the sugar does, the pans are fed. A gauge that went silent
// before says nothing of it.
TEST(Climb, WhileSapRunsInAsEverThePanIsNotBeingEmptied) {
    Shift shift;
    const double racesFrom = drawEmpty(shift);
    const Rows unread = shift.rows;
    for (const bool isSilent : {false, true}) {
        Rows fed;
        for (const Fact& fact : unread.facts) {
            const double t = secondsBetween(test::noon, fact.at);
            if (std::fmod(t, 10) == 0 && std::holds_alternative<Reading>(fact.what) &&
                !(isSilent && t > racesFrom - 400))
                fed.read(t, "tank_level", 1500 - 180 * t / 3600, "L");
            fed.facts.push_back(fact);
        }
        shift.rows = fed;
        if (isSilent) {
            EXPECT_GT(shift.scorchFirst(), racesFrom);
        } else {
            EXPECT_EQ(shift.scorchFirst(), -1);
        }
    }
}

// 2 to 8 percent sap: draws come far more often, the pan is as deep as it was, and thickens no faster.
TEST(Climb, SweeterSapDrawsOftenerAndIsNoDanger) {
    Shift shift;
    for (int i = 0; i < 4; ++i)
        shift.cycle(61, 800);
    for (int i = 0; i < 6; ++i)
        shift.cycle(65.2, 270);
    EXPECT_EQ(shift.scorchFirst(), -1);
}

TEST(Climb, OutOfFoamItRacesNowhere) {
    Shift shift;
    for (int i = 0; i < 5; ++i)
        shift.cycle(61, 800, i == 4 ? 60 : -1);
    shift.cycle(61, 800, 25);
    shift.cycle(61, 800, 400);
    EXPECT_EQ(shift.scorchFirst(), -1);
}

TEST(Climb, TheCallStandsThroughTheNextDrawAndEndsWithAFloodedPan) {
    Shift shift;
    for (int i = 0; i < 4; ++i)
        shift.cycle(61, 800);
    shift.cycle(64, 150);
    ASSERT_GT(shift.scorchFirst(), 0);
    shift.cycle(64, 150);
    EXPECT_TRUE(stands(shift.rows.at(shift.now), Alarm::scorch_risk));
    shift.rows.add(shift.now, "note,,,two pails of sap poured in");
    for (int t = 0; t < 130; ++t)
        shift.read(20);
    EXPECT_FALSE(stands(shift.rows.at(shift.now), Alarm::scorch_risk));
}

TEST(Climb, APanThatIsSyrupAgainAtOnceIsNextToEmpty) {
    Shift shift;
    for (int i = 0; i < 3; ++i)
        shift.cycle(61, 800);
    const double drawn = shift.now;
    shift.cycle(61, 60);
    for (int t = 0; t < 20; ++t)
        shift.read(67.4);
    EXPECT_GT(shift.scorchFirst(), drawn + 80);
}

TEST(Climb, WhatAPanDoesThatIsBeingEmptiedIsNotTakenForItsHabit) {
    Shift shift;
    for (int i = 0; i < 2; ++i)
        shift.cycle(61, 800);
    for (int i = 0; i < 3; ++i)
        shift.cycle(64, 150);
    shift.cycle(64, 150);
    EXPECT_TRUE(stands(shift.rows.at(shift.now), Alarm::scorch_risk));
}

} // namespace
} // namespace panside
