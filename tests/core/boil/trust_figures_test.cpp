// Figures that would be wrong and are told so: water that cannot boil there, sap that nobody counted, a tank that
// leaks, a draw that nobody keyed as shut, plain water's sugar.
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::noise;
using test::Rows;
using test::stands;

bool tells(const Picture& picture, Shown figure, Reason reason) {
    for (const Why& why : picture.why)
        if (why.of == std::variant<Shown, Series>{figure})
            return why.reason == reason;
    return false;
}

// 820 ft: 98.36 kPa in the standard atmosphere (ISO 2533:1975), where water boils at 99.2 degC, 210.5 degF.
Rows at820ft() {
    Rows rows;
    rows.add(0, "set,820,ft,key=elevation");
    return rows;
}

TEST(HeightAndWater, AWaterCheckThatNoWeatherMakesThereIsDoubted) {
    for (const char* check : {"205", "207.5", "214"}) {
        Rows rows = at820ft();
        rows.add(60, fmt::format("water_check,{},degF,", check));
        EXPECT_FALSE(rows.at(100).waterBoils) << check;
        EXPECT_TRUE(tells(rows.at(100), Shown::waterBoilsC, Reason::checkDoubted)) << check;
        rows.add(200, fmt::format("water_check,{},degF,", check)); // two that agree are no slip
        EXPECT_TRUE(rows.at(300).waterBoils) << check;
    }
    for (const char* check : {"209.2", "210.5", "212"}) {
        Rows rows = at820ft();
        rows.add(60, fmt::format("water_check,{},degF,", check));
        EXPECT_TRUE(rows.at(100).waterBoils) << check;
    }
}

TEST(HeightAndWater, AKeyThatIsPressedTwiceIsNoSecondLook) {
    Rows rows = at820ft();
    rows.add(60, "water_check,205,degF,").add(75, "water_check,205,degF,");
    EXPECT_FALSE(rows.at(100).waterBoils);
    // Nor does it count twice where there is a barometer.
    const auto after = [](std::initializer_list<int> checks) {
        Rows with;
        for (int t = 0; t < 600; t += 10)
            with.read(t, "pressure", 101.325, "kPa").read(t, "syrup_pan", 100.4 + noise(t, 0.05), "degC");
        for (const int at : checks)
            with.add(at, "water_check,100.4,degC,");
        return *with.at(600).targetUncertainty;
    };
    EXPECT_EQ(after({300, 320}), after({300}));
    EXPECT_LT(after({300, 420}), after({300}));
}

TEST(HeightAndWater, AHeightThatIsSetLaterDoubtsTheCheckBeforeIt) {
    Rows rows;
    rows.add(0, "water_check,205,degF,");
    EXPECT_TRUE(rows.at(10).waterBoils);
    rows.add(60, "set,820,ft,key=elevation");
    EXPECT_FALSE(rows.at(100).waterBoils);
}

// 101.3 kPa at 1000 ft (97.7 kPa there) from a box: reduced to sea level. And 97.7 given as the report.
TEST(HeightAndWater, APressureOfAnotherHeightIsInDoubtAndWidensTheTarget) {
    const auto lit = [](std::string_view series, double kilopascal) {
        Rows rows;
        rows.add(0, "set,1000,ft,key=elevation").add(0, "lit,,,");
        for (int t = 0; t < 120; t += 10)
            rows.read(t, series, kilopascal, "kPa").read(t, "syrup_pan", 102.5 + noise(t, 0.05), "degC");
        return rows.at(120);
    };
    const Picture reduced = lit("pressure", 101.325), station = lit("pressure", 97.7);
    EXPECT_EQ(reduced.reading(Series::pressure)->trust, Trust::doubtful);
    EXPECT_EQ(reduced.reading(Series::pressure)->reason, Reason::otherHeight);
    EXPECT_EQ(station.reading(Series::pressure)->trust, Trust::good);
    EXPECT_GT(reduced.targetUncertainty->kelvin(), 0.5);
    EXPECT_LT(station.targetUncertainty->kelvin(), 0.45);
    EXPECT_EQ(lit("sea_level_pressure", 97.7).reading(Series::sea_level_pressure)->trust, Trust::doubtful);
    EXPECT_EQ(lit("sea_level_pressure", 101.3).reading(Series::sea_level_pressure)->trust, Trust::good);
}

