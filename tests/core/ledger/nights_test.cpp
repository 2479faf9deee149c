// The nights as the plan for tonight needs them, and sap that the gauge shows before anybody tells of it.
#include "core/ledger/sap_nights.h"

#include "core/ledger/doubt.h"
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

// Sap comes while the pans are fed: what left the tank before is of the sap before, whether the level was read at that
// very moment or not since an hour.
TEST(LedgerNights, SapThatComesDoesNotMixWithWhatHasLeftBefore) {
    const std::string tank = day(2, "06:00", "vessel,1000,L,name=feed;kind=feed") +
                             day(2, "16:00", "gathered,250,L,to=feed;from=ours;brix=2");
    const std::string sap = day(2, "19:00", "sap_in,300,L,from=theirs;brix=2"),
                      end = day(2, "21:00", "tank_level,80,L,") + day(2, "21:00", "shift_end,,,");
    const auto ofOurs = [&](const std::string& rows) {
        const FoldedHouse house{tank, {day(2, "18:00", "tank_level,250,L,") + rows + end}};
        EXPECT_NEAR(house.litres("feed"), 80, 1e-6);
        return entryOf(house.trace("2027-03-02").behind, TraceKind::gathered, "ours")->share.value();
    };
    // 30 L of ours leave, 220 L stay and are mixed with 300 L of theirs, of which 440 L leave.
    const double read = (30 + 440 * 220.0 / 520) / 470;
    EXPECT_NEAR(ofOurs(day(2, "18:59", "tank_level,220,L,") + sap + day(2, "19:00", "tank_level,520,L,")), read, 1e-6);
    // Whoever writes minutes has it read, filled and read again in one.
    EXPECT_NEAR(ofOurs(day(2, "19:00", "tank_level,220,L,") + sap + day(2, "19:00", "tank_level,520,L,")), read, 1e-6);
    // Nobody read it: 470 L in three hours, so that a third of it left in the first.
    const double third = 470.0 / 3, spread = (third + (470 - third) * (250 - third) / (550 - third)) / 470;
    EXPECT_NEAR(ofOurs(sap), spread, 1e-6);
}

// All that stood in a tank, told without a volume, counts as it would with one: in the gauge's first minute, between
// two readings, and where the gauge showed it before.
TEST(LedgerNights, AllOfATankCountsAsItsVolumeWould) {
    const std::string tanks = std::string{nightTanks} + day(2, "12:00", "gathered,300,L,to=house tank;brix=2");
    for (const char* value : {"sap_in,,,from=house tank", "sap_in,300,L,from=house tank"})
        for (const auto& [read, told] : {std::pair{"17:00", "17:00"}, {"17:00", "16:59"}, {"17:30", "17:40"}}) {
            const FoldedHouse house{
                tanks,
                {day(2, "16:30", "lit,,,") + (std::string{told} <= read ? day(2, told, value) : std::string{}) +
                 day(2, read, "tank_level,300,L,") + (std::string{told} > read ? day(2, told, value) : "") +
                 day(2, "17:41", "tank_level,300,L,") + day(2, "18:41", "tank_level,100,L,") +
                 day(2, "18:41", "shift_end,,,")}};
            EXPECT_NEAR(house.litres("feed"), 100, 0.01) << value << read << told;
            EXPECT_NEAR(house.litres("house tank"), 0, 0.01) << value << read << told;
            EXPECT_NEAR(house.ledger->balance().inPans, 200 * 1.0060 * 0.02, 0.01) << value << read << told;
            EXPECT_NEAR(house.ledger->balance().doesNotClose, 0, 0.001) << value << read << told;
        }
}

// Nobody looked at the tank before the fire had burnt for an hour: what is not in it any more is in the pans. Before
// the fire was lit it is what was gathered that was told wrong.
TEST(LedgerNights, WhatLeftTheTankBeforeItWasFirstReadIsInThePans) {
    const std::string tank = std::string{nightTanks} + day(2, "12:00", "gathered,300,L,to=feed;brix=2");
    const std::string rest = day(2, "18:00", "tank_level,220,L,") + day(2, "19:00", "shift_end,,,");
    const double sugar = 80 * 1.0060 * 0.02; // ICUMSA SPS-4: 1.0060 kg/L
    const FoldedHouse burns{tank, {day(2, "17:00", "lit,,,") + rest}};
    EXPECT_NEAR(burns.ledger->balance().inPans, sugar, 0.01);
    EXPECT_NEAR(burns.ledger->balance().doesNotClose, 0, 0.001);
    EXPECT_NEAR(burns.ledger->tables().pans.sugarSd, sugar / 2, sugar / 4); // for it may be the book that was wrong
    const FoldedHouse cold{tank, {rest + day(2, "18:30", "lit,,,")}};
    EXPECT_NEAR(cold.ledger->balance().inPans, 0, 1e-9);
    EXPECT_NEAR(cold.ledger->balance().doesNotClose, -sugar, 0.01);
    // Nor is it where for days nobody wrote what became of it.
    const FoldedHouse silent{tank, {day(9, "17:00", "lit,,,") + day(9, "18:00", "tank_level,220,L,")}};
    EXPECT_NEAR(silent.ledger->balance().inPans, 0, 1e-9);
}

