#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The nights of the journal, read on a connection of its own so that the shift is never held up.
Desk* reviewDesk(Shell& shell);

} // namespace panside
