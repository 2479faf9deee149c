#include "ui/sound/speech.h"

#ifdef PANSIDE_SPEECH
#include <QLocale>
#include <QTextToSpeech>
#endif

namespace panside {

#ifdef PANSIDE_SPEECH

struct Speech::Engine {
    QTextToSpeech voice;
};

bool Speech::canSpeak() {
    auto engines = QTextToSpeech::availableEngines();
    engines.removeAll(QStringLiteral("mock")); // Qt's own stand-in, which says nothing
    return !engines.isEmpty();
}

void Speech::say(const QString& words) {
    if (!canSpeak())
        return;
    if (!engine_)
        engine_ = std::make_unique<Engine>();
    engine_->voice.stop();
    engine_->voice.setLocale(QLocale{});
    engine_->voice.say(words);
}

void Speech::stop() {
    if (engine_)
        engine_->voice.stop();
}

#else

struct Speech::Engine {};

bool Speech::canSpeak() { return false; }
void Speech::say(const QString&) {}
void Speech::stop() {}

#endif

Speech::Speech() = default;
Speech::~Speech() = default;

} // namespace panside
