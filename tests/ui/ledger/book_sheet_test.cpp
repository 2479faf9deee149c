// The sheet of a row of the day book, filled in by keys in the window as a whole.
#include "core/boil/shift_log.h"
#include "tests/ui/ledger/ledger_console.h"
#include "tests/ui/pictures/made_house.h"
#include "tests/ui/words/in_language.h"
#include "ui/frame/frame_view.h"
#include "ui/ledger/list_page.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/trace/trace_screen.h"
#include "ui/words/book_words.h"

namespace panside {
namespace {

BookSheet& sheetOf(Console& console) { return *console.findChild<BookSheet*>(); }

class FilledBookSheet : public InLanguage {
protected:
    // What a glove presses keeps its height, what is said stands whole, and nothing leaves the sheet.
    static void expectWhole(Console& console, const std::string& where) {
        QApplication::processEvents();
        const int target = Measure{}.px(mm::target) - 1; // the rest of a division among rows is a pixel
        BookSheet& sheet = sheetOf(console);
        ASSERT_TRUE(sheet.isVisible()) << where;
        for (const QWidget* one : sheet.findChildren<QWidget*>()) {
            if (!one->isVisible())
                continue;
            const int seen = one->visibleRegion().boundingRect().height();
            if (qobject_cast<const Press*>(one) || qobject_cast<const TypedLine*>(one)) {
                EXPECT_GE(seen, target) << where << ' ' << one->objectName().toStdString();
            } else if (const auto* label = qobject_cast<const QLabel*>(one); label && !label->text().isEmpty()) {
                const int wanted =
                    label->wordWrap() ? label->heightForWidth(label->width()) : label->sizeHint().height();
                EXPECT_GE(seen, std::min(wanted, label->height())) << where << ' ' << label->text().toStdString();
                EXPECT_GE(label->height(), wanted) << where << ' ' << label->text().toStdString();
            }
        }
    }
    static void fill(BookForm& form) {
        for (BookField& field : form.fields)
            if (field.answer.isEmpty())
                field.answer = !field.offers.isEmpty()                ? field.offers.value(0)
                               : field.unit == Unit::degF             ? QStringLiteral("185")
                               : field.unit == Unit::degC             ? QStringLiteral("85")
                               : field.kind == BookField::Kind::words ? QStringLiteral("the yard behind")
                               : field.unit == Unit::brix             ? QStringLiteral("66.9")
                                                                      : QStringLiteral("24");
        form.by = QStringLiteral("Odile");
    }
};

TEST_P(FilledBookSheet, IsWholeInTheThreeSizes) {
    for (const QSize size : {QSize{1024, 600}, QSize{1366, 768}, QSize{1920, 1080}}) {
        MadeHouse house{MadeOf::house, withSyrup, size, Look::day, GetParam() ? Units::metric : Units::us};
        Console& console = house.console();
        for (const Action place : {Action::board, Action::pack}) {
            console.act(place);
            console.house().ask();
            console.house().wait();
            QApplication::processEvents();
            for (std::size_t i = 0; i < deedCount; ++i) {
                BookForm form = bookForm(static_cast<Deed>(i), console.house().context(console.choices().units));
                fill(form);
                form.caution = QStringLiteral("A caution that stands here as long as the others: hot syrup burns.");
                console.openBook(form);
                expectWhole(console, std::to_string(size.width()) + '_' + std::to_string(i) +
                                         (place == Action::pack ? "_pack" : ""));
                QTest::keyClick(console.windowHandle(), Qt::Key_Escape);
            }
        }
        // A pack with all that is said while it is filled in, and what is odd in it.
        QTest::keyClick(console.windowHandle(), Qt::Key_P);
        for (const auto& [field, words] : {std::pair{"value", "24"},
                                           {"size", "100mL"},
                                           {"filler", "85 degC"},
                                           {"capped", "71 degC"},
                                           {"brix", "65.2"},
                                           {"broken", "2"},
                                           {"laid", "10"}})
            sheetOf(console).findChild<TypedLine*>(QString::fromLatin1(field))->setText(QString::fromLatin1(words));
        expectWhole(console, std::to_string(size.width()) + "_packed");
        QTest::keyClick(console.windowHandle(), Qt::Key_Return);
        ASSERT_FALSE(sheetOf(console).findChild<QLabel*>(QStringLiteral("problem"))->text().isEmpty());
        expectWhole(console, std::to_string(size.width()) + "_odd");
    }
}
// Whoever has a mouse or a glove and no letters gets through every sheet: what must be told is offered, or is digits.
TEST_P(FilledBookSheet, CanBeFilledInWithoutALetter) {
    const HouseLedger house = houseOf();
    const auto context = bookContext(&house, Units::us, instantIn("2026-03-05T12:00:00Z").value());
    for (std::size_t i = 0; i < deedCount; ++i)
        for (const BookField& field : bookForm(static_cast<Deed>(i), context).fields)
            if (field.needed && field.kind == BookField::Kind::words &&
                field.key != Key::lot) { // its code stands there
                EXPECT_FALSE(field.offers.isEmpty()) << i << ' ' << field.name.toStdString();
            }
}

// The vessel stands already: what is typed is its light.
TEST_F(LedgerConsole, AGradeIsTypedAtOnceFromEitherPage) {
    for (const Action page : {Action::vessels, Action::pack}) {
        console->act(page);
        console->house().ask();
        console->house().wait();
        QApplication::processEvents();
        const std::size_t before = rows();
        key(Qt::Key_G);
        ASSERT_TRUE(sheet().isVisible());
        EXPECT_EQ(console->focusWidget()->objectName(), QStringLiteral("value"));
        EXPECT_FALSE(sheet().form().answer(Key::vessel).isEmpty());
        EXPECT_FALSE(sheet().form().field(Key::lot)) << "a vessel is graded, or a lot";
        key(Qt::Key_Return);
        EXPECT_TRUE(sheet().isVisible()) << "an empty grade would wipe out the one before";
        EXPECT_EQ(rows(), before);
        type(QStringLiteral("55"));
        EXPECT_TRUE(sheet().findChild<QLabel*>(QStringLiteral("live"))->text().contains(QStringLiteral("Amber")));
        key(Qt::Key_Return);
        EXPECT_FALSE(sheet().isVisible());
        EXPECT_EQ(rows(), before + 1);
    }
}

// A name that is offered says the kind too: three touches name a pail.
TEST_F(LedgerConsole, AVesselIsNamedByThreeTouches) {
    console->act(Action::vessels);
    console->house().ask();
    console->house().wait();
    QApplication::processEvents();
    const std::size_t before = rows();
    const auto touch = [&](QWidget* at) {
        ASSERT_TRUE(at && at->isVisible());
        QTest::mouseClick(at, Qt::LeftButton);
        QApplication::processEvents();
    };
    touch(console->frame().page()->findChild<QWidget*>(QStringLiteral("new")));
    auto* offer = sheet().findChild<Press*>(QStringLiteral("offer0"));
    ASSERT_EQ(offer->text(), QStringLiteral("pail 1")) << "3 and 4 are taken";
    touch(offer);
    EXPECT_EQ(sheet().form().answer(Key::kind), QStringLiteral("pail"));
    touch(sheet().findChild<QWidget*>(QStringLiteral("keep")));
    EXPECT_EQ(rows(), before + 1);
}

// Whichever lot is chosen is traced, not the latest alone.
TEST_F(LedgerConsole, AnOlderLotIsTracedFromTheListOfLots) {
    for (const char* lot : {"26061-1", "26061-2"})
        session->enter(rowIn("2026-03-02T12:00:00Z,packed,4,,lot=" + std::string{lot} + ";from=pail 3;size=1pt"));
    session->flush();
    console->act(Action::lots);
    console->house().ask();
    console->house().wait();
    QApplication::processEvents();
    console->findChild<ListPage*>(QStringLiteral("lots"))->choose(1);
    key(Qt::Key_T);
    auto* trace = console->findChild<TraceScreen*>();
    ASSERT_EQ(console->frame().page(), trace);
    EXPECT_TRUE(trace->headline().startsWith(QStringLiteral("26061-1"))) << trace->headline().toStdString();
}

// What was packed last is what is packed next: the count is all that has to be typed.
TEST_F(LedgerConsole, APackStandsAtTheCountWithTheSizePackedLast) {
    session->enter(rowIn("2026-03-02T12:00:00Z,packed,4,,lot=a;from=pail 3;size=1qt"));
    session->flush();
    console->act(Action::pack);
    console->house().ask();
    console->house().wait();
    QApplication::processEvents();
    key(Qt::Key_P);
    ASSERT_TRUE(sheet().isVisible());
    EXPECT_EQ(console->focusWidget()->objectName(), QStringLiteral("value"));
    EXPECT_EQ(sheet().form().answer(Key::size), QStringLiteral("1qt"));
}

INSTANTIATE_TEST_SUITE_P(Languages, FilledBookSheet, testing::Bool());

} // namespace
} // namespace panside
