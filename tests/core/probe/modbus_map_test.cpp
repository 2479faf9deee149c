#include "core/probe/modbus_map.h"

#include <gmock/gmock.h>

namespace panside {
namespace {

FieldRule at(int slave, int function, int address, RegisterType type = RegisterType::int16) {
    return {.is = "",
            .place = RegisterPlace{.slave = slave, .function = function, .address = address, .type = type},
            .reads = Series::stack,
            .unit = Unit::degC};
}

TEST(ModbusMap, RegistersThatFollowOnAreAskedForTogether) {
    const auto reads = requestsFor(
        {at(1, 4, 2), at(1, 4, 0, RegisterType::float32), at(1, 4, 2), at(1, 4, 5), at(1, 3, 0), at(2, 4, 0)});
    EXPECT_THAT(reads, testing::ElementsAre(RegisterRead{1, 3, 0, 1, {4}}, RegisterRead{1, 4, 0, 3, {1, 0, 2}},
                                            RegisterRead{1, 4, 5, 1, {3}}, RegisterRead{2, 4, 0, 1, {5}}));
}

TEST(ModbusMap, ARequestAsksForNoMoreThanTheStandardAllows) {
    std::vector<FieldRule> fields;
    for (int i = 0; i < 130; ++i)
        fields.push_back(at(1, 4, i));
    const auto reads = requestsFor(fields);
    ASSERT_EQ(reads.size(), 2U);
    EXPECT_EQ(reads[0].count, 125);
    EXPECT_EQ(reads[1].first, 125);
    EXPECT_EQ(reads[1].count, 5);
}

double value(RegisterType type, WordOrder order, double scale, std::vector<std::uint16_t> words) {
    const RegisterPlace place{.address = 7, .type = type, .order = order, .scale = scale};
    return numberAt(place, {1, 4, 7, int(words.size()), {0}}, words).value();
}

// Two's complement, and the single format of IEEE 754: 0x42CED70A is 103.42.
TEST(ModbusMap, EveryTypeAndWordOrderMeansItsNumber) {
    const auto big = WordOrder::big, little = WordOrder::little;
    EXPECT_DOUBLE_EQ(value(RegisterType::int16, big, 0.1, {1034}), 103.4);
    EXPECT_DOUBLE_EQ(value(RegisterType::int16, big, 0.01, {0xFF9C}), -1.0);
    EXPECT_DOUBLE_EQ(value(RegisterType::uint16, big, 1, {0xFF9C}), 65436);
    EXPECT_DOUBLE_EQ(value(RegisterType::int32, big, 1, {0xFFFF, 0xFF9C}), -100);
    EXPECT_DOUBLE_EQ(value(RegisterType::int32, little, 1, {0xFF9C, 0xFFFF}), -100);
    EXPECT_DOUBLE_EQ(value(RegisterType::uint32, big, 0.001, {0x0001, 0x93FC}), 103.420);
    EXPECT_FLOAT_EQ(float(value(RegisterType::float32, big, 1, {0x42CE, 0xD70A})), 103.42F);
    EXPECT_FLOAT_EQ(float(value(RegisterType::float32, little, 2, {0xD70A, 0x42CE})), 206.84F);
}

TEST(ModbusMap, WhatIsNoNumberIsNone) {
    const RegisterPlace place{.address = 7, .type = RegisterType::float32};
    const std::vector<std::uint16_t> nan{0x7FC0, 0}, infinity{0x7F80, 0}, tooShort{1};
    EXPECT_FALSE(numberAt(place, {1, 4, 7, 2, {0}}, nan));
    EXPECT_FALSE(numberAt(place, {1, 4, 7, 2, {0}}, infinity));
    EXPECT_FALSE(numberAt(place, {1, 4, 7, 2, {0}}, tooShort));
    EXPECT_FALSE(numberAt(place, {1, 4, 8, 2, {0}}, nan));
}

} // namespace
} // namespace panside
