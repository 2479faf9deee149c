#include "ui/paperlog/paper_screen.h"

#include "core/boil/shift_log.h"
#include "tests/ui/frame/in_front.h"

#include <QApplication>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

const PaperDay paperNight{{2026, 3, 14}, QTimeZone::utc(), Units::us};

std::string rowFor(const PaperRow& row) {
    const auto read = readPaper({row}, paperNight).front();
    return read.fact ? rowOf(*read.fact) : "wrong at " + std::to_string(read.column);
}

TEST(PaperRows, BecomeFactsInTheUnitsAsWritten) {
    EXPECT_EQ(rowFor({"6:00p", "fire lit", "", "", "Odile"}), "2026-03-14T18:00:00Z,lit,,,by=Odile");
    EXPECT_EQ(rowFor({"6:10p", "fired", "40 lb", "maple", ""}), "2026-03-14T18:10:00Z,fired,40,lb,wood=maple");
    EXPECT_EQ(rowFor({"6:10p", "fired", "18,5kg", "", ""}), "2026-03-14T18:10:00Z,fired,18.5,kg,");
    EXPECT_EQ(rowFor({"8:10p", "drawn", "2.5 gal", "drum 3", ""}), "2026-03-14T20:10:00Z,draw_close,2.5,gal,to=drum 3");
    EXPECT_EQ(rowFor({"8:15p", "hydrometer", "66.9", "205 F", ""}),
              "2026-03-14T20:15:00Z,density_check,66.9,brix,temp=205degF");
    EXPECT_EQ(rowFor({"5p", "sap in", "400", "2.1%", ""}), "2026-03-14T17:00:00Z,sap_in,400,gal,brix=2.1");
    EXPECT_EQ(rowFor({"5p", "sap in", "400", "2.1%; 41 F; north bush", ""}),
              "2026-03-14T17:00:00Z,sap_in,400,gal,brix=2.1;temp=41degF;from=north bush");
    EXPECT_EQ(rowFor({"5p", "sap in", "400", "2.3%; 60 F; scale 38 F; north bush", ""}),
              "2026-03-14T17:00:00Z,sap_in,400,gal,brix=2.3;temp=60degF;cal=38degF;from=north bush");
    EXPECT_EQ(rowFor({"2p", "gathered", "120", "house tank; north run; 300 taps; 2.3%; 41 F; cal 38; cloudy", "Odile"}),
              "2026-03-14T14:00:00Z,gathered,120,gal,to=house tank;from=north run;taps=300;brix=2.3;cal=38degF;"
              "temp=41degF;clear=cloudy;by=Odile");
    EXPECT_EQ(rowFor({"5p", "sap tank", "300 gal", "", ""}), "2026-03-14T17:00:00Z,tank_level,300,gal,probe=hand");
    EXPECT_EQ(rowFor({"9p", "note", "", "smoke; look up", "Odile"}),
              "2026-03-14T21:00:00Z,note,,,smoke; look up;by=Odile");
}

TEST(PaperRows, SayWhatIsWrongInWhichField) {
    EXPECT_EQ(rowFor({"late", "fired", "", "", ""}), "wrong at 0");
    EXPECT_EQ(rowFor({"6p", "danced", "", "", ""}), "wrong at 1");
    EXPECT_EQ(rowFor({"6p", "fired", "a lot", "", ""}), "wrong at 2");
    EXPECT_EQ(rowFor({"6p", "fired", "40 gal", "", ""}), "wrong at 2");
    EXPECT_EQ(rowFor({"6p", "hydrometer", "166", "", ""}), "wrong at 2");
    EXPECT_EQ(rowFor({"6p", "hydrometer", "66", "warm", ""}), "wrong at 3");
    EXPECT_EQ(rowFor({"6p", "pan swapped", "", "east side", ""}), "wrong at 3");
}

