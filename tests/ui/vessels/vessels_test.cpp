#include "tests/ui/ledger/house_of.h"
#include "tests/ui/words/in_language.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/page/action_keys.h"
#include "ui/vessels/vessels_screen.h"
#include "ui/words/hand_volume.h"

#include <QLabel>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

QString wantsOf(const VesselsView& view, const char* name) {
    for (const VesselLine& line : view.lines)
        if (line.name == QString::fromLatin1(name))
            return line.wants;
    return {};
}

// The amounts by hand: 17.03 L of 68.2 (1.337 kg/L by ICUMSA) want 1.3 / 64.9 of their 22.8 kg in sap of 2.0, a pint
// within a twentieth; 140.1 L of 65.7 lose 1.2 / 66.9 of their 184.7 kg, 3.31 L of water, 3½ quarts.
TEST(VesselsView, SaysWhatAVesselWantsInItsOwnMeasure) {
    const HouseLedger house = houseOf();
    const auto view = vesselsView(&house, {}, Units::us);
    EXPECT_EQ(wantsOf(view, "pail 3").toStdString(),
              std::string("pail 3: 4.5\u00a0gal at 68.2\u00a0±\u00a00.3: stir in 1\u00a0pt of sap, heat, "
                          "test"));
    EXPECT_EQ(wantsOf(view, "drum 7").toStdString(),
              std::string("drum 7: 37\u00a0gal at 65.7\u00a0±\u00a00.3, under the 66.0 for this place: do not "
                          "pack; boil 3½\u00a0qt off for 66.9"));
}

TEST(VesselsView, ShowsSyrupAndNoSapTanksAndTheEmptyLast) {
    const HouseLedger house = houseOf();
    const auto view = vesselsView(&house, {}, Units::us);
    ASSERT_EQ(view.lines.size(), 3U);
    EXPECT_EQ(view.lines[0].name, QStringLiteral("pail 3")); // touched last
    EXPECT_EQ(view.lines[2].name, QStringLiteral("pail 4"));
    EXPECT_TRUE(view.rows[2].quiet);
}

TEST(VesselsView, TakesTheLimitsThatThePersonSet) {
    const HouseLedger house = houseOf();
    const Set settings[] = {{Setting::legal_minimum, 0.65, Unit::brix}, {Setting::target_density, 0.655, Unit::brix}};
    EXPECT_TRUE(wantsOf(vesselsView(&house, settings, Units::us), "drum 7").endsWith(QStringLiteral("good as it is")));
}

TEST(VesselsView, TellsADrawOfWhichNobodySaidWhereItWent) {
    const Instant begun = instantIn("2026-03-03T22:00:00Z").value();
    std::vector<Boil::Entry> night{
        {1, {begun, Lit{}}},
        {2, {begun + std::chrono::hours{1}, DrawOpened{}}},
        {3, {begun + std::chrono::minutes{62}, DrawClosed{Said<Volume>{Volume::gallon(3), Unit::gal}, {}}}}};
    HouseLedger::Parts parts;
    parts.shifts.push_back(std::make_shared<const HouseShift>(houseShift(begun, night)));
    const HouseLedger house{parts, houseRows()};
    const auto view = vesselsView(&house, {}, Units::us);
    ASSERT_EQ(view.whereTo.size(), 1U);
    EXPECT_EQ(view.whereTo[0].id, 3);
    EXPECT_EQ(view.whereTo[0].shift, begun);
    EXPECT_TRUE(view.whereTo[0].words.contains(QStringLiteral("23:02")));
}

TEST(VesselsView, SaysWhatToDoWhereThereIsNothingYet) {
    const HouseLedger none{nullptr, {}};
    EXPECT_FALSE(vesselsView(&none, {}, Units::us).nothing.isEmpty());
    EXPECT_FALSE(vesselsView(nullptr, {}, Units::us).nothing.isEmpty());
}

TEST(VesselsView, GoesToTheVesselThatWasJustDrawnInto) {
    const Instant begun = instantIn("2026-03-03T22:00:00Z").value();
    std::vector<Boil::Entry> night{
        {1, {begun, DrawOpened{}}},
        {2, {begun + std::chrono::minutes{2}, DrawClosed{Said<Volume>{Volume::gallon(3), Unit::gal}, "Pail 4"}}}};
    HouseLedger::Parts parts;
    parts.shifts.push_back(std::make_shared<const HouseShift>(houseShift(begun, night)));
    const HouseLedger house{parts, houseRows()};
    const auto view = vesselsView(&house, {}, Units::us);
    const int row = lastDrawn(view, house, begun + std::chrono::minutes{10});
    ASSERT_GE(row, 0);
    EXPECT_EQ(view.lines[static_cast<std::size_t>(row)].name, QStringLiteral("pail 4"));
    EXPECT_EQ(lastDrawn(view, house, begun + std::chrono::hours{30}), -1);
}

