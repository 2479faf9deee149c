#pragma once
// The alarm's line in spoken words, where Qt's speech library was there at the build and the system has a voice for the
// language. Without either it is silent and says so.
#include <QString>
#include <memory>

namespace panside {

class Speech {
public:
    Speech();
    ~Speech();
    Speech(const Speech&) = delete;
    Speech& operator=(const Speech&) = delete;

    static bool canSpeak();
    void say(const QString& words); // in the language of the default locale; breaks off what is being said
    void stop();

private:
    struct Engine;
    std::unique_ptr<Engine> engine_; // begun when first needed: it may start a service
};

} // namespace panside
