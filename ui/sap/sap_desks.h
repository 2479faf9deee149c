#pragma once
#include "ui/frame/desk.h"

namespace panside {

// Every tank: what stands in it, how warm and how old, and what to boil first.
Desk* tanksDesk(Shell& shell);
// How long it will take tonight, and how much may be started to be in bed by a clock time.
Desk* tonightDesk(Shell& shell);

} // namespace panside
