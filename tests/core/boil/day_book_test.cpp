#include "core/boil/day_vocabulary.h"
#include "core/boil/place.h"
#include "core/boil/settings.h"
#include "core/boil/shift_log.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace panside {
namespace {

using testing::HasSubstr;

std::string book(const std::string& rows) { return std::string{logHeader} + "\n" + rows; }
std::string at(const std::string& rest) { return "2027-03-14T18:00:00Z," + rest + "\n"; }

std::string firstFault(const std::string& row) {
    const ReadLog read = readLog(book(at(row)));
    return read.faults.empty() ? "" : sentence(read.faults.front(), "book.csv");
}
DayRow rowIn(const std::string& row) {
    const ReadLog read = readLog(book(at(row)));
    EXPECT_TRUE(read.faults.empty()) << sentence(read.faults.front(), "");
    return std::get<DayRow>(read.facts.at(0).what);
}

const std::vector<std::string> everyRow{
    "vessel,40,gal,name=drum 7;kind=drum;shape=upright 0.5 0.9;tare=20kg;material=stainless;lead=none",
    "vessel,,,name=old tank;out=yes",
    "gathered,120,gal,to=tank;from=north run;taps=300;brix=2.1;cal=38degF;temp=41degF;clear=clear;by=Ann",
    "moved,,,from=tank;to=drum 7",
    "dipped,12,in,in=tank",
    "dipped,0,L,in=tank;temp=4degC",
    "concentrated,30,impgal,from=tank;to=conc;brix=8;brix_in=2;hours=1.5;washed=yes",
    "bought,600,lb,what=syrup;from=a neighbour;vessel=drum 7;brix=66.5;price=2.40",
    "sold,,,what=syrup;to=a packer;vessel=drum 7",
    "lost,2,qt,from=drum 7;why=tasting",
    "pans_emptied,8,gal,to=pail 1;washed=yes;chased=water",
    "press_on,,,from=drum 7;to=canner;aid=DE lot 4;papers=new;temp=190degF",
    "press_off,20,gal,heel=1gal;result=clear",
    "graded,62.5,percent,lot=27-073;flavour=clean;sample=kept",
    "graded,,,vessel=drum 7;class=amber;off=buddy",
    "packed,48,,lot=27-073;from=canner;size=1pt;of=glass;filler=186degF;capped=182degF;brix=66.9;broken=1;laid=8",
    "shipped,24,,lot=27-073;size=1pt;to=the co-op;price=12.50",
    "came_back,2,,lot=27-073;size=1pt;from=the co-op;why=mould",
    "destroyed,2,,lot=27-073;size=1pt",
    "cleaned,,,vessel=press;with=hot water;rinsed=yes;checked=yes",
    "tested,120,ppb,of=drum 7;for=lead;by=a laboratory",
    "tested,none found,,of=drum 7;for=lead"};

TEST(DayBook, EveryRowComesBackAsItWasWritten) {
    for (const std::string& row : everyRow) {
        const ReadLog read = readLog(book(at(row)));
        ASSERT_TRUE(read.faults.empty()) << row << ": " << sentence(read.faults.front(), "");
        EXPECT_TRUE(read.warnings.empty()) << row << ": " << sentence(read.warnings.front(), "");
        EXPECT_TRUE(read.isDayBook()) << row;
        const ReadLog again = readLog(writeLog(read.facts));
        EXPECT_EQ(again.facts, read.facts) << row << "\n" << writeLog(read.facts);
    }
}

// NIST Handbook 44, appendix C: a US pint is 0.473176473 L; 1 imperial gallon is 4.54609 L.
TEST(DayBook, VolumesAreReadInEveryUnitOfTheTrade) {
    const auto litres = [](const std::string& value) { return rowIn("gathered," + value + ",to=t").volume()->litre(); };
    EXPECT_NEAR(litres("1,impgal"), 4.54609, 1e-9);
    EXPECT_NEAR(litres("1,qt"), 0.946352946, 1e-9);
    EXPECT_NEAR(litres("1,pt"), 0.473176473, 1e-9);
    EXPECT_NEAR(litres("1,cup"), 0.2365882365, 1e-9);
    EXPECT_NEAR(litres("250,mL"), 0.25, 1e-12);
    EXPECT_NEAR(*rowIn("packed,1,,lot=a;from=b;size=0.5gal").si(Key::size), 1.892705892e-3, 1e-12);
}

TEST(DayBook, FaultsAreRefusedWithTheirLineAndTheLikelySlip) {
    EXPECT_THAT(firstFault("gathered,120,,to=tank"), HasSubstr("book.csv:2"));
    EXPECT_THAT(firstFault("gathered,120,,to=tank"), HasSubstr("no unit"));
    EXPECT_THAT(firstFault("gathered,120,gal,from=bush"), HasSubstr("to is missing"));
    EXPECT_THAT(firstFault("moved,3,gal,from=drum 7;to=Drum7"), HasSubstr("Name two vessels"));
    EXPECT_THAT(firstFault("graded,120,percent,lot=a"), HasSubstr("0 to 100 percent"));
    EXPECT_THAT(firstFault("packed,12,,lot=a;from=b;size=1pt;filler=186degC"), HasSubstr("Did you mean 186 degF?"));
    EXPECT_THAT(firstFault("gathered,12,gal,to=b;temp=41degC"), HasSubstr("Did you mean 41 degF?"));
    EXPECT_THAT(firstFault("packed,12,,lot=a;from=b;size=1"), HasSubstr("no unit"));
    EXPECT_THAT(firstFault("packed,12.5,,lot=a;from=b;size=1pt"), HasSubstr("not a whole number"));
    EXPECT_THAT(firstFault("graded,50,percent,flavour=clean"), HasSubstr("vessel=VESSEL or lot=CODE"));
}

TEST(DayBook, WhatIsNotKnownIsKeptAndNamed) {
    const ReadLog read = readLog(book(at("vessel,10,gal,name=p;kind=bucket;colour=red")));
    EXPECT_TRUE(read.faults.empty());
    ASSERT_EQ(read.warnings.size(), 2u);
    EXPECT_EQ(readLog(writeLog(read.facts)).facts, read.facts);
}

TEST(DayBook, IsToldFromAShiftByItsRows) {
    EXPECT_TRUE(
        readLog(book(at("note,,,late") + at("set,Vermont,,key=place") + at("moved,,,from=a;to=b"))).isDayBook());
    EXPECT_FALSE(readLog(book(at("note,,,late"))).isDayBook());
    EXPECT_FALSE(readLog(book(at("lit,,,") + at("moved,,,from=a;to=b"))).isDayBook());
}

TEST(DayBook, NamesAgreeWithoutBlanksAndCase) {
    EXPECT_EQ(nameKey("Drum 7"), nameKey("drum7"));
    EXPECT_EQ(nameKey("Érablière\xC2\xA0Nord"), nameKey("érablièrenord"));
    EXPECT_NE(nameKey("drum 7"), nameKey("drum 17"));
}

TEST(Place, SetsTheLegalDensitiesUntilTheyAreSet) {
    Settings settings;
    const auto set = std::get<Set>(readLog(book(at("set,vermont,,key=place"))).facts.at(0).what);
    settings.put(set);
    EXPECT_NEAR(settings.legalMinimum().degrees(), 66.9, 1e-9);
    EXPECT_EQ(settings.law()->leastBaume, 36.0);
    settings.put({Setting::legal_minimum, 0.67, Unit::brix});
    EXPECT_NEAR(settings.legalMinimum().degrees(), 67, 1e-9);
    EXPECT_THAT(firstFault("set,Vermnt,,key=place"), HasSubstr("Did you mean Vermont?"));
    EXPECT_EQ(allPlaces()[*placeNamed("Ontario")].least, Brix::degrees(66));
}

TEST(Place, SettingsOfTheHouseComeBack) {
    for (const char* row : {"set,Ontario,,key=place", "set,year-day-letter,,key=lot_scheme",
                            "set,180,degF,key=capped_least", "set,3,years,key=kept_for"}) {
        const ReadLog read = readLog(book(at(row)));
        ASSERT_TRUE(read.faults.empty()) << sentence(read.faults.front(), "");
        EXPECT_EQ(readLog(writeLog(read.facts)).facts, read.facts) << row;
    }
}

TEST(ShiftLog, ReadsWhatTheLedgerNeedsOfAShift) {
    for (const char* row : {"sap_in,,,from=tank", "sap_in,100,impgal,brix=2.3;temp=60degF;from=tank;cal=38degF",
                            "draw_close,3,qt,to=pail 3;temp=200degF", "defoamer,2,,kind=butter"}) {
        const ReadLog read = readLog(book(at(row)));
        ASSERT_TRUE(read.faults.empty()) << sentence(read.faults.front(), "");
        EXPECT_TRUE(read.warnings.empty()) << row;
        EXPECT_EQ(readLog(writeLog(read.facts)).facts, read.facts) << row;
    }
    EXPECT_FALSE(readLog(book(at("sap_in,,,"))).faults.empty());
}

} // namespace
} // namespace panside
