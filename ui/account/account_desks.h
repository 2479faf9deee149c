#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The season's sugar from bush to bottle, widths to scale.
Desk* sugarDesk(Shell& shell);
// The house's account: a tap, a run, a night, heavy draws, stock, sap traded.
Desk* accountDesk(Shell& shell);
// What the rig tells over days.
Desk* tellsDesk(Shell& shell);

} // namespace panside
