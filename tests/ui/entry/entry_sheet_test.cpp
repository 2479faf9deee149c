#include "ui/entry/entry_sheet.h"

#include "core/boil/shift_log.h"

#include <QAbstractButton>
#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMouseEvent>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant sheetNow = *instantIn("2026-03-14T22:42:00Z");

struct Sheet : testing::Test {
    QWidget window;
    EntrySheet sheet{&window};
    std::vector<Fact> kept;
    int left = 0;

    Sheet() {
        window.resize(1366, 768);
        window.show();
        QObject::connect(&sheet, &EntrySheet::kept, [this](const std::vector<Fact>& facts) { kept = facts; });
        QObject::connect(&sheet, &EntrySheet::left, [this] { ++left; });
    }
    void open(Action action, const Picture& picture = {}) {
        sheet.open(formFor(action, picture, Units::us, sheetNow), Units::us, WallClock{});
    }
    QString problem() { return sheet.findChild<QLabel*>(QStringLiteral("problem"))->text(); }
};

TEST_F(Sheet, EnterKeepsAFiringWithNothingTyped) {
    open(Action::fired);
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_TRUE(std::holds_alternative<Fired>(kept[0].what));
    EXPECT_FALSE(sheet.isVisible());
}

TEST_F(Sheet, DigitsGoToTheFieldThatMattersWithoutAClick) {
    open(Action::drawClose);
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("2.5"));
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Enter);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_NEAR(std::get<DrawClosed>(kept[0].what).volume->value.gallon(), 2.5, 1e-12);
}

TEST_F(Sheet, ThePadOnTheScreenTypesForAGlove) {
    open(Action::sapIn);
    for (const char* face : {"4", "0", "0"})
        QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("pad_") + QLatin1String(face)), Qt::LeftButton);
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("keep")), Qt::LeftButton);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_NEAR(std::get<SapIn>(kept[0].what).volume.value.gallon(), 400, 1e-9);
}

// The pad's keys once took the focus to the sheet, and each digit went to the first field.
TEST_F(Sheet, ThePadTypesIntoTheFieldThatNextChose) {
    open(Action::densityCheck);
    for (const char* face : {"6", "6", "next", "9", "7"})
        QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("pad_") + QLatin1String(face)), Qt::LeftButton);
    EXPECT_EQ(sheet.findChild<QLineEdit*>(QStringLiteral("reading"))->text(), QStringLiteral("66"));
    EXPECT_EQ(sheet.findChild<QLineEdit*>(QStringLiteral("cup"))->text(), QStringLiteral("97"));
}

TEST_F(Sheet, AGlovePutsInAPailThatThereIs) {
    EntryForm form = formFor(Action::drawClose, {}, Units::us, sheetNow);
    form.offer(QStringLiteral("to"), {QStringLiteral("pail 3"), QStringLiteral("drum 7")});
    sheet.open(form, Units::us, WallClock{});
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("2.5"));
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("offer_1")), Qt::LeftButton);
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(std::get<DrawClosed>(kept[0].what).to, "drum 7");
    EXPECT_NEAR(std::get<DrawClosed>(kept[0].what).volume->value.gallon(), 2.5, 1e-12);
}

EntryForm drawToldAgain(const char* volume) {
    EntryForm form = formFor(Action::drawClose, {}, Units::us, sheetNow);
    form.draws = {
        Fact{sheetNow - std::chrono::minutes{12}, DrawOpened{}},
        Fact{sheetNow - std::chrono::minutes{10}, DrawClosed{Said<Volume>{Volume::gallon(2), Unit::gal}, "pail 3"}}};
    form.answer(QStringLiteral("volume"), QString::fromLatin1(volume));
    form.answer(QStringLiteral("to"), QStringLiteral("Pail3"));
    form.earlier = std::chrono::minutes{7};
    return form;
}

TEST_F(Sheet, ADrawThatTwoHandsTellIsAskedAboutOnce) {
    sheet.open(drawToldAgain("2"), Units::us, WallClock{});
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(kept.empty());
    EXPECT_TRUE(problem().startsWith(QStringLiteral("Entered already"))) << problem().toStdString();
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("answerYes")), Qt::LeftButton);
    EXPECT_TRUE(kept.empty()); // the same one: it is kept already
    EXPECT_EQ(left, 1);
    sheet.open(drawToldAgain("2"), Units::us, WallClock{});
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("answerOther")), Qt::LeftButton);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_TRUE(kept[0].entered);
}

TEST_F(Sheet, ADrawOfAnotherVolumeIsAskedAboutByNobody) {
    sheet.open(drawToldAgain("3"), Units::us, WallClock{});
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    ASSERT_EQ(kept.size(), 1U);
}

TEST_F(Sheet, EscapeLeavesAndWritesNothing) {
    open(Action::note);
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("foam"));
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Escape);
    EXPECT_EQ(left, 1);
    EXPECT_TRUE(kept.empty());
}

