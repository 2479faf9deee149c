#include "ui/page/keyed_page.h"

#include "tests/ui/frame/in_front.h"

#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QTextBrowser>
#include <gtest/gtest.h>

namespace panside {
namespace {

class KeyedPageTest : public testing::Test {
protected:
    KeyedPageTest() {
        page_.resize(600, 300);
        page_.wear({Measure{}, Look::day});
        page_.QWidget::show();
        page_.show(QStringLiteral("<p>%1</p>").arg(QStringLiteral("words ").repeated(3000)),
                   {{QStringLiteral("print"), QStringLiteral("Print"), Qt::Key_P}});
        EXPECT_TRUE(inFront(page_));
        page_.setFocus();
    }
    int place() const { return page_.findChild<QTextBrowser*>()->verticalScrollBar()->value(); }
    int after(Qt::Key key) {
        QTest::keyClick(&page_, key);
        return place();
    }
    KeyedPage page_{QStringLiteral("page")};
};

TEST_F(KeyedPageTest, ArrowsAndPageKeysGoDownAndUpAgain) {
    const int line = after(Qt::Key_Down);
    EXPECT_GT(line, 0);
    const int down = after(Qt::Key_PageDown);
    EXPECT_GT(down, line);
    EXPECT_EQ(after(Qt::Key_PageUp), line);
    EXPECT_EQ(after(Qt::Key_Up), 0);
}

TEST_F(KeyedPageTest, ItsKeysWorkByTheirLettersAndEscapeLeaves) {
    const QSignalSpy pressed{&page_, &KeyedPage::pressed}, left{&page_, &KeyedPage::left};
    QTest::keyClick(&page_, Qt::Key_P);
    ASSERT_EQ(pressed.size(), 1);
    EXPECT_EQ(pressed[0][0].toString(), QStringLiteral("print"));
    QTest::keyClick(&page_, Qt::Key_Escape);
    EXPECT_EQ(left.size(), 1);
    EXPECT_EQ(pressed.size(), 1);
}

TEST_F(KeyedPageTest, WhatIsShownAnewStaysWhereOneWasReading) {
    const int read = after(Qt::Key_PageDown);
    page_.show(QStringLiteral("<p>%1</p>").arg(QStringLiteral("other ").repeated(3000)), {});
    EXPECT_EQ(place(), read);
}

} // namespace
} // namespace panside