class VesselsScreenTest : public ::testing::Test {
protected:
    VesselsScreenTest() {
        screen_.resize(946, 430);
        screen_.wear(Dress{});
        screen_.setDeeds({Deed::moved, Deed::lost});
        screen_.display(vesselsView(&house_, {}, Units::us));
        screen_.show();
        screen_.choose(0);
    }
    void press(Qt::Key key) {
        QWidget* focus = screen_.focusProxy();
        while (focus->focusProxy())
            focus = focus->focusProxy();
        QTest::keyClick(focus, key);
    }
    HouseLedger house_ = houseOf();
    VesselsScreen screen_;
};

TEST_F(VesselsScreenTest, AsksForTheDeedOfTheChosenVesselByKeysAndByMouse) {
    std::vector<std::pair<Deed, QString>> wanted;
    QObject::connect(&screen_, &VesselsScreen::deedWanted,
                     [&](Deed deed, const QString& name) { wanted.emplace_back(deed, name); });
    press(Qt::Key_M);
    press(Qt::Key_Down);
    press(Qt::Key_I);
    QTest::mouseClick(screen_.findChild<Press*>(QStringLiteral("grade")), Qt::LeftButton);
    ASSERT_EQ(wanted.size(), 3U);
    EXPECT_EQ(wanted[0], (std::pair{Deed::moved, QStringLiteral("pail 3")}));
    EXPECT_EQ(wanted[1], (std::pair{Deed::dipped, QStringLiteral("drum 7")}));
    EXPECT_EQ(wanted[2].first, Deed::graded);
}

TEST_F(VesselsScreenTest, SaysWhatTheChosenVesselWants) {
    auto* wants = screen_.findChild<QLabel*>(QStringLiteral("wants"));
    EXPECT_TRUE(wants->text().startsWith(QStringLiteral("pail 3")));
    press(Qt::Key_Down);
    EXPECT_TRUE(wants->text().startsWith(QStringLiteral("drum 7")));
}

TEST_F(VesselsScreenTest, OpensTheOtherEntriesAndComesBack) {
    QSignalSpy left{&screen_, &VesselsScreen::left};
    QSignalSpy wanted{&screen_, &VesselsScreen::deedWanted};
    press(Qt::Key_E);
    EXPECT_EQ(screen_.leaf(), VesselsScreen::Leaf::entries);
    press(Qt::Key_Return);
    EXPECT_EQ(wanted.count(), 1);
    press(Qt::Key_Escape);
    EXPECT_EQ(screen_.leaf(), VesselsScreen::Leaf::vessels);
    EXPECT_EQ(left.count(), 0);
    press(Qt::Key_Escape);
    EXPECT_EQ(left.count(), 1);
}

TEST_F(VesselsScreenTest, TellsWhereADrawWent) {
    auto view = vesselsView(&house_, {}, Units::us);
    view.whereTo = {LostDraw{Instant{}, 3, {}, QStringLiteral("a draw")}};
    screen_.display(view);
    QString told;
    QObject::connect(&screen_, &VesselsScreen::told, [&](const LostDraw&, const QString& name) { told = name; });
    press(Qt::Key_W);
    ASSERT_EQ(screen_.leaf(), VesselsScreen::Leaf::whereTo);
    QTest::keyClicks(screen_.findChild<TypedLine*>(QStringLiteral("intoVessel")), QStringLiteral("pail 4"));
    QTest::keyClick(screen_.findChild<TypedLine*>(QStringLiteral("intoVessel")), Qt::Key_Return);
    EXPECT_EQ(told, QStringLiteral("pail 4"));
    QTest::mouseClick(screen_.findChild<Press*>(QStringLiteral("into0")), Qt::LeftButton);
    EXPECT_EQ(told, QStringLiteral("pail 3"));
}

