#include "core/physics/reckon.h"

#include <cmath>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

namespace panside::sums {
namespace {

using testing::HasSubstr;

Arguments words(const std::vector<std::string>& list) {
    Arguments arguments;
    for (std::size_t i = 0; i + 1 < list.size(); i += 2)
        arguments.emplace_back(list[i], list[i + 1]);
    return arguments;
}
double figure(const std::string& kind, const std::vector<std::string>& list, std::string_view field) {
    const Outcome outcome = reckon(kind, words(list));
    const auto* answer = std::get_if<Answer>(&outcome);
    if (!answer)
        return std::nan("");
    for (const Figure& one : answer->figures)
        if (one.field == field && one.value)
            return *one.value;
    return std::nan("");
}
std::string refusal(const std::string& kind, const std::vector<std::string>& list, bool usage = false) {
    const Outcome outcome = reckon(kind, words(list));
    const auto* refused = std::get_if<Refusal>(&outcome);
    if (!refused)
        return "was answered";
    EXPECT_EQ(refused->usage, usage);
    std::string text = refused->argument + ":";
    for (const Sentence& sentence : refused->why)
        text += " " + asRead(sentence);
    return text;
}

// IAPWS R7-97(2012), table 36: 0.1 MPa boils at 372.755919 K. Weather report: hypsometric table for 300 m at 0 degC.
TEST(Reckon, BoilsWater) {
    EXPECT_NEAR(figure("boiling", {"pressure", "100kPa"}, "waterBoilsC"), 99.605919, 1e-6);
    EXPECT_NEAR(figure("boiling", {"pressure", "29.53inHg"}, "waterBoilsC"), 99.6059, 0.001);
    EXPECT_NEAR(figure("boiling", {"sea-level", "1014.973hPa", "elevation", "300m"}, "pressureKPa"), 97.7726, 0.0002);
    EXPECT_NEAR(figure("boiling", {"sea-level", "1014.293hPa", "elevation", "300m", "air", "5degC"}, "pressureKPa"),
                97.7726, 0.0002);
    EXPECT_NEAR(figure("boiling", {"altimeter", "101.325kPa", "elevation", "1000m"}, "pressureKPa"), 89.8746, 0.0001);
}

// Starzak and Peacock 1997 with IF97, solved apart: 4.198 K for 66.9 brix at sea level, 3.999 for 66.0.
TEST(Reckon, FindsTheTargetFromDensityOrRise) {
    const std::vector<std::string> density{"pressure", "101.325kPa", "density", "66.9brix"};
    EXPECT_NEAR(figure("target", density, "riseC"), 4.198, 0.0006);
    EXPECT_NEAR(figure("target", density, "targetC"), 99.9743 + 4.198, 0.0007);
    EXPECT_NEAR(figure("target", density, "uncertaintyC"), 0.13, 0.01);
    EXPECT_NEAR(figure("target", {"pressure", "101.325kPa", "rise", "3.999K"}, "brix"), 66.0, 0.005);
    // A difference in degF is not shifted by 32: 7.198 degF are 3.999 K.
    EXPECT_NEAR(figure("target", {"pressure", "101.325kPa", "rise", "7.1982degF"}, "brix"), 66.0, 0.005);
    EXPECT_NEAR(figure("target", {"pressure", "101.325kPa", "rise", "3.999degC"}, "brix"), 66.0, 0.005);
}

// ICUMSA SPS-4: 1328.19 kg/m3 at 20 degC, 1330.44 at 60 degF. ICUMSA 1974: 1.45348 for 65 percent. OIV: -0.38 at 15
// degC.
TEST(Reckon, WeighsAndRefracts) {
    EXPECT_NEAR(figure("density", {"density", "66.9brix", "temp", "20degC"}, "kgPerM3"), 1328.19, 0.006);
    EXPECT_NEAR(figure("density", {"density", "66.9brix", "temp", "60degF"}, "kgPerM3"), 1330.44, 0.006);
    EXPECT_NEAR(figure("refraction", {"density", "65brix"}, "index"), 1.45348, 1e-5);
    EXPECT_NEAR(figure("refraction", {"index", "1.45348", "temp", "15degC"}, "brix"), 65 - 0.38, 0.006);
    EXPECT_NEAR(figure("refraction", {"index", "1.45348", "temp", "20degC"}, "index"), 1.45348, 1e-9);
}

// Modulus 145, ICUMSA density: 66.9 brix is 36.02 at 20/20 degC and 36.12 at 60/60 degF.
TEST(Reckon, TurnsBrixIntoBaumeAndBack) {
    EXPECT_NEAR(figure("baume", {"density", "66.9brix"}, "baume"), 36.02, 0.006);
    EXPECT_NEAR(figure("baume", {"density", "66.9brix", "cal", "60degF"}, "baume"), 36.12, 0.006);
    EXPECT_NEAR(figure("baume", {"baume", "36.12baume", "cal", "60degF"}, "brix"), 66.9, 0.01);
}

// The trade's pair of lines: 66.9 cold at 60 degF, 59.1 hot at 211 degF. Float balance: 59.00.
TEST(Reckon, ReadsAHotCupAndNamesTheRemedy) {
    const std::vector<std::string> cup{"reading", "59.0brix", "temp", "211degF", "cal", "60degF"};
    EXPECT_NEAR(figure("cup", cup, "brix"), 66.9, 0.01);
    EXPECT_TRUE(std::isnan(figure("cup", cup, "addSapL")));
    // Trade: ten gallons at 68.9 to 66.9 take 0.40 gallon of water (here with a cup at the scale's own temperature).
    const std::vector<std::string> heavy{"reading", "68.9brix", "temp", "60degF", "cal", "60degF", "volume", "10gal"};
    EXPECT_NEAR(figure("cup", heavy, "addSapL"), 0.40 * 3.7854, 0.01);
    EXPECT_EQ(figure("cup", heavy, "boilOffL"), 0);
    std::vector<std::string> light{"reading", "60brix", "temp", "60degF", "cal",
                                   "60degF",  "volume", "10L",  "target", "66brix"};
    // 10 L of 60 brix weigh 12.864 kg (ICUMSA, 20 degC); (1 - 60/66) of it is water to go, 1.1695 kg.
    EXPECT_NEAR(figure("cup", light, "boilOffL"), 1.1695 / 0.9982, 0.002);
    EXPECT_EQ(figure("cup", light, "addSapL"), 0);
}

// Mass balance of the trade table: 44.2 for 2 to 66.9; the rule of 86: 43.
TEST(Reckon, CountsSapAndBlends) {
    EXPECT_NEAR(figure("sap", {"sap", "2brix", "density", "66.9brix"}, "sapPerSyrup"), 44.2, 0.05);
    EXPECT_NEAR(figure("sap", {"sap", "2brix", "density", "66.9brix"}, "ruleOf86"), 43, 1e-9);
    EXPECT_NEAR(figure("sap", {"sap", "2brix", "density", "66.9brix", "volume", "2L"}, "sapL"), 88.33, 0.02);
    EXPECT_NEAR(figure("blend", {"part", "10gal@68.9brix", "part", "0.4gal@0brix"}, "brix"), 66.9, 0.02);
    EXPECT_NEAR(figure("blend", {"part", "1L@66brix", "part", "1L@66brix"}, "volumeL"), 2, 1e-9);
}

// IEC 60584-1 and IEC 60751 tables.
TEST(Reckon, ReadsProbes) {
    EXPECT_NEAR(figure("thermocouple", {"type", "K", "mv", "4.096mV"}, "temperatureC"), 100, 0.013);
    EXPECT_NEAR(figure("thermocouple", {"type", "K", "mv", "3.096mV", "junction", "25degC"}, "temperatureC"), 100,
                0.025);
    EXPECT_NEAR(figure("thermocouple", {"type", "T", "temp", "100degC"}, "mv"), 4.279, 0.0006);
    EXPECT_NEAR(figure("rtd", {"ohm", "138.51ohm"}, "temperatureC"), 100, 0.014);
    EXPECT_NEAR(figure("rtd", {"temp", "-50degC"}, "ohm"), 80.31, 0.006);
}

// USDA Forest Products Laboratory's 8600 Btu/lb; trade example of 52 gal kept back.
TEST(Reckon, CountsTheFire) {
    const std::vector<std::string> maple{"wood", "sugar-maple", "moisture", "20percent"};
    EXPECT_NEAR(figure("wood", maple, "lowerMJPerKg"), 14.459, 0.001);
    EXPECT_NEAR(figure("wood", maple, "higherMJPerKg"), 16.003, 0.001);
    EXPECT_NEAR(figure("wood", maple, "kgPerCord"), 1683, 3);
    EXPECT_NEAR(
        figure("shutdown", {"area", "24ft2", "depth", "2in", "rate", "60gal/h", "burn-out", "45min"}, "keepBackL"),
        52 * 3.7854, 3);
}

TEST(Reckon, NamesTheLikelySlip) {
    EXPECT_THAT(refusal("boiling", {"pressure", "29.9kPa"}), HasSubstr("Did you mean 29.9inHg?"));
    EXPECT_THAT(refusal("boiling", {"pressure", "987kPa"}), HasSubstr("Did you mean 987hPa?"));
    EXPECT_THAT(refusal("boiling", {"pressure", "98.7"}), HasSubstr("the number has no unit"));
    EXPECT_THAT(refusal("boiling", {"pressure", "29.9"}), HasSubstr("Did you mean 29.9inHg?"));
    EXPECT_THAT(refusal("boiling", {"pressure", "98,7kPa"}), HasSubstr("a point, not a comma"));
    EXPECT_THAT(refusal("boiling", {"pressure", "98.7kpa"}), HasSubstr("there is no unit kpa"));
    EXPECT_THAT(refusal("boiling", {"pressure", "98.7degC"}), HasSubstr("a unit of something else"));
    EXPECT_THAT(refusal("boiling", {"pressure", ""}), HasSubstr("nothing stands there"));
    EXPECT_THAT(refusal("cup", {"reading", "59brix", "temp", "200degC", "cal", "60degF"}),
                HasSubstr("Did you mean 200degF?"));
    EXPECT_THAT(refusal("cup", {"reading", "70brix", "temp", "211degF", "cal", "60degF"}), HasSubstr("more than 75"));
    EXPECT_THAT(refusal("cup", {"reading", "75brix", "temp", "16degC", "cal", "60degF"}), HasSubstr("more than 75"));
    EXPECT_THAT(refusal("target", {"pressure", "98.7kPa", "rise", "219degF"}), HasSubstr("what the thermometer reads"));
    EXPECT_THAT(refusal("target", {"pressure", "98.7kPa", "rise", "39.2degF"}), HasSubstr("shifted by 32"));
    EXPECT_THAT(refusal("target", {"pressure", "98.7kPa", "density", "80brix"}), HasSubstr("0 to 78 brix"));
    EXPECT_THAT(refusal("thermocouple", {"type", "K", "mv", "4096mV"}), HasSubstr("open or reversed"));
    EXPECT_THAT(refusal("thermocouple", {"type", "N", "mv", "4mV"}), HasSubstr("K, J and T"));
    EXPECT_THAT(refusal("sap", {"sap", "66.9brix", "density", "2brix"}), HasSubstr("right way round"));
    EXPECT_THAT(refusal("wood", {"wood", "mahogany", "moisture", "20percent"}), HasSubstr("sugar-maple"));
    EXPECT_THAT(refusal("blend", {"part", "10gal"}), HasSubstr("@ between them"));
    EXPECT_THAT(refusal("refraction", {"index", "1.333", "temp", "30degC"}), "was answered");
    EXPECT_THAT(refusal("refraction", {"index", "1.3331", "temp", "10degC"}), HasSubstr("even plain water"));
}

TEST(Reckon, TellsAWrongQuestionFromAWrongAmount) {
    EXPECT_THAT(refusal("nonsense", {}, true), HasSubstr("no such sum"));
    EXPECT_THAT(refusal("boiling", {}, true), HasSubstr("is needed"));
    EXPECT_THAT(refusal("boiling", {"depth", "1m"}, true), HasSubstr("no such argument"));
    EXPECT_THAT(refusal("boiling", {"pressure", "98kPa", "pressure", "99kPa"}, true), HasSubstr("given twice"));
    EXPECT_THAT(refusal("boiling", {"pressure", "98kPa", "sea-level", "99kPa"}, true), HasSubstr("one pressure"));
    EXPECT_THAT(refusal("boiling", {"pressure", "98kPa", "elevation", "300m"}, true), HasSubstr("no elevation"));
    EXPECT_THAT(refusal("boiling", {"sea-level", "98kPa"}, true), HasSubstr("is needed"));
    EXPECT_THAT(refusal("density", {"density", "66brix"}, true), HasSubstr("is needed"));
    EXPECT_THAT(refusal("cup", {"reading", "59brix", "temp", "90degC", "cal", "60degF", "target", "66brix"}, true),
                HasSubstr("is needed"));
}

TEST(Reckon, EveryAnswerHasItsSumUncertaintySourceAndCaution) {
    for (const Kind& kind : reckonKinds()) {
        Arguments arguments;
        for (const Parameter& parameter : kind.parameters)
            if (parameter.needed)
                arguments.emplace_back(parameter.name, parameter.example);
        const auto first = kind.parameters.front();
        if (arguments.empty())
            arguments.emplace_back(first.name, first.example);
        if (kind.name == "target" || kind.name == "refraction")
            arguments = {{"density", "66.9brix"}};
        if (kind.name == "target")
            arguments.emplace_back("pressure", "98.7kPa");
        if (kind.name == "thermocouple")
            arguments.emplace_back("mv", "4.096mV");
        const Outcome outcome = reckon(kind.name, arguments);
        const auto* answer = std::get_if<Answer>(&outcome);
        ASSERT_TRUE(answer) << kind.name;
        EXPECT_FALSE(answer->sum.empty() || answer->source.empty() || answer->caution.empty()) << kind.name;
        EXPECT_FALSE(asRead(answer->uncertainty).empty()) << kind.name;
        for (const Sentence& step : answer->sum)
            EXPECT_EQ(asRead(step).find('%'), std::string::npos) << asRead(step);
    }
}

// Whatever is typed: an answer with finite figures, or a refusal with words.
RC_GTEST_PROP(ReckonProperty, NeverAnswersNonsenseWithNumbers, ()) {
    const Kind& kind = reckonKinds()[*rc::gen::inRange<std::size_t>(0, reckonKinds().size())];
    Arguments arguments;
    for (const Parameter& parameter : kind.parameters) {
        if (!parameter.needed && *rc::gen::inRange(0, 2) == 0)
            continue;
        const auto amount = *rc::gen::oneOf(
            rc::gen::just(std::string{parameter.example}),
            rc::gen::map(rc::gen::inRange(-3000, 12000), [](int n) { return std::to_string(n / 10.0); }),
            rc::gen::string<std::string>());
        const auto unit = *rc::gen::element<std::string>("", "kPa", "degC", "degF", "brix", "baume", "L", "gal", "m",
                                                         "mV", "ohm", "percent", "min");
        arguments.emplace_back(parameter.name, amount + (amount == parameter.example ? "" : unit));
    }
    const Outcome outcome = reckon(kind.name, arguments);
    if (const auto* answer = std::get_if<Answer>(&outcome)) {
        for (const Figure& one : answer->figures)
            RC_ASSERT(!one.value || std::isfinite(*one.value));
    } else
        RC_ASSERT(!std::get<Refusal>(outcome).why.empty());
}

// ICUMSA SPS-4: 1328.19 kg/m3 for 66.9 brix at 20 degC. A US pint is 28.875 cubic inches, 0.473176473 L.
TEST(Reckon, FillsByWeight) {
    EXPECT_NEAR(figure("fill", {"size", "1pt", "density", "66.9brix"}, "kg"), 0.473176473 * 1.32819, 1e-5);
    EXPECT_NEAR(figure("fill", {"size", "250mL", "density", "66.9brix", "at", "60degF"}, "kg"), 0.25 * 1.33044, 1e-5);
    EXPECT_THAT(refusal("fill", {"size", "1", "density", "66.9brix"}), HasSubstr("no unit"));
}

// A drum of 37 gal: 37 jugs of a gallon or 296 pints; by arithmetic.
TEST(Reckon, CountsContainersTheLargestFirst) {
    const Outcome outcome =
        reckon("containers", words({"volume", "37.3gal", "density", "66.9brix", "size", "1pt", "size", "0.5gal"}));
    const auto& figures = std::get<Answer>(outcome).figures;
    EXPECT_EQ(figures[0].list, (std::vector<double>{2, 74}));
    EXPECT_NEAR(*figures[1].value, 0.05 * 3.785411784, 1e-6);
    EXPECT_NEAR(figure("containers", {"volume", "1gal", "density", "66brix", "size", "1qt"}, "leftL"), 0, 1e-9);
    // Divided in doubles, 0.3 L is not quite three times 0.1 L.
    EXPECT_NEAR(figure("containers", {"volume", "0.3L", "density", "66brix", "size", "0.1L"}, "leftL"), 0, 1e-9);
}

// Absorbances add up by volume: equal parts of 64 and 36 percent let the root of their product through, 48.
TEST(Reckon, BlendsColour) {
    EXPECT_NEAR(figure("colour", {"part", "1L@64percent", "part", "1L@36percent"}, "percent"), 48, 1e-9);
    const auto answer = std::get<Answer>(reckon("colour", words({"part", "1gal@75percent"})));
    EXPECT_EQ(answer.figures[1].word, "golden");
    EXPECT_THAT(refusal("colour", {"part", "1L@640percent"}), HasSubstr("from 0.1 to 100"));
}

// Sugar is kept: 1000 L at 2 brix hold 20.11 kg (ICUMSA 1005.9 kg/m3 at 20 degC); at 8 brix a litre holds 82.5 g
// (1030.0 kg/m3).
TEST(Reckon, ConcentratesSap) {
    const double concentrate = figure("concentrate", {"sap", "1000L@2brix", "to", "8brix"}, "concentrateL");
    EXPECT_NEAR(concentrate, 1000 * 2 * 1006.0 / (8 * 1030.0), 0.1);
    EXPECT_NEAR(figure("concentrate", {"sap", "1000L@2brix", "to", "8brix"}, "waterL"), (1006.0 - 1006.0 / 4) / 0.9982,
                0.3);
    EXPECT_THAT(refusal("concentrate", {"sap", "1000L@8brix", "to", "2brix"}), HasSubstr("right way round"));
}

// A sap hydrometer made for 38 degF that shows 2.3 at 60 degF means 2.5 (practice of the trade, worked by float
// balance).
TEST(Reckon, CorrectsTheSapHydrometer) {
    EXPECT_NEAR(figure("sapscale", {"reading", "2.3brix", "temp", "60degF", "cal", "38degF"}, "brix"), 2.5, 0.03);
    EXPECT_NEAR(figure("sapscale", {"reading", "2.0brix", "temp", "38degF", "cal", "38degF"}, "brix"), 2.0, 1e-6);
}

// About a gallon a tap on a heavy day (a trade farming magazine, about 2015; a season's log of 2008: 800 gal from 450
// taps on the first big day is more); the temperatures are common practice, no source.
TEST(Reckon, TellsAHeavyDayAsARuleOfThumb) {
    const auto day = [](const char* night, const char* thaw) {
        const auto run = reckon("run", {{"night", night}, {"day", thaw}});
        return std::get<Answer>(run).figures.at(0).word;
    };
    EXPECT_EQ(day("22degF", "45degF"), "heavy");
    EXPECT_EQ(day("29degF", "45degF"), "fair");
    EXPECT_EQ(day("22degF", "38degF"), "fair");
    EXPECT_EQ(day("36degF", "50degF"), "noFreeze");
    EXPECT_EQ(day("10degF", "30degF"), "frozen");
    const Answer all = std::get<Answer>(reckon("run", {{"night", "-6degC"}, {"day", "7degC"}, {"taps", "300"}}));
    ASSERT_EQ(all.figures.size(), 3u);
    EXPECT_LT(all.figures[2].list.at(0), 300 * 3.785);
    EXPECT_GT(all.figures[2].list.at(1), 300 * 3.785);
    EXPECT_THAT(english(all.uncertainty), HasSubstr("rule of thumb"));
    EXPECT_THAT(std::string{all.source}, HasSubstr("common practice, no source"));
    EXPECT_THAT(refusal("run", {"night", "45degF", "day", "22degF"}), HasSubstr("right way round"));
}

TEST(Reckon, AsksWhetherSapOfTwentyTwoIsMeant) {
    const auto said = [](const char* reading) {
        const auto sum =
            std::get<Answer>(reckon("sapscale", {{"reading", reading}, {"temp", "60degF"}, {"cal", "38degF"}})).sum;
        return english(sum.back());
    };
    EXPECT_THAT(said("22brix"), HasSubstr("Did you mean 2.2?"));
    EXPECT_THAT(said("8brix"), Not(HasSubstr("Did you mean")));
}

TEST(Reckon, SaysSmallAmountsInCupsPintsAndQuarts) {
    EXPECT_EQ(english(sayVolume(Volume::gallon(1.5))), "5.68 L (1.50 gal)");
    EXPECT_EQ(english(sayVolume(Volume::gallon(0.5))), "1.89 L (2.00 qt)");
    EXPECT_EQ(english(sayVolume(Volume::gallon(0.125))), "473 mL (1.00 pt)");
    EXPECT_EQ(english(sayVolume(Volume::gallon(0.0625))), "237 mL (1.00 cups)");
}

} // namespace
} // namespace panside::sums
