// The nights as the plan for tonight needs them, and sap that the gauge shows before anybody tells of it.
#include "core/ledger/sap_nights.h"
#include "house.h"

namespace panside {
namespace {

using namespace testing_house;

constexpr const char* nightTanks = "2027-03-01T06:00:00Z,vessel,1000,L,name=feed;kind=feed\n"
                                   "2027-03-01T06:00:00Z,vessel,2000,L,name=house tank;kind=hold\n";

std::string night(int date, const std::string& sap) {
    return day(date, "17:00", "set,1,m2,key=flue_pan_area") + day(date, "17:00", "set,0.5,m2,key=syrup_pan_area") +
           day(date, "17:00", "set,50,mm,key=running_depth") + day(date, "17:00", "set,20,kg,key=load_mass") +
           day(date, "17:00", "tank_level,600,L,") + sap + day(date, "17:30", "tank_level,600,L,") +
           day(date, "17:30", "lit,,,") + day(date, "17:31", "fired,,,") + day(date, "18:30", "tank_level,500,L,") +
           day(date, "18:30", "fired,,,") + day(date, "19:00", "draw_close,3,L,to=pail;temp=20degC") +
           day(date, "19:30", "tank_level,200,L,") + day(date, "19:30", "fired,,,") +
           day(date, "19:40", "shutdown,,,") + day(date, "20:30", "tank_level,90,L,") +
           day(date, "20:30", "shift_end,,,");
}

TEST(LedgerNights, TellWhatLeftTheTankWhileTheFireWasFed) {
    const FoldedHouse house{std::string{nightTanks} + day(2, "06:00", "dipped,0,L,in=feed"),
                            {night(2, day(2, "16:59", "sap_in,600,L,brix=2"))}};
    const Night& told = house.ledger->nights().at(0);
    EXPECT_EQ(secondsBetween(*told.lit, *told.lastLoad), 7200);
    EXPECT_NEAR(told.fired->volume().litre(), 400, 0.5);
    EXPECT_NEAR(told.kept->litre(), 200, 0.5);
    EXPECT_NEAR(told.entered.volume().litre(), 510, 0.5);
    EXPECT_EQ(told.loads, 3);
    // 60 kg of wood that nobody named: hardwood at 20 percent, 85 cubic feet solid of it to the cord.
    EXPECT_NEAR(told.cords.value(), 60 / 1700.0, 0.01);
    const auto boiled = nightsBoiled(*house.ledger);
    ASSERT_EQ(boiled.size(), 1u);
    EXPECT_EQ(boiled[0].fired, Duration{7200});
    const TonightBasis basis = tonightBasis(*house.ledger);
    // 1.5 m2 by 50 mm are 75 L; half of some 240 L/h for 45 min comes on top.
    EXPECT_NEAR(basis.keepBack->litre(), 75 + 90, 15);
    EXPECT_FALSE(basis.pansEmpty);
}

// The tank was filled before the shift began, or its probe stood at the full level first: told twice, it counts once.
TEST(LedgerNights, CountSapOnceThatTheGaugeShowsBeforeItIsTold) {
    for (const char* clock : {"17:00", "17:20"}) {
        const FoldedHouse house{nightTanks, {night(2, day(2, clock, "sap_in,600,L,brix=2"))}};
        EXPECT_NEAR(house.ledger->nights().at(0).entered.volume().litre(), 510, 0.5) << clock;
        EXPECT_NEAR(house.ledger->balance().gathered, 600 * 1.0060 * 0.02, 0.05) << clock; // ICUMSA: 1.0060 kg/L
        EXPECT_NEAR(house.ledger->balance().doesNotClose, 0, 0.01) << clock;
    }
}

TEST(LedgerNights, TakeALateLoadThatTheGaugeShowsForWhatItIs) {
    const FoldedHouse house{std::string{nightTanks},
                            {day(2, "17:00", "tank_level,300,L,") + day(2, "18:00", "tank_level,300,L,") +
                             day(2, "18:05", "sap_in,300,L,brix=2") + day(2, "18:10", "tank_level,600,L,") +
                             day(2, "19:00", "tank_level,600,L,") + day(2, "19:00", "shift_end,,,")}};
    EXPECT_NEAR(house.litres("feed"), 600, 0.5);
    // 300 L stood there that nobody wrote, and 300 L came.
    EXPECT_NEAR(house.ledger->balance().gathered, 300 * 1.0060 * 0.02, 0.05);
    EXPECT_NEAR(house.ledger->balance().doesNotClose, 300 * 1.0060 * 0.02, 0.05);
}

TEST(LedgerNights, CountWhatStandsInTanksAndNotInPailsOrRetiredOnes) {
    const FoldedHouse house{std::string{nightTanks} + day(2, "08:00", "vessel,50,L,name=pail 1;kind=pail") +
                            day(2, "08:00", "vessel,900,L,name=old tank;kind=hold") +
                            day(2, "09:00", "gathered,500,L,to=house tank;brix=2.2;temp=4degC") +
                            day(2, "09:10", "gathered,100,L,to=old tank") +
                            day(2, "09:20", "moved,10,L,from=house tank;to=pail 1") +
                            day(2, "10:00", "vessel,900,L,name=old tank;kind=hold;out=yes")};
    const auto stands = standing(*house.ledger);
    ASSERT_EQ(stands.size(), 1u);
    EXPECT_NEAR(stands[0].volume.litre(), 491, 1); // 500 L at 4 degC are 500.8 at 20
    EXPECT_NEAR(stands[0].sugar.degrees(), 2.2, 1e-6);
}

} // namespace
} // namespace panside
