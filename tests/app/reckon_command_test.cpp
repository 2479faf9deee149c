#include "app/reckon_command.h"
#include "core/physics/reckon.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sstream>

namespace panside {
namespace {

using testing::HasSubstr;

struct Ran {
    int status;
    std::string out, err;
};
Ran ran(const std::vector<std::string>& args) {
    std::ostringstream out;
    std::ostringstream err;
    const int status = reckonCommand(args, out, err);
    return {status, out.str(), err.str()};
}
std::vector<std::string> fieldsOf(std::vector<std::string> args) {
    args.emplace_back("--json");
    std::vector<std::string> names;
    const Ran result = ran(args);
    EXPECT_EQ(result.status, 0) << result.err;
    const auto object = nlohmann::json::parse(result.out);
    for (const auto& [name, value] : object.items())
        names.push_back(name);
    return names;
}

TEST(ReckonCommand, GivesTheFieldsThatOtherProgramsLeanOn) {
    using testing::UnorderedElementsAre;
    EXPECT_THAT(fieldsOf({"boiling", "--pressure", "98.7kPa"}), UnorderedElementsAre("pressureKPa", "waterBoilsC"));
    EXPECT_THAT(fieldsOf({"target", "--pressure", "98.7kPa", "--density", "66.9brix"}),
                UnorderedElementsAre("riseC", "targetC", "brix", "uncertaintyC"));
    EXPECT_THAT(fieldsOf({"density", "--density", "66.9brix", "--temp", "20degC"}), UnorderedElementsAre("kgPerM3"));
    EXPECT_THAT(fieldsOf({"refraction", "--density", "66.9brix"}), UnorderedElementsAre("brix", "index"));
    EXPECT_THAT(fieldsOf({"baume", "--baume", "36baume", "--cal", "60degF"}), UnorderedElementsAre("baume", "brix"));
    EXPECT_THAT(fieldsOf({"cup", "--reading", "59.1brix", "--temp", "211degF", "--cal", "60degF"}),
                UnorderedElementsAre("brix", "uncertaintyBrix", "addSapL", "boilOffL"));
    EXPECT_THAT(fieldsOf({"sap", "--sap", "2brix", "--density", "66brix"}),
                UnorderedElementsAre("sapPerSyrup", "ruleOf86", "sapL"));
    EXPECT_THAT(fieldsOf({"blend", "--part", "1L@66brix", "--part", "1gal@2brix"}),
                UnorderedElementsAre("volumeL", "brix"));
    EXPECT_THAT(fieldsOf({"thermocouple", "--type", "K", "--mv", "4.1mV"}), UnorderedElementsAre("temperatureC", "mv"));
    EXPECT_THAT(fieldsOf({"rtd", "--temp", "100degC"}), UnorderedElementsAre("temperatureC", "ohm"));
    EXPECT_THAT(fieldsOf({"wood", "--wood", "softwood", "--moisture", "20percent"}),
                UnorderedElementsAre("lowerMJPerKg", "higherMJPerKg", "kgPerCord"));
    EXPECT_THAT(fieldsOf({"shutdown", "--area", "24ft2", "--depth", "2in", "--rate", "60gal/h", "--burn-out", "45min"}),
                UnorderedElementsAre("keepBackL"));
    EXPECT_THAT(fieldsOf({"fill", "--size", "1pt", "--density", "66.9brix"}), UnorderedElementsAre("kg"));
    EXPECT_THAT(
        fieldsOf({"containers", "--volume", "37gal", "--density", "66.9brix", "--size", "1pt", "--size", "1gal"}),
        UnorderedElementsAre("counts", "leftL"));
    EXPECT_THAT(fieldsOf({"colour", "--part", "1L@64percent"}), UnorderedElementsAre("percent", "class"));
    EXPECT_THAT(fieldsOf({"concentrate", "--sap", "800gal@2brix", "--to", "8brix"}),
                UnorderedElementsAre("concentrateL", "waterL"));
    EXPECT_THAT(fieldsOf({"sapscale", "--reading", "2.3brix", "--temp", "60degF", "--cal", "38degF"}),
                UnorderedElementsAre("brix"));
    EXPECT_THAT(fieldsOf({"tonight", "--stand", "450gal@2brix", "--rate", "60gal/h"}),
                UnorderedElementsAre("lastLoadS", "coldS", "syrupL", "cords", "sapL", "sugarKg", "waterL", "keepBackL",
                                     "nights"));
    EXPECT_THAT(fieldsOf({"tonight", "--stand", "450gal@2brix", "--rate", "60gal/h", "--light", "16:30", "--cold",
                          "23:00", "--concentrate", "8brix"}),
                testing::IsSupersetOf({"mayStartL", "mayStartLikelyL", "concentrateL", "savesS", "savesCords"}));
    const auto plan =
        nlohmann::json::parse(ran({"tonight", "--stand", "450gal@2brix", "--rate", "60gal/h", "--json"}).out);
    EXPECT_LT(plan.at("lastLoadS").at("p10"), plan.at("lastLoadS").at("p90"));
    EXPECT_TRUE(plan.at("cords").is_null()) << "no night knows its wood";
}

// A journal that holds no night with a fire: it says so, and a journal that is not there is told by its name.
TEST(ReckonCommand, TellsTonightFromAJournal) {
    const Ran gone = ran({"tonight", "--journal", "/nowhere/night.db"});
    EXPECT_NE(gone.status, 0);
    EXPECT_THAT(gone.err, HasSubstr("night.db"));
}

TEST(ReckonCommand, TakesAColdTemperatureAndAnEqualsSign) {
    EXPECT_EQ(ran({"boiling", "--sea-level", "101kPa", "--elevation", "300m", "--air", "-4degC"}).status, 0);
    EXPECT_EQ(ran({"rtd", "--temp=-40degC"}).status, 0);
}

TEST(ReckonCommand, PrintsAnUnknownFigureAsNull) {
    EXPECT_THAT(ran({"sap", "--sap", "2brix", "--density", "66brix", "--json"}).out, HasSubstr("\"sapL\":null"));
}

TEST(ReckonCommand, TellsPeopleTheSumItsUncertaintyItsSourceAndTheCaution) {
    const Ran result = ran({"target", "--pressure", "98.7kPa", "--density", "66.9brix"});
    EXPECT_THAT(result.out, HasSubstr("Syrup boils at"));
    EXPECT_THAT(result.out, HasSubstr("66.90 °Brix boils 4.18 °C above water"));
    EXPECT_THAT(result.out, HasSubstr("standard uncertainty is 0.13 °C"));
    EXPECT_THAT(result.out, HasSubstr("Starzak and Peacock"));
    EXPECT_THAT(result.out, HasSubstr("the hydrometer decides"));
    EXPECT_EQ(result.err, "");
}

TEST(ReckonCommand, RefusesAnAmountWith1AndAQuestionWith2) {
    const Ran amount = ran({"boiling", "--pressure", "29.9kPa"});
    EXPECT_EQ(amount.status, 1);
    EXPECT_EQ(amount.out, "");
    EXPECT_EQ(amount.err,
              "panside reckon boiling --pressure 29.9kPa: it must lie from 50 to 110 kPa. Did you mean 29.9inHg?\n");
    EXPECT_EQ(ran({}).status, 2);
    EXPECT_EQ(ran({"nonsense"}).status, 2);
    EXPECT_EQ(ran({"boiling"}).status, 2);
    EXPECT_EQ(ran({"boiling", "--pressure"}).status, 2);
    EXPECT_EQ(ran({"boiling", "--pressure", "--json"}).status, 2); // no option is an amount
    EXPECT_THAT(ran({"boiling", "--pressure", "--json"}).err, HasSubstr("--pressure stands alone"));
    EXPECT_EQ(ran({"boiling", "--pressure", "98.7", "kPa"}).status, 2);
    EXPECT_EQ(ran({"boiling", "--list"}).status, 2);
    EXPECT_EQ(ran({"boiling", "--wind", "3m"}).status, 2);
}

TEST(ReckonCommand, ListsItsSumsAndItsWoods) {
    const Ran help = ran({"--help"});
    EXPECT_EQ(help.status, 0);
    for (const auto& kind : sums::reckonKinds()) {
        EXPECT_THAT(help.out, HasSubstr(std::string{kind.name}));
        EXPECT_EQ(ran({std::string{kind.name}, "--help"}).status, 0);
    }
    EXPECT_THAT(ran({"wood", "--list"}).out, HasSubstr("sugar-maple\n"));
    EXPECT_EQ(nlohmann::json::parse(ran({"wood", "--list", "--json"}).out).at("woods").front(), "hardwood");
}

} // namespace
} // namespace panside
