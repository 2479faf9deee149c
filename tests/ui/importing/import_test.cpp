#include "core/boil/shift_log.h"
#include "ui/importing/import_screen.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>
#include <QTest>
#include <QTextDocument>
#include <gtest/gtest.h>

namespace panside {
namespace {

QString plain(const QString& html) {
    QTextDocument document;
    document.setHtml(html);
    return document.toPlainText();
}

ImportState finished() {
    Imported added;
    added.outcome = ImportOutcome::added;
    added.shift = *instantIn("2026-03-14T18:05:00Z");
    added.facts = 4411;
    Imported faulty;
    faulty.faultCount = 9;
    for (std::size_t line = 3; line < 9; ++line)
        faulty.faults.push_back({Slip::number, line, 0, "value", "hot"});
    Imported twice;
    twice.outcome = ImportOutcome::twoShifts;
    twice.endedAt = *instantIn("2026-03-14T23:00:00Z");
    twice.litAgain = *instantIn("2026-03-15T17:00:00Z");
    ImportState state;
    state.lines = {{"good.csv", added, {}, false, 2},
                   {"bad.csv", faulty, {}, false, 0},
                   {"two.csv", twice, {}, false, 0},
                   {"logger.csv", {}, {}, true, 0}};
    return state;
}

TEST(ImportWords, SayWhatCameInAndWhatWasRefusedAndWhy) {
    const QString words = plain(importWords(finished()));
    EXPECT_TRUE(words.contains(QStringLiteral("Shifts added: 1. Facts in them: 4411. There already: 0. Refused: 3.")))
        << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("good.csv: added as shift Sat 14 Mar 2026, 18:05; facts: 4411")));
    EXPECT_TRUE(words.contains(QStringLiteral("Cells without a reading, left out: 2.")));
    EXPECT_TRUE(words.contains(QStringLiteral("line 3: value \"hot\" is not a number."))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("and 3 more")));
    EXPECT_TRUE(words.contains(QStringLiteral("two shifts in one log. One ends Sat 14 Mar 2026, 23:00")));
    EXPECT_TRUE(words.contains(QStringLiteral("say with M what its columns are")));
}

TEST(ImportWords, StoppedByHandSaysThatNothingIsHalfDone) {
    ImportState state = finished();
    state.lines[1].imported->outcome = ImportOutcome::cancelled;
    state.lines[1].imported->faultCount = 0;
    state.stopped = true;
    const QString words = plain(importWords(state));
    EXPECT_TRUE(words.contains(QStringLiteral("Refused: 2."))); // what was stopped was not refused
    EXPECT_TRUE(words.contains(QStringLiteral("nothing of the one being read is in the journal")));
    EXPECT_TRUE(words.contains(QStringLiteral("bad.csv: stopped; nothing of it was taken")));
}

TEST(ImportWords, AtWorkThereIsOneKeyAndItStops) {
    ImportState state = finished();
    state.working = true;
    ASSERT_EQ(importKeys(state).size(), 1U);
    EXPECT_EQ(importKeys(state)[0].name, QStringLiteral("stop"));
    state.working = false;
    EXPECT_EQ(importKeys(state).back().name, QStringLiteral("map"));
}

const std::string table = "stamp;pan;flue\n14.03.2026 18:00:00;99,5;212,5\n14.03.2026 18:00:10;99,6;213\n";

class Mapping : public ::testing::Test {
protected:
    Mapping() {
        screen_.resize(1366, 768);
        screen_.wear(Dress{});
        screen_.show();
        screen_.askMap(QStringLiteral("box.csv"), table, proposedMap(table, "UTC"), Units::metric);
        QObject::connect(&screen_, &ImportScreen::mapped, &screen_, [this](const ForeignMap& map) { kept_ = map; });
    }
    QComboBox* box(const char* name) {
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        return screen_.findChild<QComboBox*>(QString::fromLatin1(name));
    }
    QString answer() { return screen_.findChild<QLabel*>(QStringLiteral("mapAnswer"))->text(); }
    void pressOn(QWidget* on, Qt::Key key, Qt::KeyboardModifiers held = Qt::NoModifier) {
        QTest::keyClick(on, key, held);
    }
    // Down from where the list stands to a reading of this name, as a person would.
    void choose(QComboBox* of, const QString& word) {
        while (of->currentText() != word && of->currentIndex() + 1 < of->count())
            pressOn(of, Qt::Key_Down);
    }
    ImportScreen screen_;
    std::optional<ForeignMap> kept_;
};

TEST_F(Mapping, IsNotKeptBeforeAColumnReadsSomething) {
    EXPECT_TRUE(answer().startsWith(QStringLiteral("not yet: Say of one column at least"))) << answer().toStdString();
    pressOn(box("is0"), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(kept_);
}

TEST_F(Mapping, ByKeysTheColumnsGetTheirReadingsAndUnits) {
    choose(box("is1"), roleWord({ColumnRole::Kind::reading, Series::syrup_pan}));
    choose(box("is2"), roleWord({ColumnRole::Kind::reading, Series::stack}));
    choose(box("unit2"), symbolOf(Unit::degF));
    EXPECT_TRUE(answer().contains(QStringLiteral("Sat 14 Mar 2026 18:00:00"))) << answer().toStdString();
    EXPECT_TRUE(answer().contains(QStringLiteral("99.5"))) << answer().toStdString();
    // The table would have taken it for its own.
    screen_.findChild<QTableWidget*>(QStringLiteral("columns"))->setCurrentCell(2, 3);
    pressOn(box("unit2"), Qt::Key_Return, Qt::ControlModifier);
    ASSERT_TRUE(kept_);
    EXPECT_EQ(kept_->columns,
              (std::vector<ForeignColumn>{{1, Series::syrup_pan, Unit::degC}, {2, Series::stack, Unit::degF}}));
    EXPECT_EQ(kept_->form, TimeForm::dayFirst);
}

TEST_F(Mapping, AWrongFormOfTimeOrZoneIsSaidAtOnce) {
    choose(box("is1"), roleWord({ColumnRole::Kind::reading, Series::syrup_pan}));
    while (box("timeForm")->currentIndex() > 0)
        pressOn(box("timeForm"), Qt::Key_Up);
    EXPECT_TRUE(answer().startsWith(QStringLiteral("not yet: line 2: column 1=\"14.03.2026 18:00:00\" cannot be read")))
        << answer().toStdString();
    screen_.findChild<QLineEdit*>(QStringLiteral("mapZone"))->setText(QStringLiteral("Sugarhouse"));
    EXPECT_TRUE(answer().contains(QStringLiteral("is not a time zone"))) << answer().toStdString();
    pressOn(box("is0"), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_FALSE(kept_);
}

// Clocks of America/Toronto went from 2 to 3 on 8 March 2026 and from 2 back to 1 on 1 November 2026 (IANA time zone
// database).
TEST(ZoneClocks, KnowTheNightsOnWhichClocksChange) {
    const auto clock = zoneClock(QTimeZone{"America/Toronto"});
    EXPECT_TRUE(clock({2026, 3, 8, 2, 30, 0, 0}).empty());
    EXPECT_EQ(clock({2026, 3, 8, 3, 31, 5, 0}), std::vector<Instant>{*instantIn("2026-03-08T07:31:05Z")});
    EXPECT_EQ(clock({2026, 11, 1, 1, 20, 0, 0}),
              (std::vector<Instant>{*instantIn("2026-11-01T05:20:00Z"), *instantIn("2026-11-01T06:20:00Z")}));
}

} // namespace
} // namespace panside
