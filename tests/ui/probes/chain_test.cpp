#include "ui/probes/chain.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant chainNow{std::chrono::hours{500000}};

struct Chained : testing::Test {
    ChainEvidence evidence;
    PortStatus status;

    Chained() {
        evidence.now = chainNow;
        evidence.canBeHeard = true;
        evidence.picture.waterBoils = Temperature::celsius(99.6);
        evidence.file.ports = {{.name = "pan box",
                                .device = "/dev/a",
                                .fields = {{.is = "1", .reads = Series::syrup_pan, .unit = Unit::degC}}}};
        status.name = "pan box";
        status.device = "/dev/a";
        status.state = PortState::reading;
        status.fields = {{.last = Reading{Series::syrup_pan, 373.55, Unit::degC, "pan box"},
                          .lastAt = chainNow - std::chrono::seconds{1},
                          .readings = 9}};
        pan({.si = 373.55, .trust = Trust::good, .last = chainNow, .probe = "pan box"});
    }
    void pan(const ReadingPicture& shown) {
        evidence.picture.readings[static_cast<std::size_t>(Series::syrup_pan)] = shown;
    }
    ChainRow first() {
        evidence.ports = {&status};
        return chainRows(evidence, Units::metric).front();
    }
};

TEST_F(Chained, SaysOfEachReadingFromWhereHowOldAndThatItIsBelieved) {
    EXPECT_EQ(first(),
              (ChainRow{ChainMark::well, "syrup pan", "pan box", "100.4\u00a0°C", "1\u00a0s ago", "arrives, good"}));
    EXPECT_EQ(chainSentence(chainRows(evidence, Units::metric)),
              QStringLiteral("The whole chain works, from each probe to the disk and the ear."));
}

TEST_F(Chained, APortThatIsShutSaysWhatToDo) {
    status.state = PortState::noSuchPort;
    EXPECT_EQ(first().mark, ChainMark::broken);
    EXPECT_TRUE(first().verdict.contains(QStringLiteral("there is no port /dev/a. Plug the probe in")));
}

TEST_F(Chained, AReadingThatStoppedIsNotTakenForOneThatComes) {
    status.fields[0].lastAt = chainNow - std::chrono::seconds{14};
    EXPECT_EQ(first().mark, ChainMark::broken);
    EXPECT_EQ(first().verdict, QStringLiteral("stopped: silent for 14\u00a0s"));
}

TEST_F(Chained, ANumberThatCannotBeTrueIsToBeLookedAt) {
    status.fields[0].last->si = 5000;
    EXPECT_EQ(first().mark, ChainMark::look);
    EXPECT_EQ(first().verdict, QStringLiteral("arrives, but cannot be true: wrong field or unit?"));
}

TEST_F(Chained, WhatTheEngineDoubtsIsSaidWithItsReason) {
    pan({.si = 373.55, .trust = Trust::doubtful, .reason = Reason::jumping, .last = chainNow, .probe = "pan box"});
    EXPECT_EQ(first().verdict, QStringLiteral("arrives, but is in doubt: jumping"));
}

TEST_F(Chained, TheSecondProbeStandsByOrStandsIn) {
    evidence.file.ports[0].fields.push_back({.is = "2", .reads = Series::syrup_pan, .unit = Unit::degC});
    status.fields.push_back(status.fields[0]);
    evidence.ports = {&status};
    EXPECT_EQ(chainRows(evidence, Units::metric)[1].from, QStringLiteral("pan box 2"));
    EXPECT_EQ(chainRows(evidence, Units::metric)[1].verdict, QStringLiteral("arrives, good; on standby"));
    pan({.si = 373.55, .trust = Trust::good, .last = chainNow, .probe = "pan box 2", .standsIn = true});
    EXPECT_EQ(chainRows(evidence, Units::metric)[1].verdict, QStringLiteral("arrives, good; in use for the first"));
}

TEST_F(Chained, WithoutAProbeABarometerADiskOrALoudspeakerItSaysSo) {
    evidence.file.ports.clear();
    evidence.picture = {};
    evidence.journalTrouble = QStringLiteral("the disk is full");
    evidence.canBeHeard = false;
    const auto rows = chainRows(evidence, Units::us);
    ASSERT_EQ(rows.size(), 4U);
    EXPECT_EQ(rows[0].mark, ChainMark::broken);
    EXPECT_EQ(rows[1].what, QStringLiteral("barometer"));
    EXPECT_EQ(rows[2].verdict, QStringLiteral("the disk is full"));
    EXPECT_EQ(rows[3].mark, ChainMark::look);
}

} // namespace
} // namespace panside
