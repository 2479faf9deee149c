#pragma once
// The look in of a boil without a screen: the sentence and the cards that a board would show.
#include "ui/board/falling_clock.h"
#include "ui/frame/languages.h"
#include "ui/lookin/looked_at.h"

#include <iosfwd>
#include <string>

namespace panside {

// "192.168.1.20:8437", "[fd00::5]:8437"; without a port the usual one. A string says what is wrong.
std::variant<LookChoices, std::string> servedAt(const std::string& text);

class TendLook {
public:
    // In the language and the units of the console on this machine.
    explicit TendLook(const LookChoices& place);
    // Where it is looked in at goes to `err`; false if it could not be opened, and why.
    bool open(std::ostream& err);
    void tell(Picture picture, const Boil& boil);

private:
    LookChoices place_;
    Units units_;
    Spoken spoken_;
    FallingClock fireClock_;
    LookedAt looked_;
};

} // namespace panside
