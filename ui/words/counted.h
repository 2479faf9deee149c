#pragma once
// One text for one and one for several: English has no translation to take its plural from.
#include <QString>

namespace panside {

inline QString counted(int count, const QString& one, const QString& several) { return count == 1 ? one : several; }

} // namespace panside
