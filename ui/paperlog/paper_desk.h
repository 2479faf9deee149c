#pragma once
#include "ui/frame/desk.h"

namespace panside {

// A log on paper, typed the next day: it goes the way of any other log.
Desk* paperDesk(Shell& shell);

} // namespace panside
