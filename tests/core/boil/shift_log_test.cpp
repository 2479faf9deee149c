#include "core/boil/shift_log.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

std::string log(std::string_view rows) { return std::string{logHeader} + "\n" + std::string{rows}; }

const Fact& only(const ReadLog& read) { return read.facts.at(0); }

TEST(LogTime, OfNoYearOfFourDigitsIsTheFirstOrLastThatHas) {
    EXPECT_EQ(textOf(Instant::min()), "0000-01-01T00:00:00Z");
    EXPECT_EQ(textOf(Instant::max()), "9999-12-31T23:59:59Z");
}

TEST(LogTime, ReadsEveryFormOfTheStandard) {
    // RFC 3339, section 5.8: the examples, and the same moments in UTC.
    EXPECT_EQ(textOf(instantIn("1985-04-12T23:20:50.52Z").value()), "1985-04-12T23:20:50.52Z");
    EXPECT_EQ(textOf(instantIn("1996-12-19T16:39:57-08:00").value()), "1996-12-20T00:39:57Z");
    EXPECT_EQ(textOf(instantIn("1990-12-31T23:59:60Z").value()), "1991-01-01T00:00:00Z");
    EXPECT_EQ(textOf(instantIn("1990-12-31T15:59:60-08:00").value()), "1991-01-01T00:00:00Z");
    EXPECT_EQ(textOf(instantIn("1937-01-01T12:00:27.87+00:20").value()), "1937-01-01T11:40:27.87Z");
}

TEST(LogTime, RefusesWhatIsNoTime) {
    for (const auto* text : {"", "2025-03-14", "2025-02-29T00:00:00Z", "2025-03-14T24:00:00Z", "2025-03-14T12:00:00",
                             "2025-03-14T12:00:00.Z", "2025-03-14T12:00:00.1234567Z", "2025-03-14T12:00:60Z",
                             "2025-03-14T12:00:00+0500", "2025-03-14T12:00:00Zx", "2025-3-14T12:00:00Z"})
        EXPECT_FALSE(instantIn(text)) << text;
}

TEST(ShiftLog, TakesMarkMixedLineEndsAndRowsInAnyOrder) {
    const auto read = readLog("\xEF\xBB\xBFtime,what,value,unit,detail\r\n"
                              "2025-03-14T12:00:02Z,lit,,,\n"
                              "2025-03-14T12:00:01Z,syrup_pan,212,degF,probe=B\r\n"
                              "\"2025-03-14T12:00:03Z\",note,,,\"said \"\"now\"\",\nand went;by=Ada\"");
    EXPECT_TRUE(read.faults.empty());
    ASSERT_EQ(read.facts.size(), 3u);
    const auto& reading = std::get<Reading>(read.facts[0].what);
    EXPECT_NEAR(reading.si, 373.15, 1e-9);
    EXPECT_EQ(reading.probe, "B");
    EXPECT_EQ(std::get<Note>(read.facts[2].what).text, "said \"now\",\nand went");
    EXPECT_EQ(read.facts[2].by, "Ada");
}

TEST(ShiftLog, NamesEveryFaultWithLineAndColumn) {
    const auto read = readLog(log("2025-03-14T12:00:00Z,syrup_pan,21O.5,degF,\n"
                                  "2025-03-14T12:00:00Z,syrup_pan,210.5,,\n"
                                  "2025-03-14T12:00:00Z,syrup_pan,210.5,degR,\n"
                                  "2025-03-14T12:00:00Z,tank_level,210.5,mm,\n"
                                  "yesterday,lit,,,\n"
                                  "2025-03-14T12:00:00Z,lit,,\n"
                                  "2025-03-14T12:00:00Z,\"lit,,,\n"));
    ASSERT_EQ(read.faults.size(), 7u);
    EXPECT_EQ(
        sentence(read.faults[0], "night.csv"),
        "night.csv:2:32: value \"21O.5\" is not a number. Write digits with a point, as in 210.5, or leave the field "
        "empty where the row needs none.");
    EXPECT_EQ(read.faults[1].slip, Slip::unitMissing);
    EXPECT_EQ(read.faults[1].wanted, say("%1 or %2", {"degC", "degF"}));
    EXPECT_EQ(read.faults[2].slip, Slip::unitUnknown);
    EXPECT_EQ(read.faults[3].slip, Slip::unitWrong);
    EXPECT_EQ(read.faults[3].wanted, say("%1 or %2", {"L", "gal"}));
    EXPECT_EQ(read.faults[4].slip, Slip::time);
    EXPECT_EQ(read.faults[4].column, 1u);
    EXPECT_EQ(read.faults[5].slip, Slip::columns);
    EXPECT_EQ(read.faults[6].slip, Slip::quoting);
    EXPECT_EQ(read.faults[6].line, 8u);
    EXPECT_TRUE(read.facts.empty());
}

