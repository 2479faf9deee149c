#include "ui/rig/rig_view.h"

#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant rigNow = *instantIn("2026-03-14T18:00:00Z");

RigRow rowFor(Setting key, const std::vector<Boil::Entry>& facts = {}, Units units = Units::us) {
    for (const RigRow& row : rigRows(facts, units))
        if (row.key == key)
            return row;
    ADD_FAILURE();
    return {};
}

TEST(RigView, ShowsWhatIsInForceInThePersonsUnits) {
    const std::vector<Boil::Entry> facts{
        {1, {.at = rigNow, .what = Set{Setting::elevation, 300, Unit::m}}},
        {2, {.at = rigNow, .what = Set{Setting::elevation, 304.8, Unit::ft}}},
    };
    EXPECT_EQ(rowFor(Setting::elevation, facts).answer, QStringLiteral("1000"));
    EXPECT_EQ(rowFor(Setting::elevation, facts).unit, Unit::ft);
    EXPECT_TRUE(rowFor(Setting::flue_pan_area, facts).answer.isEmpty());
}

TEST(RigView, ATypedAnswerBecomesASettingOfTheLog) {
    const auto made = settingFact(rowFor(Setting::fire_interval), QStringLiteral("7,5"), rigNow);
    ASSERT_TRUE(std::holds_alternative<Fact>(made));
    EXPECT_EQ(std::get<Fact>(made).what, (What{Set{Setting::fire_interval, 450, Unit::min}}));
}

TEST(RigView, AnAbsurdAnswerIsRefusedInWords) {
    const auto made = settingFact(rowFor(Setting::wood_moisture), QStringLiteral("120"), rigNow);
    ASSERT_TRUE(std::holds_alternative<QString>(made));
    EXPECT_FALSE(std::get<QString>(made).isEmpty());
}

TEST(RigView, EverySettingHasWordsAndAUnitItsRowTakes) {
    for (const Units units : {Units::us, Units::metric})
        for (const RigRow& row : rigRows({}, units)) {
            EXPECT_FALSE(row.label.isEmpty());
            EXPECT_TRUE(takesUnit(row.key, row.unit)) << row.label.toStdString();
        }
}

} // namespace
} // namespace panside