TEST_F(Sheet, WhatCannotBeKeptStaysOpenAndSaysWhy) {
    open(Action::densityCheck);
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("7"));
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(kept.empty());
    EXPECT_TRUE(sheet.isVisible());
    EXPECT_FALSE(problem().isEmpty());
}

QString wordOnKeep(const Sheet& sheet) {
    return sheet.sheet.findChild<QAbstractButton*>(QStringLiteral("keep"))->text();
}

TEST_F(Sheet, ACheckWithoutTheCupsTemperatureIsAskedForItBeforeItIsKept) {
    open(Action::densityCheck);
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("59.1"));
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    EXPECT_TRUE(kept.empty());
    EXPECT_TRUE(problem().startsWith(QStringLiteral("How hot was the cup?"))) << problem().toStdString();
    EXPECT_EQ(sheet.focusWidget()->objectName(), QStringLiteral("cup"));
    EXPECT_EQ(wordOnKeep(*this), QStringLiteral("Keep it without"));
    // Typed where the question stands, and the check is whole.
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("211"));
    EXPECT_EQ(wordOnKeep(*this), QStringLiteral("Keep it"));
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_NEAR(std::get<DensityCheck>(kept[0].what).cup->value.fahrenheit(), 211, 1e-9);
}

TEST_F(Sheet, TheSecondEnterKeepsACheckWithoutTheCup) {
    open(Action::densityCheck);
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("66.9"));
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    QKeyEvent held{QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QString{}, true};
    QApplication::sendEvent(sheet.focusWidget(), &held);
    EXPECT_TRUE(kept.empty()) << "a key held down is no second Enter";
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_FALSE(std::get<DensityCheck>(kept[0].what).cup);
}

TEST_F(Sheet, WhoTypesTheCupIsAskedNothing) {
    open(Action::densityCheck);
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("59.1"));
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Tab);
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("211"));
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    EXPECT_EQ(kept.size(), 1U);
}

TEST_F(Sheet, AGloveIsAskedAsWellAndATapThatBouncesIsNoAnswer) {
    open(Action::densityCheck);
    for (const char* face : {"6", "6"})
        QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("pad_") + QLatin1String(face)), Qt::LeftButton);
    auto* keep = sheet.findChild<QWidget*>(QStringLiteral("keep"));
    QTest::mouseClick(keep, Qt::LeftButton);
    // Qt tells the second of two quick taps as a double click in the place of a press.
    for (const auto type : {QEvent::MouseButtonDblClick, QEvent::MouseButtonRelease}) {
        QMouseEvent tap{type,
                        keep->rect().center(),
                        keep->mapToGlobal(keep->rect().center()),
                        Qt::LeftButton,
                        type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton,
                        Qt::NoModifier};
        QApplication::sendEvent(keep, &tap);
    }
    EXPECT_TRUE(kept.empty());
    EXPECT_FALSE(problem().isEmpty());
    for (const char* face : {"9", "9"}) // they go to the cup
        QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("pad_") + QLatin1String(face)), Qt::LeftButton);
    QTest::mouseClick(keep, Qt::LeftButton);
    ASSERT_EQ(kept.size(), 1U) << problem().toStdString();
    EXPECT_NEAR(std::get<DensityCheck>(kept[0].what).cup->value.fahrenheit(), 99, 1e-9);
}

TEST_F(Sheet, ARefractometerIsAskedForItsSample) {
    open(Action::densityCheck);
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("instrument")), Qt::LeftButton);
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("pad_6")), Qt::LeftButton);
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("pad_6")), Qt::LeftButton);
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("keep")), Qt::LeftButton);
    EXPECT_TRUE(problem().startsWith(QStringLiteral("How warm was the sample?"))) << problem().toStdString();
}

TEST_F(Sheet, ItSaysWhatItWillWriteAndMovesItBack) {
    open(Action::fired);
    auto* writes = sheet.findChild<QLabel*>(QStringLiteral("writes"));
    const QString before = writes->text();
    const auto* now = sheet.findChild<QAbstractButton*>(QStringLiteral("happenedNow"));
    EXPECT_TRUE(now->isChecked());
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("earlier10")), Qt::LeftButton);
    EXPECT_NE(writes->text(), before);
    EXPECT_FALSE(now->isChecked());
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("keep")), Qt::LeftButton);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(textOf(kept[0].at), "2026-03-14T22:32:00Z");
}

TEST_F(Sheet, EveryKeyIsAtLeastTwelveMillimetresHigh) {
    open(Action::sapIn);
    const Measure measure;
    for (const char* name : {"keep", "leave", "earlier10", "pad_7"})
        EXPECT_GE(sheet.findChild<QWidget*>(QLatin1String(name))->height(), measure.px(mm::target) - 1) << name;
}

int kindNamed(const Sheet& sheet, const QString& name) {
    for (int i = 0;; ++i) {
        const auto* kind = sheet.sheet.findChild<QAbstractButton*>(QStringLiteral("kind_%1").arg(i));
        if (!kind || kind->text() == name)
            return kind ? i : -1;
    }
}

