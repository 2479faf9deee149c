#include "ui/paperlog/paper_time.h"

#include "core/boil/shift_log.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

const QTimeZone newYork{"America/New_York"};

std::string momentOf(const char* typed, QDate date, const QTimeZone& zone, const char* above = nullptr) {
    const auto time = paperTimeIn(QString::fromUtf8(typed));
    if (!time)
        return "no time";
    const auto moment =
        paperMoment(*time, date, zone, above ? std::optional{*instantIn(above)} : std::optional<Instant>{});
    return std::holds_alternative<Instant>(moment) ? textOf(std::get<Instant>(moment)) : "not shown";
}

TEST(PaperTime, IsReadAsPeopleWriteIt) {
    const struct {
        const char* text;
        PaperTime time;
    } written[] = {{"9:40p", {21, 40, false}}, {"9:40 pm", {21, 40, false}}, {"9.40 P.M.", {21, 40, false}},
                   {"940", {9, 40, true}},     {"21:40", {21, 40, false}},   {"2140", {21, 40, false}},
                   {"21h40", {21, 40, false}}, {"9 h 40", {9, 40, false}},   {"12a", {0, 0, false}},
                   {"12:05p", {12, 5, false}}, {"noon", {12, 0, false}},     {"09:40", {9, 40, false}},
                   {"7", {7, 0, true}},        {"00:10", {0, 10, false}}};
    for (const auto& [text, time] : written)
        EXPECT_EQ(paperTimeIn(QString::fromUtf8(text)), std::optional{time}) << text;
    for (const char* text : {"", "25:00", "9:61", "21:40p", "0:30a", "soon", "9:4", "12345"})
        EXPECT_FALSE(paperTimeIn(QString::fromUtf8(text))) << text;
}

TEST(PaperTime, LiesNearTheRowAboveAndCrossesMidnight) {
    const QDate date{2026, 2, 28}; // and the month
    const QTimeZone utc = QTimeZone::utc();
    EXPECT_EQ(momentOf("6:30p", date, utc), "2026-02-28T18:30:00Z");
    EXPECT_EQ(momentOf("705", date, utc, "2026-02-28T18:30:00Z"), "2026-02-28T19:05:00Z"); // nobody wrote p
    EXPECT_EQ(momentOf("1215", date, utc, "2026-02-28T23:50:00Z"), "2026-03-01T00:15:00Z");
    EXPECT_EQ(momentOf("12:15a", date, utc, "2026-02-28T23:50:00Z"), "2026-03-01T00:15:00Z");
    EXPECT_EQ(momentOf("940", date, utc, "2026-02-28T22:00:00Z"), "2026-02-28T21:40:00Z"); // a row out of order
    EXPECT_EQ(momentOf("5:30a", date, utc, "2026-02-28T16:00:00Z"), "2026-03-01T05:30:00Z");
}

// In the United States clocks go from 2 to 3 a.m. on the second Sunday of March (Energy Policy Act of 2005, section
// 110): on 8 March 2026 there is no half past two, and three is an hour after a quarter to two and a bit.
TEST(PaperTime, KnowsTheNightOnWhichClocksGoForward) {
    const QDate date{2026, 3, 7};
    EXPECT_EQ(momentOf("11:30p", date, newYork), "2026-03-08T04:30:00Z");
    EXPECT_EQ(momentOf("1:45a", date, newYork, "2026-03-08T04:30:00Z"), "2026-03-08T06:45:00Z");
    EXPECT_EQ(momentOf("2:30a", date, newYork, "2026-03-08T06:45:00Z"), "not shown");
    EXPECT_EQ(momentOf("3:10a", date, newYork, "2026-03-08T06:45:00Z"), "2026-03-08T07:10:00Z");
}

// On 1 November 2026 the hour from 1 to 2 comes twice.
TEST(PaperTime, TakesTheSecondOfTwoWhenTheFirstWasBefore) {
    const QDate date{2026, 10, 31};
    EXPECT_EQ(momentOf("1:30a", date, newYork, "2026-11-01T04:50:00Z"), "2026-11-01T05:30:00Z");
    EXPECT_EQ(momentOf("1:10a", date, newYork, "2026-11-01T05:30:00Z"), "2026-11-01T06:10:00Z");
}

TEST(PaperTime, AnotherZoneThanTheMachines) {
    EXPECT_EQ(momentOf("9:40p", {2026, 3, 14}, QTimeZone{"America/Winnipeg"}), "2026-03-15T02:40:00Z");
}

} // namespace
} // namespace panside