// A pail taken out of the feed tank has not entered the pans.
TEST(LedgerNights, WhatIsTakenOutOfTheFeedTankIsNotBoiled) {
    const FoldedHouse house{
        day(2, "06:00", "vessel,1000,L,name=feed;kind=feed") + day(2, "06:00", "vessel,100,L,name=can;kind=gather") +
            day(2, "16:00", "gathered,500,L,to=feed;brix=2") + day(2, "19:00", "moved,100,L,from=feed;to=can"),
        {day(2, "18:00", "tank_level,500,L,") + day(2, "20:00", "tank_level,200,L,") +
         day(2, "20:00", "shift_end,,,")}};
    EXPECT_NEAR(house.ledger->nights().at(0).entered.volume().litre(), 200, 1e-6);
    EXPECT_NEAR(house.litres("can"), 100, 1e-6);
}

// Whoever keys no opening writes the check down in one breath with the draw, or a minute before it.
TEST(LedgerNights, ACheckOfTheDrawsOwnMinuteIsOfIt) {
    for (const char* clock : {"19:57", "20:00", "20:02"}) {
        const FoldedHouse house{
            day(2, "06:00", "vessel,100,L,name=feed;kind=feed"),
            {day(2, "18:00", "sap_in,800,L,brix=2") + day(2, "19:40", "draw_close,2,L,to=pail 1;temp=20degC") +
             day(2, "20:00", "draw_close,5,L,to=pail 2;temp=20degC") +
             day(2, clock, "density_check,65.0,brix,temp=20degC;cal=20degC") + day(2, "22:00", "shift_end,,,")}};
        EXPECT_NEAR(house.vessel("pail 2").content.brix().degrees(), 65, 1e-6) << clock;
        EXPECT_NEAR(house.vessel("pail 1").content.brix().degrees(), 66.9, 1e-6) << clock;
    }
}

class DrainedPans : public ::testing::Test {
protected:
    static FoldedHouse drained(const std::string& rows) {
        return FoldedHouse{day(2, "06:00", "vessel,100,L,name=feed;kind=feed") + rows,
                           {day(2, "18:00", "sap_in,500,L,brix=2") + day(2, "20:00", "defoamer,3,,kind=butter") +
                            day(2, "20:01", "draw_close,2,L,to=can;temp=20degC") + day(2, "22:00", "shift_end,,,")}};
    }
    // ICUMSA SPS-4: 500 L of 2 brix hold 10.060 kg of sugar; 2 L of 66.9 brix hold 1.777.
    static constexpr double left = 10.060 - 1.777;
};

// Nobody said how much was drained: its sugar is known, and the first dip or move tells its volume.
TEST_F(DrainedPans, WithoutAVolumeKeepTheirSugarUntilSomebodyMeasures) {
    const FoldedHouse two =
        drained(day(3, "10:00", "pans_emptied,,,to=pail 1") + day(3, "10:00", "pans_emptied,,,to=pail 2") +
                day(3, "11:00", "dipped,20,L,in=pail 1") + day(3, "12:00", "moved,15,L,from=pail 2;to=can"));
    EXPECT_NEAR(two.sugar("pail 1"), left / 2, 0.01);
    EXPECT_NEAR(two.litres("pail 1"), 20, 1e-6);
    EXPECT_NEAR(two.sugar("can"), left / 2 + 1.777, 0.01);
    EXPECT_NEAR(two.ledger->balance().doesNotClose, 0, 1e-6);
    EXPECT_EQ(two.marked(MarkKind::belowEmpty), 0);
}

TEST_F(DrainedPans, TakeTheMilkAlongThoughTheyAreWashedAfterwards) {
    const FoldedHouse house = drained(day(3, "10:00", "pans_emptied,20,L,to=pail 1;washed=yes"));
    EXPECT_TRUE(house.vessel("pail 1").taint.milk);
}

