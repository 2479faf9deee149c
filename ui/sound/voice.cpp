#include "ui/sound/voice.h"

#include "core/boil/calls.h"
#include "ui/sound/tone.h"
#include "ui/words/alarm_words.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QMediaDevices>
#include <algorithm>

namespace panside {
namespace {

constexpr double softly = 0.5; // of what the volume allows
constexpr int callsAWord = 5;  // tones from one saying of the words to the next: they last longer than a tone

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
    afterTone_.setSingleShot(true);
    connect(&afterTone_, &QTimer::timeout, this, &Voice::speak);
}

Voice::~Voice() {
    if (sink_)
        sink_->stop();
}

const AlarmPicture* Voice::urgent(const Picture& picture) {
    const AlarmPicture* highest = nullptr;
    for (const AlarmPicture& alarm : picture.alarms)
        if (alarm.state == AlarmState::unseen && (!highest || alarm.priority < highest->priority))
            highest = &alarm;
    return highest;
}

// Not over an alarm's own call.
void Voice::tellDue(const Picture& picture) {
    const bool draw = isDue(picture, Call::draw), fire = isDue(picture, Call::fire);
    const bool isNew = (draw && !drawDue_) || (fire && !fireDue_);
    drawDue_ = draw;
    fireDue_ = fire;
    if (!isNew || about_)
        return;
    sound(Priority::low, softly);
}

void Voice::display(const Picture& picture) {
    tellDue(picture);
    const AlarmPicture* alarm = urgent(picture);
    const auto about = alarm ? std::optional{alarm->priority} : std::nullopt;
    if (alarm)
        line_ = alarmLine(*alarm) + QStringLiteral(": ") + alarmFirst(*alarm, picture.drawing);
    if (about == about_)
        return;
    about_ = about;
    calls_ = 0;
    again_.stop();
    if (about) {
        call();
        return;
    }
    afterTone_.stop();
    speech_.stop();
    if (sink_)
        sink_->stop();
}

void Voice::setVolume(double volume) { volume_ = std::clamp(volume, 0.0, 1.0); }

void Voice::test(Priority priority) { sound(priority, 1); }

bool Voice::canBeHeard() const { return !QMediaDevices::defaultAudioOutput().isNull(); }

void Voice::call() {
    if (!about_)
        return;
    const AlarmTone& tone = alarmTone(*about_);
    sound(*about_, loudness(calls_));
    if (spoken_ && calls_ % callsAWord == 0) // after its tone, not over it
        afterTone_.start(static_cast<int>(static_cast<double>(tone.pitches.size()) * (tone.pulse + tone.rest) * 1000));
    ++calls_;
    if (tone.every > 0)
        again_.start(static_cast<int>(tone.every * 1000));
}

void Voice::speak() {
    emit spoken(line_);
    speech_.say(line_);
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
