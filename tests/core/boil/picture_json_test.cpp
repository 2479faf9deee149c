#include "core/boil/picture.h"

#include "tests/core/boil/logs.h"

#include <cmath>
#include <cstdio>
#include <nlohmann/json.hpp>
#include <random>

namespace panside {
namespace {

using test::Rows;

nlohmann::ordered_json lineOf(const Picture& picture) {
    std::string line;
    appendJson(line, picture);
    EXPECT_EQ(line.find('\n'), std::string::npos);
    return nlohmann::ordered_json::parse(line);
}

TEST(PictureJson, HasEveryFieldInItsOrder) {
    const auto json = lineOf(Rows{}.add(0, "lit,,,").at(1));
    std::vector<std::string> names;
    for (const auto& item : json.items())
        names.push_back(item.key());
    EXPECT_EQ(names, (std::vector<std::string>{"t",           "pressureKPa",  "waterBoilsC",
                                               "syrupPanC",   "probeOffsetC", "riseC",
                                               "targetRiseC", "targetC",      "targetUncertaintyC",
                                               "brix",        "drawEta",      "drawDue",
                                               "drawing",     "closeEta",     "fireDueS",
                                               "keepBackL",   "lastLoadS",    "evaporationLph",
                                               "sapLeftS",    "efficiency",   "alarms",
                                               "alarmWhy",    "trust",        "why"}));
    EXPECT_EQ(json["t"], "2025-03-14T12:00:01Z");
}

TEST(PictureJson, EveryNullHasItsReason) {
    for (const auto& json :
         {lineOf(Rows{}.add(0, "note,,,begun").at(1)), lineOf(Rows{}.add(0, "lit,,,").at(1)),
          lineOf(Rows{}.add(0, "draw_open,,,").at(1)), lineOf(Rows{}.add(0, "lit,,,").add(1, "shutdown,,,").at(2)),
          lineOf(Rows{}.read(0, "syrup_pan", 103, "degC").at(1)),
          lineOf(Rows{}.read(0, "sea_level_pressure", 101.3, "kPa").at(1)),
          lineOf(Rows{}.add(0, "water_check,99.1,degC,").at(1))})
        for (const auto& item : json.items())
            if (item.value().is_null() && item.key() != "targetUncertaintyC") {
                EXPECT_TRUE(json["why"].contains(item.key())) << item.key() << " in " << json;
            }
}

TEST(PictureJson, WaterBoilsByTheBarometer) {
    // IAPWS R7-97(2012), table 36: at 0.1 MPa water boils at 372.755919 K.
    const auto json = lineOf(Rows{}.read(0, "pressure", 100, "kPa").at(1));
    EXPECT_NEAR(json["waterBoilsC"].get<double>(), 99.6059, 1e-4);
    EXPECT_EQ(json["pressureKPa"], 100);
    EXPECT_EQ(json["trust"]["pressure"], "good");
}

TEST(PictureJson, WithoutABarometerWaterBoilsAtTheLastCheck) {
    const auto json = lineOf(Rows{}.add(0, "water_check,209.5,degF,").at(1));
    EXPECT_TRUE(json["pressureKPa"].is_null());
    EXPECT_NEAR(json["waterBoilsC"].get<double>(), (209.5 - 32) / 1.8, 1e-3);
}

TEST(PictureJson, AnElevationToldLaterMakesTheReportCount) {
    Rows rows;
    rows.read(0, "sea_level_pressure", 101.325, "kPa");
    EXPECT_TRUE(lineOf(rows.at(1))["pressureKPa"].is_null());
    rows.add(2, "set,500,m,key=elevation");
    // ISO 2533:1975 has 95.461 kPa at 500 m; air at 0 degC instead of 15 makes the column heavier, some 0.3 kPa.
    EXPECT_NEAR(lineOf(rows.at(3))["pressureKPa"].get<double>(), 95.15, 0.15);
}

TEST(PictureJson, NamesAlarmsThatStandHighestFirst) {
    Rows rows;
    rows.add(0, "lit,,,").add(0, "set,1,min,key=fire_interval").add(0, "clock_step,60,s,");
    for (int t = 0; t < 20; ++t)
        rows.read(t, "syrup_pan", 20 + 0.1 * t, "degC");
    EXPECT_EQ(lineOf(rows.at(130))["alarms"],
              (std::vector<std::string>{"probe_silent", "fire_overdue", "clock_changed"}));
}

TEST(PictureJson, JournalTroubleIsPutInItsPlace) {
    Picture picture;
    insertAlarm(picture, {Alarm::sap_low, Priority::medium, AlarmState::unseen, test::noon});
    insertAlarm(picture, {Alarm::journal_trouble, Priority::high, AlarmState::unseen, test::noon + Duration{5}});
    insertAlarm(picture, {Alarm::pan_low, Priority::high, AlarmState::goneUnseen, test::noon});
    EXPECT_EQ(lineOf(picture)["alarms"], (std::vector<std::string>{"journal_trouble", "sap_low"}));
}

// Against the C library, which rounds exactly (C17, 7.21.6.1: a decimal string correctly rounded by the current
// direction), ties and their neighbours too.
TEST(PictureJson, NumbersAreRoundedExactlyAndLoseTheirLastZeros) {
    const auto written = [](double value) {
        Picture picture;
        picture.efficiency = value;
        std::string line;
        appendJson(line, picture);
        const auto from = line.find("\"efficiency\":") + 13;
        return line.substr(from, line.find(',', from) - from);
    };
    const auto exact = [](double value) {
        char text[400];
        std::snprintf(text, sizeof text, "%.4f", value);
        std::string all{text};
        while (all.back() == '0')
            all.pop_back();
        if (all.back() == '.')
            all.pop_back();
        return all == "-0" ? std::string{"0"} : all;
    };
    std::mt19937_64 dice{5};
    std::vector<double> values{0,    -0.0,    0.00005, -0.00005, 0.03125, 0.09375, -0.15625, 1e-300, 0.99995,
                               1e10, 9.99e14, 2e15,    1e300,    123.4,   -7,      0.0001,   0.0502};
    for (int i = 0; i < 20000; ++i) {
        const double size = std::pow(10.0, static_cast<double>(dice() % 24) - 8);
        const double value = size * (static_cast<double>(dice() >> 11U) * 0x1p-52 - 1);
        values.push_back(value);
        values.push_back((std::floor(value * 1e4) + 0.5) / 1e4); // as near to a tie as a double comes
    }
    for (const double value : values)
        ASSERT_EQ(written(value), exact(value)) << value;
}

TEST(PictureJson, NoNumberIsEverNotANumber) {
    Picture picture;
    picture.efficiency = std::nan("");
    picture.drawEta = Range{Duration{0}, Duration{1e9}, {}};
    const auto json = lineOf(picture);
    EXPECT_TRUE(json["efficiency"].is_null());
    EXPECT_TRUE(json["drawEta"]["p90"].is_null());
}

} // namespace
} // namespace panside
