#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The thread of a lot, a vessel, a night: behind it and before it, and a recall on paper.
Desk* traceDesk(Shell& shell);

} // namespace panside
