#include "core/journal/foreign_log.h"

#include "tests/core/journal/place.h"

namespace panside {
namespace {

// A clock that never changes, an hour and a half ahead of UTC.
std::vector<Instant> aheadClock(const ShownTime& shown) {
    using namespace std::chrono;
    const sys_days date{year{shown.year} / month{static_cast<unsigned>(shown.month)} /
                        day{static_cast<unsigned>(shown.day)}};
    return {date + hours{shown.hour} + minutes{shown.minute} + std::chrono::seconds{shown.second} - minutes{90}};
}

std::string timeText(const char* text, TimeForm form) {
    const auto time = foreignTimeIn(text, form);
    if (!time)
        return "none";
    if (const auto* moment = std::get_if<Instant>(&*time))
        return textOf(*moment);
    const auto& s = std::get<ShownTime>(*time);
    char out[64];
    std::snprintf(out, sizeof out, "%04d-%02d-%02d %02d:%02d:%02d.%06lld", s.year, s.month, s.day, s.hour, s.minute,
                  s.second, static_cast<long long>(s.microsecond));
    return out;
}

TEST(ForeignTime, ReadsTheFormsThatLoggersWrite) {
    EXPECT_EQ(timeText("2026-03-14 18:42:07", TimeForm::yearFirst), "2026-03-14 18:42:07.000000");
    EXPECT_EQ(timeText("2026/03/14T18:42:07.25", TimeForm::yearFirst), "2026-03-14 18:42:07.250000");
    EXPECT_EQ(timeText("2026-03-14T18:42:07-04:00", TimeForm::yearFirst), "2026-03-14T22:42:07Z");
    EXPECT_EQ(timeText("2026-03-14T18:42Z", TimeForm::yearFirst), "2026-03-14T18:42:00Z");
    EXPECT_EQ(timeText("3/14/2026 6:42:07 PM", TimeForm::monthFirst), "2026-03-14 18:42:07.000000");
    EXPECT_EQ(timeText("3/14/26, 12:05 a.m.", TimeForm::monthFirst), "2026-03-14 00:05:00.000000");
    EXPECT_EQ(timeText("14.03.2026 18:42", TimeForm::dayFirst), "2026-03-14 18:42:00.000000");
}

// IEEE Std 1003.1 (POSIX), seconds since the Epoch: 1 000 000 000 s is 2001-09-09T01:46:40Z.
TEST(ForeignTime, CountsSecondsSinceTheEpoch) {
    EXPECT_EQ(timeText("1000000000", TimeForm::unixSeconds), "2001-09-09T01:46:40Z");
    EXPECT_EQ(timeText("1000000000500", TimeForm::unixMilliseconds), "2001-09-09T01:46:40.5Z");
    EXPECT_EQ(timeText("-5", TimeForm::unixSeconds), "none");
    EXPECT_EQ(timeText("nan", TimeForm::unixSeconds), "none");
    EXPECT_EQ(timeText("1000000000500", TimeForm::unixSeconds), "none"); // milliseconds taken for seconds
}

TEST(ForeignTime, ADayThatIsNotInTheCalendarIsNoTime) {
    EXPECT_EQ(timeText("31.02.2026 18:42", TimeForm::dayFirst), "none");
    EXPECT_EQ(timeText("14/3/2026 6:42 PM", TimeForm::monthFirst), "none");   // there is no month 14
    EXPECT_EQ(timeText("257/14/2026 6:42 PM", TimeForm::monthFirst), "none"); // 257 is no other way to write 1
    EXPECT_EQ(timeText("2026-03-257 18:42", TimeForm::yearFirst), "none");
    EXPECT_EQ(timeText("2026-03-14 24:00:01", TimeForm::yearFirst), "none");
    EXPECT_EQ(timeText("2026-03-14", TimeForm::yearFirst), "none");
    EXPECT_EQ(timeText("3/14/2026 13:05 PM", TimeForm::monthFirst), "none");
}

const std::string loggerFile = "Station 4;Sugarhouse\n"
                               "Zeit;\"Pan; left\";Kamin;Anm.\n"
                               "14.03.2026 18:00:00;99,5;--;\n"
                               "14.03.2026 18:00:10;99,75;212,5;cold\n"
                               "14.03.2026 18:00:20;;213;\n";
ForeignMap loggerMap() {
    ForeignMap map = proposedMap(loggerFile, "Europe/Nowhere");
    map.probe = "box 4";
    map.columns = {{1, Series::syrup_pan, Unit::degC}, {2, Series::stack, Unit::degF}};
    return map;
}

TEST(ForeignMap, IsProposedFromTheFilesBeginningWithoutGuessingReadings) {
    const auto map = proposedMap(loggerFile, "Europe/Nowhere");
    EXPECT_EQ(map.delimiter, ';');
    EXPECT_EQ(map.heading, 2);
    EXPECT_EQ(map.time, 0);
    EXPECT_EQ(map.form, TimeForm::dayFirst);
    EXPECT_TRUE(map.decimalComma);
    EXPECT_TRUE(map.columns.empty());
    const auto sample = sampleOf(loggerFile, map.delimiter, map.heading);
    EXPECT_EQ(sample.heading, (std::vector<std::string>{"Zeit", "Pan; left", "Kamin", "Anm."}));
    ASSERT_EQ(sample.rows.size(), 3U);
    EXPECT_EQ(sample.rows[1][2], "212,5");
    EXPECT_EQ(sample.lines[1], 4);
}

TEST(ForeignMap, FindsDateAndTimeInColumnsOfTheirOwn) {
    const auto map = proposedMap("date,time,t1\n2026-03-14,18:00:00,99.5\n2026-03-14,18:00:10,99.6\n", "UTC");
    EXPECT_EQ(map.date, 0);
    EXPECT_EQ(map.time, 1);
    EXPECT_EQ(map.form, TimeForm::yearFirst);
    EXPECT_FALSE(map.decimalComma);
}

TEST(ForeignMap, ATableWithoutAHeadingBeginsWithItsFirstRow) {
    const auto map = proposedMap("1773513727\t99.5\t212\n1773513728\t99.6\t213\n", "UTC");
    EXPECT_EQ(map.heading, 0);
    EXPECT_EQ(map.delimiter, '\t');
    EXPECT_EQ(map.form, TimeForm::unixSeconds);
}

TEST(ForeignMap, IsRememberedAsText) {
    const auto map = loggerMap();
    EXPECT_EQ(foreignMapIn(textOf(map)), map);
    auto odd = map;
    odd.zone = "day-|-\"first"; // a zone that no clock has must not make the text unreadable
    EXPECT_TRUE(foreignMapIn(textOf(odd)));
    for (const char* broken :
         {"", "1|44", "2|44|point|1|0|-|0|UTC|", "1|44|point|1|0|-|9|UTC|", "1|44|point|1|0|-1|0|UTC|",
          "1|44|point|1|0|-|0|UTC||2:syrup_pan:kPa", "1|44|point|1|0|-|0|UTC||2:song:degC"})
        EXPECT_FALSE(foreignMapIn(broken)) << broken;
}

class ForeignImport : public JournalPlace {
protected:
    Imported import(const std::string& text, ForeignMap map, ZoneClock clock = aheadClock) {
        std::istringstream stream{text};
        ForeignRows rows{stream, std::move(map), std::move(clock)};
        const auto done = importLog(journal_, rows);
        blanks_ = rows.blanks();
        return done;
    }
    Journal journal_ = Journal::open(place());
    std::uint64_t blanks_ = 0;
};

TEST_F(ForeignImport, BecomesAShiftOfReadingsInTheUnitsOfItsColumns) {
    const auto done = import(loggerFile, loggerMap());
    ASSERT_EQ(done.outcome, ImportOutcome::added);
    EXPECT_EQ(blanks_, 2U);
    EXPECT_EQ(rowsOf(journal_, done.shift),
              (std::vector<std::string>{"2026-03-14T16:30:00Z,syrup_pan,99.5,degC,probe=box 4",
                                        "2026-03-14T16:30:10Z,syrup_pan,99.75,degC,probe=box 4",
                                        "2026-03-14T16:30:10Z,stack,212.5,degF,probe=box 4",
                                        "2026-03-14T16:30:20Z,stack,213,degF,probe=box 4"}));
    EXPECT_EQ(import(loggerFile, loggerMap()).outcome, ImportOutcome::alreadyThere);
}

TEST_F(ForeignImport, AFaultSaysLineAndColumnAndNothingIsKept) {
    auto text = loggerFile;
    text += "14.03.2026 18:00:30;hot;213;\n31.02.2026 18:00:40;99;213;\n14.03.2026 18:00:50;99\n";
    const auto done = import(text, loggerMap());
    EXPECT_EQ(done.outcome, ImportOutcome::faulty);
    ASSERT_EQ(done.faults.size(), 3U);
    EXPECT_EQ(sentence(done.faults[0], "box.csv"),
              "box.csv:6: column 2 \"hot\" is not a number. Write digits with a point, as in 210.5, or leave the "
              "field empty where the row needs none.");
    EXPECT_EQ(sentence(done.faults[1], "box.csv"),
              "box.csv:7: column 1=\"31.02.2026 18:00:40\" cannot be read. Write a time as in 14.03.2026 18:42:07, or "
              "choose another form.");
    EXPECT_EQ(sentence(done.faults[2], "box.csv"),
              "box.csv:8: row=\"2 cells\" cannot be read. Write 3 cells or more, as they are mapped.");
    EXPECT_TRUE(journal_.shifts().empty());
}

// On the second Sunday of March clocks go from 2 to 3; on the first of November the hour from 1 to 2 comes twice
// (US rule, 15 U.S.C. 260a).
TEST_F(ForeignImport, TheHourThatIsLeftOutIsAFaultAndTheOneThatComesTwiceIsTakenInOrder) {
    const auto clock = [](const ShownTime& shown) -> std::vector<Instant> {
        if (shown.hour == 2)
            return {};
        std::vector<Instant> moments = aheadClock(shown);
        if (shown.hour == 1)
            moments.push_back(moments[0] + std::chrono::hours{1});
        return moments;
    };
    const std::string twice = "t,p\n2026-11-01 01:30:00,99\n2026-11-01 01:50:00,99.1\n2026-11-01 01:10:00,99.2\n";
    ForeignMap map = proposedMap(twice, "America/New_York");
    map.columns = {{1, Series::syrup_pan, Unit::degC}};
    const auto done = import(twice, map, clock);
    ASSERT_EQ(done.outcome, ImportOutcome::added);
    EXPECT_EQ(rowsOf(journal_, done.shift)[2], "2026-11-01T00:40:00Z,syrup_pan,99.2,degC,");
    const auto left = import("t,p\n2026-03-08 02:30:00,99\n", map, clock);
    ASSERT_EQ(left.faults.size(), 1U);
    EXPECT_NE(sentence(left.faults[0], "f").find("clocks did not go forward"), std::string::npos);
}

TEST_F(ForeignImport, ATableLargerThanAPieceIsReadWhole) {
    std::string text = "t,p\n";
    for (int i = 0; i < 40'000; ++i)
        text += std::to_string(1'773'513'727 + i) + "," + std::to_string(90 + i % 10) + "\n";
    ForeignMap map = proposedMap(text, "UTC");
    map.columns = {{1, Series::syrup_pan, Unit::degC}};
    EXPECT_EQ(import(text, map).facts, 40'000U);
    EXPECT_EQ(import("t,p\n", map).outcome, ImportOutcome::faulty);
    EXPECT_EQ(import("t,p\n" + std::string(2'000'000, '7'), map).outcome, ImportOutcome::faulty);
}

} // namespace
} // namespace panside
