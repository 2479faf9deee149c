#include "ui/frame/desks.h"

#include "core/shift/woodpile.h"
#include "ui/chart/shift_trace.h"
#include "ui/frame/desk.h"
#include "ui/fuel/fuel_screen.h"

#include <QTimer>

namespace panside {
namespace {

// What is left of the woodpile. The journal is read beside, when the page is opened, when another shift is shown and
// when the pile was measured anew; the shift that is shown is counted as it grows.
class PileLeft {
public:
    explicit PileLeft(Session& session) : session_{session} {}
    void forget() { asked_.reset(); }
    std::optional<double> of(const Yard& yard) {
        if (!yard.pile)
            return std::nullopt;
        const Asked asked{yard.measured, session_.shownShift()};
        if (asked_ != asked) {
            asked_ = asked;
            // One kept before its time was stands as it did when the shift began.
            shown_ = CordsOfShift{yard.measured.value_or(Instant::min())};
            burntBeside_.reset();
            if (yard.measured)
                read(*yard.measured, asked.second);
            else
                burntBeside_ = 0;
        }
        if (!burntBeside_)
            return std::nullopt;
        return yard.pile->cords() - *burntBeside_ - shown_.of(session_.boil());
    }

private:
    using Asked = std::pair<std::optional<Instant>, std::optional<ShiftId>>;
    void read(Instant measured, std::optional<ShiftId> shown) {
        try {
            if (const auto journal = session_.journalBeside())
                burntBeside_ = cordsBurntBeside(*journal, measured, shown);
        } catch (const JournalError&) { // it stays unknown; the board says that the journal is in trouble
        }
    }

    Session& session_;
    std::optional<Asked> asked_;
    std::optional<double> burntBeside_; // none: it cannot be read
    CordsOfShift shown_{Instant::min()};
};

class FuelDesk : public Desk {
public:
    FuelDesk(Shell& shell, FuelScreen* screen) : Desk{shell, screen}, screen_{screen}, pile_{session()} {
        leavesFrom(screen);
        connect(screen, &FuelScreen::stepsChanged, this, &FuelDesk::show);
        // It goes on while it is looked at.
        connect(&second_, &QTimer::timeout, this, [this] {
            if (screen_->isVisible())
                show();
        });
        second_.start(std::chrono::seconds{1});
    }
    void open() override {
        pile_.forget();
        show();
    }
    void wear(const Dress& dress) override { screen_->wear(dress); }

private:
    void show() {
        const Picture& picture = shell_.picture();
        const Yard& yard = shell_.choices().yard;
        const FuelBeside beside{.clock = shell_.trace().clock(),
                                .steps = screen_->steps(),
                                .pricePerCord = yard.pricePerCord,
                                .pile = yard.pile.has_value(),
                                .pileCords = pile_.of(yard)};
        screen_->display(fuelView(picture, units(), beside), shell_.trace(), picture.at);
    }

    FuelScreen* screen_;
    PileLeft pile_;
    QTimer second_;
};

} // namespace

Desk* fuelDesk(Shell& shell) { return new FuelDesk{shell, new FuelScreen}; }

} // namespace panside
