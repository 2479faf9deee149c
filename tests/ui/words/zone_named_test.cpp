#include "ui/look/local_time.h"

#include <QTimeZone>
#include <gtest/gtest.h>

namespace panside {
namespace {

TEST(ZoneNamed, KnowsTheMachinesOwnAndThoseThatAPersonWrites) {
    for (const auto* name : {"America/New_York", "US/Eastern", "Etc/UTC", "UTC", " America/Montreal "})
        EXPECT_TRUE(zoneNamed(QString::fromLatin1(name))) << name;
    EXPECT_TRUE(zoneNamed(QString::fromLatin1(QTimeZone::systemTimeZoneId())));
    // In July New York is four hours behind UTC.
    EXPECT_EQ(
        zoneNamed(QStringLiteral("US/Eastern"))->offsetFromUtc(QDateTime{{2026, 7, 1}, {12, 0}, QTimeZone::utc()}),
        -14400);
}

TEST(ZoneNamed, TakesNoMadeUpWordForOne) {
    for (const auto* name : {"", "sugarhouse", "America/Nowhere", "../zoneinfo/UTC", "America", "5"})
        EXPECT_FALSE(zoneNamed(QString::fromLatin1(name))) << name;
}

} // namespace
} // namespace panside
