#pragma once
#include "core/journal/inside.h"

namespace panside {

// A shift's rows of the fact table, by time; withdrawn ones left out.
class FactStream {
public:
    FactStream(const Journal::Inside& inside, ShiftId shift);
    // False at the end. Throws damaged.
    bool next();
    FactId id = 0;
    Fact fact;
    bool isWithdrawn(FactId any) const { return !withdrawn_.empty() && withdrawn_.contains(any); }
    // Withdrawals of the shift, of a probe's readings too; and how many of them were met here.
    std::size_t withdrawals() const { return withdrawn_.size(); }
    std::size_t leftOut() const { return leftOut_; }

private:
    const Journal::Inside& inside_;
    ShiftId shift_;
    std::unordered_set<FactId> withdrawn_;
    Beginning beginning_;
    std::size_t leftOut_ = 0;
    SQLite::Statement query_;
};

} // namespace panside
