#pragma once
#include <string>

namespace panside {

// Why no window can be opened here, in one sentence; empty where a display answers. Asked before Qt is set up, since
// Qt aborts the program where none does. A platform that QT_QPA_PLATFORM names is taken at its word, but for X.
std::string displayTrouble();

} // namespace panside