TEST(ShiftLog, NamesEveryUnitThatMayStandThere) {
    const auto bad = factOfLine("2025-03-14T18:00:00Z,pressure,100,,");
    ASSERT_TRUE(std::holds_alternative<Fault>(bad));
    EXPECT_EQ(sentence(std::get<Fault>(bad), "a.csv"), "a.csv:1:35: the number has no unit. Write kPa or hPa or inHg.");
}

TEST(ShiftLog, NamesTheLikelySlip) {
    const auto meant = [](std::string_view row) {
        return readLog(log("2025-03-14T12:00:00Z," + std::string{row})).faults.at(0).meant;
    };
    const auto likely = [](std::string_view row) {
        return readLog(log("2025-03-14T12:00:00Z," + std::string{row})).warnings.at(0).meant;
    };
    EXPECT_EQ(likely("density_check,7,brix,"), "67 brix");
    EXPECT_EQ(likely("density_check,67,baume,"), "67 brix");
    EXPECT_EQ(meant("water_check,211.2,degC,"), "211.2 degF");
    EXPECT_EQ(meant("fired,900,lb,"), "90 lb");
    EXPECT_EQ(readLog(log("2025-03-14T12:00:00Z,pressure,29.9,kPa,")).warnings.at(0).meant, "29.9 inHg");
}

TEST(ShiftLog, RefusesWhatCannotBe) {
    for (const auto* row : {"sap_in,-40,L,", "fired,20,kg,moisture=120", "syrup_pan,-300,degC,", "density_check,,brix,",
                            "density_check,66,brix,with=eye", "density_check,66,brix,temp=98.9", "lit,1,,", "crew,,,",
                            "alarm_seen,,,", "set,5,percent,key=target_density", "set,5,brix,",
                            "pressure,0.9,inHg,probe", "sap_in,40,L,brix=2;brix=3", "fired,2,kg,entered=noon"})
        EXPECT_EQ(readLog(log("2025-03-14T12:00:00Z," + std::string{row})).faults.size(), 1u) << row;
}

TEST(ShiftLog, KeepsWhatItDoesNotKnowAndSaysSo) {
    const std::string row = "2025-03-14T12:00:00Z,hum,3,furlong,a;b";
    const auto read =
        readLog(log(row + "\n2025-03-14T12:00:01Z,set,3,kg,key=weight_of_cat\n2025-03-14T12:00:02Z,fired,,,stars=3\n"));
    EXPECT_TRUE(read.faults.empty());
    ASSERT_EQ(read.warnings.size(), 3u);
    EXPECT_EQ(read.warnings[0].slip, Slip::whatUnknown);
    EXPECT_EQ(read.warnings[1].slip, Slip::settingUnknown);
    EXPECT_EQ(read.warnings[2].slip, Slip::detailUnknown);
    EXPECT_EQ(rowOf(read.facts[0]), row);
    EXPECT_EQ(rowOf(read.facts[2]), "2025-03-14T12:00:02Z,fired,,,stars=3");
}

TEST(ShiftLog, RefusesWhatIsNoLog) {
    EXPECT_EQ(readLog("").faults.at(0).slip, Slip::noHeader);
    EXPECT_EQ(readLog("a,b\n1,2\n").faults.at(0).slip, Slip::noHeader);
    EXPECT_EQ(readLog(log("")).faults.at(0).slip, Slip::empty);
    const auto read = readLog(log("2025-03-14T12:00:00Z,note,,,caf\xE9\n"));
    EXPECT_EQ(read.faults.at(0).slip, Slip::notUtf8);
    EXPECT_EQ(read.faults.at(0).line, 2u);
    EXPECT_EQ(read.faults.at(0).column, 32u);
}

