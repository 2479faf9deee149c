#include "ui/frame/desks.h"

#include "ui/frame/desk.h"
#include "ui/manual/manual_screen.h"

namespace panside {
namespace {

class ManualDesk : public Desk {
public:
    ManualDesk(Shell& shell, ManualScreen* screen) : Desk{shell, screen}, screen_{screen} { leavesFrom(screen); }
    // Read when it is asked for: the console's start does not wait for it.
    void open() override {
        opened_ = true;
        screen_->read(ManualBook::in(ManualBook::usualPlace(), shell_.choices().language));
    }
    void wear(const Dress& dress) override {
        screen_->wear(dress);
        if (opened_)
            open(); // the language may be another
    }

private:
    ManualScreen* screen_;
    bool opened_ = false;
};

} // namespace

Desk* manualDesk(Shell& shell) { return new ManualDesk{shell, new ManualScreen}; }

} // namespace panside
