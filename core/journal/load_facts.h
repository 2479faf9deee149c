#pragma once
// The facts of a shift that its loads of wood rest on, and no others: what was done and said, and the stack.
#include "core/journal/journal.h"

#include <functional>

namespace panside {

// By time, equal times in the order they came; withdrawn ones left out. Some 20 ms a night. Throws JournalError.
void visitLoads(const Journal& journal, ShiftId shift, const std::function<void(const Fact&)>& visitor);
// The same for who has a snapshot already.
void visitLoads(const Journal::Inside& inside, ShiftId shift, const std::function<void(const Fact&)>& visitor);

} // namespace panside
