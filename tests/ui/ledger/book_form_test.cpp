#include "ui/ledger/book_form.h"

#include "core/boil/shift_log.h"
#include "tests/ui/frame/in_front.h"
#include "ui/ledger/book_sheet.h"
#include "ui/ledger/ledger_table.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/words/book_words.h"
#include "ui/words/mark_words.h"

#include <QApplication>
#include <QLabel>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant formNow{std::chrono::seconds{1772215200}};

Fact bookRow(const std::string& line) { return std::get<Fact>(factOfLine(line)); }

HouseLedger smallHouse() {
    return {nullptr,
            {bookRow("2026-02-20T12:00:00Z,vessel,40,gal,name=drum 7;kind=drum"),
             bookRow("2026-02-20T12:01:00Z,vessel,5,gal,name=pail 3;kind=pail"),
             bookRow("2026-02-20T13:00:00Z,bought,30,gal,what=syrup;vessel=drum 7;brix=66.9;from=a neighbour;by=Ansel"),
             bookRow("2026-02-21T13:00:00Z,packed,12,,lot=A1;from=drum 7;size=1pt;brix=66.9;capped=185degF;by=Maud")}};
}

std::shared_ptr<const BookContext> contextOf(Units units = Units::us) {
    const HouseLedger house = smallHouse();
    return bookContext(&house, units, formNow);
}

const Fact& factIn(const std::variant<Fact, BookProblem>& made) {
    static const Fact none{};
    if (const auto* problem = std::get_if<BookProblem>(&made)) {
        ADD_FAILURE() << problem->words.toStdString();
        return none;
    }
    return std::get<Fact>(made);
}
QString problemIn(const std::variant<Fact, BookProblem>& made) {
    const auto* problem = std::get_if<BookProblem>(&made);
    return problem ? problem->words : QString{};
}

TEST(BookForm, AsksEveryDeedForWhatItNeedsAndNothingItDoesNotTake) {
    for (const DayDeedRow& row : allDeeds()) {
        const BookForm form = bookForm(row.deed, contextOf());
        for (const Key key : row.needed)
            ASSERT_TRUE(form.field(key)) << row.name;
        for (const BookField& field : form.fields) {
            EXPECT_FALSE(field.label.isEmpty()) << row.name;
            EXPECT_TRUE(!field.key || std::find(row.taken.begin(), row.taken.end(), *field.key) != row.taken.end())
                << row.name;
        }
        EXPECT_LE(form.fields.size(), 10U) << row.name; // what stands on a low screen
    }
}

TEST(BookForm, MakesTheRowThatTheBookHolds) {
    BookForm form = bookForm(Deed::packed, contextOf());
    form.put(Key::from, QStringLiteral("drum 7"));
    form.put(Key::lot, QStringLiteral("B2"));
    form.put(std::nullopt, QStringLiteral("24"));
    form.put(Key::size, QStringLiteral("1 pt"));
    form.put(Key::capped, QStringLiteral("185"));
    form.put(Key::brix, QStringLiteral("66,9"));
    form.by = QStringLiteral("Maud");
    EXPECT_EQ(rowOf(factIn(factOf(form))),
              "2026-02-27T18:00:00Z,packed,24,,lot=B2;from=drum 7;size=1pt;capped=185degF;brix=66.9;by=Maud");
}

TEST(BookForm, TakesAnotherUnitWhereItIsWrittenBehindTheNumber) {
    BookForm form = bookForm(Deed::moved, contextOf());
    form.put(Key::from, QStringLiteral("drum 7"));
    form.put(Key::to, QStringLiteral("pail 3"));
    form.put(std::nullopt, QStringLiteral("3 qt"));
    EXPECT_NEAR(std::get<DayRow>(factIn(factOf(form)).what).volume()->gallon(), 0.75, 1e-9);
    form.put(std::nullopt, QStringLiteral("3"));
    EXPECT_NEAR(std::get<DayRow>(factIn(factOf(form)).what).volume()->gallon(), 3, 1e-9);
    form.put(std::nullopt, {}); // all of it
    EXPECT_FALSE(std::get<DayRow>(factIn(factOf(form)).what).value);
    form.put(std::nullopt, QStringLiteral("3 firkins"));
    EXPECT_TRUE(problemIn(factOf(form)).contains(QStringLiteral("3 firkins")));
}

TEST(BookForm, RefusesAVesselNobodyNamedAndOffersTheNearOne) {
    BookForm form = bookForm(Deed::moved, contextOf());
    form.put(Key::from, QStringLiteral("drum 8"));
    form.put(Key::to, QStringLiteral("pail 3"));
    const auto made = factOf(form);
    ASSERT_TRUE(std::holds_alternative<BookProblem>(made));
    EXPECT_EQ(std::get<BookProblem>(made).offers, QStringList{QStringLiteral("drum 7")});
    EXPECT_EQ(std::get<BookProblem>(made).field, QStringLiteral("from"));
    form.put(Key::from, QStringLiteral("pail 3"));
    EXPECT_TRUE(problemIn(factOf(form)).contains(QStringLiteral("it comes from")));
}

