#pragma once
#include "ui/frame/desk.h"

namespace panside {

// Where a rehearsal says what it is, and is begun again: the same evening, another, a lesson, or with the person in the
// crew's part.
Desk* rehearsalDesk(Shell& shell);
bool isRehearsal(Shell& shell);

} // namespace panside
