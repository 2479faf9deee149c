#include "ui/probes/probe_setup.h"

#include "ui/probes/field_form.h"
#include "ui/probes/setup_questions.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

const PortInfo adapter{.device = "/dev/ttyUSB3",
                       .stable = "/dev/serial/by-id/usb-adapter-7",
                       .description = "USB adapter",
                       .maker = {},
                       .serial = {}};
const PortInfo another{.device = "/dev/ttyUSB4", .stable = {}, .description = {}, .maker = {}, .serial = {}};

HeardLine line(std::vector<HeardLine::Part> parts) {
    return {.text = "syrup=103.42 stack=318.5", .encoding = Encoding::pairs, .parts = std::move(parts)};
}

PortStatus reading(std::vector<std::optional<double>> numbers) {
    PortStatus status;
    status.state = PortState::reading;
    for (const auto& number : numbers)
        status.fields.push_back({.last = std::nullopt, .readings = 1, .number = number});
    return status;
}

struct Setup : testing::Test {
    ProbeSetup setup;
    Setup() {
        setup.choose(adapter);
        setup.heard(0, line({{.is = "syrup", .text = "103.42", .number = 103.42},
                             {.is = "stack", .text = "318.5", .number = 318.5}}));
    }
    const FieldRule& field(std::size_t port, std::size_t index) { return setup.file().ports[port].fields.at(index); }
    bool readsBack() {
        const auto back = readProbeFile(writeProbeFile(setup.fileToKeep()));
        return std::holds_alternative<ProbeFile>(back) && std::get<ProbeFile>(back) == setup.fileToKeep();
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
    EXPECT_TRUE(setup.setReading(0, Series::syrup_pan));
    EXPECT_EQ(field(0, 0).is, "syrup");
    EXPECT_EQ(field(0, 0).reads, Series::syrup_pan);
    EXPECT_EQ(field(0, 0).unit, Unit::degC);
    EXPECT_TRUE(setup.setReading(0, std::nullopt));
    EXPECT_TRUE(setup.file().ports[0].fields.empty());
}

TEST_F(Setup, EveryReadingAndUnitOfferedMakesAFileThatReadsBack) {
    for (std::size_t series = 0; series < seriesCount; ++series) {
        setup.setReading(0, static_cast<Series>(series));
        for (const UnitChoice& choice : setup.unitChoices(0)) {
            setup.setUnit(0, choice);
            EXPECT_TRUE(readsBack()) << series << unitChoiceWords(choice).toStdString();
        }
    }
}

TEST_F(Setup, TheValueShowsAsSoonAsItIsRead) {
    setup.setReading(0, Series::syrup_pan);
    PortStatus status = reading({103.42});
    status.fields[0].last = Reading{Series::syrup_pan, Temperature::celsius(103.42).kelvin(), Unit::degC, "pan box"};
    setup.status(0, status);
    EXPECT_EQ(setup.rows(Units::metric)[0].value, QStringLiteral("103.4\u00a0°C"));
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

TEST_F(Setup, AFieldOfTheFileThatDoesNotArriveIsShownAllTheSame) {
    setup.setReading(1, Series::stack);
    setup.heard(0, line({{.is = "syrup", .text = "103.42", .number = 103.42}}));
    const auto rows = setup.rows(Units::metric);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(rows[1].name, QStringLiteral("stack"));
    EXPECT_EQ(rows[1].reads, QStringLiteral("stack"));
    EXPECT_TRUE(rows[1].shown.isEmpty());
}

TEST_F(Setup, ASecondProbeForAReadingSaysForWhichItTakesOver) {
    setup.setReading(0, Series::syrup_pan);
    setup.choose(another);
    setup.heard(1, line({{.is = "1", .text = "103.1", .number = 103.1}}));
    setup.setReading(0, Series::syrup_pan);
    EXPECT_EQ(setup.rows(Units::metric)[0].value, QStringLiteral(" · takes over when USB adapter fails"));
    EXPECT_TRUE(readsBack());
}

TEST_F(Setup, TwoHundredAndTwelveInCelsiusIsAskedAndAYesMakesItFahrenheit) {
    setup.setReading(0, Series::syrup_pan);
    setup.status(0, reading({212.0}));
    const auto asked = setupQuestions(setup, {});
    ASSERT_EQ(asked.size(), 1U);
    EXPECT_EQ(asked[0].words, QStringLiteral("The syrup pan reads 212.0\u00a0°C: that looks like °F."));
    setup.rewrite(asked[0].after);
    EXPECT_EQ(field(0, 0).unit, Unit::degF);
    EXPECT_TRUE(setupQuestions(setup, {}).empty());
}

TEST_F(Setup, AQuestionAnsweredWithNoIsNotAskedAgain) {
    setup.setReading(0, Series::syrup_pan);
    setup.status(0, reading({212.0}));
    const auto key = setupQuestions(setup, {}).at(0).key;
    setup.status(0, reading({213.0}));
    EXPECT_TRUE(setupQuestions(setup, {key}).empty());
}

TEST_F(Setup, ASwappedPairIsAskedEvenAcrossTwoPorts) {
    setup.setReading(0, Series::syrup_pan);
    setup.choose(another);
    setup.heard(1, line({{.is = "1", .text = "99.0", .number = 99.0}}));
    setup.setReading(0, Series::stack);
    setup.status(0, reading({318.5}));
    setup.status(1, reading({99.0}));
    const auto asked = setupQuestions(setup, {});
    ASSERT_EQ(asked.size(), 1U);
    setup.rewrite(asked[0].after);
    EXPECT_EQ(field(0, 0).reads, Series::stack);
    EXPECT_EQ(field(1, 0).reads, Series::syrup_pan);
}

TEST_F(Setup, AFieldWhoseNameTellsIsOfferedAsThatReading) {
    for (int i = 0; i < 6; ++i)
        setup.heard(0, line({{.is = "syrup", .text = "216.4", .number = 216.4},
                             {.is = "stack", .text = "620.1", .number = 620.1}}));
    auto asked = setupQuestions(setup, {});
    ASSERT_EQ(asked.size(), 2U);
    for (; !asked.empty(); asked = setupQuestions(setup, {}))
        setup.rewrite(asked[0].after);
    ASSERT_EQ(setup.file().ports[0].fields.size(), 2U);
    EXPECT_TRUE(readsBack());
}

TEST_F(Setup, TheSyrupPanIsAskedAboutFirstWhereverItStandsInTheLine) {
    for (int i = 0; i < 6; ++i)
        setup.heard(0, line({{.is = "baro", .text = "98.71", .number = 98.71},
                             {.is = "stack", .text = "620.1", .number = 620.1},
                             {.is = "syrup", .text = "216.4", .number = 216.4}}));
    const auto asked = setupQuestions(setup, {});
    ASSERT_EQ(asked.size(), 3U);
    EXPECT_EQ(asked[0].words, QStringLiteral("Field “syrup” looks like the syrup pan, in °F."));
}

struct Registers : Setup {
    Registers() {
        setup.turnProtocol();
        setup.addRegister();
    }
    void say(FieldPart part, const QString& words) {
        const auto said = withAnswer(*setup.ruleOf(0), part, words, Units::metric);
        ASSERT_TRUE(std::holds_alternative<FieldRule>(said)) << std::get<QString>(said).toStdString();
        setup.replaceRule(0, std::get<FieldRule>(said));
    }
};

TEST_F(Registers, ARegisterIsSetUpPartByPartAndReadsBack) {
    say(FieldPart::slave, QStringLiteral("17"));
    say(FieldPart::function, QStringLiteral("3, holding registers"));
    say(FieldPart::type, QStringLiteral("decimal, 32 bit"));
    say(FieldPart::wordOrder, QStringLiteral("low word first"));
    say(FieldPart::address, QStringLiteral("4098"));
    say(FieldPart::scale, QStringLiteral("0,1")); // as a French hand writes it
    say(FieldPart::offset, QStringLiteral("−0.4"));
    EXPECT_TRUE(setup.fileToKeep().ports.empty()); // it reads nothing yet: nothing is kept
    setup.setReading(0, Series::flue_pan);
    const FieldRule wanted{.is = {},
                           .place = RegisterPlace{17, 3, 4098, RegisterType::float32, WordOrder::little, 0.1},
                           .reads = Series::flue_pan,
                           .unit = Unit::degC,
                           .offset = -0.4};
    EXPECT_EQ(field(0, 0), wanted);
    EXPECT_TRUE(readsBack());
}

TEST_F(Registers, WhatCannotStandThereIsRefusedWithWhatMay) {
    for (const auto& [part, words] : {std::pair{FieldPart::slave, "0"},
                                      {FieldPart::slave, "248"},
                                      {FieldPart::slave, "1.5"},
                                      {FieldPart::address, "65536"},
                                      {FieldPart::scale, "0"},
                                      {FieldPart::offset, "warm"}}) {
        const auto said = withAnswer(*setup.ruleOf(0), part, QString::fromUtf8(words), Units::us);
        EXPECT_TRUE(std::holds_alternative<QString>(said)) << words;
    }
    EXPECT_EQ(std::get<QString>(withAnswer(*setup.ruleOf(0), FieldPart::slave, QStringLiteral("248"), Units::us)),
              QStringLiteral("“248” does not fit here. Write a number from 1 to 247."));
}

TEST_F(Registers, WhatStandsInARegisterShowsRawAndScaledAndAFaultByItsName) {
    setup.setReading(0, Series::syrup_pan);
    PortStatus status = reading({103.4});
    status.fields[0].registers = {1034};
    status.fields[0].last = Reading{Series::syrup_pan, Temperature::celsius(103.4).kelvin(), Unit::degC, "a"};
    setup.status(0, status);
    EXPECT_EQ(setup.rows(Units::metric)[0].shown, QStringLiteral("040A → 103.4"));
    status.fields[0] = {
        .last = std::nullopt, .why = NoReading::noAnswer, .fault = PollFault::exception, .exception = 2};
    setup.status(0, status);
    EXPECT_EQ(setup.rows(Units::metric)[0].value, QStringLiteral("illegal data address (exception 2)"));
}

TEST_F(Registers, ThePortsOtherWayOfSpeakingKeepsItsFields) {
    setup.turnProtocol();
    EXPECT_EQ(setup.file().ports[0].protocol, Protocol::lines);
    EXPECT_TRUE(setup.file().ports[0].fields.empty());
    setup.turnProtocol();
    EXPECT_EQ(setup.rowCount(), 1U);
}

TEST_F(Registers, ARawThermocoupleTakesAnotherRegisterForItsOtherEnd) {
    setup.setReading(0, Series::stack);
    setup.setUnit(0, {Unit::mV, Thermocouple::K});
    setup.addRegister();
    const auto named = withAnswer(*setup.ruleOf(1), FieldPart::name, QStringLiteral("terminals"), Units::metric);
    setup.replaceRule(1, std::get<FieldRule>(named));
    const auto form = fieldForm(*setup.rule(), *setup.ruleOf(0), Units::metric);
    const auto junction = std::ranges::find(form, FieldPart::junction, &FieldFormRow::part);
    ASSERT_NE(junction, form.end());
    ASSERT_TRUE(junction->choices.contains(QStringLiteral("terminals")));
    say(FieldPart::junction, QStringLiteral("terminals"));
    EXPECT_EQ(std::get<std::string>(*field(0, 0).junction), "terminals");
    EXPECT_TRUE(readsBack());
}

} // namespace
} // namespace panside