// The box begins to give its pressure reduced to sea level: what it said until then holds on, and ages.
TEST(HeightAndWater, WhatABarometerSaidBeforeItWasOfAnotherHeightHoldsOn) {
    Rows rows;
    rows.add(0, "set,1000,ft,key=elevation").add(0, "lit,,,");
    for (int t = 0; t < 7200; t += 10)
        rows.read(t, "pressure", t < 3600 ? 97.7 : 101.3, "kPa").read(t, "syrup_pan", 102.5 + noise(t, 0.05), "degC");
    const Picture before = rows.at(3500), after = rows.at(7200);
    EXPECT_EQ(after.reading(Series::pressure)->trust, Trust::doubtful);
    EXPECT_NEAR(after.target->celsius(), before.target->celsius(), 0.05);
    EXPECT_LT(after.targetUncertainty->kelvin(), before.targetUncertainty->kelvin() + 0.1);
}

// 300 L/h leave the tank; what comes in is entered between two dips.
Rows dipped(double every, const std::function<double(int)>& sapInGap) {
    Rows rows;
    rows.add(0, "lit,,,");
    double litres = 900;
    for (int gap = 0; gap * every < 3.5 * 3600; ++gap) {
        const double at = 300 + gap * every;
        rows.add(at, fmt::format("tank_level,{:.1f},L,probe=hand", litres));
        const double sap = sapInGap(gap);
        if (sap > 0)
            rows.add(at + every / 2, fmt::format("sap_in,{:.0f},L,", sap));
        litres += sap - 300 * every / 3600;
    }
    return rows;
}

TEST(DippedTank, KeepsTheSapThatComesInBetweenTheDips) {
    const auto evaporates = [](const Rows& rows) {
        const auto rate = rows.at(3.4 * 3600).evaporation;
        return rate ? rate->litrePerHour() : -1;
    };
    constexpr double steam = 300 * (1 - 1 / 44.2); // 2 Brix sap gives one litre of syrup of 44.2 (revised rule of 86)
    EXPECT_NEAR(evaporates(dipped(1800, [](int) { return 150; })), steam, 15);
    EXPECT_NEAR(evaporates(dipped(1200, [](int) { return 100; })), steam, 15);
    EXPECT_NEAR(evaporates(dipped(1800, [](int gap) { return gap % 2 ? 300 : 0; })), steam, 15);
    EXPECT_NEAR(evaporates(dipped(1800, [](int gap) { return gap % 2 ? 100 : 0; })), steam, 15);
    EXPECT_NEAR(evaporates(dipped(1800, [](int) { return 0; })), steam, 15);
}

// Entered after the dip that shows it.
TEST(DippedTank, TakesSapThatWasEnteredLateForTheRiseBeforeIt) {
    Rows rows;
    rows.add(0, "lit,,,");
    double litres = 900;
    for (int gap = 0; gap < 7; ++gap) {
        const int at = 300 + gap * 1800;
        rows.add(at, fmt::format("tank_level,{:.1f},L,probe=hand", litres));
        if (gap > 0)
            rows.add(at + 60, "sap_in,250,L,");
        litres += 250 - 150;
    }
    EXPECT_NEAR(rows.at(3.05 * 3600).evaporation.value().litrePerHour(), 293, 30);
}

TEST(Evaporation, IsNotTheTanksOfTwentyMinutesAgo) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t < 3600; t += 10)
        rows.read(t, "tank_level", 900 - t / 12.0, "L");
    EXPECT_TRUE(rows.at(3600).evaporation);
    EXPECT_FALSE(rows.at(3600 + 1200).evaporation);
}

