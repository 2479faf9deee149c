// What nobody measured is never dropped: it joins without a share. And a trace of one load, one aid, one date.
#include "core/ledger/doubt.h"
#include "core/ledger/sap_page.h"
#include "house.h"

namespace panside {
namespace {
namespace unmeasured_rows {

using namespace testing_house;

const std::string pressRoom =
    day(1, "06:00", "vessel,2000,L,name=hold;kind=hold") + day(1, "06:00", "vessel,2000,L,name=feed;kind=feed") +
    day(1, "06:00", "vessel,20,L,name=pail 1;kind=pail") + day(1, "06:00", "vessel,150,L,name=drum 1;kind=drum") +
    day(1, "12:00", "gathered,900,L,to=hold;from=north;brix=2.1");
// A night whose draws say what `draws` says.
std::string nightOf(int date, const std::string& draws) {
    return day(date, "18:00", "sap_in,,,from=hold") + day(date, "18:01", "tank_level,900,L,") +
           day(date, "18:10", "lit,,,") + draws + day(date, "22:00", "tank_level,10,L,") +
           day(date, "22:30", "shift_end,,,");
}
bool joinsUnknown(const TraceEntry* entry) { return entry && !entry->share; }

TEST(LedgerUnmeasured, ADrawWithoutAVolumeStaysInThePailThatTheNextOneFills) {
    const FoldedHouse house{
        pressRoom,
        {nightOf(1, day(1, "20:00", "draw_close,,,to=pail 1") + day(1, "21:00", "draw_close,8,L,to=pail 1"))}};
    int draws = 0, unknown = 0;
    for (const TraceEntry& entry : house.trace("pail 1").behind)
        if (entry.kind == TraceKind::draw) {
            ++draws;
            unknown += !entry.share;
        }
    EXPECT_EQ(draws, 2);
    EXPECT_EQ(unknown, 1);
}

// More was drawn than anybody wrote down as gone in: what is left in the pans is not nothing, it is not known.
TEST(LedgerUnmeasured, PansOutOfWhichMoreWasDrawnThanWentInHoldNobodyKnowsWhat) {
    const auto left = [](const char* litres) {
        const FoldedHouse house{
            pressRoom, {nightOf(1, day(1, "22:10", "draw_close," + std::string{litres} + ",L,to=drum 1;temp=20degC"))}};
        return sweetInPans(*house.ledger, instantIn("2027-03-02T06:00:00Z").value());
    };
    // 890 L of 2.1 brix are 18.9 kg of sugar; a litre of syrup at 66.9 brix holds 0.89 (ICUMSA SPS-4).
    ASSERT_TRUE(left("8"));
    EXPECT_FALSE(left("8")->unknown);
    EXPECT_GT(left("8")->sugar.kilogram(), 10);
    ASSERT_TRUE(left("40"));
    EXPECT_TRUE(left("40")->unknown);
}

TEST(LedgerUnmeasured, AllOfItGoesWhereItIsMoved) {
    const FoldedHouse house{pressRoom + day(2, "09:00", "moved,,,from=pail 1;to=drum 1"),
                            {nightOf(1, day(1, "20:00", "draw_close,,,to=pail 1"))}};
    EXPECT_TRUE(joinsUnknown(entryOf(house.trace("drum 1").behind, TraceKind::draw, "pail 1")));
    EXPECT_TRUE(joinsUnknown(entryOf(house.trace("2027-03-01").before, TraceKind::vessel, "drum 1")));
}

TEST(LedgerUnmeasured, ADipTellsHowMuchADrawWas) {
    const FoldedHouse house{pressRoom + day(2, "09:00", "dipped,8,L,in=pail 1"),
                            {nightOf(1, day(1, "20:00", "draw_close,,,to=pail 1"))}};
    EXPECT_NEAR(house.litres("pail 1"), 8, 1e-6);
    const Trace trace = house.trace("pail 1");
    const auto* draw = entryOf(trace.behind, TraceKind::draw, "pail 1");
    ASSERT_TRUE(draw);
    EXPECT_NEAR(draw->share.value_or(0), 1, 1e-9);
    for (const TraceEntry& entry : trace.behind)
        EXPECT_NE(entry.kind, TraceKind::hole); // somebody wrote it
    EXPECT_TRUE(joinsUnknown(entryOf(trace.behind, TraceKind::gathered, "north")));
}

TEST(LedgerUnmeasured, WhatIsTakenOutOfItIsNoMoreThanItHeld) {
    const FoldedHouse house{pressRoom + day(2, "09:00", "moved,8,L,from=pail 1;to=drum 1"),
                            {nightOf(1, day(1, "20:00", "draw_close,,,to=pail 1"))}};
    EXPECT_EQ(house.marked(MarkKind::belowEmpty), 0);
    EXPECT_NEAR(house.litres("drum 1"), 8, 1e-6);
    EXPECT_NEAR(entryOf(house.trace("drum 1").behind, TraceKind::draw, "pail 1")->share.value_or(0), 1, 1e-9);
}

// A week without a row: what a vessel holds is known again when it is dipped, read or emptied, and only then.
TEST(LedgerUnmeasured, AfterALongSilenceAVesselMayHoldAnythingUntilItIsMeasured) {
    const std::string before = "2027-03-01T06:00:00Z,vessel,1000,L,name=north;kind=gather\n"
                               "2027-03-01T06:00:00Z,vessel,200,L,name=drum;kind=drum\n" +
                               day(2, "09:00", "gathered,300,L,to=north;brix=2") +
                               day(2, "10:00", "bought,90,L,what=syrup;vessel=drum;brix=67");
    const std::string after = day(12, "09:00", "gathered,100,L,to=north;brix=2");
    const FoldedHouse silent{before + after};
    for (const char* name : {"north", "drum"}) {
        ASSERT_TRUE(silent.vessel(name).unwritten) << name;
        const double held = silent.vessel(name).content.sugar, doubt = sugarDoubt(silent.vessel(name));
        EXPECT_LE(held - doubt, 0) << name << ": it may be empty";
        EXPECT_GE(held + doubt, name[0] == 'n' ? 1000 * 0.05 : 200 * 1.33 * 0.66) << name << ": it may be full";
    }
    const FoldedHouse dipped{before + after + day(12, "10:00", "dipped,80,L,in=drum;brix=67") +
                             day(12, "11:00", "moved,,,from=north;to=drum")};
    EXPECT_LT(sugarDoubt(dipped.vessel("north")), 0.01) << "emptied";
    ASSERT_TRUE(dipped.vessel("drum").unwritten) << "all of what nobody knows went into it";
    EXPECT_FALSE(
        FoldedHouse{before + after + day(12, "10:00", "dipped,80,L,in=drum;brix=67")}.vessel("drum").unwritten);
    // Two days without sap are no silence.
    EXPECT_FALSE(FoldedHouse{before + day(5, "09:00", "gathered,100,L,to=north;brix=2")}.vessel("drum").unwritten);
}

TEST(LedgerUnmeasured, APressRunWithoutAVolumeJoinsAllTheSame) {
    const FoldedHouse house{pressRoom + day(1, "13:00", "bought,10,L,what=syrup;vessel=pail 1;from=neighbour") +
                            day(2, "09:00", "press_on,,,from=pail 1;to=drum 1;aid=diatomite 5 lb lot D77;papers=new") +
                            day(2, "09:30", "press_off,,,result=clear") +
                            day(3, "09:00", "bought,10,L,what=syrup;vessel=drum 1;from=another")};
    EXPECT_EQ(house.marked(MarkKind::noVolume), 1);
    const Trace trace = house.trace("drum 1");
    EXPECT_TRUE(joinsUnknown(entryOf(trace.behind, TraceKind::press, "drum 1")));
    EXPECT_TRUE(joinsUnknown(entryOf(trace.behind, TraceKind::aid, "diatomite 5 lb lot D77")));
    // Asked for by its own lot.
    EXPECT_TRUE(entryOf(house.trace("D77").before, TraceKind::vessel, "drum 1"));
    EXPECT_FALSE(traceOf(*house.ledger, "D7"));
}

TEST(LedgerUnmeasured, OverTheRimNamesTheEntryBeforeThatDoesNotFit) {
    const FoldedHouse house{pressRoom + day(2, "09:00", "bought,18,L,what=syrup;vessel=pail 1;from=neighbour") +
                            day(3, "09:00", "bought,5,L,what=syrup;vessel=pail 1;from=neighbour")};
    ASSERT_EQ(house.marked(MarkKind::overRim), 1);
    for (const LedgerMark& mark : house.ledger->marks())
        if (mark.kind == MarkKind::overRim) {
            EXPECT_NEAR(mark.amount.value(), 3, 1e-6);
            EXPECT_EQ(textOf(mark.before.value()), "2027-03-02T09:00:00Z");
        }
}

TEST(LedgerPress, PressureWithNoRunIsSaidOnceAndOnlyWhereRunsAreWritten) {
    const auto gauge = [](const char* clock, int kilopascal) {
        return day(2, clock, "filter_pressure," + std::to_string(kilopascal) + ",kPa,");
    };
    const std::string night = gauge("09:05", 60) + gauge("09:10", 90) + gauge("09:31", 40) + gauge("09:32", 5) +
                              gauge("10:00", 80) + gauge("10:04", 80) + gauge("10:08", 90) +
                              day(2, "11:00", "shift_end,,,");
    const std::string run =
        day(2, "09:00", "press_on,,,from=pail 1;to=drum 1") + day(2, "09:30", "press_off,10,L,result=clear");
    const FoldedHouse house{pressRoom + run, {night}};
    ASSERT_EQ(house.marked(MarkKind::pressureWithoutRun), 1);
    for (const LedgerMark& mark : house.ledger->marks())
        if (mark.kind == MarkKind::pressureWithoutRun) {
            EXPECT_EQ(textOf(mark.before.value()), "2027-03-02T10:00:00Z");
        }
    EXPECT_EQ(FoldedHouse(pressRoom, {night}).marked(MarkKind::pressureWithoutRun), 0);
}

TEST(LedgerTraceOf, OneLoadAmongManyOfOneSeller) {
    const FoldedHouse house{pressRoom + day(2, "09:00", "bought,10,L,what=syrup;vessel=pail 1;from=neighbour;brix=66") +
                            day(3, "09:00", "bought,30,L,what=syrup;vessel=drum 1;from=Neighbour;brix=66")};
    EXPECT_NEAR(house.trace("neighbour").volume.litre(), 40, 1e-6);
    const Trace one = house.trace("neighbour 2027-03-03");
    EXPECT_NEAR(one.volume.litre(), 30, 1e-6);
    EXPECT_TRUE(entryOf(one.before, TraceKind::vessel, "drum 1"));
    EXPECT_FALSE(entryOf(one.before, TraceKind::vessel, "pail 1"));
    EXPECT_NEAR(house.trace("neighbour 2027-03-02T09:00:00Z").volume.litre(), 10, 1e-6);
    EXPECT_FALSE(traceOf(*house.ledger, "neighbour 2027-03-04"));
}

TEST(LedgerTraceOf, ADateIsAllOfItsShifts) {
    const std::string second =
        day(1, "23:00", "lit,,,") + day(1, "23:20", "draw_close,2,L,to=drum 1") + day(1, "23:30", "shift_end,,,");
    const FoldedHouse house{pressRoom, {nightOf(1, day(1, "20:00", "draw_close,8,L,to=pail 1")), second}};
    const Trace trace = house.trace("2027-03-01");
    EXPECT_TRUE(entryOf(trace.before, TraceKind::vessel, "pail 1"));
    EXPECT_TRUE(entryOf(trace.before, TraceKind::vessel, "drum 1"));
    EXPECT_FALSE(entryOf(trace.behind, TraceKind::night, "2027-03-01"));
}

TEST(LedgerTraceOf, ADefoamerKnowsTheShareOfItsNight) {
    const FoldedHouse house{
        pressRoom,
        {nightOf(1, day(1, "18:20", "defoamer,5,,kind=butter") + day(1, "20:00", "draw_close,8,L,to=pail 1"))}};
    const Trace trace = house.trace("butter");
    const auto* night = entryOf(trace.before, TraceKind::night, "2027-03-01");
    ASSERT_TRUE(night);
    EXPECT_NEAR(night->share.value_or(0), 1, 1e-9);
}

} // namespace unmeasured_rows
} // namespace
} // namespace panside
