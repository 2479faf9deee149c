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
            // Errors are kept in the one unit that the log has for them, whatever the person reads: see below.
            if (row.key < Setting::pressure_offset) {
                EXPECT_TRUE(takesUnit(row.key, row.unit)) << row.label.toStdString();
            }
        }
}

TEST(RigView, TheHousesChoicesStandUnderTheRigsWithTheLawOfThePlace) {
    const RigRow place = rowFor(Setting::place);
    EXPECT_TRUE(place.answer.isEmpty());
    const auto made = settingFact(place, QStringLiteral("vermont"), rigNow);
    ASSERT_TRUE(std::holds_alternative<Fact>(made));
    const std::vector<Boil::Entry> facts{{1, std::get<Fact>(made)}};
    EXPECT_EQ(rowFor(Setting::place, facts).answer, QStringLiteral("vermont"));
    // 36 degrees Baume, 66.9 Brix at 60 degF; at most 68.9 (Vermont's regulation of 2015, as quoted).
    EXPECT_TRUE(rowFor(Setting::place, facts).usual.contains(QStringLiteral("2015")));
    EXPECT_TRUE(rowFor(Setting::place, facts).usual.contains(QStringLiteral("read only as quoted")));
    EXPECT_TRUE(rowFor(Setting::legal_minimum, facts).usual.startsWith(QStringLiteral("66.9")));
    EXPECT_TRUE(rowFor(Setting::too_heavy, facts).usual.startsWith(QStringLiteral("68.9")));
    const auto wrong = settingFact(place, QStringLiteral("Vermnt"), rigNow);
    ASSERT_TRUE(std::holds_alternative<QString>(wrong));
    EXPECT_TRUE(std::get<QString>(wrong).contains(QStringLiteral("Vermont"))) << std::get<QString>(wrong).toStdString();
}

TEST(RigView, LotCodesCappingAndKeepingAreSetThere) {
    const auto set = [](Setting key, const char* typed) {
        return std::get<Set>(std::get<Fact>(settingFact(rowFor(key), QString::fromLatin1(typed), rigNow)).what);
    };
    EXPECT_EQ(set(Setting::lot_scheme, "{yy}-{v}-{n}").text, "{yy}-{v}-{n}");
    EXPECT_NEAR(set(Setting::capped_least, "185").si, Temperature::fahrenheit(185).kelvin(), 1e-9);
    EXPECT_NEAR(set(Setting::kept_for, "3").si, 3 * 31557600.0, 1);
    EXPECT_TRUE(rowFor(Setting::capped_least).usual.contains(QStringLiteral("180")));
    EXPECT_TRUE(
        std::holds_alternative<QString>(settingFact(rowFor(Setting::capped_least), QStringLiteral("20"), rigNow)));
}

TEST(Rig, ErrorsAreInThePersonsUnitsAndKeptAsTheLogHasThem) {
    // A step of 0.9 °F is 0.5 K; 1 inHg is 3386.389 Pa (NIST SP 811, appendix B).
    for (const RigRow& row : rigRows({}, Units::us)) {
        if (row.key == Setting::probe_offset) {
            EXPECT_EQ(row.unit, Unit::degF);
            EXPECT_NEAR(std::get<Set>(std::get<Fact>(settingFact(row, QStringLiteral("0.9"), rigNow)).what).si, 0.5,
                        1e-6);
        }
        if (row.key == Setting::pressure_offset) {
            EXPECT_EQ(row.unit, Unit::inHg);
            EXPECT_NEAR(std::get<Set>(std::get<Fact>(settingFact(row, QStringLiteral("0.03"), rigNow)).what).si, 101.59,
                        0.01);
        }
    }
    const std::vector<Boil::Entry> facts{{1, {.at = rigNow, .what = Set{Setting::probe_offset, 0.5, Unit::K}}}};
    for (const RigRow& row : rigRows(facts, Units::us))
        if (row.key == Setting::probe_offset) {
            EXPECT_EQ(row.answer, QStringLiteral("0.9"));
        }
}

} // namespace
} // namespace panside
