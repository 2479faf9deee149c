#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The first questions, from the first one each time they are opened: their answers become settings, as on the rig's
// page, and choices of the person's.
Desk* startDesk(Shell& shell);

} // namespace panside
