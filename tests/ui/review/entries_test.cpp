#include "core/boil/shift_log.h"
#include "ui/paperlog/paper_row.h"
#include "ui/review/entries_pane.h"
#include "ui/review/review_screen.h"

#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

Fact fact(const char* row) { return std::get<Fact>(factOfLine(row)); }

std::string corrected(const char* old, const PaperRow& row) {
    const auto read = readCorrection(row, fact(old), WallClock{}, Units::us);
    return read.fact ? rowOf(*read.fact) : "wrong at " + std::to_string(read.column);
}

TEST(Correction, KeepsTheSecondsWhereTheTimeIsLeftAndWhatPaperHasNoRoomFor) {
    EXPECT_EQ(
        corrected("2026-03-14T18:10:41Z,fired,400,lb,wood=maple;moisture=22", {"18:10", "fired", "40 lb", "maple", ""}),
        "2026-03-14T18:10:41Z,fired,40,lb,wood=maple;moisture=22");
    EXPECT_EQ(corrected("2026-03-14T18:10:00Z,sap_in,4000,L,brix=2.1;temp=3degC;from=north lines",
                        {"18:10", "sap in", "400 L", "2.3%; 3 C", "Odile"}),
              "2026-03-14T18:10:00Z,sap_in,400,L,brix=2.3;temp=3degC;from=north lines;by=Odile");
    EXPECT_EQ(corrected("2026-03-14T20:15:00Z,density_check,76.9,brix,temp=205degF;cal=20degC",
                        {"20:15", "hydrometer", "66.9", "205 F", ""}),
              "2026-03-14T20:15:00Z,density_check,66.9,brix,temp=205degF;cal=20degC");
}

TEST(Correction, MeansTheMomentNearTheOldOneAcrossMidnight) {
    EXPECT_EQ(corrected("2026-03-15T00:10:00Z,lit,,,", {"23:50", "fire lit", "", "", ""}),
              "2026-03-14T23:50:00Z,lit,,,");
    EXPECT_EQ(corrected("2026-03-14T23:50:00Z,lit,,,", {"0:10", "fire lit", "", "", ""}),
              "2026-03-15T00:10:00Z,lit,,,");
    EXPECT_EQ(corrected("2026-03-14T22:41:10Z,lit,,,", {"10:40", "fire lit", "", "", ""}),
              "2026-03-14T22:40:00Z,lit,,,");
}

TEST(Correction, GoesByTheClockThatHungThereThen) {
    WallClock ahead;
    ahead.moved(*instantIn("2026-03-14T12:00:00Z"), Duration{3600});
    const Fact old = fact("2026-03-14T18:10:00Z,lit,,,");
    ASSERT_EQ(paperRowOf(old, ahead)->time, QStringLiteral("19:10"));
    EXPECT_EQ(readCorrection({"19:20", "fire lit", "", "", ""}, old, ahead, Units::us).fact->at,
              *instantIn("2026-03-14T18:20:00Z"));
}

TEST(Correction, SaysWhichFieldIsWrong) {
    EXPECT_EQ(corrected("2026-03-14T18:10:00Z,fired,40,lb,", {"18:10", "fired", "40 gal", "", ""}), "wrong at 2");
    EXPECT_EQ(corrected("2026-03-14T18:10:00Z,fired,40,lb,", {"noonish", "fired", "40", "", ""}), "wrong at 0");
}

// "1,200 L" came back as one litre and a fifth.
TEST(Correction, AThousandIsWrittenSoThatItReadsBack) {
    QLocale::setDefault(QLocale{QStringLiteral("en_US")});
    const Fact sap = fact("2026-03-14T18:10:00Z,sap_in,1200,L,");
    const auto row = paperRowOf(sap, WallClock{});
    EXPECT_EQ(row->figure, QStringLiteral("1200 L"));
    QLocale::setDefault(QLocale::c());
}

std::vector<Boil::Entry> deeds() {
    return {{1, fact("2026-03-14T18:00:00Z,set,18,kg,key=load_mass")},
            {2, fact("2026-03-14T18:00:00Z,lit,,,by=Odile")},
            {5, fact("2026-03-14T18:10:00Z,fired,40,lb,entered=2026-03-15T08:12:00Z")},
            {6, fact("2026-03-14T18:30:00Z,fired,41,lb,")}};
}
std::vector<Journal::Withdrawn> old() {
    return {{{3, fact("2026-03-14T18:10:00Z,fired,400,lb,")}, *instantIn("2026-03-15T08:12:00Z"), {}},
            {{4, fact("2026-03-14T18:20:00Z,draw_open,,,")}, *instantIn("2026-03-14T18:20:09Z"), {}}};
}

