#include "core/journal/packing.h"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <random>

namespace panside {
namespace {

using namespace std::chrono_literals;

const Instant evening{std::chrono::sys_days{std::chrono::year{2025} / 3 / 14} + 18h};

void expectSame(const std::vector<Channel>& channels, const std::vector<Sample>& samples) {
    Unpacked out;
    ASSERT_TRUE(unpack(packed(channels, samples), out));
    ASSERT_EQ(out.channels, channels);
    ASSERT_EQ(out.samples.size(), samples.size());
    for (std::size_t i = 0; i < samples.size(); ++i) {
        ASSERT_EQ(out.samples[i].id, samples[i].id) << i;
        ASSERT_EQ(out.samples[i].at, samples[i].at) << i;
        ASSERT_EQ(out.samples[i].channel, samples[i].channel) << i;
        ASSERT_EQ(std::bit_cast<std::uint64_t>(out.samples[i].si), std::bit_cast<std::uint64_t>(samples[i].si)) << i;
    }
}

// Six probes as they might be in a night: a slow drift, a last digit of 0.01 or 0.1, noise of a few digits.
std::pair<std::vector<Channel>, std::vector<Sample>> night(int seconds, std::chrono::microseconds jitter) {
    const std::vector<Channel> channels{{Series::syrup_pan, Unit::degC, ""}, {Series::flue_pan, Unit::degF, ""},
                                        {Series::stack, Unit::degC, ""},     {Series::pressure, Unit::kPa, ""},
                                        {Series::pan_level, Unit::mm, ""},   {Series::feed, Unit::degC, ""}};
    const double levels[] = {101.3, 213.1, 310, 98.71, 38, 4.5}, digits[] = {100, 100, 10, 100, 10, 100};
    const double noise[] = {0.08, 0.1, 2.5, 0.01, 0.4, 0.03};
    std::mt19937 random{7};
    std::vector<Sample> samples;
    for (int second = 0; second < seconds; ++second) {
        const auto late = jitter.count() == 0 ? 0us : std::chrono::microseconds{random() % jitter.count()};
        for (std::uint32_t channel = 0; channel < channels.size(); ++channel) {
            const double swing = std::sin(second / 200.0) * noise[channel] * 8;
            const double value = levels[channel] + swing + std::normal_distribution{0.0, noise[channel]}(random);
            const double written = std::nearbyint(value * digits[channel]) / digits[channel];
            samples.push_back({static_cast<FactId>(samples.size()) + 1, evening + std::chrono::seconds{second} + late,
                               toSi(written, channels[channel].unit), channel});
        }
    }
    return {channels, samples};
}

TEST(Packing, GivesBackEveryBitOfWhatProbesGive) {
    const auto [channels, samples] = night(700, 0us);
    expectSame(channels, samples);
    const auto [sameChannels, unsteady] = night(700, 30000us);
    expectSame(sameChannels, unsteady);
}

TEST(Packing, TakesAboutAByteAndAHalfForAReading) {
    for (const auto jitter : {0us, 30000us}) {
        const auto [channels, samples] = night(2700, jitter);
        const double bytes =
            static_cast<double>(packed(channels, samples).size()) / static_cast<double>(samples.size());
        EXPECT_LT(bytes, jitter.count() == 0 ? 1.3 : 1.9);
        EXPECT_GT(bytes, 0.9);
    }
}

TEST(Packing, KeepsWholeDoublesThatHaveNoShortDecimalForm) {
    const std::vector<Channel> channels{{Series::stack, Unit::degC, "K wire"}};
    std::vector<Sample> samples;
    for (int i = 0; i < 50; ++i)
        samples.push_back({i + 1, evening + std::chrono::seconds{i}, 500 + std::sqrt(i), 0});
    samples.push_back({99, evening, 1e300, 0});
    samples.push_back({100, evening, -1e-300, 0});
    expectSame(channels, samples);
}

TEST(Packing, KeepsAnyOrderOfTimesNumbersAndChannels) {
    std::mt19937_64 random{3};
    const std::vector<Channel> channels{{Series::syrup_pan, Unit::degC, ""},
                                        {Series::syrup_pan, Unit::degF, "second"},
                                        {Series::pressure, Unit::inHg, ""}};
    std::vector<Sample> samples;
    for (int i = 0; i < 500; ++i)
        samples.push_back({static_cast<FactId>(random() % 100000),
                           Instant{std::chrono::microseconds{static_cast<std::int64_t>(random() >> 8)}},
                           static_cast<double>(random() % 1000), static_cast<std::uint32_t>(random() % 3)});
    expectSame(channels, samples);
}

TEST(Packing, RefusesBytesThatAreNoBlockAndLeavesWhatWasThere) {
    const auto [channels, samples] = night(20, 0us);
    const std::string good = packed(channels, samples);
    Unpacked out;
    EXPECT_FALSE(unpack("", out));
    EXPECT_FALSE(unpack("\x07nonsense", out));
    for (std::size_t length = 0; length < good.size(); ++length)
        EXPECT_FALSE(unpack(good.substr(0, length), out)) << length;
    EXPECT_FALSE(unpack(good + "x", out));
    EXPECT_TRUE(out.samples.empty());
    EXPECT_TRUE(out.channels.empty());
}

// No bytes, however damaged, may do more than be refused or give numbers: the sanitizers watch.
TEST(Packing, SurvivesDamage) {
    const auto [channels, samples] = night(20, 5000us);
    const std::string good = packed(channels, samples);
    std::mt19937 random{11};
    std::size_t refused = 0;
    for (int i = 0; i < 3000; ++i) {
        std::string bad = good;
        for (int k = 0; k < 1 + i % 4; ++k)
            bad[random() % bad.size()] = static_cast<char>(random());
        Unpacked out;
        refused += !unpack(bad, out);
        EXPECT_LE(out.samples.size(), bad.size());
    }
    EXPECT_GT(refused, 100U);
}

} // namespace
} // namespace panside
