#include "ui/frame/program.h"

#include "core/journal/journal_error.h"
#include "ui/review/review_screen.h"

#include <QLabel>
#include <QTest>
#include <QTimer>
#include <gtest/gtest.h>

namespace panside {
namespace {

Program& program() { return *static_cast<Program*>(qApp); }

class ProgramFrame : public testing::Test {
protected:
    void SetUp() override {
        program().failed = [this](const QString& words) { told_ << words; };
    }
    void TearDown() override { program().failed = {}; }
    QStringList told_;
};

TEST_F(ProgramFrame, WhatASlotThrowsIsToldAndEndsNothing) {
    bool after = false;
    QTimer::singleShot(0, [] { throw std::runtime_error{"no memory"}; });
    QTimer::singleShot(0, [] { throw JournalError{JournalTrouble::gone, "night.journal"}; });
    QTimer::singleShot(0, [] { throw 7; });
    QTimer::singleShot(0, [&] { after = true; });
    ASSERT_TRUE(QTest::qWaitFor([&] { return after; }, 5000));
    ASSERT_EQ(told_.size(), 3);
    EXPECT_EQ(told_[0], "This could not be done: no memory. The boil goes on.");
    EXPECT_TRUE(told_[1].contains("the journal has vanished")) << told_[1].toStdString();
    EXPECT_EQ(told_[2], "This could not be done. The boil goes on.");
}

// A person's words stand in labels everywhere: names, notes, places.
TEST_F(ProgramFrame, NoLabelTakesAPersonsWordsForHtml) {
    QLabel label{QStringLiteral("<b>Odile</b>")};
    label.show();
    EXPECT_EQ(label.textFormat(), Qt::PlainText);
    ReviewScreen screen;
    screen.show();
    screen.say(QStringLiteral("<b>Odile</b><img src=x>"));
    int said = 0;
    for (const auto* one : screen.findChildren<QLabel*>()) {
        EXPECT_NE(one->textFormat(), Qt::AutoText) << one->text().toStdString();
        said += one->text().startsWith(QStringLiteral("<b>")) ? 1 : 0;
    }
    EXPECT_GE(said, 1);
}

} // namespace
} // namespace panside
