#include "ui/frame/desks.h"

#include "ui/frame/desk.h"
#include "ui/rig/rig_screen.h"
#include "ui/words/said.h"

namespace panside {
namespace {

class RigDesk : public Desk {
public:
    RigDesk(Shell& shell, RigScreen* screen) : Desk{shell, screen}, screen_{screen} {
        leavesFrom(screen);
        connect(screen, &RigScreen::settingWanted, this, &RigDesk::set);
        connect(screen, &RigScreen::unitsWanted, this,
                [this](Units units) { choose([&](Choices& choices) { choices.units = units; }); });
        connect(screen, &RigScreen::languageWanted, this,
                [this](const QString& language) { choose([&](Choices& choices) { choices.language = language; }); });
        connect(screen, &RigScreen::lookWanted, this,
                [this](Look look) { choose([&](Choices& choices) { choices.look = look; }); });
    }
    void open() override { wear(shell_.dress()); }
    void wear(const Dress& dress) override {
        // Between shifts what the next one would begin with.
        Facts facts = session().boil().facts();
        if (facts.empty())
            for (const auto& setting : session().settings())
                facts.add(0, Fact{session().now(), setting});
        screen_->display(rigRows(facts, units()), units(), shell_.choices().language, dress);
    }

private:
    void set(const RigRow& row, const QString& typed) {
        auto fact = settingFact(row, typed, session().now());
        if (const auto* wrong = std::get_if<QString>(&fact)) {
            screen_->say(*wrong);
            return;
        }
        if (const auto refused = session().set(std::get<Fact>(fact)))
            return screen_->say(said(refused->why, "Session"));
        open();
    }

    RigScreen* screen_;
};

} // namespace

Desk* rigDesk(Shell& shell) { return new RigDesk{shell, new RigScreen}; }

} // namespace panside
