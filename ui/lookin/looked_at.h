#pragma once
// The look in, as the console and `tend` keep it: as it was chosen, and told each new picture.
#include "core/lookin/look_in.h"
#include "ui/frame/choices.h"
#include "ui/lookin/look_view.h"

#include <QElapsedTimer>

namespace panside {

class LookedAt {
public:
    LookedAt();
    // Opens, closes or moves it; what cannot be done is said by fault(). Without an address the first of the house's.
    void apply(const LookChoices& choices);
    // What the board shows now. More than four a second say nothing more to a phone.
    void tell(const LookShown& shown, const Boil& boil, bool rehearsal);
    bool isOn() const { return applied_.on; }
    bool isOpen() const { return lookIn_.isOpen(); }
    LookFault fault() const { return fault_; }
    QString link() const { return lookIn_.place().link(); }
    int phones() const { return lookIn_.phones(); }

private:
    void open();
    LookIn lookIn_;
    LookChoices applied_;
    LookFault fault_ = LookFault::none;
    ShiftTrace trace_;
    LookNews news_;
    std::int64_t charted_ = 0; // which ten seconds the chart is of
    QElapsedTimer told_, tried_;
};

} // namespace panside
