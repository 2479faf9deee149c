#include "ui/keeping/keeping_view.h"

#include "core/boil/shift_log.h"

#include <QAbstractButton>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

QStringList namesOf(const std::vector<KeyedPage::Key>& keys) {
    QStringList names;
    for (const auto& key : keys)
        names << key.name;
    return names;
}

Shift shiftOf(const char* begun) { return {*instantIn(begun), false, false}; }

TEST(Keeping, WithoutAFolderSaysThatNothingIsBackedUp) {
    const KeepingState state;
    EXPECT_TRUE(keepingWords(state).contains(QStringLiteral("nothing is backed up")));
    EXPECT_FALSE(namesOf(keepingKeys(state)).contains(QStringLiteral("backUp")));
}

TEST(Keeping, ShowsWhatPuttingOneBackWouldDoBeforeItDoes) {
    KeepingState state;
    state.restoring = RestorePreview{.lost = {shiftOf("2026-03-16T18:00:00Z")},
                                     .gained = {shiftOf("2026-03-12T18:00:00Z")},
                                     .changed = {shiftOf("2026-03-14T18:00:00Z")},
                                     .same = 7};
    const QString words = keepingWords(state);
    for (const char* told : {"16 March", "12 March", "14 March", ": 7.", "gone from it"})
        EXPECT_TRUE(words.contains(QString::fromUtf8(told))) << told;
    EXPECT_EQ(namesOf(keepingKeys(state)), (QStringList{"putBack", "leaveIt"}));
}

TEST(Keeping, OffersToSaveWhatCanBeReadOnlyOfADamagedJournal) {
    KeepingState state;
    state.health = JournalHealth{};
    EXPECT_FALSE(namesOf(keepingKeys(state)).contains(QStringLiteral("salvage")));
    state.health->findings.push_back(readingsOf("2026-03-14T18:00:00Z"));
    EXPECT_TRUE(namesOf(keepingKeys(state)).contains(QStringLiteral("salvage")));
    EXPECT_TRUE(keepingWords(state).contains(QStringLiteral("readings of the shift")));
}

TEST(Keeping, SaysWhatWasLost) {
    Salvaged saved;
    saved.whole.push_back(*instantIn("2026-03-12T18:00:00Z"));
    saved.partly.push_back({*instantIn("2026-03-14T18:00:00Z"), 2, 16384, 5});
    saved.listLost = true;
    const QString words = salvagedWords(saved);
    for (const char* told : {"14 March", "facts: 2", "readings: 16384", "more: 5", "could not be read at all"})
        EXPECT_TRUE(words.contains(QString::fromUtf8(told))) << told;
}

TEST(KeyedPage, EachKeyWorksByLetterAndByFinger) {
    KeyedPage page{QStringLiteral("page")};
    page.wear({});
    page.show(QStringLiteral("words"), {{QStringLiteral("one"), QStringLiteral("One"), Qt::Key_O}});
    page.resize(800, 500);
    page.setVisible(true);
    QSignalSpy pressed{&page, &KeyedPage::pressed}, left{&page, &KeyedPage::left};
    QTest::keyClick(&page, Qt::Key_O);
    auto* one = page.findChild<QAbstractButton*>(QStringLiteral("one"));
    ASSERT_TRUE(one);
    EXPECT_GE(one->height(), Dress{}.px(mm::target));
    QTest::mouseClick(one, Qt::LeftButton);
    ASSERT_EQ(pressed.size(), 2);
    EXPECT_EQ(pressed[1][0].toString(), QStringLiteral("one"));
    QTest::keyClick(&page, Qt::Key_Escape);
    EXPECT_EQ(left.size(), 1);
}

} // namespace
} // namespace panside
