// A barometer that no weather makes: 750 mm of mercury keyed as hectopascal, a height in feet keyed as metres.
#include "tests/core/boil/boil_log.h"

#include "core/boil/height.h"
#include "core/physics/air.h"

namespace panside {
namespace {

using test::BoilLog;

struct Night {
    explicit Night(const char* elevation, double shown) {
        if (*elevation)
            log.rows.add(0, elevation);
        log.barometer = shown;
        log.hold(20, 60);
        log.climb(20, 64, 1800);
    }
    Picture picture() const { return log.picture(); }
    BoilLog log;
};

TEST(NoWeather, InTheWrongUnitGivesNoBoilingPointAndNoFalseScorch) {
    for (const char* elevation : {"set,60,m,key=elevation", ""}) {
        Night night{elevation, 76.0}; // mm of mercury, as if they were hPa
        const Picture picture = night.picture();
        EXPECT_EQ(picture.reading(Series::pressure)->trust, Trust::doubtful) << elevation;
        EXPECT_EQ(picture.reading(Series::pressure)->reason, Reason::noWeather) << elevation;
        EXPECT_FALSE(picture.waterBoils) << elevation;
        EXPECT_FALSE(picture.brix) << elevation;
        EXPECT_EQ(test::stood(night.log.rows, Alarm::scorch_risk).times, 0) << elevation;
        // A look at boiling water helps.
        night.log.rows.add(night.log.now, fmt::format("water_check,{:.2f},degC,", night.log.boils(0)));
        night.log.climb(64, 65, 120);
        EXPECT_NEAR(night.picture().brix->degrees(), 65, 1) << elevation;
    }
}

TEST(NoWeather, IsDoubtedOnceTheHeightIsKnown) {
    Night night{"", 88};
    EXPECT_TRUE(night.picture().brix); // it may be high up
    night.log.rows.add(night.log.now, "set,60,m,key=elevation");
    night.log.hold(64, 60);
    EXPECT_EQ(night.picture().reading(Series::pressure)->reason, Reason::noWeather);
    EXPECT_FALSE(night.picture().waterBoils);
}

// The deepest low and the highest high of a spring are weather.
TEST(NoWeather, IsNoneOfALowOrAHigh) {
    for (const double metre : {0.0, 300.0, 900.0}) {
        const Pressure usual = standardAtmosphere(Length::metre(metre)).value();
        for (const double by : {-4.0, 4.0})
            EXPECT_FALSE(isNoWeather(usual + Pressure::kilopascal(by), Length::metre(metre))) << metre << by;
        EXPECT_TRUE(isNoWeather(usual - Pressure::kilopascal(8), Length::metre(metre)));
    }
    EXPECT_FALSE(isNoWeather(Pressure::kilopascal(84), std::nullopt)); // the highest sugarbush
}

} // namespace
} // namespace panside