// Nothing may have been drawn after it: what was drained carries it too, and what comes out of that.
TEST_F(DrainedPans, AreBeforeTheMilkThoughNothingWasDrawn) {
    const FoldedHouse house{day(2, "06:00", "vessel,100,L,name=feed;kind=feed") +
                                day(2, "06:00", "vessel,50,L,name=pail 1;kind=pail") +
                                day(2, "06:00", "vessel,50,L,name=drum 1;kind=drum") +
                                day(3, "10:00", "pans_emptied,20,L,to=pail 1;washed=yes") +
                                day(3, "11:00", "moved,,,from=pail 1;to=drum 1"),
                            {day(2, "18:00", "feed_flow,100,L/h,") + day(2, "18:00", "sap_in,300,L,brix=2") +
                             day(2, "20:00", "feed_flow,100,L/h,") + day(2, "20:00", "defoamer,3,,kind=butter") +
                             day(2, "22:00", "shift_end,,,")}};
    ASSERT_TRUE(house.vessel("drum 1").taint.milk);
    const Trace trace = house.trace("butter");
    EXPECT_EQ(trace.kind, TraceKind::defoamer);
    EXPECT_NEAR(trace.volume.litre(), 20, 1e-6);
    for (const char* vessel : {"pail 1", "drum 1"}) {
        const auto* one = entryOf(trace.before, TraceKind::vessel, vessel);
        ASSERT_TRUE(one) << vessel;
        EXPECT_NEAR(one->share.value_or(0), 1, 1e-9) << vessel;
    }
    const auto* night = entryOf(trace.before, TraceKind::night, "2027-03-02");
    ASSERT_TRUE(night);
    EXPECT_NEAR(night->share.value_or(0), 1, 1e-9);
}

// Sap that the day book pumps into the feed tank while a shift reads its gauge is boiled by that shift.
TEST(FeedTank, GetsWhatTheDayBookMovesIntoItInANight) {
    const std::string tanks = day(1, "06:00", "vessel,2000,L,name=feed;kind=feed") +
                              day(1, "06:00", "vessel,2000,L,name=store;kind=hold") +
                              day(2, "12:00", "gathered,400,L,to=feed;from=hill;brix=2") +
                              day(2, "12:00", "gathered,900,L,to=store;from=dale;brix=2");
    std::string night = day(2, "18:00", "tank_level,400,L,") + day(2, "18:01", "lit,,,");
    for (const auto& [clock, litres] : {std::pair{"19:00", 300}, {"21:00", 600}})
        night += day(2, clock, "tank_level," + std::to_string(litres) + ",L,");
    const FoldedHouse house{tanks + day(2, "20:00", "moved,500,L,from=store;to=feed"),
                            {night + day(2, "22:00", "shift_end,,,")}};
    EXPECT_NEAR(house.litres("feed"), 600, 1e-6);
    // A hundred litres an hour leave: of the hill alone until eight, then of the blend of 200 and 500.
    const Trace trace = house.trace("feed");
    const auto* hill = entryOf(trace.behind, TraceKind::gathered, "hill");
    ASSERT_TRUE(hill);
    EXPECT_NEAR(hill->share.value_or(0), 2.0 / 7, 2e-3);
    EXPECT_NEAR(house.sugar("feed") + house.sugar("store") + house.ledger->balance().inPans, 1300 * 1.0060 * 0.02,
                0.02);
    EXPECT_NEAR(house.ledger->balance().doesNotClose, 0, 0.05);
    EXPECT_EQ(house.marked(MarkKind::belowEmpty), 0);
}

// A feed tank that is retired, or made a store of, hands over to the one that is named after it.
TEST(FeedTank, IsTheOneInUse) {
    const std::string old = day(1, "06:00", "vessel,300,L,name=old pan;kind=feed") +
                            day(1, "06:01", "vessel,300,L,name=new pan;kind=hold") +
                            day(1, "06:02", "vessel,300,L,name=third;kind=feed");
    const std::vector<std::string> nights{
        day(2, "18:00", "lit,,,") + day(2, "18:10", "sap_in,100,L,brix=2;from=hill") + day(2, "23:00", "shift_end,,,"),
        day(4, "18:00", "lit,,,") + day(4, "18:10", "sap_in,50,L,brix=2;from=hill") + day(4, "23:00", "shift_end,,,")};
    for (const auto& [rows, fed] :
         {std::pair{std::string{}, "old pan"},
          {day(3, "08:00", "vessel,,,name=Old Pan;out=yes"), "third"},
          {day(3, "08:00", "vessel,,,name=old pan;kind=hold") + day(3, "08:01", "vessel,,,name=third;out=yes") +
               day(3, "08:02", "vessel,,,name=New Pan;kind=feed"),
           "new pan"}}) {
        const FoldedHouse house{old + rows, nights};
        EXPECT_NEAR(house.litres("old pan"), fed == std::string{"old pan"} ? 150 : 100, 1e-6) << fed;
        EXPECT_NEAR(house.litres(fed), fed == std::string{"old pan"} ? 150 : 50, 1e-6) << fed;
        EXPECT_EQ(house.marked(MarkKind::vesselOut), 0) << fed;
    }
}