// 8 gal/h a square foot from 24 ft2: at most 5.6 were ever timed (a maker's figure), 2 to 2.5 are usual.
TEST(Evaporation, OfALeakIsWithheldAndNoPartOfTheAccount) {
    const auto tank = [](double gallonsPerHour) {
        Rows rows;
        rows.add(0, "set,18,ft2,key=flue_pan_area").add(0, "set,6,ft2,key=syrup_pan_area").add(0, "lit,,,");
        rows.add(0, "set,20,kg,key=load_mass");
        for (int t = 0; t < 5400; t += 10) {
            if (t % 480 == 0)
                rows.add(t, "fired,,,");
            rows.read(t, "tank_level", 2000 - gallonsPerHour * 3.785411784 * t / 3600, "L")
                .read(t, "pressure", 101.325, "kPa")
                .read(t, "syrup_pan", 102 + noise(t, 0.05), "degC");
        }
        return rows.at(5400);
    };
    const Picture sound = tank(55), leaks = tank(200);
    EXPECT_NEAR(sound.evaporation.value().litrePerHour(), 55 * 3.785 * (1 - 1 / 44.2), 10);
    EXPECT_TRUE(sound.efficiency);
    EXPECT_FALSE(leaks.evaporation);
    EXPECT_TRUE(tells(leaks, Shown::evaporationLph, Reason::moreThanBoils));
    EXPECT_FALSE(leaks.efficiency);
    EXPECT_FALSE(leaks.fuel.shift);
}

// The tank is empty, or its valve shut, and the fire burns on.
TEST(Evaporation, IsNotZeroBecauseTheTankStands) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t < 7200; t += 5) {
        if (t % 480 == 0)
            rows.add(t, "fired,,,");
        rows.read(t, "tank_level", std::max(0.0, 400 - t / 12.0), "L")
            .read(t, "syrup_pan", 102 + noise(t, 0.05), "degC");
    }
    EXPECT_TRUE(rows.at(4000).evaporation);
    EXPECT_FALSE(rows.at(6900).evaporation);
    EXPECT_TRUE(tells(rows.at(6900), Shown::evaporationLph, Reason::noSapRunsIn));
}

// Shut after ninety seconds, and nobody keyed it.
TEST(ADrawNobodyKeyedAsShut, IsSeenToBeShutByThePan) {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        log.cycle();
    log.climb(61, 67.3, 800);
    log.rows.add(log.now, "draw_open,,,");
    log.climb(67.3, 61, 80);
    const int shut = log.now;
    log.hold(61, 30);
    log.climb(61, 68.5, 1000);
    EXPECT_TRUE(log.rows.at(shut).drawing);
    const Picture later = log.rows.at(shut + 600);
    EXPECT_FALSE(later.drawing);
    EXPECT_EQ(later.draws, 4);
    EXPECT_TRUE(later.drawEta);
    EXPECT_TRUE(stands(log.picture(), Alarm::above_target));
    // The key that comes at last counts no second draw, and its volume is kept.
    log.rows.add(log.now, "draw_close,3,L,");
    EXPECT_EQ(log.rows.at(log.now + 1).draws, 4);
    EXPECT_NEAR(log.rows.at(log.now + 1).syrupOut.value().litre(), 12, 1e-6);
}

// A pan that climbs by a third of a kelvin in five minutes, where the draws before lasted a minute and a half.
TEST(ADrawNobodyKeyedAsShut, IsSeenSoonerWhereTheDrawsBeforeWereShort) {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        log.cycle(62, 1500);
    log.climb(62, 67.3, 1500);
    const int opened = log.now;
    log.rows.add(opened, "draw_open,,,");
    log.climb(67.3, 62, 80);
    log.hold(62, 60);
    log.climb(62, 67.3, 1500);
    EXPECT_TRUE(log.rows.at(opened + 140).drawing);
    EXPECT_FALSE(log.rows.at(opened + 600).drawing);
}

