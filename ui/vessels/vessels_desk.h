#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The vessels of syrup, what each wants, and what is done with it.
Desk* vesselsDesk(Shell& shell);

} // namespace panside