// Drained before the shift is ended, or between two shifts of one date: of that night all the same.
TEST(LedgerNights, WhatIsDrainedWhileANightGoesOnIsOfIt) {
    const std::string tank =
        day(2, "06:00", "vessel,100,L,name=feed;kind=feed") + day(2, "06:00", "vessel,50,L,name=pail 1;kind=pail");
    const std::string first = day(2, "17:00", "lit,,,") + day(2, "17:10", "sap_in,500,L,brix=2") +
                              day(2, "19:00", "draw_close,2,L,to=can;temp=20degC") + day(2, "20:00", "shift_end,,,");
    const std::string second = day(2, "21:00", "lit,,,") + day(2, "21:10", "sap_in,300,L,brix=2") +
                               day(2, "22:00", "draw_close,2,L,to=can;temp=20degC") + day(2, "23:00", "shift_end,,,");
    for (const char* clock : {"19:30", "20:30", "22:30"}) {
        const FoldedHouse house{tank + day(2, clock, "pans_emptied,20,L,to=pail 1"), {first, second}};
        const Trace trace = house.trace("2027-03-02");
        const auto* pail = entryOf(trace.before, TraceKind::vessel, "pail 1");
        ASSERT_TRUE(pail) << clock;
        double kept = house.ledger->balance().inPans + house.sugar("can") + house.sugar("pail 1");
        EXPECT_NEAR(pail->share.value_or(0), house.sugar("pail 1") / kept, 1e-9) << clock;
        const auto* can = entryOf(trace.before, TraceKind::vessel, "can");
        ASSERT_TRUE(can) << clock;
        EXPECT_NEAR(can->share.value_or(0), house.sugar("can") / kept, 1e-9) << clock;
    }
}

// Out of the feed tank and into it: the sap is there once.
TEST(FeedTank, GetsNothingByARowThatBringsSapOutOfItself) {
    const std::string tank =
        day(2, "06:00", "vessel,300,L,name=Tub;kind=feed") + day(2, "12:00", "gathered,150,L,to=Tub;from=hill;brix=2");
    for (const char* told : {"sap_in,150,L,from=tub;brix=2", "sap_in,,,from=Tub"}) {
        const FoldedHouse house{tank,
                                {day(2, "18:00", "lit,,,") + day(2, "18:10", told) + day(2, "23:00", "shift_end,,,")}};
        EXPECT_NEAR(house.litres("tub"), 150, 1e-6) << told;
        EXPECT_EQ(house.marked(MarkKind::belowEmpty), 0) << told;
        EXPECT_EQ(house.trace("tub").behind.size(), 1U) << told;
    }
    const FoldedHouse more{tank,
                           {day(2, "18:00", "lit,,,") + day(2, "18:10", "sap_in,250,L,from=tub;brix=2") +
                            day(2, "23:00", "shift_end,,,")}};
    EXPECT_NEAR(more.litres("tub"), 250, 1e-6);
    EXPECT_EQ(more.marked(MarkKind::belowEmpty), 1);
}

// Water drove the sweet out: what the book has in the pans may have left them with the last draws.
TEST_F(DrainedPans, ChasedWithWaterAreLessSureThanDrained) {
    const FoldedHouse plain = drained(day(3, "10:00", "pans_emptied,40,L,to=pail 1")),
                      chased = drained(day(3, "10:00", "pans_emptied,40,L,to=pail 1;chased=water")),
                      read = drained(day(3, "10:00", "pans_emptied,40,L,to=pail 1;chased=water;brix=3"));
    EXPECT_NEAR(chased.sugar("pail 1"), left, 0.01);
    EXPECT_NEAR(sugarDoubt(chased.vessel("pail 1")), left, 0.05); // from nothing to twice
    EXPECT_LT(sugarDoubt(plain.vessel("pail 1")), 0.1);
    EXPECT_GT(chased.ledger->balance().doesNotCloseSd, plain.ledger->balance().doesNotCloseSd + left / 4);
    EXPECT_NEAR(read.sugar("pail 1"), 40 * 1.0099 * 0.03, 0.01); // NBS Circular 440: 1.0099 kg/L at 3 brix
    EXPECT_LT(sugarDoubt(read.vessel("pail 1")), 0.3);
}