TEST_F(Sheet, EveryKindOfReadingStandsThereAtOnceAndTheChosenOneIsMarked) {
    open(Action::handReading);
    int chosen = 0;
    for (std::size_t i = 0; i < seriesCount; ++i) {
        const auto* kind = sheet.findChild<QAbstractButton*>(QStringLiteral("kind_%1").arg(i));
        ASSERT_TRUE(kind) << i;
        EXPECT_TRUE(kind->isVisible());
        EXPECT_GE(kind->height(), 45); // 12 mm at 96 dpi
        chosen += kind->isChecked();
    }
    EXPECT_EQ(chosen, 1);
}

TEST_F(Sheet, DigitsGoIntoTheValueAfterAFingerChoseTheKind) {
    open(Action::handReading);
    QWidget* focus = sheet.focusWidget();
    const int kind = kindNamed(*this, QStringLiteral("barometer"));
    ASSERT_GE(kind, 0);
    auto* button = sheet.findChild<QAbstractButton*>(QStringLiteral("kind_%1").arg(kind));
    QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_TRUE(button->isChecked());
    EXPECT_EQ(sheet.focusWidget(), focus);
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("29.1"));
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    ASSERT_EQ(kept.size(), 1U);
    const auto& read = std::get<Reading>(kept[0].what);
    EXPECT_EQ(read.series, Series::pressure);
    // 1 inHg is 3386.389 Pa (NIST SP 811, appendix B).
    EXPECT_NEAR(read.si, 29.1 * 3386.389, 1);
}

TEST_F(Sheet, ALetterChoosesTheKindAndIsNotTyped) {
    open(Action::handReading);
    const int kind = kindNamed(*this, QStringLiteral("stack"));
    QTest::keyClick(sheet.focusWidget(), static_cast<char>('a' + kind));
    QTest::keyClicks(sheet.focusWidget(), QStringLiteral("650"));
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(std::get<Reading>(kept[0].what).series, Series::stack);
}

TEST_F(Sheet, AUnitTypedBehindTheNumberIsTheScaleItWasReadOnAndChoosesNoOtherKind) {
    open(Action::handReading);
    for (const char* typed : {"217.9F", "103.3C"}) { // in the scale that was typed
        QTest::keyClicks(sheet.focusWidget(), QString::fromLatin1(typed));
        QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
        ASSERT_EQ(kept.size(), 1U);
        EXPECT_EQ(std::get<Reading>(kept[0].what).series, Series::syrup_pan);
        EXPECT_NEAR(std::get<Reading>(kept[0].what).temperature().celsius(), 103.3, 0.1);
        kept.clear();
        open(Action::handReading);
    }
}

TEST_F(Sheet, ASeaLevelFigureIsKeptOnlyByOneOfTwoPlainAnswers) {
    EntryForm form = formFor(Action::handReading, {}, Units::metric, sheetNow);
    form.elevation = Length::metre(300);
    sheet.open(form, Units::metric, WallClock{});
    const auto type = [this] {
        QTest::keyClick(sheet.focusWidget(), static_cast<char>('a' + kindNamed(*this, QStringLiteral("barometer"))));
        QTest::keyClicks(sheet.focusWidget(), QStringLiteral("101.5"));
        QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
        QTest::keyClick(sheet.focusWidget(), Qt::Key_Return);
    };
    const auto* here = sheet.findChild<QAbstractButton*>(QStringLiteral("answerYes"));
    EXPECT_FALSE(here->isVisible());
    type();
    EXPECT_TRUE(kept.empty()) << "Enter answers it neither way";
    EXPECT_TRUE(here->isVisible());
    EXPECT_FALSE(sheet.findChild<QWidget*>(QStringLiteral("keep"))->isVisible());
    // Where the key was that a glove taps twice the answers stand now.
    for (const char* name : {"answerYes", "answerOther"}) {
        auto* answer = sheet.findChild<QWidget*>(QLatin1String(name));
        for (const auto tapped : {QEvent::MouseButtonDblClick, QEvent::MouseButtonRelease}) {
            QMouseEvent tap{tapped,
                            answer->rect().center(),
                            answer->mapToGlobal(answer->rect().center()),
                            Qt::LeftButton,
                            tapped == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton,
                            Qt::NoModifier};
            QApplication::sendEvent(answer, &tap);
        }
        EXPECT_TRUE(kept.empty()) << name;
    }
    QTest::mouseClick(sheet.findChild<QWidget*>(QStringLiteral("answerYes")), Qt::LeftButton);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(std::get<Reading>(kept[0].what).series, Series::pressure);

    kept.clear();
    sheet.open(form, Units::metric, WallClock{});
    type();
    QTest::keyClick(sheet.focusWidget(), Qt::Key_Z);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(std::get<Reading>(kept[0].what).series, Series::sea_level_pressure);
    EXPECT_NEAR(std::get<Reading>(kept[0].what).si, 101500, 0.1) << "never converted: kept as it was typed";
}

} // namespace
} // namespace panside
