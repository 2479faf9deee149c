// First and last boils, other hands and other valves, played through the engine. What is wanted is what people who boil
// ask for; sizes are common practice, no source.
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::stands;
using test::stood;

// An automatic valve that the owner fitted: draws come and go, and nobody presses a key.
TEST(SituationDraw, AValveThatDrawsByItselfIsForetoldLikeAnyOther) {
    BoilLog log;
    for (int i = 0; i < 6; ++i)
        log.cycle(61, 800, false);
    log.climb(61, 64, 380);
    const double left = 800 * (66.9 - 61) / (67.3 - 61) - 380;
    const Picture picture = log.picture();
    ASSERT_TRUE(picture.drawEta && picture.drawEta->p90);
    EXPECT_NEAR(seconds(picture.drawEta->p50), left, 90);
    EXPECT_LE(seconds(picture.drawEta->p10), left);
    EXPECT_GE(seconds(*picture.drawEta->p90), left);
    EXPECT_EQ(stood(log.rows, Alarm::scorch_risk).first, -1);
    EXPECT_EQ(stood(log.rows, Alarm::draw_overdue).first, -1);
    EXPECT_FALSE(stands(picture, Alarm::above_target));
}

// The probe dies while such a draw runs, and readings are typed from then on: the draw does not go on for ever.
TEST(SituationDraw, AProbeThatDiesInADrawNobodyKeyedLeavesAForecastByHand) {
    BoilLog log;
    for (int i = 0; i < 4; ++i)
        log.cycle(61, 800, false);
    log.climb(61, 67.3, 800);
    log.climb(67.3, 64, 45);
    for (int i = 0; i < 8; ++i) {
        log.now += 300;
        log.rows.read(log.now, "pressure", log.kilopascal, "kPa");
        log.rows.read(log.now, "syrup_pan", log.boils(62 + 0.3 * i), "degC", "probe=hand");
    }
    const Picture picture = log.picture();
    EXPECT_TRUE(picture.drawEta);
    EXPECT_TRUE(picture.brix);
}

// Typed at the mark, drawn, and nothing typed since: what was read has been drawn.
TEST(SituationDraw, AReadingTypedBeforeTheDrawIsNotAskedForAgain) {
    BoilLog log;
    log.rows.add(0, "fired,,,");
    for (const double brix : {62.0, 65.0, 67.2}) {
        log.now += 300;
        log.rows.read(log.now, "pressure", log.kilopascal, "kPa");
        log.rows.read(log.now, "syrup_pan", log.boils(brix), "degC", "probe=hand");
    }
    EXPECT_EQ(seconds(log.rows.at(log.now + 10).drawEta.value().p50), 0);
    log.rows.add(log.now + 30, "draw_open,,,").add(log.now + 110, "draw_close,3,L,");
    for (int later = 120; later < 300; later += 20) {
        const Picture picture = log.rows.at(log.now + later);
        EXPECT_FALSE(stands(picture, Alarm::above_target)) << later;
        EXPECT_TRUE(!picture.drawEta || seconds(picture.drawEta->p50) > 0) << later;
    }
}

// A check that moves the mark moves the sugar that is shown, at once; no syrup has left the pan.
TEST(SituationDraw, ACheckThatMovesTheMarkIsNoDraw) {
    BoilLog log;
    log.probeHigh = 0.45;
    for (int i = 0; i < 3; ++i)
        log.cycle();
    log.climb(61, 66.9, 760);
    log.rows.add(log.now, "density_check,66.9,brix,temp=60degF;cal=60degF");
    log.rows.add(log.now + 1, "density_check,66.8,brix,temp=60degF;cal=60degF");
    for (int i = 0; i < 12; ++i) {
        log.climb(66.9 + 0.01 * i, 66.9 + 0.01 * (i + 1), 5);
        const Picture picture = log.picture();
        ASSERT_TRUE(picture.drawEta) << i;
        EXPECT_LE(seconds(picture.drawEta->p50), 180) << i;
    }
}

