#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The fire and what it burns, with what is left of the woodpile.
Desk* fuelDesk(Shell& shell);

} // namespace panside
