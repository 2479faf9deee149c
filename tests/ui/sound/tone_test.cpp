#include "ui/sound/tone.h"
#include "ui/sound/voice.h"

#include "ui/words/alarm_words.h"

#include <QTest>
#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace panside {
namespace {

// Strength of one frequency in the first pulse, by the sum that defines a Fourier coefficient.
double strength(const std::vector<std::int16_t>& samples, double pitch, std::size_t count) {
    double real = 0, imaginary = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double phase = 2 * std::numbers::pi * pitch * static_cast<double>(i) / toneRate;
        real += samples[i] * std::cos(phase);
        imaginary += samples[i] * std::sin(phase);
    }
    return std::hypot(real, imaginary) / static_cast<double>(count);
}

TEST(Tone, SoundsAtThePitchItNames) {
    for (const Priority priority : {Priority::high, Priority::medium, Priority::low}) {
        const AlarmTone& tone = alarmTone(priority);
        const auto samples = samplesOf(priority, 1);
        const auto count = static_cast<std::size_t>(tone.pulse * toneRate);
        const double wanted = strength(samples, tone.pitches.front(), count);
        EXPECT_GT(wanted, 20 * strength(samples, tone.pitches.front() * 1.37, count));
        EXPECT_GT(wanted, 8000);
    }
}

TEST(Tone, IsLoudAsAskedAndNeverClips) {
    for (const Priority priority : {Priority::high, Priority::medium, Priority::low}) {
        const auto peak = [&](double volume) {
            const auto samples = samplesOf(priority, volume);
            return std::abs(*std::max_element(samples.begin(), samples.end(),
                                              [](int a, int b) { return std::abs(a) < std::abs(b); }));
        };
        EXPECT_LT(peak(1), 32767);
        EXPECT_GT(peak(1), 20000);
        EXPECT_NEAR(peak(0.5), peak(1) / 2.0, 2);
        EXPECT_EQ(peak(0), 0);
    }
}

TEST(Tone, TellsThePrioritiesApartByNumberAndPace) {
    EXPECT_GT(alarmTone(Priority::high).pitches.size(), alarmTone(Priority::medium).pitches.size());
    EXPECT_GT(alarmTone(Priority::medium).pitches.size(), alarmTone(Priority::low).pitches.size());
    EXPECT_LT(alarmTone(Priority::high).every, alarmTone(Priority::medium).every);
    EXPECT_EQ(alarmTone(Priority::low).every, 0);
}

TEST(Tone, RisesUntilItIsSeen) {
    for (int call = 0; call < 4; ++call)
        EXPECT_LT(loudness(call), loudness(call + 1));
    EXPECT_EQ(loudness(50), 1);
}

Picture with(std::vector<AlarmPicture> alarms) {
    Picture picture;
    picture.alarms = std::move(alarms);
    return picture;
}

TEST(Voice, CallsTheHighestThatNobodyHasSeenAndIsThenStill) {
    Voice voice;
    std::vector<Priority> called;
    QObject::connect(&voice, &Voice::called, [&](Priority priority, double) { called.push_back(priority); });
    AlarmPicture low{
        .alarm = Alarm::clock_changed, .priority = Priority::low, .state = AlarmState::unseen, .since = {}};
    AlarmPicture high{.alarm = Alarm::pan_low, .priority = Priority::high, .state = AlarmState::unseen, .since = {}};
    voice.display(with({}));
    voice.display(with({low}));
    voice.display(with({high, low}));
    high.state = AlarmState::seen;
    low.state = AlarmState::shelved;
    voice.display(with({high, low}));
    EXPECT_EQ(called, (std::vector{Priority::low, Priority::high}));
    EXPECT_EQ(voice.calls(), 0);
}

TEST(Voice, SaysTheLineOfTheAlarmAfterItsToneIfThatIsWanted) {
    Voice voice;
    QStringList said;
    QObject::connect(&voice, &Voice::spoken, [&](const QString& words) { said << words; });
    AlarmPicture low{.alarm = Alarm::pan_low, .priority = Priority::high, .state = AlarmState::unseen, .since = {}};
    voice.setSpoken(true);
    voice.display(with({low}));
    EXPECT_TRUE(said.isEmpty());
    const auto& tone = alarmTone(Priority::high);
    QTest::qWait(static_cast<int>(1000 * (tone.pulse + tone.rest) * static_cast<double>(tone.pitches.size())) + 100);
    ASSERT_EQ(said.size(), 1);
    EXPECT_EQ(said[0], alarmLine(low) + QStringLiteral(": ") + alarmFirst(low, false));
}

TEST(Voice, TheVolumeThatAPersonChoseHoldsForCallsAndTests) {
    Voice voice;
    std::vector<double> loud;
    QObject::connect(&voice, &Voice::called, [&](Priority, double loudness) { loud.push_back(loudness); });
    voice.setVolume(0.5);
    voice.test(Priority::medium);
    voice.display(with(
        {AlarmPicture{.alarm = Alarm::pan_low, .priority = Priority::high, .state = AlarmState::unseen, .since = {}}}));
    ASSERT_EQ(loud.size(), 2U);
    EXPECT_DOUBLE_EQ(loud[0], 0.5);
    EXPECT_DOUBLE_EQ(loud[1], 0.5 * loudness(0));
}

} // namespace
} // namespace panside
