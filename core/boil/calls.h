#pragma once
// What the hour calls for, and which of these calls an alarm that stands forbids. Pure; the engine's own call to draw,
// the sentence, the cards and the voice ask here, so that none of them says what another one contradicts.
#include "core/boil/picture.h"

namespace panside {

enum class Call { draw, fire };

// The alarm that forbids the call while it stands: the highest of them; nullptr where the call may be followed. One
// that was shelved forbids nothing: somebody has judged it.
const AlarmPicture* forbids(const Picture& picture, Call call);

// The moment has come, and nothing forbids it. A call is no alarm.
bool isDue(const Picture& picture, Call call);

} // namespace panside