TEST(ShiftLog, WritesWhatReadsBackTheSame) {
    const std::string rows = "2025-03-14T12:00:00.000001Z,syrup_pan,218.37,degF,\n"
                             "2025-03-14T12:00:01Z,stack,301.2,degC,probe=B\n"
                             "2025-03-14T12:00:02Z,pressure,29.91,inHg,\n"
                             "2025-03-14T12:00:03Z,tank_level,412.6,gal,probe=hand;by=Ada\n"
                             "2025-03-14T12:00:04Z,fired,41.5,lb,wood=ash;moisture=22;fire=big;inferred=yes;by=Ada;"
                             "entered=2025-03-14T12:10:04Z\n"
                             "2025-03-14T12:00:05Z,density_check,66.4,brix,with=refractometer;temp=180.5degF;cal="
                             "60degF;drawn=2025-03-14T11:59:00Z\n"
                             "2025-03-14T12:00:06Z,sap_in,120,gal,brix=2.1;temp=4.5degC;from=north tank\n"
                             "2025-03-14T12:00:07Z,note,,,\"foam, \"\"white\"\"; skimmed;by=Ada\"\n"
                             "2025-03-14T12:00:08Z,set,31.4159265359,ft2,key=syrup_pan_area\n"
                             "2025-03-14T12:00:09Z,alarm_shelved,10,min,name=sap_low\n"
                             "2025-03-14T12:00:10Z,crew,,,\"off=\"\"Ann; Bo\"\"\"\n"
                             "2025-03-14T12:00:11Z,defoamer,2,,\n"
                             "2025-03-14T12:00:12Z,clock_step,-3600,s,\n";
    const auto read = readLog(log(rows));
    for (const Fault& fault : read.faults)
        ADD_FAILURE() << sentence(fault, "log");
    EXPECT_EQ(writeLog(read.facts), log(rows));
    EXPECT_EQ(readLog(writeLog(read.facts)).facts, read.facts);
}

// However many decimals it had: those of four and fewer go another way than the rest.
TEST(ShiftLog, WritesANumberAsItWasTyped) {
    for (const Unit unit : {Unit::degC, Unit::degF, Unit::K, Unit::kPa, Unit::inHg, Unit::mm, Unit::gal, Unit::L})
        for (const char* typed : {"0", "0.5", "-0.5", "1", "-40", "3.1416", "3.14159", "218.37", "218.37005", "99.9999",
                                  "99.99999", "1234.5678", "65535", "99999.9999", "1e+15"}) {
            const Fact fact{Instant{}, Reading{Series::syrup_pan, toSi(*numberIn(typed), unit), unit, ""}};
            const auto text = rowOf(fact);
            EXPECT_EQ(text.substr(31, text.find(',', 31) - 31), typed) << nameOf(unit);
        }
}

TEST(ShiftLog, KeepsEveryBitOfAComputedValue) {
    for (const Unit unit : {Unit::degC, Unit::kPa, Unit::K, Unit::mm, Unit::L}) {
        const Fact fact{Instant{}, Reading{Series::syrup_pan, 377.0 + 1.0 / 3, unit, ""}};
        const auto text = rowOf(fact);
        const auto number = numberIn(text.substr(31, text.find(',', 31) - 31));
        ASSERT_TRUE(number) << text;
        EXPECT_EQ(toSi(*number, unit), 377.0 + 1.0 / 3) << text;
    }
}

TEST(ShiftLog, ANoteThatLooksLikeADetailComesBack) {
    for (const auto* text : {"by=nobody", "went;by=bus", "\"quoted\"", "\"half", "a=b;c", ""}) {
        const Fact fact{Instant{}, Note{text}, "Ada"};
        EXPECT_EQ(std::get<Fact>(factOfLine(rowOf(fact))), fact) << rowOf(fact);
        const Fact anonymous{Instant{}, Note{text}};
        EXPECT_EQ(std::get<Fact>(factOfLine(rowOf(anonymous))), anonymous) << rowOf(anonymous);
    }
}

TEST(ShiftLog, AnEmptyTimeMeansNowWhereNowIsKnown) {
    const Instant now = instantIn("2025-03-14T12:00:00Z").value();
    EXPECT_EQ(std::get<Fact>(factOfLine(",lit,,,", 1, now)).at, now);
    EXPECT_EQ(std::get<Fault>(factOfLine(",lit,,,", 7)).slip, Slip::time);
    EXPECT_EQ(std::get<Fault>(factOfLine(",lit,,,", 7)).line, 7u);
}

TEST(ShiftLog, OrdersEqualTimesAsTheFileDoes) {
    const auto read = readLog(
        log("2025-03-14T12:00:01Z,draw_close,,,\n2025-03-14T12:00:00Z,draw_open,,,\n2025-03-14T12:00:00Z,lit,,,\n"));
    EXPECT_TRUE(std::holds_alternative<DrawOpened>(only(read).what));
    EXPECT_TRUE(std::holds_alternative<Lit>(read.facts.at(1).what));
}