TEST(BookForm, RefusesACodeThatStandsForAnotherDayAndOffersTheNextFree) {
    BookForm form = bookForm(Deed::packed, contextOf());
    form.put(Key::from, QStringLiteral("drum 7"));
    form.put(Key::lot, QStringLiteral("a1"));
    form.put(std::nullopt, QStringLiteral("24"));
    form.put(Key::size, QStringLiteral("1pt"));
    const auto made = factOf(form);
    ASSERT_TRUE(std::holds_alternative<BookProblem>(made));
    EXPECT_EQ(std::get<BookProblem>(made).offers, QStringList{QStringLiteral("a1-2")});
}

TEST(BookForm, CountsWholeContainers) {
    BookForm form = bookForm(Deed::packed, contextOf());
    form.put(Key::from, QStringLiteral("drum 7"));
    form.put(Key::lot, QStringLiteral("B2"));
    form.put(Key::size, QStringLiteral("1pt"));
    form.put(std::nullopt, QStringLiteral("10.5"));
    EXPECT_TRUE(problemIn(factOf(form)).contains(QStringLiteral("10.5 is not a whole number")));
    form.put(std::nullopt, QStringLiteral("10"));
    EXPECT_TRUE(std::holds_alternative<Fact>(factOf(form)));
}

TEST(BookForm, AsksForWhatIsMissingByItsWord) {
    const BookForm form = bookForm(Deed::gathered, contextOf());
    EXPECT_EQ(problemIn(factOf(form)), QStringLiteral("how much: type it, or leave with Escape."));
}

TEST(BookForm, SaysTheLikelySlipOfADegree) {
    BookForm form = bookForm(Deed::packed, contextOf(Units::metric));
    form.put(Key::from, QStringLiteral("drum 7"));
    form.put(Key::lot, QStringLiteral("B2"));
    form.put(std::nullopt, QStringLiteral("24"));
    form.put(Key::size, QStringLiteral("500mL"));
    form.put(Key::capped, QStringLiteral("185"));
    EXPECT_FALSE(problemIn(factOf(form)).isEmpty());
    form.put(Key::capped, QStringLiteral("185 F"));
    EXPECT_NEAR(std::get<DayRow>(factIn(factOf(form)).what).temperature(Key::capped)->fahrenheit(), 185, 1e-6);
}

TEST(BookForm, KnowsTheNamesOfTheHouseTheLatestFirst) {
    const auto context = contextOf();
    EXPECT_EQ(context->vessels, (QStringList{QStringLiteral("drum 7"), QStringLiteral("pail 3")}));
    EXPECT_EQ(context->lots, QStringList{QStringLiteral("A1")});
    EXPECT_EQ(context->hands, (QStringList{QStringLiteral("Maud"), QStringLiteral("Ansel")}));
    EXPECT_EQ(context->sellers, QStringList{QStringLiteral("a neighbour")});
}

class BookSheetTest : public ::testing::Test {
protected:
    BookSheetTest() {
        sheet_.resize(946, 505);
        sheet_.wear(Dress{});
        QObject::connect(&sheet_, &BookSheet::kept, [this](const std::vector<Fact>& facts) { kept_ = facts; });
    }
    void open(Deed deed) {
        sheet_.open(bookForm(deed, contextOf()), Units::us, WallClock{}, [this](const Fact&) { return odd_; });
        EXPECT_TRUE(inFront(sheet_));
    }
    TypedLine& line(const char* name) { return *sheet_.findChild<TypedLine*>(QString::fromLatin1(name)); }
    Press& press(const char* name) { return *sheet_.findChild<Press*>(QString::fromLatin1(name)); }
    QString said() { return sheet_.findChild<QLabel*>(QStringLiteral("problem"))->text(); }
    BookSheet sheet_;
    std::vector<Fact> kept_;
    QStringList odd_;
};

TEST_F(BookSheetTest, KeepsWhatWasTypedByKeysAlone) {
    open(Deed::moved);
    QTest::keyClicks(&line("from"), QStringLiteral("drum 7"));
    QTest::keyClicks(&line("to"), QStringLiteral("pail 3"));
    QTest::keyClicks(&line("value"), QStringLiteral("4.5"));
    QTest::keyClick(&line("value"), Qt::Key_Return);
    ASSERT_EQ(kept_.size(), 1U);
    EXPECT_NEAR(std::get<DayRow>(kept_[0].what).volume()->gallon(), 4.5, 1e-9);
    EXPECT_FALSE(sheet_.isVisible());
}

TEST_F(BookSheetTest, KeepsWhatWasPressedByMouseAlone) {
    open(Deed::moved);
    QTest::mouseClick(&press("offer0"), Qt::LeftButton); // drum 7 is first
    QTest::mouseClick(&line("to"), Qt::LeftButton);
    QTest::mouseClick(&press("offer1"), Qt::LeftButton);
    QTest::mouseClick(&line("value"), Qt::LeftButton);
    QTest::mouseClick(&press("pad_4"), Qt::LeftButton);
    QTest::mouseClick(&press("keep"), Qt::LeftButton);
    ASSERT_EQ(kept_.size(), 1U) << said().toStdString();
    EXPECT_EQ(std::get<DayRow>(kept_[0].what).text(Key::to), "pail 3");
    EXPECT_NEAR(std::get<DayRow>(kept_[0].what).volume()->gallon(), 4, 1e-9);
}

