#include "app/voice.h"

#include <QApplication>
#include <QAudioFormat>
#include <QAudioSink>
#include <QMediaDevices>
#include <algorithm>
#include <cmath>
#include <numbers>

namespace panside {

namespace {

using namespace std::chrono_literals;

constexpr int sampleRate = 44'100;
constexpr auto highEvery = 3s;
constexpr auto mediumEvery = 15s;
constexpr double fullAfter = 30; // seconds from the first, softer sound to full loudness

} // namespace

Voice::Voice() = default;
Voice::~Voice() = default;

QByteArray notes(std::initializer_list<double> hertz, double secondsEach) {
    QByteArray bytes;
    const int count = static_cast<int>(secondsEach * sampleRate);
    constexpr double soft = 0.01 * sampleRate; // a note that begins or ends hard clicks
    for (const double tone : hertz)
        for (int i = 0; i < count; ++i) {
            const double phase = 2 * std::numbers::pi * tone * i / sampleRate;
            const double envelope = std::min({1.0, i / soft, (count - i) / soft});
            // A third harmonic makes it carry over the roar of the fire.
            const double wave = 0.7 * std::sin(phase) + 0.25 * std::sin(3 * phase);
            const auto sample = static_cast<std::int16_t>(32'000 * envelope * wave);
            bytes.append(reinterpret_cast<const char*>(&sample), sizeof sample);
        }
    return bytes;
}

void Voice::hear(const std::vector<AlarmPicture>& alarms, Instant now) {
    const auto unseen = std::find_if(alarms.begin(), alarms.end(), [](const AlarmPicture& alarm) {
        return alarm.state == AlarmState::unseen && alarm.priority != Priority::low;
    });
    if (unseen == alarms.end()) {
        lastPlayed_.reset();
        return;
    }
    const bool high = unseen->priority == Priority::high;
    if (lastPlayed_ && now - *lastPlayed_ < (high ? highEvery : mediumEvery))
        return;
    lastPlayed_ = now;
    const double stood = secondsBetween(unseen->since, now);
    const double loudness = high ? std::clamp(0.5 + 0.5 * stood / fullAfter, 0.5, 1.0) : 0.5;
    play(high ? notes({660, 880, 1100}, 0.18) : notes({520, 660}, 0.22), loudness);
}

void Voice::play(const QByteArray& sound, double loudness) {
    if (deaf_)
        return;
    if (!sink_) {
        const auto device = QMediaDevices::defaultAudioOutput();
        QAudioFormat format;
        format.setSampleRate(sampleRate);
        format.setChannelCount(1);
        format.setSampleFormat(QAudioFormat::Int16);
        if (device.isNull()) {
            deaf_ = true;
            QApplication::beep();
            return;
        }
        sink_ = std::make_unique<QAudioSink>(device, format);
    }
    sink_->stop();
    buffer_.close();
    buffer_.setData(sound);
    buffer_.open(QIODevice::ReadOnly);
    sink_->setVolume(loudness);
    sink_->start(&buffer_);
}

} // namespace panside
