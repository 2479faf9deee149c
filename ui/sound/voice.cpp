#include "ui/sound/voice.h"

#include "ui/sound/tone.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QMediaDevices>
#include <algorithm>

namespace panside {
namespace {

QAudioFormat format() {
    QAudioFormat wanted;
    wanted.setSampleRate(toneRate);
    wanted.setChannelCount(1);
    wanted.setSampleFormat(QAudioFormat::Int16);
    return wanted;
}

} // namespace

Voice::Voice(QObject* parent) : QObject(parent) {
    again_.setSingleShot(true);
    connect(&again_, &QTimer::timeout, this, &Voice::call);
}

Voice::~Voice() {
    if (sink_)
        sink_->stop();
}

std::optional<Priority> Voice::urgent(const Picture& picture) {
    std::optional<Priority> highest;
    for (const AlarmPicture& alarm : picture.alarms)
        if (alarm.state == AlarmState::unseen && (!highest || alarm.priority < *highest))
            highest = alarm.priority;
    return highest;
}

void Voice::display(const Picture& picture) {
    const auto about = urgent(picture);
    if (about == about_)
        return;
    about_ = about;
    calls_ = 0;
    again_.stop();
    if (about)
        call();
    else if (sink_)
        sink_->stop();
}

void Voice::setVolume(double volume) { volume_ = std::clamp(volume, 0.0, 1.0); }

void Voice::test() { sound(Priority::high, 1); }

bool Voice::canBeHeard() const { return !QMediaDevices::defaultAudioOutput().isNull(); }

void Voice::call() {
    if (!about_)
        return;
    sound(*about_, loudness(calls_));
    ++calls_;
    if (const double every = toneOf(*about_).every; every > 0)
        again_.start(static_cast<int>(every * 1000));
}

void Voice::sound(Priority priority, double loudness) {
    emit called(priority, loudness * volume_);
    const QAudioDevice device = QMediaDevices::defaultAudioOutput(); // asked anew: it may be plugged in meanwhile
    if (device.isNull() || !device.isFormatSupported(format()))
        return;
    const auto samples = samplesOf(priority, loudness * volume_);
    if (sink_)
        sink_->stop();
    buffer_.close();
    bytes_ = QByteArray(reinterpret_cast<const char*>(samples.data()),
                        static_cast<qsizetype>(samples.size() * sizeof(std::int16_t)));
    buffer_.setBuffer(&bytes_);
    buffer_.open(QIODevice::ReadOnly);
    sink_ = std::make_unique<QAudioSink>(device, format());
    sink_->start(&buffer_);
}

} // namespace panside
