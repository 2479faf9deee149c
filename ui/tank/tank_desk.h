#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The feed tank: its shape, and a dip of it as a reading.
Desk* tankDesk(Shell& shell);

} // namespace panside
