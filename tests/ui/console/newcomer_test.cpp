// A newcomer's first boil by hand entry, from the first page to the night looked at in the morning: counted by keys,
// and by mouse alone. A moment is lost where what is to be done next stands nowhere on the screen, or a key does
// nothing.
#include "tests/ui/console/at_work.h"
#include "ui/board/board.h"
#include "ui/frame/frame_view.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"

#include <QLabel>
#include <QTextBrowser>

namespace panside {
namespace {

struct Newcomer : ConsoleAtWork {
    int keys = 0;
    QStringList lost;
    Newcomer() : ConsoleAtWork{true, newcomersChoices()} {}

    // A letter that stands on some key that is seen now.
    void press(int code, const char* what) {
        const QString cap = code == Qt::Key_Return ? QStringLiteral("Enter") : QKeySequence{code}.toString();
        bool stands = code == Qt::Key_Return; // what every field and every due key takes
        for (const auto* one : console->findChildren<Press*>())
            stands = stands || (one->isVisible() && one->isEnabled() && one->key() == cap);
        for (const auto* place : console->findChildren<QAbstractButton*>())
            stands = stands || (place->isVisible() && place->objectName() == QStringLiteral("place") + cap);
        const QImage before = console->grab().toImage();
        key(code);
        ++keys;
        if (!stands)
            lost << QStringLiteral("%1: %2 stands nowhere").arg(QLatin1String(what), cap);
        if (console->grab().toImage() == before)
            lost << QStringLiteral("%1: %2 does nothing").arg(QLatin1String(what), cap);
    }
    void type(const char* text, const char* what) {
        if (!qobject_cast<TypedLine*>(console->focusWidget()))
            lost << QStringLiteral("%1: there is no field for %2").arg(QLatin1String(what), QLatin1String(text));
        for (const char* at = text; *at; ++at, ++keys)
            key(*at == '.' ? static_cast<int>(Qt::Key_Period) : QChar::fromLatin1(*at).toUpper().unicode());
    }
    void enter(const char* what) { press(Qt::Key_Return, what); }
    void read(const char* degrees) {
        press(Qt::Key_R, "a reading");
        type(degrees, "a reading");
        enter("a reading");
        pass(std::chrono::minutes{6});
    }
    void wants(bool is, const char* what) {
        if (!is)
            lost << QStringLiteral("%1: it was not kept").arg(QLatin1String(what));
    }
    void click(const char* name) {
        auto* target = console->findChild<QWidget*>(QString::fromLatin1(name));
        // Of several by one name the one that is seen.
        for (auto* one : console->findChildren<QWidget*>(QString::fromLatin1(name)))
            if (one->isVisible())
                target = one;
        ASSERT_TRUE(target && target->isVisible() && target->isEnabled()) << name;
        EXPECT_GE(target->height(), Measure{96}.px(mm::target) - 1) << name;
        QTest::mouseClick(target, Qt::LeftButton);
        QApplication::processEvents();
    }
    void clickAll(const std::vector<const char*>& names) {
        for (const char* name : names)
            click(name);
    }
};

TEST_F(Newcomer, BoilsOnceWithAtMostSixtyKeysAndThreeMomentsLost) {
    enter("the cautions");
    enter("the language");
    enter("the units");
    type("v", "the place"); // letter by letter, until its key has the tick
    bool ticked = false;
    for (const auto* one : console->frame().page()->findChildren<Press*>())
        ticked = ticked || (one->isVisible() && one->isChecked() && one->text() == QStringLiteral("Vermont"));
    EXPECT_TRUE(ticked);
    enter("the place");
    type("900", "the height");
    enter("the height");
    type("8", "the pan"); // one flat pan, and none with flues
    enter("the pan");
    enter("the pan");
    enter("who reads the pan");
    wants(session->settings().size() == 3, "the rig");
    press(Qt::Key_S, "sap");
    type("200", "sap");
    enter("sap");
    wants(count<SapIn>() == 1, "sap");
    press(Qt::Key_F, "the fire");
    enter("the fire");
    wants(count<Lit>() == 1, "the fire");
    pass(std::chrono::minutes{20});
    read("213");
    press(Qt::Key_F, "a load");
    enter("a load");
    wants(count<Fired>() == 1, "a load");
    read("215");
    read("217");
    read("218");
    wants(count<Reading>() == 4, "the readings");
    press(Qt::Key_D, "the draw");
    enter("the draw");
    pass(std::chrono::minutes{2});
    press(Qt::Key_D, "the draw's end");
    type("1", "the draw's end");
    enter("the draw's end");
    wants(count<DrawOpened>() == 1 && count<DrawClosed>() == 1, "the draw");
    press(Qt::Key_C, "the check");
    type("60", "the check");
    enter("the check");
    type("205", "the check");
    enter("the check");
    wants(count<DensityCheck>() == 1, "the check");
    press(Qt::Key_E, "the last load");
    enter("the last load");
    pass(std::chrono::minutes{70});
    press(Qt::Key_X, "the end");
    enter("the end");
    wants(!session->openShift(), "the end");
    press(Qt::Key_F5, "the night");
    RecordProperty("keys", keys);
    std::printf("a newcomer's first boil: %d keys, %d moments lost\n", keys, static_cast<int>(lost.size()));
    EXPECT_LE(keys, 60);
    EXPECT_LE(lost.size(), 3) << lost.join(u'\n').toStdString();
}

TEST_F(Newcomer, BoilsOnceByMouseAlone) {
    clickAll({"leavePage", "startChoice_0", "startChoice_0", "place_0", "pad_9", "pad_0", "pad_0", "startOn", "pad_8",
              "pad_next", "pad_1", "pad_6", "startOn", "startChoice_0"});
    EXPECT_EQ(console->frame().page(), &console->board());
    EXPECT_EQ(session->settings().size(), 4u);
    clickAll({"lastLoadCardAction0", "pad_2", "pad_0", "pad_0", "keep"});
    EXPECT_EQ(count<SapIn>(), 1);
    clickAll({"fireCardAction0", "keep"});
    EXPECT_EQ(count<Lit>(), 1);
    clickAll({"keyR", "pad_2", "pad_1", "pad_8", "keep"});
    EXPECT_EQ(count<Reading>(), 1);
    clickAll({"drawCardAction0", "keep", "drawCardAction0", "pad_1", "keep"});
    EXPECT_EQ(count<DrawClosed>(), 1);
    clickAll({"drawCardAction1", "pad_6", "pad_0", "pad_next", "pad_2", "pad_0", "pad_5", "keep"});
    EXPECT_EQ(count<DensityCheck>(), 1);
    clickAll({"lastLoadCardAction1", "keep"});
    EXPECT_EQ(count<Shutdown>(), 1);
    pass(std::chrono::minutes{70});
    clickAll({"placeF1", "map_X", "keep"});
    EXPECT_FALSE(session->openShift());
    click("placeF5");
}

} // namespace
} // namespace panside