// What the review hands to be corrected, typed back unchanged, is the same fact.
TEST(PaperRows, AFactOnPaperReadsBackAsItself) {
    for (const char* row :
         {"2026-03-14T18:10:00Z,fired,40,lb,wood=maple", "2026-03-14T20:10:00Z,draw_close,2.5,gal,to=drum 3",
          "2026-03-14T20:15:00Z,density_check,66.9,brix,temp=205degF", "2026-03-14T20:15:00Z,water_check,210.5,degF,",
          "2026-03-14T21:00:00Z,note,,,smoke",
          "2026-03-14T17:00:00Z,sap_in,400,gal,brix=2.3;temp=60degF;cal=38degF;from=bush",
          "2026-03-14T21:00:00Z,tank_level,300,gal,probe=hand", "2026-03-14T21:00:00Z,pan_swapped,,,by=Odile"}) {
        const auto fact = std::get<Fact>(factOfLine(row));
        const auto paper = paperRowOf(fact, WallClock{});
        ASSERT_TRUE(paper) << row;
        const auto read = readPaper({*paper}, paperNight).front();
        ASSERT_TRUE(read.fact) << row << ": " << read.words.toStdString();
        EXPECT_EQ(rowOf(*read.fact), row);
    }
}

struct Typing {
    PaperScreen screen;
    QTableWidget* table;
    Typing() : table{screen.findChild<QTableWidget*>(QStringLiteral("rows"))} {
        screen.wear({});
        screen.setUnits(Units::us);
        screen.setDay(paperNight.date, paperNight.zone);
        screen.resize(1366, 700);
        EXPECT_TRUE(inFront(screen));
        table->setFocus();
        table->setCurrentCell(0, 0);
    }
    void type(const char* text, Qt::Key then) {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the editor of the field before
        table->editItem(table->currentItem());
        auto* editor = table->viewport()->findChild<QLineEdit*>();
        ASSERT_TRUE(editor);
        QTest::keyClicks(editor, QString::fromUtf8(text));
        QTest::keyClick(editor, then);
        QCoreApplication::processEvents();
    }
};

TEST(PaperScreen, TabGoesToTheNextFieldAndEnterToTheNextRow) {
    Typing typing;
    typing.type("6:00p", Qt::Key_Tab);
    EXPECT_EQ(typing.table->currentColumn(), 1);
    typing.type("fire lit", Qt::Key_Return);
    EXPECT_EQ(typing.table->currentRow(), 1);
    EXPECT_EQ(typing.table->currentColumn(), 0);
    EXPECT_EQ(typing.screen.rows()[0], (PaperRow{"6:00p", "fire lit", "", "", ""}));
    EXPECT_TRUE(typing.table->item(0, 5)->text().contains(QStringLiteral("18:00")))
        << "shows what it will be written as";
}

TEST(PaperScreen, IsAFormWhoseLinesAreSeenByNightAndLightNoRoom) {
    PaperScreen screen;
    screen.wear({Measure{}, Look::night});
    screen.resize(1240, 520);
    screen.show();
    const auto* table = screen.findChild<QTableWidget*>(QStringLiteral("rows"));
    const QImage image = table->viewport()->grab().toImage();
    const Inks& inks = inksOf(Look::night);
    EXPECT_EQ(image.pixelColor(image.width() / 2, image.height() - 20), inks.panel);
    const int under = table->rowViewportPosition(0) + table->rowHeight(0) - 1;
    EXPECT_EQ(image.pixelColor(table->columnViewportPosition(1) + 20, under), inks.line);
}

TEST(PaperScreen, KeepsNothingWhileARowIsWrongAndGoesThere) {
    Typing typing;
    typing.table->item(0, 0)->setText(QStringLiteral("6:00p"));
    typing.table->item(0, 1)->setText(QStringLiteral("fired"));
    typing.table->item(0, 2)->setText(QStringLiteral("40 gal"));
    QSignalSpy kept{&typing.screen, &PaperScreen::keepWanted};
    typing.table->setCurrentCell(0, 0);
    QTest::keyClick(typing.table, Qt::Key_Return,
                    Qt::ControlModifier); // the table had taken it for its own key to edit
    EXPECT_EQ(kept.size(), 0);
    EXPECT_EQ(typing.table->currentColumn(), 2);
    EXPECT_TRUE(typing.screen.findChild<QLabel*>(QStringLiteral("said"))->text().contains(QStringLiteral("Row 1")));
    typing.table->item(0, 2)->setText(QStringLiteral("40 lb"));
    QTest::keyClick(&typing.screen, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(kept.size(), 1);
    EXPECT_EQ(rowOf(kept[0][0].value<std::vector<Fact>>().at(0)), "2026-03-14T18:00:00Z,fired,40,lb,");
}

} // namespace
} // namespace panside