// What a file may ask of the program is bounded, and the row that goes over the bound is named.
TEST(ShiftLog, RefusesYearsThatNoShiftIsIn) {
    for (const char* time : {"1899-12-31T23:59:59Z", "2201-01-01T00:00:00Z", "9226-03-14T18:00:00Z",
                             "0001-01-01T00:00:00Z", "1900-01-01T00:00:00+14:00", "2200-12-31T23:00:00-02:00"}) {
        const auto read = readLog(log("2025-03-14T18:00:00Z,lit,,,\n" + std::string{time} + ",fired,,,\n"));
        ASSERT_EQ(read.faults.size(), 1U) << time;
        EXPECT_EQ(sentence(read.faults[0], "a.csv"),
                  "a.csv:3:1: time " + std::string{time} + " cannot be: it must be 1900 to 2200.");
    }
    EXPECT_TRUE(readLog(log("1900-01-01T00:00:00Z,lit,,,\n")).faults.empty());
    EXPECT_TRUE(readLog(log("2200-12-31T23:59:59Z,lit,,,\n")).faults.empty());
    EXPECT_EQ(readLog(log("2025-03-14T18:00:00Z,fired,,,entered=9999-01-01T00:00:00Z\n")).faults.size(), 1U);
    EXPECT_EQ(readLog(log("2025-03-14T18:00:00Z,density_check,60,brix,drawn=0001-01-01T00:00:00Z\n")).faults.size(),
              1U);
}

TEST(ShiftLog, RefusesARowThatLiesAMonthFromTheOthers) {
    const auto read = readLog(log("2025-03-14T18:00:00Z,lit,,,\n2025-04-13T18:00:00Z,fired,,,\n"
                                  "2025-04-14T18:00:01Z,note,,,x\n2025-05-14T18:00:01Z,note,,,y\n"));
    ASSERT_EQ(read.faults.size(), 1U);
    EXPECT_EQ(read.faults[0].slip, Slip::span);
    EXPECT_EQ(read.faults[0].line, 4U);
    EXPECT_EQ(sentence(read.faults[0], "a.csv"),
              "a.csv:4:1: 2025-04-14T18:00:01Z is more than 31 days from another row. A log is one shift: put this row "
              "right, or into a log of its own.");
}

TEST(ShiftLog, RefusesMoreNamesOfProbesThanAnyRigHas) {
    std::string rows;
    for (int i = 0; i < 3000; ++i)
        rows += "2025-03-14T18:00:00Z,syrup_pan,100,degC,probe=p" + std::to_string(i) + "\n";
    const auto read = readLog(log(rows));
    ASSERT_EQ(read.faults.size(), 1U);
    EXPECT_EQ(read.faults[0].slip, Slip::probes);
    EXPECT_EQ(read.faults[0].line, 66U);
    EXPECT_EQ(read.faults[0].given, "p64");
}

TEST(ShiftLog, RefusesARowThatIsTooLongAndReadsNoFurther) {
    const std::string fits(65000, 'x'), over(70000, 'x');
    EXPECT_TRUE(readLog(log("2025-03-14T18:00:00Z,note,,," + fits + "\n")).faults.empty());
    for (const std::string& row : {"2025-03-14T18:00:01Z,note,,," + over,
                                   "2025-03-14T18:00:01Z,note,,,\"" + over + "\"", std::string(70000, ',')}) {
        const auto read = readLog(log("2025-03-14T18:00:00Z,lit,,,\n" + row + "\n2025,nonsense\n"));
        ASSERT_EQ(read.faults.size(), 1U);
        EXPECT_EQ(sentence(read.faults[0], "a.csv"),
                  "a.csv:3: the row is longer than 65536 bytes, so what follows was not read. End each row with a line "
                  "end, and close each quote.");
        const auto typed = factOfLine(row);
        ASSERT_TRUE(std::holds_alternative<Fault>(typed));
        EXPECT_EQ(std::get<Fault>(typed).slip, Slip::rowLength);
    }
}

TEST(ShiftLog, RefusesANumberThatNoInstrumentCounts) {
    for (const char* row : {"pressure,1e308,kPa", "tank_level,-2e9,gal", "stack,1e10,degF"})
        EXPECT_EQ(readLog(log("2025-03-14T18:00:00Z," + std::string{row} + ",\n")).faults.at(0).slip, Slip::outOfRange)
            << row;
    EXPECT_TRUE(readLog(log("2025-03-14T18:00:00Z,stack,65535,degC,\n")).faults.empty()) << "a broken probe's night";
}

} // namespace
} // namespace panside
