#pragma once
#include "ui/frame/desk.h"

namespace panside {

// What the next crew must know, out of this shift and those before it.
Desk* handoverDesk(Shell& shell);

} // namespace panside
