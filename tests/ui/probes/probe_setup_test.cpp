#include "ui/probes/probe_setup.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

const PortInfo adapter{.device = "/dev/ttyUSB3",
                       .stable = "/dev/serial/by-id/usb-adapter-7",
                       .description = "USB adapter",
                       .maker = {},
                       .serial = {}};

HeardLine line(std::vector<HeardLine::Part> parts) {
    return {.text = "syrup=103.42 stack=318.5", .encoding = Encoding::pairs, .parts = std::move(parts)};
}

struct Setup : testing::Test {
    ProbeSetup setup;
    Setup() {
        setup.choose(adapter);
        setup.heard(0, line({{.is = "syrup", .text = "103.42", .number = 103.42},
                             {.is = "stack", .text = "318.5", .number = 318.5}}));
    }
};

TEST_F(Setup, AChosenPortIsKeptByTheNameThatSurvivesReplugging) {
    ASSERT_EQ(setup.file().ports.size(), 1U);
    EXPECT_EQ(setup.file().ports[0].device, "/dev/serial/by-id/usb-adapter-7");
    setup.choose(adapter);
    EXPECT_EQ(setup.file().ports.size(), 1U);
}

TEST_F(Setup, APersonPointsAtAFieldAndItIsTheSyrupPan) {
    ASSERT_EQ(setup.rows(Units::metric).size(), 2U);
    EXPECT_TRUE(setup.turnReading(0));
    const FieldRule& rule = setup.file().ports[0].fields.at(0);
    EXPECT_EQ(rule.is, "syrup");
    EXPECT_EQ(rule.reads, Series::syrup_pan);
    EXPECT_EQ(rule.unit, Unit::degC);
}

TEST_F(Setup, TurningOnPastTheLastReadingLeavesTheFieldOut) {
    for (std::size_t i = 0; i <= seriesCount; ++i)
        setup.turnReading(1);
    EXPECT_TRUE(setup.file().ports[0].fields.empty());
}

TEST_F(Setup, EveryUnitOfferedMakesAFileThatReadsBack) {
    setup.turnReading(0);
    for (int i = 0; i < 8; ++i) {
        setup.turnUnit(0);
        const auto back = readProbeFile(writeProbeFile(setup.file()));
        ASSERT_TRUE(std::holds_alternative<ProbeFile>(back)) << i;
        EXPECT_EQ(std::get<ProbeFile>(back), setup.file());
    }
}

TEST_F(Setup, TheValueShowsAsSoonAsItIsRead) {
    setup.turnReading(0);
    PortStatus status;
    status.state = PortState::reading;
    status.fields = {{.last = Reading{Series::syrup_pan, Temperature::celsius(103.42).kelvin(), Unit::degC, "pan box"},
                      .readings = 1}};
    setup.status(0, status);
    EXPECT_TRUE(setup.rows(Units::metric)[0].value.contains(QStringLiteral("103")));
}

TEST_F(Setup, ALineThatIsRefusedIsShownAndTeachesNothing) {
    setup.heard(0, {.text = "sy~~=1..", .refusal = Refusal::malformed});
    EXPECT_EQ(setup.lines().back(), QStringLiteral("sy~~=1.."));
    EXPECT_EQ(setup.rows(Units::us).size(), 2U);
}

TEST_F(Setup, LinesOfAnotherPortAreNotShown) {
    setup.heard(1, line({{.is = "x", .text = "1", .number = 1}}));
    EXPECT_EQ(setup.rows(Units::us).size(), 2U);
}

} // namespace
} // namespace panside