TEST(EntryLines, TheOldEntryStaysBeforeWhatStandsNowAndSaysSo) {
    const auto lines = entryLines(deeds(), old(), WallClock{}, Units::us);
    ASSERT_EQ(lines.size(), 5U); // the setting that the shift began with is nobody's entry
    EXPECT_EQ(lines[0].who, QStringLiteral("Odile"));
    EXPECT_FALSE(lines[1].stands);
    EXPECT_EQ(lines[1].fate, QStringLiteral("corrected at 08:12: 18:10, fired, 40\u00a0lb"));
    EXPECT_TRUE(lines[2].stands);
    EXPECT_EQ(lines[2].fate, QStringLiteral("entered at 08:12"));
    EXPECT_EQ(lines[3].fate, QStringLiteral("taken back at 18:20"));
}

class CorrectionByKeys : public ::testing::Test {
protected:
    CorrectionByKeys() {
        screen_.wear(Dress{});
        screen_.resize(1366, 768);
        screen_.show();
        QObject::connect(&screen_, &ReviewScreen::entriesWanted, &screen_,
                         [this](ShiftId) { screen_.showEntries(entryLines(deeds(), old(), WallClock{}, Units::us)); });
        QObject::connect(&screen_, &ReviewScreen::correctionWanted, &screen_,
                         [this](ShiftId shift, FactId id, const std::optional<Fact>& instead) {
                             wanted_.push_back({shift, id, instead ? rowOf(*instead) : std::string{"-"}});
                         });
        Boil boil;
        for (auto& [id, entry] : deeds())
            boil.add(id, entry);
        screen_.showShift(shift_, boil.fold(), QStringLiteral("a night"), Units::us);
    }
    void list(Qt::Key key) { QTest::keyClick(find<QTableWidget>("entryList"), key); }
    template <class Widget>
    Widget* find(const char* name) {
        return screen_.findChild<Widget*>(QString::fromLatin1(name));
    }
    struct Wanted {
        ShiftId shift;
        FactId fact;
        std::string row;
        bool operator==(const Wanted&) const = default;
    };
    const ShiftId shift_ = *instantIn("2026-03-14T18:00:00Z");
    ReviewScreen screen_;
    std::vector<Wanted> wanted_;
};

TEST_F(CorrectionByKeys, EnterOpensAndEnterKeepsWhatWasTyped) {
    screen_.turn(Action::nightEntries);
    list(Qt::Key_Down);
    list(Qt::Key_Down);
    list(Qt::Key_Return);
    auto* figure = find<QLineEdit>("entryFigure");
    ASSERT_TRUE(figure->isVisible());
    EXPECT_EQ(figure->text(), QStringLiteral("40 lb"));
    figure->selectAll();
    QTest::keyClicks(figure, QStringLiteral("44 gal"));
    QTest::keyClick(figure, Qt::Key_Return);
    EXPECT_TRUE(wanted_.empty()); // a load is no volume
    EXPECT_TRUE(find<QLabel>("entryAnswer")->text().startsWith(QStringLiteral("not yet: ")));
    figure->selectAll();
    QTest::keyClicks(figure, QStringLiteral("44 lb"));
    QTest::keyClick(figure, Qt::Key_Return);
    ASSERT_EQ(wanted_.size(), 1U);
    EXPECT_EQ(wanted_[0].fact, 5);
    EXPECT_EQ(wanted_[0].shift, shift_);
    EXPECT_TRUE(wanted_[0].row.starts_with("2026-03-14T18:10:00Z,fired,44,lb,")) << wanted_[0].row;
}

TEST_F(CorrectionByKeys, DeleteAsksOnceAndTakesBackTheSecondTime) {
    screen_.turn(Action::nightEntries);
    list(Qt::Key_Delete);
    EXPECT_TRUE(wanted_.empty());
    EXPECT_TRUE(find<QLabel>("entryAnswer")->text().contains(QStringLiteral("fire lit")));
    list(Qt::Key_Delete);
    EXPECT_EQ(wanted_, (std::vector<Wanted>{{shift_, 2, "-"}}));
}

