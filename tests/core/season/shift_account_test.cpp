#include "core/season/shift_account.h"

#include "core/boil/shift_log.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant dusk = instantIn("2026-03-14T18:00:00Z").value();

ShiftAccount accountOf(const std::string& log) {
    const auto read = readLog(log);
    EXPECT_TRUE(read.faults.empty());
    ShiftAccountant accountant;
    for (const Fact& fact : read.facts)
        accountant.add(fact);
    return accountant.account();
}

std::string row(double second, const std::string& rest) { return textOf(dusk + Duration{second}) + "," + rest + "\n"; }

// Three hours of an even boil at 101.325 kPa, where water boils at 99.974 degC (IAPWS R7-97): 20 kg every 8 minutes,
// the tank falls 200 L an hour, and each half hour 4 L are drawn at the mark.
std::string evenBoil(double riseAtDraw = 4.2) {
    std::string log = std::string{logHeader} + "\n" + row(0, "set,66.9,brix,key=target_density") +
                      row(0, "set,20,kg,key=load_mass") + row(0, "set,20,percent,key=wood_moisture") +
                      row(0, "sap_in,900,L,brix=2.2") + row(0, "lit,,,by=Maud") + row(0, "crew,,,by=Maud") +
                      row(5400, "crew,,,off=Maud") + row(5400, "crew,,,by=Ansel");
    for (int t = 0; t <= 3 * 3600; t += 10) {
        const int cycle = t % 1800;
        const bool drawing = cycle >= 1500 && cycle < 1680;
        const double rise = drawing ? riseAtDraw : 1 + 3.0 * cycle / 1800;
        log += row(t, fmt::format("syrup_pan,{:.2f},degC,", 99.974 + rise));
        log += row(t, fmt::format("stack,{:.1f},degC,", 400.0 + 20 * ((t / 240) % 2)));
        log += row(t, "pressure,101.325,kPa,");
        log += row(t, fmt::format("pan_level,{:.1f},mm,", 38 + 0.2 * ((t / 10) % 2)));
        log += row(t, fmt::format("tank_level,{:.1f},L,", 900 - t / 18.0));
        if (t % 480 == 0)
            log += row(t, "fired,,,wood=sugar maple");
        if (cycle == 1500)
            log += row(t, "draw_open,,,");
        if (cycle == 1680)
            log += row(t, "draw_close,4,L,");
    }
    return log;
}

TEST(ShiftAccount, TellsWhatWasMadeOfWhat) {
    const auto account = accountOf(evenBoil());
    EXPECT_EQ(account.first, dusk);
    EXPECT_EQ(account.lit, dusk);
    EXPECT_DOUBLE_EQ(account.sapIn->litre(), 900);
    EXPECT_NEAR(account.sapTaken->litre(), 600, 10);
    EXPECT_NEAR(account.sapSugar->degrees(), 2.2, 1e-9);
    EXPECT_EQ(account.draws, 6);
    EXPECT_EQ(account.drawsMeasured, 6);
    EXPECT_DOUBLE_EQ(account.syrup.litre(), 24);
    EXPECT_EQ(account.loads, 23);
    EXPECT_DOUBLE_EQ(account.wood.kilogram(), 460);
    EXPECT_DOUBLE_EQ(account.woods.at("sugar maple").kilogram(), 460);
    EXPECT_NEAR(account.fireInterval->count(), 480, 1e-6);
    EXPECT_NEAR(*account.moisture, 0.20, 1e-12);
    // Sugar maple, specific gravity 0.56 on green volume (Wood Handbook, USDA Forest Products Laboratory 2010, table
    // 5-3b), 85 cubic feet of wood a cord (common practice), a fifth water: 0.56 x 1000 kg/m3 x 85 x 0.0283168 m3 /
    // 0.8.
    EXPECT_NEAR(account.cords, 460 / (0.56 * 1000 * 85 * 0.0283168 / 0.8), 0.01);
    EXPECT_NEAR(account.stack->celsius(), 410, 6);
    EXPECT_NEAR(account.depth->millimetre(), 38.1, 0.3);
    EXPECT_NEAR(account.pressure->kilopascal(), 101.325, 0.01);
    // 200 L an hour leave the tank, 8 of them as syrup.
    EXPECT_NEAR(account.evaporation->litrePerHour(), 192, 8);
    EXPECT_DOUBLE_EQ(account.crew.at("Maud").count(), 5400);
    EXPECT_DOUBLE_EQ(account.crew.at("Ansel").count(), 5400);
}

TEST(ShiftAccount, JudgesEachDrawByItsDensityOnTheMean) {
    const auto good = accountOf(evenBoil(4.2)), thin = accountOf(evenBoil(3.4));
    EXPECT_EQ(good.drawsJudged, 6);
    EXPECT_EQ(good.drawsInBand, 6);
    EXPECT_EQ(thin.drawsJudged, 6);
    EXPECT_EQ(thin.drawsInBand, 0);
}

TEST(ShiftAccount, LeavesUnknownWhatNobodyMeasured) {
    const auto account = accountOf(std::string{logHeader} + "\n" + row(0, "lit,,,") + row(400, "fired,,,") +
                                   row(900, "fired,12,kg,") + row(7200, "draw_open,,,") + row(7300, "draw_close,,,"));
    EXPECT_FALSE(account.sapIn);
    EXPECT_FALSE(account.sapTaken);
    EXPECT_FALSE(account.sapSugar);
    EXPECT_FALSE(account.evaporation);
    EXPECT_FALSE(account.efficiency);
    EXPECT_FALSE(account.moisture); // the engine reckons with 20 percent, but nobody said so
    EXPECT_FALSE(account.fireInterval);
    EXPECT_EQ(account.draws, 1);
    EXPECT_EQ(account.drawsMeasured, 0);
    EXPECT_EQ(account.drawsJudged, 0);
    EXPECT_EQ(account.loads, 2);
    EXPECT_EQ(account.loadsWeighed, 1);
}

TEST(ShiftAccount, CountsAnAlarmOnceHoweverLongItStands) {
    std::string log = evenBoil() + row(0, "set,10,min,key=fire_interval");
    for (int t = 3 * 3600 + 10; t < 3 * 3600 + 1800; t += 10) // nobody fires for half an hour
        log += row(t, fmt::format("syrup_pan,{:.2f},degC,", 101 + 0.01 * (t % 3)));
    const auto account = accountOf(log);
    EXPECT_EQ(account.alarms.at(Alarm::fire_overdue), 1);
}

// It was looked at once a minute: what came and went between was not counted.
TEST(ShiftAccount, CountsAnAlarmThatStoodForSecondsOnly) {
    std::string log{logHeader};
    log += '\n' + row(0, "set,300,kPa,key=filter_limit");
    for (int t = 0; t < 600; ++t)
        log += row(t, t % 300 >= 20 && t % 300 < 40 ? "filter_pressure,320,kPa," : "filter_pressure,200,kPa,");
    EXPECT_EQ(accountOf(log).alarms.at(Alarm::filter_pressure_high), 2);
}

TEST(ShiftAccount, ComesBackFromItsFiguresToTheLastDigit) {
    auto account = accountOf(evenBoil());
    account.forecast = {3, 0.1, 1.3, 2.9, 2.5};
    account.alarms[Alarm::pan_low] = 2;
    account.woods[""] = Mass::kilogram(3);
    EXPECT_EQ(accountIn(figuresOf(account)), account);
    const ShiftAccount nothing;
    EXPECT_EQ(accountIn(figuresOf(nothing)), nothing);
}

} // namespace
} // namespace panside
