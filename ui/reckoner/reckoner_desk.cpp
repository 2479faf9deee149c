#include "ui/frame/desks.h"

#include "ui/frame/desk.h"
#include "ui/reckoner/reckoner_screen.h"

namespace panside {
namespace {

class ReckonerDesk : public Desk {
public:
    ReckonerDesk(Shell& shell, ReckonerScreen* screen) : Desk{shell, screen}, screen_{screen} { leavesFrom(screen); }
    void wear(const Dress& dress) override { screen_->display(units(), dress); }

private:
    ReckonerScreen* screen_;
};

} // namespace

Desk* reckonerDesk(Shell& shell) { return new ReckonerDesk{shell, new ReckonerScreen}; }

} // namespace panside
