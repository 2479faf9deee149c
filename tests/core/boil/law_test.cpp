// The laws of the places against what is published of them. None of these texts was read in full: each figure is as
// others quote it, and the table of places says so beside it.
#include "core/boil/density_check.h"
#include "core/boil/law_rules.h"
#include "core/boil/shift_log.h"
#include "tests/core/boil/logs.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace panside {
namespace {

using testing::HasSubstr;

const PlaceLaw& lawOf(const char* name) { return allPlaces()[placeNamed(name).value()]; }
DensityCheck check(const std::string& row) {
    return std::get<DensityCheck>(std::get<Fact>(factOfLine("2027-03-14T20:00:00Z,density_check," + row)).what);
}
std::string rulesOf(const char* name) {
    std::string all;
    for (const LawRule& rule : packingRules(lawOf(name)))
        all += std::string{rule.text} + " [" + std::string{rule.source.text} + "]" + (rule.source.quoted ? "q" : "") +
               "\n";
    return all;
}

// 21 CFR 168.140: not less than 66 percent by weight; 7 CFR 52.5961 to .5966 (2015): at most 68.9, at 68 degF.
TEST(Law, TheFederalRuleOfTheUnitedStates) {
    EXPECT_EQ(lawOf("US").least, Brix::degrees(66.0));
    EXPECT_EQ(lawOf("US").most, Brix::degrees(68.9));
    EXPECT_EQ(lawOf("US").statedAt, Temperature::celsius(20));
    EXPECT_THAT(rulesOf("US"), HasSubstr("5 gallons and more [7 CFR 52.5961 to .5966, 2015]q"));
    EXPECT_THAT(rulesOf("US"), HasSubstr("68 °F (20 °C) [NIST Handbook 133]q"));
}

// Canadian Grade Compendium, volume 7: 66 to 68.9 at 20 degC; inspectors: packed at 82 to 85 degC, 90 percent full.
TEST(Law, CanadaOntarioAndQuebec) {
    for (const char* name : {"Canada", "Ontario", "Quebec", "québec"}) {
        EXPECT_EQ(lawOf(name).least, Brix::degrees(66.0)) << name;
        EXPECT_EQ(lawOf(name).most, Brix::degrees(68.9)) << name;
        EXPECT_THAT(rulesOf(name), HasSubstr("90 percent")) << name;
    }
    EXPECT_THAT(rulesOf("Canada"), HasSubstr("82 to 85 °C"));
    EXPECT_THAT(rulesOf("Ontario"), HasSubstr("85 °C, laid on its side 5 to 10 minutes")); // the ministry, 2014
    // O. Reg. 119/11: a code over 125 mL; bought sap traced.
    EXPECT_THAT(std::string{lotRule(lawOf("Ontario")).text}, HasSubstr("125 mL"));
    EXPECT_THAT(std::string{lotRule(lawOf("Ontario")).source.text}, HasSubstr("O. Reg. 119/11"));
    EXPECT_TRUE(keepingRule(lawOf("Ontario")));
    EXPECT_FALSE(keepingRule(lawOf("Ohio")));
    // The marketing board's classification.
    const auto words = offFlavours(lawOf("Quebec")).words;
    EXPECT_NE(std::find(words.begin(), words.end(), "buddy"), words.end());
    EXPECT_NE(words.size(), offFlavours(lawOf("Ontario")).words.size());
}

// OAC 901:3-45-04: filled to 90 percent. ATCP 87 is known by its number only. Lead: 250 ppb, often quoted.
TEST(Law, OhioWisconsinAndLead) {
    EXPECT_THAT(rulesOf("Ohio"), HasSubstr("90 percent [Ohio OAC 901:3-45-04]q"));
    EXPECT_THAT(rulesOf("Wisconsin"), HasSubstr("ATCP 87"));
    EXPECT_THAT(rulesOf("Maine"), testing::Not(HasSubstr("90 percent")));
    EXPECT_EQ(leadLimit(lawOf("Ohio")).partsPerBillion, 250);
    EXPECT_EQ(lawOf("New Hampshire").least, Brix::degrees(66.9));
}

TEST(Law, EveryFigureSaysThatItWasReadOnlyAsQuoted) {
    for (const PlaceLaw& law : allPlaces()) {
        EXPECT_TRUE(law.density.quoted) << law.name;
        for (const LawRule& rule : packingRules(law))
            EXPECT_TRUE(rule.source.quoted && !rule.source.text.empty()) << law.name << ": " << rule.text;
        EXPECT_TRUE(lotRule(law).source.quoted && leadLimit(law).source.quoted && gradeWords(law).source.quoted);
    }
}

// Vermont's regulation: 36.0 degrees Baume or 66.9 Brix at 60 degF, and hot by its own chart; its lines as an
// evaporator maker's manual of 2014 prints them.
TEST(Law, VermontsChartDecidesWhateverTheFloatBalanceMakesOfIt) {
    const PlaceLaw& vermont = lawOf("Vermont");
    const struct {
        double fahrenheit, baume, brix;
    } lines[] = {{209, 32.0, 59.0}, {176, 33.0, 60.9}, {140, 34.0, 62.8}, {100, 35.0, 64.8}, {60, 36.0, 66.9}};
    for (const auto& line : lines) {
        const std::string cup = ";temp=" + std::to_string(line.fahrenheit) + "degF;cal=60degF";
        const auto read = [&](double number, const char* unit) {
            return check(std::to_string(number) + "," + unit + ",with=hydrometer" + cup);
        };
        EXPECT_TRUE(isLegalByChart(read(line.baume, "baume"), vermont)) << line.fahrenheit;
        EXPECT_TRUE(isLegalByChart(read(line.brix, "brix"), vermont)) << line.fahrenheit;
        EXPECT_FALSE(isLegalByChart(read(line.baume - 0.1, "baume"), vermont)) << line.fahrenheit;
        EXPECT_FALSE(isLegalByChart(read(line.brix - 0.2, "brix"), vermont)) << line.fahrenheit;
        EXPECT_FALSE(isLegalByChart(read(line.brix, "brix"), lawOf("New Hampshire"))); // it has no chart
    }
    // The float balance makes 66.66 of 36.0 degrees Baume at 60 degF, and of 62.8 Brix in a cup of 140 degF 66.62.
    EXPECT_LT(sugarOf(check("36.0,baume,temp=60degF;cal=60degF"), Brix::degrees(66.9))->sugar.degrees(), 66.75);
    EXPECT_FALSE(isLegalByChart(check("36.0,baume,cal=60degF"), vermont)); // nobody noted the cup's heat
    EXPECT_FALSE(isLegalByChart(check("66.9,brix,temp=60degF;cal=20degC"), vermont));
    EXPECT_FALSE(isLegalByChart(check("66.9,brix,with=refractometer;temp=60degF"), vermont));
}

TEST(Law, AGlassThatReadsTheChartIsCalledLegal) {
    const auto judged = [](const std::string& place, const std::string& more = {}) {
        test::Rows pan;
        pan.add(0, "lit,,,");
        pan.add(1, "set," + place + ",,key=place");
        if (!more.empty())
            pan.add(2, more);
        pan.read(0, "pressure", 100.0, "kPa");
        for (int t = 5; t <= 400; t += 5)
            pan.read(t, "syrup_pan", 104.0 + 0.01 * (t / 5 % 3 - 1), "degC");
        pan.add(300, "density_check,36.0,baume,temp=60degF;cal=60degF");
        return pan.at(310).check.value();
    };
    const CheckPicture vermont = judged("Vermont");
    EXPECT_EQ(vermont.weight, CheckWeight::right);
    EXPECT_EQ(judged("New Hampshire").weight, CheckWeight::perhapsUnderLegal);
    // A least of one's own is no chart's.
    EXPECT_EQ(judged("Vermont", "set,67.0,brix,key=legal_minimum").weight, CheckWeight::perhapsUnderLegal);
}

} // namespace
} // namespace panside