// The hand at the valve shuts it, the hand at the pail says how much it was and where it went: in either order one
// draw.
TEST(SituationPeople, TheFullerTellingOfADrawCounts) {
    BoilLog log;
    for (const auto& [first, second] : {std::pair{"draw_close,,,", "draw_close,3,L,to=drum 1"},
                                        std::pair{"draw_close,3,L,to=drum 1", "draw_close,3,L,"}}) {
        log.climb(61, 67.3, 800);
        log.rows.add(log.now, "draw_open,,,");
        log.climb(67.3, 61, 80);
        log.rows.add(log.now, first).add(log.now + 6, second);
    }
    log.hold(61, 60);
    const Picture picture = log.picture();
    EXPECT_EQ(picture.draws, 2);
    ASSERT_TRUE(picture.syrupOut);
    EXPECT_NEAR(picture.syrupOut->litre(), 6, 1e-6);
}

// One draw, keyed at the pan and at the door; one firing, keyed by both hands.
TEST(SituationPeople, ADrawThatTwoKeyedIsOneDraw) {
    BoilLog log;
    log.rows.add(0, "crew,,,by=Ada").add(0, "crew,,,by=Bea");
    for (int i = 0; i < 2; ++i) {
        log.climb(61, 67.3, 800);
        log.rows.add(log.now, "draw_open,,,by=Ada").add(log.now + 4, "draw_open,,,by=Bea");
        log.climb(67.3, 61, 80);
        log.rows.add(log.now, "draw_close,3,L,by=Ada").add(log.now + 6, "draw_close,3,L,by=Bea");
    }
    log.hold(61, 60);
    const Picture picture = log.picture();
    EXPECT_EQ(picture.draws, 2);
    ASSERT_TRUE(picture.syrupOut);
    EXPECT_NEAR(picture.syrupOut->litre(), 6, 1e-6);
}

// What went into two pails in one draw is two measures, though, and a later draw of the same volume another draw.
TEST(SituationPeople, TwoPailsOfOneDrawAreBothCounted) {
    BoilLog log;
    log.cycle();
    log.rows.add(log.now + 20, "draw_close,2.5,L,to=second pail");
    log.hold(61, 60);
    EXPECT_NEAR(log.picture().syrupOut->litre(), 5.5, 1e-6);
}

// The first boil of the season: pans full of water to try them, then sap. Nothing is learned and nothing is wrong.
TEST(SituationSeason, PansTriedWithWaterAreNeitherSteamNorADraw) {
    BoilLog log;
    log.hold(0, 1800);
    const Picture water = log.picture();
    EXPECT_EQ(water.reading(Series::syrup_pan)->trust, Trust::good);
    EXPECT_NEAR(water.rise->kelvin(), 0, 0.1);
    EXPECT_FALSE(water.drawEta);
    log.climb(0, 12, 1800);
    const Picture sap = log.picture();
    EXPECT_EQ(sap.reading(Series::syrup_pan)->trust, Trust::good);
    for (std::size_t i = 0; i < alarmCount; ++i)
        EXPECT_EQ(stood(log.rows, static_cast<Alarm>(i)).first, -1) << nameOf(static_cast<Alarm>(i));
}

// Drained to numbered pails and put back: the gradient is there at once, and so is the forecast within some minutes.
TEST(SituationSeason, PansThatWerePutBackGoOnWhereTheyWere) {
    BoilLog log;
    log.climb(60.5, 65, 600);
    const double left = 600 / 4.5 * 1.9;
    const Picture picture = log.picture();
    ASSERT_TRUE(picture.drawEta);
    EXPECT_LE(seconds(picture.drawEta->p10), left);
    if (picture.drawEta->p90) {
        EXPECT_GE(seconds(*picture.drawEta->p90), left);
    }
}
// Or mixed together: then there is no gradient to speak of, and no forecast of a draw that is hours away.
TEST(SituationSeason, PansThatWereMixedForetellNoDrawSoon) {
    BoilLog log;
    log.climb(25, 25.8, 1800);
    const Picture picture = log.picture();
    if (picture.drawEta) {
        EXPECT_GT(seconds(picture.drawEta->p50), 3600);
    }
    EXPECT_EQ(stood(log.rows, Alarm::scorch_risk).first, -1);
}

