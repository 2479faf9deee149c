#include "ui/frame/desks.h"

#include "ui/frame/desk.h"
#include "ui/tank/tank_screen.h"

#include <algorithm>

namespace panside {
namespace {

class TankDesk : public Desk {
public:
    TankDesk(Shell& shell, TankScreen* screen) : Desk{shell, screen}, screen_{screen} {
        leavesFrom(screen);
        connect(screen, &TankScreen::yardWanted, this,
                [this](const Yard& yard) { choose([&](Choices& choices) { choices.yard = yard; }); });
        connect(screen, &TankScreen::dipped, this, [this](Fact fact) {
            fact.at = session().now();
            shell_.keep({fact});
            follow();
        });
    }
    void open() override { wear(shell_.dress()); }
    void wear(const Dress& dress) override {
        screen_->display(shell_.choices().yard, units(), dress);
        follow();
    }

private:
    void follow() {
        const auto& level = shell_.picture().reading(Series::tank_level);
        const Facts& facts = session().boil().facts();
        const auto since = static_cast<std::ptrdiff_t>(level ? facts.before(level->last) : facts.size());
        const bool sapSince = std::any_of(facts.begin() + since, facts.end(), [](const Boil::Entry& entry) {
            return std::holds_alternative<SapIn>(entry.fact.what);
        });
        screen_->follow(shell_.picture(), sapSince, session().now());
    }

    TankScreen* screen_;
};

} // namespace

Desk* tankDesk(Shell& shell) { return new TankDesk{shell, new TankScreen}; }

} // namespace panside
