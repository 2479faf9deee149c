// A house without a barometer: water is boiled on the probe itself, and that is the day's boiling point until the next
// look. Played as a log, line by line as other programs read it.
#include "tests/core/boil/boil_log.h"

#include <nlohmann/json.hpp>

namespace panside {
namespace {

using test::BoilLog;
using test::noon;
using test::Rows;
using test::stood;

// The rows of a boil whose barometer nobody has. The probe reads 0.6 K too high, in water as in syrup.
BoilLog withoutBarometer(double hours) {
    BoilLog log;
    log.kilopascal = 98.2;
    log.probeHigh = 0.6;
    while (log.now < hours * 3600)
        log.cycle(61, 800);
    log.climb(61, 64.5, 450);
    std::erase_if(log.rows.facts, [](const Fact& fact) {
        const auto* reading = std::get_if<Reading>(&fact.what);
        return reading && reading->series == Series::pressure;
    });
    return log;
}
void waterCheck(BoilLog& log, double at, double wrong = 0) {
    log.rows.add(at, fmt::format("water_check,{:.2f},degC,probe=pan box", log.boils(0) + log.probeHigh + wrong));
}

// The lines that `panside replay` prints, the last one parsed.
nlohmann::json lastLine(const Rows& rows) {
    auto facts = rows.facts;
    std::stable_sort(facts.begin(), facts.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    nlohmann::json last;
    replay(facts, {.every = Duration{5}}, [&](const Picture& picture) {
        std::string line;
        appendJson(line, picture);
        last = nlohmann::json::parse(line);
    });
    return last;
}
double spread(const nlohmann::json& line) {
    return line["drawEta"]["p90"].get<double>() - line["drawEta"]["p10"].get<double>();
}

TEST(WaterDay, TheCheckIsTheDaysBoilingPointAndHoldsTheProbesOwnError) {
    BoilLog log = withoutBarometer(1);
    waterCheck(log, 30);
    const auto line = lastLine(log.rows);
    EXPECT_TRUE(line["pressureKPa"].is_null());
    EXPECT_EQ(line["why"]["pressureKPa"], "no barometer: water boils at the last water check");
    EXPECT_NEAR(line["waterBoilsC"].get<double>(), log.boils(0) + 0.6, 0.006);
    EXPECT_NEAR(line["targetC"].get<double>(), log.boils(66.9) + 0.6, 0.06) << line.dump();
    ASSERT_FALSE(line["brix"].is_null()) << line.dump();
    EXPECT_NEAR(line["brix"].get<double>(), 64.5, 0.3);
    EXPECT_FALSE(line["drawEta"].is_null());
}

TEST(WaterDay, WithNoCheckNothingIsMadeUp) {
    const auto line = lastLine(withoutBarometer(1).rows);
    for (const char* field : {"pressureKPa", "waterBoilsC", "riseC", "targetC", "brix"}) {
        EXPECT_TRUE(line[field].is_null()) << field;
        EXPECT_TRUE(line["why"].contains(field)) << field;
    }
    EXPECT_FALSE(line["drawEta"].is_null()); // what the watch says of so many draws
}

// A first look at water that did not boil yet is not the truth of the night: what corrects it counts.
TEST(WaterDay, ASecondLookCorrectsAFirstThatNothingBoreOut) {
    Rows rows;
    rows.add(0, "lit,,,").add(10, "water_check,95,degC,").add(600, "water_check,99.4,degC,");
    EXPECT_NEAR(rows.at(700).waterBoils.value().celsius(), 99.4, 1e-9);
    rows.add(1200, "water_check,98.7,degC,"); // borne out by the one before
    EXPECT_NEAR(rows.at(1300).waterBoils.value().celsius(), 98.7, 1e-9);
    rows.add(1800, "water_check,95,degC,");
    EXPECT_NEAR(rows.at(1900).waterBoils.value().celsius(), 98.7, 1e-9);
    rows.add(2400, "water_check,95.2,degC,");
    EXPECT_NEAR(rows.at(2500).waterBoils.value().celsius(), 95.2, 1e-9);
}

TEST(WaterDay, ACheckThatNoWeatherMakesIsSaidToBeInDoubt) {
    Rows rows;
    rows.add(0, "lit,,,").add(10, "water_check,103,degC,");
    const Picture doubted = rows.at(60);
    EXPECT_FALSE(doubted.waterBoils);
    EXPECT_NE(std::find(doubted.why.begin(), doubted.why.end(), Why{Shown::waterBoilsC, Reason::checkDoubted}),
              doubted.why.end());
    rows.add(120, "water_check,102.9,degC,");
    EXPECT_NEAR(rows.at(180).waterBoils.value().celsius(), 102.9, 1e-9);
}

TEST(WaterDay, ItsAgeShowsAndItsDoubtGrowsIntoTargetAndForecast) {
    BoilLog old = withoutBarometer(6);
    waterCheck(old, 30);
    BoilLog young = old;
    waterCheck(young, old.now - 300);
    const Picture aged = old.picture(), fresh = young.picture();
    EXPECT_NEAR(seconds(aged.waterBoilsAge), old.now - 30, 1);
    EXPECT_NEAR(seconds(fresh.waterBoilsAge), 300, 1);
    // Six hours at 0.03 K an hour (common practice, no source) beside what else is not known.
    EXPECT_GT(aged.targetUncertainty->kelvin(), fresh.targetUncertainty->kelvin() + 0.05);
    const auto late = lastLine(old.rows), soon = lastLine(young.rows);
    EXPECT_GT(late["targetUncertaintyC"].get<double>(), soon["targetUncertaintyC"].get<double>() + 0.05);
    EXPECT_GT(spread(late), 1.05 * spread(soon));
    EXPECT_NEAR(late["drawEta"]["p50"].get<double>(), soon["drawEta"]["p50"].get<double>(), 30);
}

TEST(WaterDay, AfterAFrontASecondLookMovesTheTarget) {
    BoilLog log = withoutBarometer(2);
    waterCheck(log, 30);
    const double before = lastLine(log.rows)["targetC"].get<double>();
    waterCheck(log, log.now - 60, -0.5); // 1.8 kPa lower, 0.28 K a kPa (IAPWS R7-97(2012))
    EXPECT_NEAR(lastLine(log.rows)["targetC"].get<double>(), before - 0.5, 0.03);
}

// ---- a careless look

TEST(WaterDay, WaterThatNeverBoiledIsNotBelievedFromOneLook) {
    BoilLog log = withoutBarometer(1);
    waterCheck(log, 30, -10); // a pot that simmers
    EXPECT_TRUE(lastLine(log.rows)["waterBoilsC"].is_null());
    EXPECT_EQ(stood(log.rows, Alarm::above_target).first, -1);
    EXPECT_EQ(stood(log.rows, Alarm::scorch_risk).first, -1);
    waterCheck(log, 900);
    EXPECT_NEAR(lastLine(log.rows)["waterBoilsC"].get<double>(), log.boils(0) + 0.6, 0.006);
}

TEST(WaterDay, ALeapThatNoWeatherMakesCountsWhenASecondLookSaysSoToo) {
    for (const double wrong : {-3.0, +2.5}) { // half in the steam; against the bottom
        BoilLog log = withoutBarometer(2);
        waterCheck(log, 30);
        waterCheck(log, 900); // bears the first out
        const double right = lastLine(log.rows)["targetC"].get<double>();
        waterCheck(log, 3600, wrong);
        EXPECT_NEAR(lastLine(log.rows)["targetC"].get<double>(), right, 0.02) << wrong;
        waterCheck(log, 4000, wrong + 0.1); // another probe hangs there now, and it does read so
        EXPECT_NEAR(lastLine(log.rows)["targetC"].get<double>(), right + wrong + 0.1, 0.1) << lastLine(log.rows).dump();
    }
}

TEST(WaterDay, TwoCarelessLooksThatDisagreeAreBothLeftOut) {
    BoilLog log = withoutBarometer(2);
    waterCheck(log, 30);
    waterCheck(log, 900);
    const double right = lastLine(log.rows)["targetC"].get<double>();
    waterCheck(log, 3600, -3);
    waterCheck(log, 4000, -5);
    EXPECT_NEAR(lastLine(log.rows)["targetC"].get<double>(), right, 0.02);
}

// A barometer that fell silent hours ago must not be outdone by one look at a pot that did not boil.
TEST(WaterDay, ADeadBarometerIsNotOutdoneByACarelessLook) {
    Rows rows;
    rows.add(0, "lit,,,").read(10, "pressure", 98.2, "kPa").add(5 * 3600, "water_check,95.0,degC,");
    rows.add(6 * 3600, "note,,,end");
    // At 98.2 kPa water boils at 99.1 degC (IAPWS R7-97(2012), between its 99.6059 at 100 kPa and 0.28 K a kPa).
    EXPECT_NEAR(rows.at(6 * 3600).waterBoils->celsius(), 99.1, 0.02);
}

} // namespace
} // namespace panside
