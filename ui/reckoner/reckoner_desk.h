#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The sums of the trade; they touch neither shift nor journal.
Desk* reckonerDesk(Shell& shell);

} // namespace panside
