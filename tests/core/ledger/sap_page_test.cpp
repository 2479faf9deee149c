// The sap page: situations 25 to 28, 41, 42 and 49 of a sugarhouse, and sugar, heat and age of what is pumped about.
#include "core/ledger/sap_page.h"

#include "core/ledger/house_account.h"
#include "core/physics/sugar_density.h"
#include "house.h"
#include "tests/reference/table.h"

#include <cmath>

#include <rapidcheck/gtest.h>

namespace panside {
namespace {

using namespace testing_house;

constexpr const char* pageTanks = "2027-03-01T06:00:00Z,vessel,1000,L,name=north;kind=gather\n"
                                  "2027-03-01T06:00:00Z,vessel,3000,L,name=house tank;kind=hold\n"
                                  "2027-03-01T06:00:00Z,vessel,500,L,name=sweet;kind=concentrate\n"
                                  "2027-03-01T06:00:00Z,vessel,800,L,name=feed;kind=feed\n";
Instant at(const std::string& clock) { return *instantIn("2027-03-" + clock + ":00Z"); }

struct Page {
    explicit Page(const std::string& rows, const std::string& now, const std::vector<std::string>& shifts = {})
        : house{pageTanks + rows, shifts}, page{sapPage(*house.ledger, at(now))} {}
    const TankPicture& tank(std::string_view name) const {
        for (const TankPicture& tank : page.tanks)
            if (house.ledger->vessels()[tank.vessel].name == name)
                return tank;
        throw std::runtime_error{"no such tank"};
    }
    std::vector<std::string> order() const {
        std::vector<std::string> names;
        for (const BoilFirst& one : page.order)
            names.push_back(house.ledger->vessels()[page.tanks[one.tank].vessel].name);
        return names;
    }
    FoldedHouse house;
    SapPage page;
};

TEST(SapPage, TellsVolumeSugarHeatAgeAndRoom) {
    const Page page{day(2, "09:00", "gathered,400,L,to=north;from=run;brix=2.3;cal=38degF;temp=60degF") +
                        day(2, "12:00", "gathered,200,L,to=north;from=run;brix=2.0;temp=3degC"),
                    "02T15:00"};
    const TankPicture& tank = page.tank("north");
    // A sap hydrometer made for 38 degF that shows 2.3 at 60 degF floats in 2.5 (common practice, charts of dealers).
    EXPECT_NEAR(tank.sugar.degrees(), (400 * 2.5 + 200 * 2.0) / 600, 0.03);
    EXPECT_NEAR(tank.volume.litre(), 600, 2);
    EXPECT_NEAR(tank.room->litre(), 400, 2);
    EXPECT_EQ(tank.oldest, Duration{6 * 3600});
    EXPECT_NEAR(tank.coldest->celsius(), 3, 1e-9);
    EXPECT_NEAR(tank.warmest->fahrenheit(), 60, 1e-9);
    // Three hours at 60 degF, then three as a blend of 15.6 and 3 degC: 11.4 degC, 52 degF.
    EXPECT_EQ(tank.over50F, Duration{6 * 3600});
    EXPECT_NEAR(tank.now->celsius(), (400 * 15.556 + 200 * 3.0) / 600, 0.02);
    EXPECT_FALSE(tank.atFreezing);
}

TEST(SapPage, PumpedInOneEntryMovesVolumeSugarHeatAndAge) {
    const Page page{day(2, "09:00", "gathered,400,L,to=north;brix=2.4;temp=12degC") +
                        day(2, "13:00", "moved,300,L,from=north;to=house tank"),
                    "02T14:00"};
    for (const char* name : {"north", "house tank"}) {
        const TankPicture& tank = page.tank(name);
        EXPECT_NEAR(tank.sugar.degrees(), 2.4, 1e-9) << name;
        EXPECT_EQ(tank.oldest, Duration{5 * 3600}) << name;
        EXPECT_EQ(tank.over50F, Duration{5 * 3600}) << name;
        EXPECT_EQ(tank.toldAgo, Duration{5 * 3600}) << name;
    }
    EXPECT_NEAR(page.tank("house tank").volume.litre(), 300, 0.01);
}

TEST(SapPage, BoilsConcentrateThenWarmThenOldFirstAndRopyLast) {
    const Page page{day(1, "09:00", "gathered,300,L,to=north;brix=2;temp=2degC") +
                        day(2, "09:00", "gathered,400,L,to=house tank;brix=2;temp=12degC") +
                        day(2, "10:00", "gathered,400,L,to=feed;brix=2;temp=2degC") +
                        day(2, "11:00", "concentrated,100,L,from=house tank;to=sweet;brix=6;brix_in=2;temp=6degC"),
                    "02T18:00"};
    EXPECT_EQ(page.order(), (std::vector<std::string>{"sweet", "house tank", "north", "feed"}));
    EXPECT_EQ(page.page.order[0].reason, BoilReason::concentrate);
    EXPECT_EQ(page.page.order[1].reason, BoilReason::warm);
    EXPECT_EQ(page.page.order[2].reason, BoilReason::old);
    const Page ropy{day(1, "09:00", "gathered,300,L,to=north;brix=2;temp=12degC;clear=ropy") +
                        day(2, "09:00", "gathered,400,L,to=feed;brix=2;temp=2degC"),
                    "02T18:00"};
    EXPECT_EQ(ropy.order(), (std::vector<std::string>{"feed", "north"}));
    EXPECT_EQ(ropy.page.order[0].reason, BoilReason::onlyOne);
    EXPECT_EQ(ropy.page.order[1].reason, BoilReason::ropy);
}

// Each says what sets it apart, though its neighbours are like it.
TEST(SapPage, SaysWhyATankIsBoiledFirstThoughTheNextIsLikeIt) {
    const std::string alike = day(1, "09:00", "vessel,1000,L,name=south;kind=gather") +
                              day(2, "09:00", "gathered,400,L,to=north;brix=2;temp=2degC") +
                              day(2, "09:10", "gathered,400,L,to=south;brix=2;temp=2degC");
    const Page page{alike + day(2, "09:20", "gathered,400,L,to=house tank;brix=2;temp=2degC") +
                        day(2, "11:00", "concentrated,100,L,from=house tank;to=sweet;brix=6;brix_in=2;temp=2degC") +
                        day(2, "11:01", "moved,50,L,from=sweet;to=feed"),
                    "02T18:00"};
    EXPECT_EQ(page.page.order.size(), 5u);
    for (std::size_t place = 0; place < page.page.order.size(); ++place)
        EXPECT_EQ(page.page.order[place].reason, BoilReason::concentrate) << place;
    const Page like{alike, "02T18:00"};
    ASSERT_EQ(like.page.order.size(), 2u);
    EXPECT_EQ(like.page.order[0].reason, BoilReason::like);
    EXPECT_EQ(like.page.order[1].reason, BoilReason::like);
}

// Situation 26: tanks that fill while nobody is there; and one that has stopped filling tells no time.
TEST(SapPage, TellsWhenATankRunsOver) {
    std::string rows;
    for (int hour = 8; hour < 14; ++hour)
        rows += day(2, (hour < 10 ? "0" : "") + std::to_string(hour) + ":00", "gathered,100,L,to=north;brix=2");
    const Page filling{rows, "02T13:10"};
    ASSERT_TRUE(filling.tank("north").filling);
    EXPECT_NEAR(filling.tank("north").filling->rate.litrePerHour(), 100, 1);
    EXPECT_NEAR(filling.tank("north").filling->likely.count(), 4 * 3600, 60);
    EXPECT_LT(filling.tank("north").filling->soonest, filling.tank("north").filling->likely);
    EXPECT_FALSE((Page{rows, "02T18:00"}.tank("north").filling)) << "nothing came for five hours";
    const Page over{rows + day(2, "14:00", "gathered,500,L,to=north;brix=2"), "02T14:10"};
    EXPECT_LT(over.tank("north").room->litre(), 0) << "kept and marked, never cut off";
    EXPECT_EQ(over.house.marked(MarkKind::overRim), 1);
}

// Situations 41 and 42: what is left in the pans stands there until it is drawn or drained.
TEST(SapPage, CarriesTheSweetInThePansFromNightToNight) {
    const std::string boil = day(2, "16:50", "sap_in,500,L,brix=2") + day(2, "17:00", "lit,,,") +
                             day(2, "19:00", "draw_close,5,L,to=pail;temp=20degC") + day(2, "20:00", "shift_end,,,");
    const FoldedHouse house{pageTanks, {boil}};
    const auto sweet = sweetInPans(*house.ledger, at("04T20:00")).value();
    // 500 L of 2 brix hold 10.06 kg; 5 L of 66.9 brix hold 4.44 (ICUMSA SPS-4).
    EXPECT_NEAR(sweet.sugar.kilogram(), 10.06 - 4.44, 0.03);
    EXPECT_NEAR(sweet.since->count(), 2 * 86400, 3600 + 1);
    EXPECT_GT(sweet.sd.kilogram(), 0.05);
    EXPECT_LT(sweet.sd.kilogram(), 1.0);
    const FoldedHouse drained{std::string{pageTanks} + day(3, "10:00", "pans_emptied,30,L,to=pail 1;washed=yes"),
                              {boil}};
    EXPECT_FALSE(sweetInPans(*drained.ledger, at("04T20:00")));
    EXPECT_NEAR(drained.sugar("pail 1"), 10.06 - 4.44, 0.03);
}

// The alarm: where no rim was set, a quarter of an hour before; with one, when so much is left.
TEST(SapPage, CallsBeforeATankRunsOver) {
    std::string rows;
    for (int hour = 8; hour < 17; ++hour)
        rows += day(2, (hour < 10 ? "0" : "") + std::to_string(hour) + ":00", "gathered,100,L,to=north;brix=2");
    const FoldedHouse house{pageTanks + rows};
    EXPECT_TRUE(rimCalls(*house.ledger, at("02T16:30")).empty());
    const auto soon = rimCalls(*house.ledger, at("02T16:50"));
    ASSERT_EQ(soon.size(), 1u);
    EXPECT_EQ(house.ledger->vessels()[soon[0].vessel].name, "north");
    EXPECT_NEAR(soon[0].fullIn->count(), 600, 60);
    const FoldedHouse rim{std::string{pageTanks} + day(1, "07:00", "set,150,L,key=overflow_rim") +
                          day(2, "08:00", "gathered,840,L,to=north;brix=2")};
    EXPECT_TRUE(rimCalls(*rim.ledger, at("02T08:10")).empty());
    const FoldedHouse under{std::string{pageTanks} + day(1, "07:00", "set,150,L,key=overflow_rim") +
                            day(2, "08:00", "gathered,860,L,to=north;brix=2")};
    ASSERT_EQ(rimCalls(*under.ledger, at("02T08:10")).size(), 1u);
    EXPECT_NEAR(rimCalls(*under.ledger, at("02T08:10"))[0].room.litre(), 140, 1);
    EXPECT_TRUE(rimCalls(*under.ledger, at("04T08:10")).empty()) << "it was left full two days ago";
    const FoldedHouse over{pageTanks + rows + day(2, "16:10", "gathered,200,L,to=north;brix=2") +
                           day(2, "16:20", "vessel,,,name=north;out=yes")};
    EXPECT_TRUE(rimCalls(*over.ledger, at("02T16:30")).empty()) << "it is out";
}

// Two tanks that feed each other in a ring: nothing is made and nothing lost.
TEST(SapPage, ARingOfTanksKeepsItsSugar) {
    std::string rows = day(2, "08:00", "gathered,500,L,to=north;brix=2.5;temp=5degC");
    for (int i = 10; i < 40; ++i)
        rows += day(2, "09:" + std::to_string(i), "moved,50,L,from=north;to=house tank") +
                day(2, "10:" + std::to_string(i), "moved,40,L,from=house tank;to=north");
    const Page page{rows, "02T12:00"};
    double sugar = 0;
    for (const TankPicture& tank : page.page.tanks)
        sugar += page.house.ledger->vessels()[tank.vessel].content.sugar;
    EXPECT_NEAR(sugar, page.house.ledger->balance().gathered, 1e-9 * sugar + page.house.ledger->balance().doesNotClose);
}

double icumsa(double percent, double celsius) {
    for (const PublishedRow& row : published("sucrose_density.csv"))
        if (row.text("series") == "icumsa" && row.number("mass_percent") == percent &&
            row.number("temperature_C") == celsius)
            return row.number("density_kg_m3");
    throw std::runtime_error{"no such row"};
}

// Five kilograms of 2 percent and four of 20 are nine of 10, and stand in the volume that the published densities give
// (ICUMSA SPS-4, 1998), whatever temperature each was measured at.
TEST(SapPage, ABlendHasTheVolumeOfThePublishedDensities) {
    for (const double celsius : {10.0, 20.0}) {
        const auto litres = [&](double kilograms, double percent) {
            return std::to_string(1000 * 50 * kilograms / icumsa(percent, celsius));
        };
        const std::string at = ";temp=" + std::to_string(celsius) + "degC";
        const Page page{day(2, "09:00", "gathered," + litres(5, 2) + ",L,to=house tank;brix=2" + at) +
                            day(2, "09:30", "gathered," + litres(4, 20) + ",L,to=house tank;brix=20" + at),
                        "02T12:00"};
        const TankPicture& tank = page.tank("house tank");
        EXPECT_NEAR(tank.sugar.degrees(), 10, 1e-4) << celsius;
        EXPECT_NEAR(tank.volume.litre(), 1000 * 50 * 9 / icumsa(10, 20), 0.01) << celsius;
    }
}

// Whatever is pumped about, nothing is made and nothing lost: mass, sugar and heat of all tanks together, and the
// oldest and the warmest of all of them, stay as they were gathered.
RC_GTEST_PROP(SapPageProperty, PumpingMovesMassSugarHeatAndAge, ()) {
    static constexpr const char* tanks[] = {"north", "house tank", "feed"};
    std::string rows;
    double mass = 0, sugar = 0, heat = 0, warmest = 0;
    for (int i = 0; i < 3; ++i) {
        const int litres = *rc::gen::inRange(50, 260), brix = *rc::gen::inRange(10, 60),
                  celsius = *rc::gen::inRange(1, 25);
        rows += day(2, "08:1" + std::to_string(i),
                    "gathered," + std::to_string(litres) + ",L,to=" + tanks[i] +
                        ";brix=" + std::to_string(brix / 10.0) + ";temp=" + std::to_string(celsius) + "degC");
        const double kilograms =
            litres * sugarDensity(Brix::degrees(brix / 10.0), Temperature::celsius(celsius))->si() * 1e-3;
        mass += kilograms;
        sugar += kilograms * brix / 1000.0;
        heat += kilograms * celsius;
        warmest = std::max(warmest, static_cast<double>(celsius));
    }
    const int moves = *rc::gen::inRange(0, 12);
    for (int i = 0; i < moves; ++i) {
        const int from = *rc::gen::inRange(0, 3), by = *rc::gen::inRange(1, 3);
        // Never more than stands there: all of it, or a litre of at least fifty.
        rows += day(2, "09:" + std::to_string(10 + i),
                    std::string{*rc::gen::arbitrary<bool>() && i == 0 ? "moved,1,L" : "moved,,"} +
                        ",from=" + tanks[from] + ";to=" + tanks[(from + by) % 3]);
    }
    const Page page{rows, "02T12:00"};
    double massNow = 0, sugarNow = 0, heatNow = 0, warmestNow = 0, oldest = 0;
    for (const TankPicture& tank : page.page.tanks) {
        const Liquid& held = page.house.ledger->vessels()[tank.vessel].content;
        massNow += held.mass;
        sugarNow += held.sugar;
        heatNow += held.mass * tank.now->celsius();
        warmestNow = std::max(warmestNow, tank.warmest->celsius());
        oldest = std::max(oldest, tank.oldest->count());
    }
    RC_ASSERT(std::abs(massNow - mass) < 1e-6 * mass);
    RC_ASSERT(std::abs(sugarNow - sugar) < 1e-6 * mass);
    RC_ASSERT(std::abs(heatNow - heat) < 1e-4 * mass);
    RC_ASSERT(std::abs(warmestNow - warmest) < 1e-9);
    RC_ASSERT(std::abs(oldest - (3 * 3600 + 50 * 60)) < 1e-6);
}

// Mass balance by ICUMSA densities, whatever is poured together: sugar, mass and heat add up.
RC_GTEST_PROP(SapPageProperty, BlendsKeepMassSugarAndHeat, ()) {
    std::string rows;
    double mass = 0, sugar = 0, heat = 0;
    const int count = *rc::gen::inRange(1, 8);
    for (int i = 0; i < count; ++i) {
        const int litres = *rc::gen::inRange(1, 300), brix = *rc::gen::inRange(5, 80),
                  celsius = *rc::gen::inRange(0, 30);
        rows += day(2, "08:1" + std::to_string(i),
                    "gathered," + std::to_string(litres) + ",L,to=house tank;brix=" + std::to_string(brix / 10.0) +
                        ";temp=" + std::to_string(celsius) + "degC");
        const double kilograms =
            litres * sugarDensity(Brix::degrees(brix / 10.0), Temperature::celsius(celsius))->si() * 1e-3;
        mass += kilograms;
        sugar += kilograms * brix / 1000.0;
        heat += kilograms * celsius;
    }
    const Page page{rows, "02T12:00"};
    const TankPicture& tank = page.tank("house tank");
    const Vessel& vessel = page.house.ledger->vessels()[tank.vessel];
    RC_ASSERT(std::abs(vessel.content.mass - mass) < 1e-9 * mass);
    RC_ASSERT(std::abs(vessel.content.sugar - sugar) < 1e-9 * mass);
    RC_ASSERT(std::abs(tank.now->celsius() - heat / mass) < 1e-9 * 300);
    RC_ASSERT(*tank.coldest <= *tank.warmest);
}

} // namespace
} // namespace panside