TEST(ADrawNobodyKeyedAsShut, IsNoLongDrawThatHeaves) {
    BoilLog log;
    for (int i = 0; i < 2; ++i)
        log.cycle();
    log.climb(61, 67.3, 800);
    log.rows.add(log.now, "draw_open,,,");
    for (int t = 0; t < 900; ++t)
        log.second(66.6 + 0.6 * std::sin(t / 60.0));
    EXPECT_TRUE(log.picture().drawing);
}

// A crew that keys each draw as it opens it, and never that it shuts it. What was drawn forward mixes in for two
// minutes after that.
class OpenedAlone {
public:
    OpenedAlone() {
        for (int i = 0; i < 2; ++i)
            draw();
    }
    void open() {
        log.climb(62, 67.3, 1500);
        log.rows.add(log.now, "draw_open,,,");
    }
    void draw() {
        open();
        log.climb(67.3, 63.5, 120);
        shut = log.now;
        log.climb(63.5, 62.4, 60);
        log.climb(62.4, 62, 60);
        log.hold(62, 120);
    }
    BoilLog log;
    int shut = 0;
};

TEST(ADrawNobodyKeyedAsShut, IsSeenWhereTheFallEndsWithACrewThatKeysTheOpeningAlone) {
    OpenedAlone night;
    EXPECT_TRUE(night.log.rows.at(night.shut).drawing);
    const Picture after = night.log.rows.at(night.shut + 180);
    EXPECT_FALSE(after.drawing);
    EXPECT_TRUE(after.drawEta);
    EXPECT_EQ(after.draws, 2);
    // Of a crew that did key it, and draws as long, that is too little to go by.
    BoilLog keyed;
    keyed.climb(62, 67.3, 1500);
    keyed.rows.add(keyed.now, "draw_open,,,");
    keyed.climb(67.3, 62, 240);
    keyed.rows.add(keyed.now, "draw_close,3,L,");
    keyed.climb(62, 67.3, 1500);
    keyed.rows.add(keyed.now, "draw_open,,,");
    keyed.climb(67.3, 63.5, 120);
    keyed.climb(63.5, 62, 120);
    keyed.hold(62, 120);
    EXPECT_TRUE(keyed.picture().drawing);
}

// Left open, it thins on; drawn by a trickle it stands at the mark: neither is shut.
TEST(ADrawNobodyKeyedAsShut, IsOpenWithThatCrewTooWhileItThinsOrStandsAtTheMark) {
    OpenedAlone left, trickles;
    left.open();
    left.log.climb(67.3, 57, 500);
    EXPECT_TRUE(left.log.picture().drawing);
    EXPECT_TRUE(stands(left.log.picture(), Alarm::draw_overdue));
    trickles.open();
    trickles.log.climb(67.3, 66.6, 60);
    trickles.log.hold(66.6, 900);
    EXPECT_TRUE(trickles.log.picture().drawing);
}

// Where no reading tells, the next opening does.
TEST(ADrawNobodyKeyedAsShut, EndsAsTheNextIsOpened) {
    Rows rows;
    rows.add(0, "lit,,,").add(3600, "draw_open,,,").add(5400, "draw_open,,,");
    EXPECT_EQ(rows.at(5400).drawOpenedAt, rows.facts.back().at);
    EXPECT_EQ(rows.at(5400).draws, 1);
}

// Tonight's first pan is plain water: it boils where water boils, a tenth off.
TEST(PlainWater, HasNoSugarToShow) {
    BoilLog log;
    for (int t = 0; t < 900; ++t)
        log.reads(log.boils(0) + 0.13);
    EXPECT_FALSE(log.picture().brix);
    EXPECT_TRUE(tells(log.picture(), Shown::brix, Reason::nearWater));
    log.climb(30, 35, 300);
    EXPECT_TRUE(log.picture().brix);
}

} // namespace
} // namespace panside