// Two draws of a night without a probe: the second was checked, 59.9 in a cup of 193 degF on a scale for 60 degF
// is 66.7 (float balance of ICUMSA densities); the first stands at the density wanted.
TEST(DrawsView, PutsTheChecksBesideTheirDraws) {
    const Instant begun = instantIn("2026-03-03T22:00:00Z").value();
    const auto after = [&](int minutes, const char* row) {
        return std::get<Fact>(factOfLine(textOf(begun + std::chrono::minutes{minutes}) + "," + row));
    };
    std::vector<Boil::Entry> night{{1, after(0, "lit,,,")},
                                   {2, after(60, "draw_close,3,gal,to=pail 3")},
                                   {3, after(130, "draw_close,2,gal,to=pail 4")},
                                   {4, after(132, "density_check,59.9,brix,temp=193degF;cal=60degF")}};
    HouseLedger::Parts parts;
    parts.shifts.push_back(std::make_shared<const HouseShift>(houseShift(begun, night)));
    const HouseLedger house{parts, houseRows()};
    const DrawsView view = drawsView(&house, {}, Units::us);
    ASSERT_EQ(view.draws.size(), 2U);
    EXPECT_TRUE(view.draws[0].checks.empty());
    ASSERT_EQ(view.draws[1].checks.size(), 1U);
    EXPECT_NEAR(view.draws[1].checks[0], 66.7, 0.15);
    EXPECT_NEAR(view.draws[1].brix.value(), view.draws[1].checks[0], 0.05);
    EXPECT_EQ(view.draws[1].into, QStringLiteral("pail 4"));
    EXPECT_NEAR(view.least, 66.0, 1e-9);
}

// What is said is done, and measured: sugar and mass add up (sap of 2 brix weighs 1006.0 kg a cubic metre at 20 degC,
// water 998.2: ICUMSA SPS-4, IAPWS), whatever the vessel, and with the jugs and spoons of either kitchen.
TEST(Remedies, AsTheyAreSaidLandWithinATenthOfABrix) {
    const DensityLimits limits{Brix::degrees(66.0), Brix::degrees(68.9), Brix::degrees(66.9), Brix::degrees(2.0)};
    for (const Units units : {Units::us, Units::metric})
        for (double mass = 1; mass < 300; mass *= 1.13)
            for (double brix = 60; brix <= 74; brix += 0.37) {
                Liquid content;
                content.mass = mass;
                content.sugar = mass * brix / 100;
                const Remedy remedy = remedyOf(content, limits);
                if (remedy.stirIn.si() <= 0 && remedy.boilOff.si() <= 0)
                    continue;
                const HandAmount sap = handAmount(remedy.stirIn, units, remedy.within);
                const HandAmount water = handAmount(remedy.boilOff, units, remedy.within);
                const double stirred = remedy.stirIn.si() > 0 ? sap.said.si() * 1006.0 : 0;
                const double boiled = remedy.boilOff.si() > 0 ? water.said.si() * 998.2 : 0;
                const double then = (content.sugar + stirred * 0.02) / (mass + stirred - boiled) * 100;
                EXPECT_NEAR(then, 66.9, 0.1)
                    << mass << " kg of " << brix << ": " << (stirred > 0 ? sap : water).text.toStdString();
            }
}

TEST(HandAmount, IsAsFineAsItMustBeAndNoFiner) {
    const auto said = [](double gallons, double within) {
        return handAmount(Volume::gallon(gallons), Units::us, Volume::gallon(within)).text;
    };
    EXPECT_EQ(said(0.13, 0.01), QString::fromUtf8("1\u00a0pt"));
    EXPECT_EQ(said(0.88, 0.01), QString::fromUtf8("3½\u00a0qt"));
    // 0.13 gal are 2.08 cups: two and 1.28 tablespoons.
    EXPECT_EQ(said(0.13, 0.0015), QString::fromUtf8("2\u00a0cups + 1\u00a0tbsp"));
    EXPECT_EQ(said(0.075, 0.01), QString::fromUtf8("1¼\u00a0cups"));
    EXPECT_EQ(said(0.0625, 0.001), QString::fromUtf8("1\u00a0cup"));
    EXPECT_EQ(said(0.031, 0.001), QString::fromUtf8("½\u00a0cup"));
    EXPECT_EQ(said(0.002, 0.0002), QString::fromUtf8("1½\u00a0tsp")); // 1.54 of the 768 in a gallon
    EXPECT_EQ(handAmount(Volume::litre(0.453), Units::metric, Volume::litre(0.001)).text,
              QString::fromUtf8("453\u00a0mL"));
}