// Niter: in four hours the probe comes to read half a kelvin more over the same syrup. Checks at the draws follow it.
TEST(SituationReading, NiterThatMovesTheMarkIsFollowedByTheChecks) {
    BoilLog log;
    while (log.now < 4 * 3600) {
        log.probeHigh = 0.5 * log.now / (4 * 3600.0);
        log.climb(61, 66.9, 800);
        log.rows.add(log.now, "density_check,66.9,brix,temp=60degF;cal=60degF");
        log.cycle(61, 60);
    }
    log.hold(64, 60);
    const Picture picture = log.picture();
    EXPECT_NEAR(picture.target->celsius(), log.boils(66.9) + log.probeHigh, 0.2);
    EXPECT_EQ(picture.questionedChecks, 0);
    EXPECT_EQ(stood(log.rows, Alarm::scorch_risk).first, -1);
    // And it is asked about, before it scorches.
    ASSERT_TRUE(picture.markCrept);
    EXPECT_NEAR(picture.markCrept->kelvin(), 0.37, 0.1); // between the means of the first and the last three
    log.rows.add(log.now, "pan_swapped,,,");
    EXPECT_FALSE(log.picture().markCrept);
}

// Careful checks that scatter by a quarter of a brix are no niter, nor is a probe that always reads too high.
TEST(SituationReading, ChecksThatScatterAreNoNiter) {
    BoilLog log;
    log.probeHigh = 0.7;
    for (int draws = 0; draws < 12; ++draws) {
        log.climb(61, 66.9, 800);
        log.rows.add(log.now, fmt::format("density_check,{:.2f},brix,temp=60degF;cal=60degF",
                                          66.9 + 0.25 * std::sin(draws * 2.4)));
        log.cycle(61, 60);
    }
    EXPECT_GE(log.picture().checks, 10);
    EXPECT_FALSE(log.picture().markCrept);
}

// The paper in the glass has slipped: all season it reads 0.6 brix low. Within one boil nothing tells that from a probe
// that reads high: the hydrometer decides, the mark goes where it will say 66.9, and nobody cries niter.
TEST(SituationReading, AHydrometerThatIsAlwaysWrongIsFollowedAndIsNoNiter) {
    BoilLog log;
    for (int draws = 0; draws < 8; ++draws) {
        log.climb(61, 67.5, 800);
        log.rows.add(log.now, "density_check,66.9,brix,temp=60degF;cal=60degF;drawn=" +
                                  textOf(test::noon + Duration{static_cast<double>(log.now)}));
        log.cycle(61, 60);
    }
    const Picture picture = log.picture();
    ASSERT_TRUE(picture.target);
    EXPECT_NEAR(picture.target->celsius(), log.boils(67.5), 0.06);
    EXPECT_EQ(picture.questionedChecks, 0);
    EXPECT_FALSE(picture.markCrept);
}

// A side is switched at six: the probe sits in the thin side now. No draw there, and nothing wrong with the probe.
TEST(SituationReading, AProbeThatSitsInTheThinSideAfterASwitchIsBelieved) {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        log.cycle();
    log.climb(61, 64, 300);
    log.rows.add(log.now, "pan_swapped,,,");
    log.climb(18, 22, 900);
    const Picture picture = log.picture();
    EXPECT_EQ(picture.reading(Series::syrup_pan)->trust, Trust::good);
    EXPECT_NEAR(picture.brix->degrees(), 22, 4);
    EXPECT_EQ(stood(log.rows, Alarm::scorch_risk).first, -1);
    EXPECT_EQ(stood(log.rows, Alarm::reading_implausible).first, -1);
    if (picture.drawEta) {
        EXPECT_GT(seconds(picture.drawEta->p50), 1200);
    }
}

// Two fires in one house: the evaporator and the finishing pan, each with its own rhythm and one voice.
TEST(SituationFire, TwoFiresInOneHouseAreCalledOneByOne) {
    test::Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t <= 3600; t += 480)
        rows.add(t, "fired,,,fire=big");
    for (int t = 100; t <= 3600; t += 720)
        rows.add(t, "fired,,,fire=finishing");
    const Picture picture = rows.at(3700);
    ASSERT_EQ(picture.fires.size(), 2U);
    EXPECT_EQ(picture.fires[0].name, "finishing"); // 2980 + 720
    EXPECT_NEAR(seconds(picture.fires[0].due), 0, 60);
    EXPECT_EQ(picture.fires[1].name, "big"); // 3360 + 480
    EXPECT_NEAR(seconds(picture.fires[1].due), 140, 60);
    EXPECT_LE(std::count_if(picture.alarms.begin(), picture.alarms.end(),
                            [](const AlarmPicture& one) { return one.alarm == Alarm::fire_overdue; }),
              1);
}

} // namespace
} // namespace panside
