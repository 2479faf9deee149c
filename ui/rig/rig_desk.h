#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The rig and the day's choices: what is typed becomes a setting of the shift, or of the next one.
Desk* rigDesk(Shell& shell);

} // namespace panside