class CupsSaid : public InLanguage {};
INSTANTIATE_TEST_SUITE_P(InBoth, CupsSaid, testing::Bool());
TEST_P(CupsSaid, TakeThePluralOfTheirNumber) {
    const auto said = [](double cups) {
        return handAmount(Volume::gallon(cups / 16), Units::us, Volume::gallon(0.001)).text.replace(QChar{0xa0}, u' ');
    };
    const struct {
        double cups;
        const char *english, *french;
    } amounts[] = {{0.5, "½ cup", "½ tasse"},
                   {1, "1 cup", "1 tasse"},
                   {1.75, "1¾ cups", "1¾ tasse"},
                   {1.75 + 1.0 / 16, "1¾ cups + 1 tbsp", "1¾ tasse + 1 c. à soupe"},
                   {2.25, "2¼ cups", "2¼ tasses"}};
    for (const auto& amount : amounts)
        EXPECT_EQ(said(amount.cups), QString::fromUtf8(GetParam() ? amount.french : amount.english));
}

// 37 gal at 65.7 and 4.5 gal at 68.2 brix, of 1.322 and 1.337 kg/L at 20 degC by ICUMSA: 3624 of 54.93 parts, 66.0.
TEST(LeavesSentence, SaysWhatABlendWillBe) {
    const HouseLedger house = houseOf();
    BookForm form = bookForm(Deed::moved, bookContext(&house, Units::us, instantIn("2026-03-05T12:00:00Z").value()));
    form.put(Key::from, QStringLiteral("pail 3"));
    EXPECT_TRUE(leavesSentence(house.ledger(), form, Units::us).startsWith(QStringLiteral("pail 3: 4.5")));
    form.put(Key::to, QStringLiteral("pail 4"));
    EXPECT_FALSE(leavesSentence(house.ledger(), form, Units::us).contains(QStringLiteral("blend"))) << "it is empty";
    form.put(Key::to, QStringLiteral("drum 7"));
    const auto all = leavesSentence(house.ledger(), form, Units::us).toStdString();
    EXPECT_TRUE(all.starts_with("A blend. drum 7: 4")) << all;
    EXPECT_NE(all.find("at 66.0"), std::string::npos) << all;
    form.put(std::nullopt, QStringLiteral("0.1"));
    EXPECT_NE(leavesSentence(house.ledger(), form, Units::us).toStdString().find("at 65.7"), std::string::npos);
    form.put(Key::from, QStringLiteral("pail 4"));
    EXPECT_EQ(leavesSentence(house.ledger(), form, Units::us), QStringLiteral("pail 4 is empty."));
}

// Equal volumes of 80 and 20 percent of light: absorbances add up, so the root of .16, 40 percent (Beer and Lambert).
TEST(LeavesSentence, EstimatesTheColorOfABlend) {
    const HouseLedger house = houseOf({rowIn("2026-03-03T10:00:00Z,bought,4.5,gal,what=syrup;vessel=pail 4;brix=68.2"),
                                       rowIn("2026-03-03T11:00:00Z,graded,80,percent,vessel=pail 3"),
                                       rowIn("2026-03-03T11:10:00Z,graded,20,percent,vessel=pail 4")});
    BookForm form = bookForm(Deed::moved, bookContext(&house, Units::us, instantIn("2026-03-05T12:00:00Z").value()));
    form.put(Key::from, QStringLiteral("pail 3"));
    form.put(Key::to, QStringLiteral("pail 4"));
    const auto says = leavesSentence(house.ledger(), form, Units::us).toStdString();
    EXPECT_NE(says.find("40 % of light, Dark"), std::string::npos) << says;
    EXPECT_NE(says.find("Measure it before it is labeled"), std::string::npos) << says;
}

TEST(VesselsView, NeedsNothingOfWhatIsToBeKeptApart) {
    const HouseLedger house = houseOf({rowIn("2026-03-03T11:10:00Z,graded,,,vessel=pail 3;off=buddy")});
    const auto view = vesselsView(&house, {}, Units::us);
    const auto pail = std::ranges::find(view.lines, QStringLiteral("pail 3"), &VesselLine::name);
    ASSERT_NE(pail, view.lines.end());
    EXPECT_EQ(view.rows[static_cast<std::size_t>(pail - view.lines.begin())].cells.back(),
              QStringLiteral("keep it apart"));
    EXPECT_TRUE(pail->wants.endsWith(QStringLiteral("keep it apart")));
}

} // namespace
} // namespace panside
