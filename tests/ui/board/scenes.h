#pragma once
// Evenings in an invented sugarhouse, put together by hand: what the board shows of them is known beforehand.
#include "core/boil/picture.h"
#include "ui/chart/shift_trace.h"

namespace panside::scenes {

Instant evening(double secondsAfterLit); // 2026-03-14, the fire lit at 17:30 local time of the shift

Picture fresh();      // nothing lit, nothing read
Picture calm();       // 12 min to the draw, 9 to 16
Picture drawing();    // close in 1:20
Picture scorching();  // scorch risk, not yet seen, sap low besides
Picture seenAlarm();  // firing overdue, seen
Picture late();       // and for a long while
Picture goneUnseen(); // probe stuck, gone before anybody saw
Picture doubt();      // the pan probe stuck for 40 s
Picture blind();      // the pan probe gone: a dash and its reason
Picture handOnly();   // no probe, readings typed in
Picture burningOut(); // firing stopped

// Three hours of boil with draws, loads, a check, a gap and a doubtful stretch, up to the evening of calm().
void fillTrace(ShiftTrace& trace);

} // namespace panside::scenes