TEST_F(BookSheetTest, AsksOnceAboutWhatTheLedgerFindsOdd) {
    odd_ = QStringList{QStringLiteral("pail 3: 2 gal over its rim")};
    open(Deed::moved);
    line("from").setText(QStringLiteral("drum 7"));
    line("to").setText(QStringLiteral("pail 3"));
    QTest::keyClick(&line("to"), Qt::Key_Return);
    EXPECT_TRUE(kept_.empty());
    EXPECT_EQ(said(), odd_[0]);
    line("value").setText(QStringLiteral("3")); // another row is asked about anew
    QTest::keyClick(&line("to"), Qt::Key_Return);
    EXPECT_TRUE(kept_.empty());
    QTest::keyClick(&line("to"), Qt::Key_Return);
    EXPECT_EQ(kept_.size(), 1U);
}

TEST_F(BookSheetTest, PutAsideItComesBackWithWhatWasTyped) {
    open(Deed::moved);
    line("from").setText(QStringLiteral("drum 7"));
    sheet_.putAside();
    EXPECT_FALSE(sheet_.isVisible());
    sheet_.resume();
    EXPECT_EQ(line("from").text(), QStringLiteral("drum 7"));
}

TEST_F(BookSheetTest, StandsWholeOnALowScreenWithEveryDeed) {
    for (const DayDeedRow& row : allDeeds()) {
        open(row.deed);
        sheet_.resize(946, 505);
        QApplication::processEvents();
        for (const Press* one : sheet_.findChildren<Press*>())
            if (one->isVisible()) {
                EXPECT_GE(one->height(), 45) << row.name << ' ' << one->text().toStdString();
                EXPECT_TRUE(one->isWhole()) << row.name << ' ' << one->text().toStdString();
                EXPECT_TRUE(sheet_.rect().contains(QRect{one->mapTo(&sheet_, QPoint{}), one->size()})) << row.name;
            }
    }
}

TEST(LedgerTable, KeepsTheChosenRowByItsNameAndPassesLettersOn) {
    LedgerTable table{QStringLiteral("t")};
    table.resize(600, 300);
    table.wear(Dress{});
    table.display({{QStringLiteral("vessel")}, {QStringLiteral("holds"), true}},
                  {{{QStringLiteral("a"), QStringLiteral("1")}}, {{QStringLiteral("b"), QStringLiteral("2")}}});
    table.choose(1);
    table.display({{QStringLiteral("vessel")}, {QStringLiteral("holds"), true}},
                  {{{QStringLiteral("b"), QStringLiteral("3")}}, {{QStringLiteral("a"), QStringLiteral("1")}}});
    EXPECT_EQ(table.chosen(), 0);
    QSignalSpy opened{&table, &LedgerTable::opened};
    table.show();
    QTest::keyClick(table.focusProxy(), Qt::Key_Return);
    EXPECT_EQ(opened.count(), 1);
    QTest::keyClick(table.focusProxy(), Qt::Key_A); // no row is looked up by its letter
    EXPECT_EQ(table.chosen(), 0);
}

TEST(LedgerTable, TurnsWholePagesWhereItIsLongerThanThePage) {
    LedgerTable table{QStringLiteral("t")};
    table.resize(600, 300);
    table.wear(Dress{});
    std::vector<TableRow> rows;
    for (int i = 0; i < 40; ++i)
        rows.push_back({{QString::number(i)}});
    table.display({{QStringLiteral("n")}}, rows);
    table.show();
    auto* down = table.findChild<Press*>(QStringLiteral("pageDown"));
    ASSERT_TRUE(down->isVisible());
    EXPECT_GE(down->height(), 45);
    table.choose(0);
    QTest::mouseClick(down, Qt::LeftButton);
    EXPECT_GT(table.chosen(), 3);
}

// A US gallon is 4 quarts, 8 pints, 16 cups (NIST Handbook 44, appendix C).
TEST(HandVolume, SaysASmallAmountAsItIsPoured) {
    EXPECT_EQ(handVolume(Volume::gallon(0.125), Units::us), QString::fromUtf8("1\u00a0pt"));
    EXPECT_EQ(handVolume(Volume::gallon(0.875), Units::us), QString::fromUtf8("3½\u00a0qt"));
    EXPECT_EQ(handVolume(Volume::gallon(0.0625), Units::us), QString::fromUtf8("1\u00a0cup"));
    EXPECT_EQ(handVolume(Volume::litre(0.45), Units::metric), QString::fromUtf8("450\u00a0mL"));
}

TEST(BookWords, SayARowAsAPersonWould) {
    const Fact packed = bookRow("2026-02-21T13:00:00Z,packed,24,,lot=A1;from=drum 7;size=1pt");
    EXPECT_EQ(dayRowWords(std::get<DayRow>(packed.what), Units::us),
              QString::fromUtf8("packed, 24 × 1pt, lot A1, from drum 7"));
}

} // namespace
} // namespace panside
