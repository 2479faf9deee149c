#include "core/physics/tonight.h"

#include "core/physics/reckon.h"
#include "core/physics/reckon_tonight.h"
#include "core/physics/sap.h"
#include "core/physics/sugar_density.h"

#include <algorithm>
#include <array>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace panside {
namespace {

using std::chrono::hours;
using std::chrono::minutes;

// A night of sap of 2 brix: half an hour to warm up, then 200 L of water an hour.
NightBoiled night(double litres, double late = 1) {
    const double sugar = litres / 1000 * sugarDensity(Brix::degrees(2), Temperature::celsius(20))->si() * 0.02;
    const double syrup = litres / *sapPerSyrup(Brix::degrees(2), Brix::degrees(66.9));
    NightBoiled boiled;
    boiled.fired = Duration{3600 * late * (0.5 + (litres - syrup) / 200)};
    boiled.sap = Volume::litre(litres);
    boiled.sugar = Mass::kilogram(sugar);
    boiled.sugarIn = boiled.sugar;
    boiled.sugarDrawn = boiled.sugar;
    boiled.cords = 0.1 * boiled.fired.count() / 3600;
    return boiled;
}
TonightBasis rig(std::vector<NightBoiled> nights) {
    TonightBasis basis;
    basis.nights = std::move(nights);
    basis.keepBack = Volume::litre(100);
    return basis;
}
SapStanding sap(double litres, double brix = 2) { return {Volume::litre(litres), Brix::degrees(brix)}; }
double hoursOf(Duration span) { return span.count() / 3600; }

// By hand: 1100 L less 100 kept back is 1000 L, of which 22.6 L become syrup (44.2 to one at 66.9 brix, from sucrose
// tables): 977 L of water at 200 L/h and half an hour.
TEST(Tonight, TakesALikeNightAsLongAsThoseBefore) {
    const Tonight known{rig({night(1500), night(800), night(1200), night(600), night(1000)})};
    const SapStanding stands[] = {sap(1100)};
    const auto plan = known.plan(stands).value();
    EXPECT_NEAR(hoursOf(plan.lastLoad.p50), 0.5 + 977.4 / 200, 0.1);
    EXPECT_LT(hoursOf(plan.lastLoad.p90) - hoursOf(plan.lastLoad.p10), 1.0);
    EXPECT_NEAR(plan.syrup.p50.litre(), 1100 / 44.2, 0.7);
    EXPECT_NEAR(plan.cords.value().p50, 0.1 * hoursOf(plan.lastLoad.p50), 0.02);
    EXPECT_NEAR(hoursOf(plan.cold.p50) - hoursOf(plan.lastLoad.p50), 0.75, 1e-9);
    EXPECT_EQ(plan.nights, 5);
}

TEST(Tonight, IsSurerTheMoreNightsAgree) {
    const SapStanding stands[] = {sap(1100)};
    const auto width = [&](std::vector<NightBoiled> nights) {
        const auto plan = Tonight{rig(std::move(nights))}.plan(stands).value();
        return hoursOf(plan.lastLoad.p90) - hoursOf(plan.lastLoad.p10);
    };
    const double one = width({night(1000)});
    const double four = width({night(1000), night(700), night(1300), night(900)});
    const double apart = width({night(1000), night(700, 1.25), night(1300, 0.8), night(900, 1.2)});
    EXPECT_GT(one, four);
    EXPECT_GT(apart, 2 * four);
}

// The nights tell how long so much water takes. A crew that leaves now more and now less for the burn-out makes the
// last load no surer than that: 40 L at 200 L/h, one standard deviation, are a quarter of an hour either way in eight
// of ten.
TEST(Tonight, IsNoSurerOfTheLastLoadThanTheSapThatIsLeftAtIt) {
    const SapStanding stands[] = {sap(1100)};
    const auto plan = [&](std::array<double, 4> left) {
        std::vector<NightBoiled> nights;
        for (const double litres : left) {
            nights.push_back(night(900 + litres));
            nights.back().kept = Volume::litre(litres);
        }
        return Tonight{rig(std::move(nights))}.plan(stands).value().lastLoad;
    };
    const auto steady = plan({100, 100, 100, 100}), wild = plan({60, 140, 60, 140});
    EXPECT_NEAR(hoursOf(wild.p50), hoursOf(steady.p50), 0.25);
    const auto half = [](const Likely<Duration>& load) { return hoursOf(load.p90) - hoursOf(load.p50); };
    EXPECT_GT(half(wild), half(steady) + 0.05);
    EXPECT_GT(half(wild), 1.28 * 40 / 200 * 0.9);
}

// Wood, draft and scale change over a season: the same nights in the other order give another answer.
TEST(Tonight, GoesMoreByTheLastNightsThanByTheFirst) {
    const SapStanding stands[] = {sap(1100)};
    const auto after = [&](double first, double last) {
        std::vector<NightBoiled> nights;
        for (int i = 0; i < 12; ++i)
            nights.push_back(night(800 + 50 * (i % 6), i < 6 ? first : last));
        return hoursOf(Tonight{rig(std::move(nights))}.plan(stands).value().lastLoad.p50);
    };
    EXPECT_GT(after(0.8, 1.25), after(1.25, 0.8) + 0.2);
}

TEST(Tonight, SaysWhatItLacks) {
    const SapStanding some[] = {sap(1000)}, little[] = {sap(80)}, none[] = {sap(0)};
    EXPECT_EQ(Tonight{rig({})}.lack(some), TonightLack::noNight);
    EXPECT_EQ(Tonight{rig({night(1000)})}.lack(none), TonightLack::noSap);
    EXPECT_EQ(Tonight{rig({night(1000)})}.lack(little), TonightLack::allKeptBack);
    EXPECT_FALSE(Tonight{rig({})}.plan(some));
    EXPECT_FALSE(Tonight{rig({})}.mayStart(some, hours{8}));
}

// Where nothing is known of the pans nothing is said to cover them.
TEST(Tonight, DoesNotCallNothingKeptBackEnough) {
    const SapStanding stands[] = {sap(1000)};
    TonightBasis basis;
    basis.rate = VolumeFlow::litrePerHour(200);
    const auto plan = Tonight{basis}.plan(stands).value();
    EXPECT_FALSE(plan.keepKnown || plan.keepLearned);
    basis.keepBack = Volume::litre(100);
    EXPECT_TRUE(Tonight{basis}.plan(stands)->keepKnown);
}

// Pans that were drained must be filled with sweet first: what they usually hold does not come out.
TEST(Tonight, GivesLessSyrupWhereThePansMustBeFilledFirst) {
    auto nights = std::vector{night(1000), night(1000), night(1000)};
    for (NightBoiled& one : nights)
        one.sugarInPans = Mass::kilogram(9);
    TonightBasis basis = rig(nights);
    const SapStanding stands[] = {sap(1000)};
    const double full = Tonight{basis}.plan(stands)->syrup.p50.litre();
    basis.pansEmpty = true;
    const auto empty = Tonight{basis}.plan(stands)->syrup;
    // 9 kg of sugar are 10.1 L of syrup: a litre holds 0.8886 kg (1.3282 kg/L at 66.9 brix, ICUMSA SPS-4).
    EXPECT_NEAR(full - empty.p50.litre(), 9 / 0.8886, 0.01);
}

RC_GTEST_PROP(TonightProperty, TheOtherWayRoundComesBack, ()) {
    const Tonight known{rig({night(1500), night(800, 1.1), night(1200, 0.95)})};
    const SapStanding stands[] = {sap(*rc::gen::inRange(200, 3000), *rc::gen::inRange(10, 80) / 10.0)};
    const Duration until{*rc::gen::inRange(600, 80000) * 1.0};
    const auto may = known.mayStart(stands, until).value();
    RC_ASSERT(may.surely <= may.likely);
    RC_ASSERT(may.likely <= stands[0].volume * (1 + 1e-9));
    if (may.surely.litre() > 0 && !may.all) {
        SapStanding part[] = {stands[0]};
        part[0].volume = may.surely;
        RC_ASSERT(std::abs((known.plan(part)->cold.p90 - until).count()) < 60);
    }
}

RC_GTEST_PROP(TonightProperty, MoreSapTakesLongerAndConcentrateSaves, ()) {
    const Tonight known{rig({night(1500), night(800, 1.1), night(1200, 0.95)})};
    const double litres = *rc::gen::inRange(300, 3000), brix = *rc::gen::inRange(10, 40) / 10.0;
    const SapStanding stands[] = {sap(litres, brix)}, more[] = {sap(litres * 1.1, brix)};
    const auto plan = known.plan(stands).value(), longer = known.plan(more).value();
    RC_ASSERT(plan.lastLoad.p10 <= plan.lastLoad.p50 && plan.lastLoad.p50 <= plan.lastLoad.p90);
    RC_ASSERT(plan.syrup.p10 <= plan.syrup.p50 && plan.syrup.p50 <= plan.syrup.p90);
    RC_ASSERT(plan.lastLoad.p50 < longer.lastLoad.p50);
    const auto thick = concentratedTo(stands, Brix::degrees(8));
    // All the sugar stays on this side of the membrane.
    const auto kilograms = [](const SapStanding& one) {
        return one.volume.si() * sugarDensity(one.sugar, Temperature::celsius(20))->si() * one.sugar.si();
    };
    RC_ASSERT(std::abs(kilograms(thick[0]) - kilograms(stands[0])) < 1e-9 * kilograms(stands[0]));
    if (const auto quick = known.plan(thick))
        RC_ASSERT(quick->lastLoad.p50 < plan.lastLoad.p50);
}

using namespace sums;
using testing::HasSubstr;

std::string words(const Outcome& outcome) {
    std::string all;
    if (const auto* refusal = std::get_if<Refusal>(&outcome)) {
        for (const Sentence& one : refusal->why)
            all += asRead(one) + " ";
        return all;
    }
    for (const Sentence& one : std::get<Answer>(outcome).sum)
        all += asRead(one) + " ";
    return all;
}

// 100 gal/h and 650 gal of 2 brix with 50 kept back: 600 gal, of which 13.6 become syrup, 5.86 h and half an hour.
TEST(ReckonTonight, AnswersBothWays) {
    const Arguments asked{{"stand", "650gal@2brix"}, {"rate", "100gal/h"}, {"keep", "50gal"},
                          {"light", "4pm"},          {"cold", "23:00"},    {"concentrate", "8brix"}};
    const auto outcome = reckon("tonight", asked);
    const auto& answer = std::get<Answer>(outcome);
    EXPECT_EQ(answer.figures[0].field, "lastLoadS");
    EXPECT_NEAR(answer.figures[0].range->p50 / 3600, 6.36, 0.1);
    EXPECT_THAT(words(outcome), HasSubstr("Lit at 16:00: last load about 22:2"));
    EXPECT_THAT(words(outcome), HasSubstr("cold by 23:00: start "));
    EXPECT_THAT(words(outcome), HasSubstr("Concentrated to 8.0 °Brix first"));
    const auto saves = std::find_if(answer.figures.begin(), answer.figures.end(),
                                    [](const Figure& figure) { return figure.field == "savesS"; });
    ASSERT_NE(saves, answer.figures.end());
    EXPECT_NEAR(*saves->value / 3600, 4.4, 0.6) << "three quarters of the water is gone";
}

// A journal without a night: what somebody says of the rig stands in for it.
TEST(ReckonTonight, TakesTheRateThatIsSaidWhereNoNightIsKnown) {
    const SapStanding stands[] = {{Volume::gallon(650), Brix::degrees(2)}};
    EXPECT_THAT(words(sums::reckonTonight({}, {}, stands)), HasSubstr("Say what it boils off"));
    const auto outcome = sums::reckonTonight({{"rate", "100gal/h"}, {"keep", "50gal"}}, {}, stands);
    ASSERT_TRUE(std::holds_alternative<Answer>(outcome)) << words(outcome);
    EXPECT_NEAR(std::get<Answer>(outcome).figures[0].range->p50 / 3600, 6.36, 0.1);
    EXPECT_THAT(words(sums::reckonTonight({{"rate", "100"}}, {}, stands)), HasSubstr("no unit"));
}

TEST(ReckonTonight, ReadsATimeOfDayAsPeopleWriteIt) {
    const std::pair<const char*, const char*> all[] = {{"12am", "0:00"},     {"12pm", "12:00"},  {"1pm", "13:00"},
                                                       {"11:30pm", "23:30"}, {"5:05am", "5:05"}, {"9h30", "9:30"},
                                                       {"21.45", "21:45"},   {"0:00", "0:00"}};
    for (const auto& [typed, meant] : all)
        EXPECT_THAT(words(reckon("tonight", {{"stand", "450gal@2brix"}, {"rate", "60gal/h"}, {"light", typed}})),
                    HasSubstr(std::string{"Lit at "} + meant + ":"))
            << typed;
}

TEST(ReckonTonight, RefusesWithTheLikelySlip) {
    const auto with = [](std::string name, std::string value) {
        return words(reckon("tonight", {{"stand", "450gal@2brix"}, {"rate", "60gal/h"}, {name, value}}));
    };
    EXPECT_THAT(with("cold", "25:00"), HasSubstr("23:00"));
    EXPECT_THAT(with("cold", "13pm"), HasSubstr("no time of day"));
    EXPECT_THAT(with("density", "2brix"), HasSubstr("not sap"));
    EXPECT_THAT(with("keep", "900gal"), HasSubstr("Do not light"));
    EXPECT_THAT(words(reckon("tonight", {{"stand", "450gal@22brix"}, {"rate", "60gal/h"}})), HasSubstr("mean 2.2?"));
    EXPECT_THAT(with("light", "16:00"), HasSubstr("Nothing is kept back"));
    EXPECT_THAT(words(reckon("tonight", {{"stand", "450gal@22brix"}, {"rate", "60"}})), HasSubstr("no unit"));
    EXPECT_THAT(words(reckon("tonight", {{"stand", "0gal@2brix"}, {"rate", "60gal/h"}})), HasSubstr("there is no sap"));
    EXPECT_THAT(words(reckon("tonight", {{"stand", "450gal"}, {"rate", "60gal/h"}})), HasSubstr("@ between them"));
}

} // namespace
} // namespace panside
