// How many alarms a crew gets: what one person can deal with in the long run is six an hour (EEMUA 191 and ISA-18.2,
// from memory), and where nothing is wrong hardly any.
#include "core/boil/alarm_review.h"
#include "core/boil/shift_log.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

namespace panside {
namespace {

AlarmReview reviewOf(const std::string& log) {
    std::vector<Boil::Entry> facts;
    FactId id = 0;
    for (Fact& fact : readLog(log).facts)
        facts.push_back({++id, std::move(fact)});
    return alarmReview(alarmHistory(facts));
}

TEST(AlarmBurden, StaysUnderSixAnHourOnEverySampleNight) {
    int nights = 0;
    for (const auto& file : std::filesystem::directory_iterator{PANSIDE_SOURCE "/sample-data"}) {
        if (file.path().extension() != ".csv")
            continue;
        ++nights;
        std::ifstream log{file.path()};
        std::stringstream read;
        read << log.rdbuf();
        const AlarmReview review = reviewOf(read.str());
        ASSERT_TRUE(review.anHour) << file.path();
        EXPECT_LE(*review.anHour, AlarmLimits{}.bearableAnHour) << file.path();
        std::printf("%s: %d alarms, %.2f an hour\n", file.path().filename().c_str(), review.times, *review.anHour);
    }
    EXPECT_GE(nights, 5);
}

} // namespace
} // namespace panside
