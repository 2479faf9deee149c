#pragma once
#include "ui/frame/desk.h"

namespace panside {

// Logs read in, other loggers' tables too, one after another on a thread of its own.
Desk* importDesk(Shell& shell);

} // namespace panside
