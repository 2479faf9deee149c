#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The ports and what they read; what is kept goes into the probe file.
Desk* probesDesk(Shell& shell);

} // namespace panside
