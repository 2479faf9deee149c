#pragma once
#include "core/journal/inside.h"

namespace panside {

// A shift's rows of the fact table, by time; withdrawn ones too.
class FactStream {
public:
    FactStream(const Journal::Inside& inside, ShiftId shift);
    // False at the end. Throws damaged.
    bool next();
    FactId id = 0;
    Fact fact;

private:
    const Journal::Inside& inside_;
    ShiftId shift_;
    Beginning beginning_;
    SQLite::Statement query_;
};

} // namespace panside
