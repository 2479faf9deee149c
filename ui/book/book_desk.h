#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The inspector's book: its tables to look at, and the whole of it on paper by one key.
Desk* bookDesk(Shell& shell);

} // namespace panside
