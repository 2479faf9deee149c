#include "ui/files/file_pick.h"

#include "ui/look/press.h"
#include "ui/look/typed_line.h"

#include <QApplication>
#include <QFile>
#include <QListWidget>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

struct Folder {
    QTemporaryDir folder;
    Folder() {
        QDir{folder.path()}.mkdir(QStringLiteral("nights"));
        for (const char* name : {"a.csv", "b.csv", "book.pdf", "nights/c.csv"})
            put(QString::fromLatin1(name));
    }
    void put(const QString& name) const {
        QFile file{folder.filePath(name)};
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
    }
    PickWish wish(PickWish::Kind kind, const QStringList& endings = {}) const {
        return {kind, QStringLiteral("Which"), folder.path(), QStringLiteral("book.pdf"), endings};
    }
};

QStringList rows(FilePick& pick) {
    QStringList all;
    const auto* list = pick.findChild<QListWidget*>();
    for (int i = 0; i < list->count(); ++i)
        all << list->item(i)->text();
    return all;
}

TEST(FilePick, ShowsFoldersAndWhatIsOfTheKindAndGoesInAndUpByKeys) {
    const Folder made;
    FilePick pick{made.wish(PickWish::Kind::file, {"csv"}), {}, nullptr};
    pick.show();
    EXPECT_EQ(rows(pick), (QStringList{"nights/", "a.csv", "b.csv"}));
    QTest::keyClick(&pick, Qt::Key_Return);
    EXPECT_EQ(rows(pick), QStringList{"c.csv"});
    QTest::keyClick(&pick, Qt::Key_Backspace);
    EXPECT_EQ(rows(pick).size(), 3);
    pick.findChild<QListWidget*>()->setCurrentRow(2);
    QTest::keyClick(&pick, Qt::Key_Return);
    EXPECT_EQ(pick.result(), QDialog::Accepted);
    EXPECT_EQ(pick.chosen(), QStringList{made.folder.filePath(QStringLiteral("b.csv"))});
}

TEST(FilePick, TakesSeveralByTouch) {
    const Folder made;
    FilePick pick{made.wish(PickWish::Kind::files, {"csv"}), {}, nullptr};
    pick.resize(900, 600);
    pick.show();
    auto* list = pick.findChild<QListWidget*>();
    for (const int row : {1, 2}) {
        const QRect place = list->visualItemRect(list->item(row));
        EXPECT_GE(place.height(), Measure{}.px(mm::target));
        QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, place.center());
    }
    EXPECT_TRUE(rows(pick)[1].startsWith(QString::fromUtf8("✓")));
    QTest::mouseClick(pick.findChild<Press*>(QStringLiteral("pickTake")), Qt::LeftButton);
    EXPECT_EQ(pick.chosen().size(), 2);
}

TEST(FilePick, NeverWritesOverAFileByEnter) {
    const Folder made;
    FilePick pick{made.wish(PickWish::Kind::save, {"pdf", "csv"}), {}, nullptr};
    pick.show();
    auto* name = pick.findChild<TypedLine*>(QStringLiteral("pickName"));
    name->setFocus();
    auto* over = pick.findChild<Press*>(QStringLiteral("pickOver"));
    EXPECT_TRUE(over->isHidden());
    QTest::keyClick(&pick, Qt::Key_Return, Qt::ControlModifier);
    QTest::keyClick(&pick, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(pick.chosen().isEmpty()) << "book.pdf is there";
    EXPECT_FALSE(over->isHidden());
    pick.findChild<Press*>(QStringLiteral("pickEnding_csv"))->click();
    EXPECT_EQ(name->text(), "book.csv");
    EXPECT_TRUE(over->isHidden());
    QTest::keyClick(&pick, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(pick.chosen(), QStringList{made.folder.filePath(QStringLiteral("book.csv"))});
}

TEST(FilePick, TakesTheFolderThatItStandsIn) {
    const Folder made;
    FilePick pick{made.wish(PickWish::Kind::folder), {}, nullptr};
    pick.show();
    EXPECT_EQ(rows(pick), QStringList{"nights/"});
    QTest::keyClick(&pick, Qt::Key_Return);
    QTest::keyClick(&pick, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(pick.chosen(), QStringList{made.folder.filePath(QStringLiteral("nights"))});
}

} // namespace
} // namespace panside
