#pragma once
#include "ui/frame/desk.h"

namespace panside {

// The filter press: begun and ended by one key each, its gauge against the maker's limit.
Desk* filterDesk(Shell& shell);
// A house shows it only when it has one: a limit was written, a gauge is read, a run was told of.
bool hasFilter(Shell& shell);

} // namespace panside