// Situation 42: drained to pails after one night and put back before the next. The gauge of the feed tank tells that it
// went past it: all of its sugar is in the pans at once, and with it the thread of the night before.
TEST(PansPutBack, HoldTheirSweetAndItsThreadAgain) {
    const std::string tank = day(2, "06:00", "vessel,1000,L,name=feed;kind=feed") +
                             day(2, "06:00", "vessel,50,L,name=pail 1;kind=pail") +
                             day(2, "12:00", "gathered,400,L,to=feed;from=monday;brix=2") +
                             day(3, "12:00", "gathered,500,L,to=feed;from=tuesday;brix=2");
    const std::string first = day(2, "17:00", "tank_level,400,L,") + day(2, "17:01", "lit,,,") +
                              day(2, "20:00", "tank_level,0,L,") +
                              day(2, "20:01", "draw_close,4,L,to=can;temp=20degC") + day(2, "21:00", "shift_end,,,");
    const auto second = [](const std::string& rows, const char* then = "tank_level,500,L,") {
        std::string gauge;
        for (int minute = 0; minute < 10; ++minute)
            gauge += day(3, "17:0" + std::to_string(minute), minute > 5 ? then : "tank_level,500,L,");
        return gauge + rows + day(3, "17:10", "lit,,,") + day(3, "19:00", "tank_level,300,L,") +
               day(3, "19:00", "draw_close,2,L,to=drum;temp=20degC") + day(3, "19:30", "shift_end,,,");
    };
    // ICUMSA SPS-4: 400 L of 2 brix hold 8.048 kg of sugar, 200 L 4.024; 4 L of 66.9 brix 3.554.
    const double left = 8.048 - 3.554, drawn = 3.554 / 2;
    const std::string drained = day(2, "22:00", "pans_emptied,40,L,to=pail 1");
    const FoldedHouse stayed{tank, {first, second({})}};
    EXPECT_NEAR(stayed.ledger->balance().inPans, left + 4.024 - drawn, 0.02);
    const double share = entryOf(stayed.trace("drum").behind, TraceKind::gathered, "monday")->share.value();
    EXPECT_NEAR(share, left / (left + 4.024), 0.002);
    for (const char* value : {"sap_in,,,from=pail 1", "sap_in,40,L,from=pail 1"}) {
        const FoldedHouse back{tank + drained, {first, second(day(3, "17:05", value))}};
        EXPECT_NEAR(back.ledger->balance().inPans, left + 4.024 - drawn, 0.02) << value;
        EXPECT_NEAR(back.sugar("feed"), 300 * 1.0060 * 0.02, 0.01) << value;
        EXPECT_NEAR(back.sugar("pail 1"), 0, 1e-6) << value;
        EXPECT_NEAR(back.ledger->balance().doesNotClose, 0, 0.01) << value;
        const Trace trace = back.trace("drum");
        EXPECT_NEAR(entryOf(trace.behind, TraceKind::gathered, "monday")->share.value(), share, 0.002) << value;
        EXPECT_NE(entryOf(trace.behind, TraceKind::vessel, "pail 1"), nullptr) << value;
    }
    // Kept in the pail, it joins nothing of the second night.
    const FoldedHouse kept{tank + drained, {first, second({})}};
    EXPECT_NEAR(kept.ledger->balance().inPans, 4.024 - drawn, 0.02);
    EXPECT_NEAR(kept.sugar("pail 1"), left, 0.02);
    EXPECT_EQ(entryOf(kept.trace("drum").behind, TraceKind::gathered, "monday"), nullptr);
    // Poured into the tank, as the gauge shows, it is of the tank, and only a part of it has left it yet.
    const std::string risen = second(day(3, "17:05", "sap_in,40,L,from=pail 1"), "tank_level,540,L,");
    const FoldedHouse poured{tank + drained, {first, risen}};
    EXPECT_NEAR(poured.sugar("feed"), (left + 500 * 1.0060 * 0.02) * 300 / 540, 0.1);
}

} // namespace
} // namespace panside
