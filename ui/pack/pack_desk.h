#pragma once
#include "ui/frame/desk.h"

namespace panside {

// Packing: what may be packed, what it gives, what a label needs.
Desk* packDesk(Shell& shell);
// The lots: what is here, what is held and why, what went out; labels and tags.
Desk* lotsDesk(Shell& shell);

} // namespace panside
