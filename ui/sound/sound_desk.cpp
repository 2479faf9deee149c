#include "ui/frame/desks.h"

#include "ui/frame/desk.h"
#include "ui/sound/sound_screen.h"
#include "ui/sound/voice.h"

namespace panside {
namespace {

class SoundDesk : public Desk {
public:
    SoundDesk(Shell& shell, SoundScreen* screen) : Desk{shell, screen}, screen_{screen} {
        leavesFrom(screen);
        connect(screen, &SoundScreen::testWanted, &shell.voice(), &Voice::test);
        connect(screen, &SoundScreen::chosen, this,
                [this](const SoundChoices& sound) { choose([&](Choices& choices) { choices.sound = sound; }); });
    }
    void open() override { screen_->display(shell_.choices().sound, shell_.voice().canBeHeard(), Speech::canSpeak()); }
    void wear(const Dress& dress) override {
        screen_->wear(dress);
        open();
    }

private:
    SoundScreen* screen_;
};

} // namespace

Desk* soundDesk(Shell& shell) { return new SoundDesk{shell, new SoundScreen}; }

} // namespace panside
