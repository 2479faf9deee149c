#pragma once
#include "ui/frame/desk.h"

namespace panside {

Desk* lookDesk(Shell& shell);

} // namespace panside
