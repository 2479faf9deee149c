#pragma once
#include "core/boil/picture.h"

#include <string>

namespace panside {

// The board as one line of plain text, for a terminal: what is wrong, the draw, the firing, the rise.
std::string terminalLine(const Picture& picture);

} // namespace panside
