#pragma once
#include "ui/frame/desk.h"

namespace panside {

Desk* manualDesk(Shell& shell);

} // namespace panside
