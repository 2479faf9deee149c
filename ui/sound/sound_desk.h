#pragma once
#include "ui/frame/desk.h"

namespace panside {

// How loud the alarms are, and hearing them.
Desk* soundDesk(Shell& shell);

} // namespace panside