TEST_F(CorrectionByKeys, WhatWasPutRightAlreadyCannotBeOpened) {
    screen_.turn(Action::nightEntries);
    list(Qt::Key_Down);
    list(Qt::Key_Return);
    EXPECT_FALSE(find<QLineEdit>("entryFigure")->isVisible());
    list(Qt::Key_Delete);
    list(Qt::Key_Delete);
    EXPECT_TRUE(wanted_.empty());
}

TEST_F(CorrectionByKeys, EscapeLeavesTheFieldsThenTheListAndChangesNothing) {
    screen_.turn(Action::nightEntries);
    list(Qt::Key_Return);
    QTest::keyClick(find<QLineEdit>("entryFigure"), Qt::Key_Escape);
    EXPECT_FALSE(find<QLineEdit>("entryFigure")->isVisible());
    EXPECT_TRUE(find<QTableWidget>("entryList")->isVisible());
    list(Qt::Key_Escape);
    EXPECT_TRUE(find<QTableView>("shifts")->isVisible());
    EXPECT_TRUE(wanted_.empty());
}

TEST(LaidOver, FromFireLitFromFirstBoilOrFromTheLastDraw) {
    ShiftTrace trace;
    EXPECT_FALSE(trace.momentOf(LaidFrom::lit));
    trace.add(fact("2026-03-14T18:00:00Z,lit,,,"));
    trace.add(RisePoint{*instantIn("2026-03-14T18:10:00Z"), -40.F, Trust::good, false});
    trace.add(RisePoint{*instantIn("2026-03-14T18:20:00Z"), 0.2F, Trust::doubtful, false});
    EXPECT_FALSE(trace.momentOf(LaidFrom::boil)); // a reading in doubt is no boil
    trace.add(RisePoint{*instantIn("2026-03-14T18:21:00Z"), 0.2F, Trust::good, false});
    trace.add(RisePoint{*instantIn("2026-03-14T18:30:00Z"), 2.F, Trust::good, false});
    EXPECT_FALSE(trace.momentOf(LaidFrom::lastDraw));
    trace.add(fact("2026-03-14T19:00:00Z,draw_open,,,"));
    trace.add(fact("2026-03-14T19:02:00Z,draw_close,,,"));
    trace.add(fact("2026-03-14T20:00:00Z,draw_open,,,"));
    EXPECT_EQ(trace.momentOf(LaidFrom::lit), instantIn("2026-03-14T18:00:00Z"));
    EXPECT_EQ(trace.momentOf(LaidFrom::boil), instantIn("2026-03-14T18:21:00Z"));
    EXPECT_EQ(trace.momentOf(LaidFrom::lastDraw), instantIn("2026-03-14T20:00:00Z"));
}

TEST_F(CorrectionByKeys, ATurnsTheMomentThatShiftsAreLaidOverFrom) {
    Boil other;
    other.add(1, fact("2026-03-12T17:00:00Z,lit,,,"));
    screen_.layOver(*instantIn("2026-03-12T17:00:00Z"), other.fold());
    auto* shifts = find<QTableView>("shifts");
    QTest::keyClick(shifts, Qt::Key_L);
    // It never boiled: that is said, and nothing is drawn for it.
    EXPECT_TRUE(find<QLabel>("said")->text().startsWith(QStringLiteral("Not drawn, as it has no such moment")));
    QTest::keyClick(shifts, Qt::Key_L);
    QTest::keyClick(shifts, Qt::Key_L);
    EXPECT_EQ(find<QLabel>("said")->text(), QStringLiteral("From fire lit."));
}

TEST(ReviewOpening, AsksForTheNewestNightAtOnceAndForNoOtherAfterwards) {
    ReviewScreen screen;
    std::vector<ShiftId> wanted;
    QObject::connect(&screen, &ReviewScreen::openWanted, [&](ShiftId shift) {
        wanted.push_back(shift);
        screen.showShift(shift, Boil{}, QString{}, Units::us);
    });
    const ShiftId newest = *instantIn("2026-03-14T18:00:00Z"), older = *instantIn("2026-03-12T18:00:00Z");
    screen.display({ReviewRow{.shift = newest, .cells = {QStringLiteral("new")}, .open = false},
                    ReviewRow{.shift = older, .cells = {QStringLiteral("old")}, .open = false}},
                   Units::us);
    EXPECT_EQ(wanted, std::vector<ShiftId>{newest});
    screen.display({ReviewRow{.shift = newest, .cells = {QStringLiteral("new")}, .open = true}}, Units::us);
    EXPECT_EQ(wanted.size(), 1U);
}

} // namespace
} // namespace panside
