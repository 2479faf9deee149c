#pragma once
#include "core/boil/picture.h"

#include <QBuffer>
#include <memory>
#include <optional>

class QAudioSink;

namespace panside {

// The alarms as sounds, made here: a high one rises in three notes and comes back every three seconds, louder until it
// has been seen; a medium one is two notes every fifteen; a low one is not heard. What is seen, gone or shelved is
// silent.
class Voice {
public:
    Voice();
    ~Voice();
    void hear(const std::vector<AlarmPicture>& alarms, Instant now);

private:
    void play(const QByteArray& sound, double loudness);
    std::unique_ptr<QAudioSink> sink_;
    QBuffer buffer_;
    std::optional<Instant> lastPlayed_;
    bool deaf_ = false; // there is no sound on this machine
};

// 16-bit mono samples at 44.1 kHz: notes of so many hertz, each so long, with soft ends. Pure.
QByteArray notes(std::initializer_list<double> hertz, double secondsEach);

} // namespace panside
