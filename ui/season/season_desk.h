#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The season: at once what is kept, and what is missing worked out on a thread of its own.
Desk* seasonDesk(Shell& shell);

} // namespace panside
