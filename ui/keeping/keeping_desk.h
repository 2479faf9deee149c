#pragma once
#include "ui/frame/desk.h"

namespace panside {

// Back-ups, checks and salvage of the journal.
Desk* keepingDesk(Shell& shell);

} // namespace panside
