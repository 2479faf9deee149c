// The pages of sap and season that the ledger fills: what they say of made-up houses, without a window.
#include "tests/core/ledger/house.h"
#include "ui/account/account_view.h"
#include "ui/account/flow_screen.h"
#include "ui/sap/route_view.h"
#include "ui/sap/tanks_view.h"
#include "ui/sap/tonight_view.h"

#include <QApplication>
#include <QFile>
#include <QImage>
#include <QKeyEvent>
#include <QTemporaryDir>
#include <algorithm>

namespace panside {
namespace {

using namespace testing_house;

constexpr const char* tanks = "2027-03-01T06:00:00Z,vessel,1000,L,name=north;kind=gather\n"
                              "2027-03-01T06:00:00Z,vessel,3000,L,name=house tank;kind=hold\n"
                              "2027-03-01T06:00:00Z,vessel,900,L,name=feed;kind=feed\n"
                              "2027-03-01T06:00:00Z,vessel,200,L,name=drum 1;kind=drum\n";
Instant at(const std::string& clock) { return *instantIn("2027-03-" + clock + ":00Z"); }

std::string night(int date, int litres) {
    const std::string all = std::to_string(litres), rest = std::to_string(litres - 700);
    return day(date, "16:50", "set,20,kg,key=load_mass") + day(date, "17:00", "tank_level," + all + ",L,") +
           day(date, "17:00", "sap_in," + all + ",L,brix=2") + day(date, "17:00", "lit,,,") +
           day(date, "17:10", "fired,,,") + day(date, "19:00", "fired,,,") +
           day(date, "20:30", "draw_close,8,L,to=drum 1") + day(date, "21:00", "fired,,,") +
           day(date, "21:00", "tank_level," + rest + ",L,") + day(date, "22:00", "tank_level,0,L,") +
           day(date, "22:00", "shift_end,,,");
}
QString withoutMarks(QString words) {
    return words.replace(QChar{0x00a0}, QLatin1Char(' '));
} // spaces that do not break

FoldedHouse warmAndCold() {
    return FoldedHouse{std::string{tanks} + day(2, "09:00", "gathered,400,L,to=north;from=yard;brix=2.4;temp=13degC") +
                       day(2, "09:30", "gathered,900,L,to=house tank;from=bush;brix=2.1;temp=0degC")};
}

TEST(TanksPage, SaysWhatToBoilFirstAndWhy) {
    const FoldedHouse house = warmAndCold();
    const ListView view = tanksView(house.ledger.get(), at("02T18:00"), Units::us);
    ASSERT_EQ(view.rows.size(), 2u);
    EXPECT_EQ(view.rows[0].cells[0], "north");
    EXPECT_TRUE(view.rows[0].strong);
    EXPECT_TRUE(view.said[0].words.startsWith("Boil north first: warm before cold."))
        << view.said[0].words.toStdString();
    EXPECT_TRUE(withoutMarks(view.said[0].notes).contains("over 50 °F for 9 h 00")) << view.said[0].notes.toStdString();
    EXPECT_TRUE(view.said[0].notes.contains("Ohio State University, 2020"));
    EXPECT_TRUE(view.said[0].notes.contains("Nose and eye decide"));
    EXPECT_TRUE(view.said[1].notes.contains("ice holds little sugar"));
    EXPECT_FALSE(view.said[0].notes.contains("sour")) << "no countdown to sour";
}

// One page speaks one system; what never was is not told as so many seconds.
TEST(TanksPage, TellsHeatAndLimitsInTheUnitsOfThePerson) {
    const FoldedHouse house = warmAndCold();
    const ListView metric = tanksView(house.ledger.get(), at("02T18:00"), Units::metric);
    for (const ListView::Said& one : metric.said)
        EXPECT_FALSE(one.notes.contains("°F")) << one.notes.toStdString();
    EXPECT_TRUE(metric.said[0].notes.contains("Under 4 °C")) << metric.said[0].notes.toStdString();
    EXPECT_TRUE(metric.said[1].notes.contains("Never over 4 °C")) << metric.said[1].notes.toStdString();
    EXPECT_EQ(metric.rows[1].cells[5], "never");
    const ListView us = tanksView(house.ledger.get(), at("02T18:00"), Units::us);
    for (const ListView::Said& one : us.said)
        EXPECT_FALSE(one.notes.contains("°C")) << one.notes.toStdString();
}

TEST(TanksPage, SaysSinceWhenThePansHoldSweet) {
    const FoldedHouse house{tanks, {night(2, 900)}};
    const ListView view = tanksView(house.ledger.get(), at("04T18:00"), Units::us);
    ASSERT_FALSE(view.rows.empty());
    EXPECT_TRUE(view.said.back().words.contains("The pans hold about")) << view.said.back().words.toStdString();
    EXPECT_TRUE(view.said.back().words.contains("boil or drain them"));
    EXPECT_TRUE(view.said.back().words.contains(" since Tuesday, ")) << view.said.back().words.toStdString();
    const ListView later = tanksView(house.ledger.get(), at("22T18:00"), Units::us);
    EXPECT_TRUE(later.said.back().words.contains(" since 2 March, ")) << later.said.back().words.toStdString();
    EXPECT_EQ(withoutMarks(later.rows.back().cells[3]), "19 d") << "never in hundreds of hours";
}

TEST(TanksPage, WaitsForTheBooksAndSaysWhatIsMissing) {
    EXPECT_EQ(tanksView(nullptr, at("02T18:00"), Units::us).head, "Reading the book …");
    const FoldedHouse none{tanks};
    EXPECT_TRUE(tanksView(none.ledger.get(), at("02T18:00"), Units::us).head.contains("Enter what was gathered"));
    EXPECT_TRUE(tonightView(none.ledger.get(), usualAsk(at("02T18:00")), Units::us).head.contains("There is no sap"));
}

TEST(RouteSheet, HasALineAStopAndRoomForMore) {
    const QTemporaryDir folder;
    const auto pagesOf = [&](std::size_t stops) {
        std::vector<RouteStop> route(stops, RouteStop{"yard", "north", 30.0, {}, Volume::litre(40), {}});
        const QString place = folder.filePath(QStringLiteral("route.pdf"));
        routeAsPdf(route, at("02T18:00"), Units::us, place.toStdString());
        QFile file{place};
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        const QByteArray bytes = file.readAll();
        EXPECT_TRUE(bytes.startsWith("%PDF"));
        return bytes.count("/Type /Page\n");
    };
    EXPECT_EQ(pagesOf(0), 1);
    EXPECT_EQ(pagesOf(12), 1);
    EXPECT_EQ(pagesOf(40), 2);
}

TEST(TonightPage, AnswersBothWaysAndTheConcentrator) {
    const FoldedHouse house{std::string{tanks} + day(9, "09:00", "gathered,800,L,to=north;brix=2.2;temp=3degC"),
                            {night(2, 900), night(4, 880), night(6, 890)}};
    TonightAsk ask{at("09T17:00"), at("09T20:00"), Brix::degrees(8)};
    const ListView view = tonightView(house.ledger.get(), ask, Units::us);
    ASSERT_GE(view.rows.size(), 5u);
    EXPECT_TRUE(view.said[0].words.contains("the last load goes in about")) << view.said[0].words.toStdString();
    EXPECT_TRUE(view.said[0].notes.contains("Nights of this rig learned from: 3"));
    const auto says = [&](const QString& words) {
        return std::any_of(view.said.begin(), view.said.end(),
                           [&](const ListView::Said& one) { return withoutMarks(one.words).contains(words); });
    };
    EXPECT_TRUE(says("nine nights in ten"));
    // A low screen shows four rows: how much may be started is among them.
    EXPECT_TRUE(view.rows[2].cells[0].startsWith("start, to be cold by")) << view.rows[2].cells[0].toStdString();
    EXPECT_TRUE(view.rows[3].cells[0].startsWith("concentrated to")) << view.rows[3].cells[0].toStdString();
    EXPECT_TRUE(says("Concentrated to 8.0 °Brix first")) << view.said[3].words.toStdString();
}

TEST(TonightPage, BeginsAtTheNextQuarterOfAnHour) {
    const TonightAsk ask = usualAsk(at("02T18:07"));
    EXPECT_EQ(ask.light, at("02T18:15"));
    EXPECT_GT(ask.cold, ask.light);
    EXPECT_LE(secondsBetween(ask.light, ask.cold), 86400);
}

TEST(AccountPage, KeepsItsSectionsAndItsDoubts) {
    const FoldedHouse house{std::string{tanks} + day(1, "09:00", "gathered,400,L,to=north;from=yard;taps=80;brix=2.4"),
                            {night(2, 900), night(4, 880)}};
    const ListView view = accountView(house.ledger.get(), Units::us);
    QStringList heads;
    for (const TableRow& row : view.rows)
        if (row.strong)
            heads << row.cells[0];
    EXPECT_EQ(heads, (QStringList{"Runs", "Nights", "Heavy draws"}));
    EXPECT_EQ(view.said.size(), view.rows.size());
    const ListView tells = tellsView(house.ledger.get(), Units::us);
    ASSERT_EQ(tells.rows.size(), 3u);
    EXPECT_EQ(tells.rows[0].cells[1], "too little to tell");
    EXPECT_EQ(tells.rows[1].cells[1], "too little to tell");
}

// A house that does everything has every section, once and in this order.
TEST(AccountPage, HasASectionForAllThatTheHouseDoes) {
    const FoldedHouse house{std::string{tanks} + "2027-03-01T06:00:00Z,vessel,100,L,name=sweet;kind=concentrate\n" +
                                day(1, "09:00", "gathered,400,L,to=north;from=yard;taps=80;brix=2.4") +
                                day(1, "10:00", "bought,200,L,what=sap;vessel=north;from=Ann;brix=2") +
                                day(1, "11:00", "concentrated,60,L,from=north;to=sweet;brix=8;hours=1") +
                                day(5, "09:00", "graded,,,vessel=drum 1;light_class=amber") +
                                day(5, "10:00", "packed,6,,lot=A;from=drum 1;size=1L;capped=84degC;brix=66.9") +
                                day(5, "11:00", "shipped,2,,lot=A;size=1L;to=shop;price=30"),
                            {night(2, 900), night(4, 880)}};
    const ListView view = accountView(house.ledger.get(), Units::us);
    QStringList heads;
    for (const TableRow& row : view.rows)
        if (row.strong)
            heads << row.cells[0];
    EXPECT_EQ(heads, (QStringList{"Runs", "Nights", "Heavy draws", "In stock", "Price list by weight",
                                  "Sap bought and sold", "Concentrator"}));
    EXPECT_EQ(view.said.size(), view.rows.size());
}

// What stands at the left and at the right of the picture are the same sugar, to one scale.
TEST(FlowPage, BandsAreOfOneScaleAndAddUp) {
    const FoldedHouse house{std::string{tanks} + day(1, "09:00", "gathered,400,L,to=north;from=yard;brix=2.4") +
                                day(1, "12:00", "lost,50,L,from=north;why=sour") +
                                day(3, "09:00", "dipped,300,L,in=north"),
                            {night(2, 900)}};
    const FlowView view = flowView(house.ledger.get(), Units::us);
    ASSERT_FALSE(view.empty);
    EXPECT_NEAR(view.in.back().to, 1, 1e-9);
    EXPECT_NEAR(view.out.back().to, 1, 0.01);
    EXPECT_TRUE(view.out.back().open) << "what does not close is a band of its own";
    EXPECT_TRUE(std::any_of(view.out.begin(), view.out.end(), [](const FlowBand& one) { return one.lost; }));
    EXPECT_TRUE(view.doubt.contains("not spread over the others"));
    FlowPicture picture;
    picture.resize(900, 500);
    picture.display(view, Dress{});
    const QImage image = picture.grab().toImage();
    EXPECT_NE(image.pixelColor(450, 250), image.pixelColor(2, 2)) << "the trunk is drawn";
}

TEST(FlowPage, EscapeGoesBack) {
    FlowScreen screen;
    screen.display(flowView(nullptr, Units::us), Dress{});
    bool left = false;
    QObject::connect(&screen, &FlowScreen::left, [&left] { left = true; });
    QKeyEvent down{QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier};
    QApplication::sendEvent(&screen, &down);
    EXPECT_TRUE(left);
}

} // namespace
} // namespace panside
