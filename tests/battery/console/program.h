#pragma once
// The console's rows run each case in a process of its own, without rights over anybody else's files: random hands find
// every file dialog, and every key in it.
#include "tests/battery/rows.h"
#include "ui/frame/program.h"

#include <functional>
#include <string>

namespace battery {

std::string inAProcessOfItsOwn(const Case& c, const std::function<std::string(panside::Program&)>& work);

// How long a turn of the event loop took, waits and all, and what of it this thread was at work: milliseconds. The
// first without what its threads waited for a core that others had.
class Turn {
public:
    Turn();
    double milliseconds() const;
    double atWork() const;

private:
    double began_, waited_, worked_;
};

std::string randomHands(const Case&);
std::string soaked(const Case&);

} // namespace battery
