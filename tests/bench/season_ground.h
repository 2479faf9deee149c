#pragma once
// A journal of made-up shifts in a folder of its own, which goes with it.
#include "core/boil/shift_log.h"
#include "core/journal/journal.h"
#include "core/journal/log_import.h"

#include <cstdlib>
#include <filesystem>
#include <sstream>
#include <vector>

namespace panside::bench {

class SeasonGround {
public:
    SeasonGround() {
        std::string name = (std::filesystem::temp_directory_path() / "panside-bench-XXXXXX").string();
        folder_ = ::mkdtemp(name.data());
    }
    ~SeasonGround() {
        std::error_code ignored;
        std::filesystem::remove_all(folder_, ignored);
    }
    SeasonGround(const SeasonGround&) = delete;
    SeasonGround& operator=(const SeasonGround&) = delete;

    // The same shift on `count` days, the first so many days after the facts' own.
    std::vector<ShiftId> repeat(std::vector<Fact> shift, int count, int firstDay) const {
        Journal journal = Journal::open(place());
        std::vector<ShiftId> shifts;
        for (Fact& fact : shift)
            fact.at += std::chrono::days{firstDay};
        for (int day = 0; day < count; ++day) {
            std::istringstream log{writeLog(shift)};
            shifts.push_back(importLog(journal, log).shift);
            for (Fact& fact : shift)
                fact.at += std::chrono::days{1};
        }
        return shifts;
    }
    std::filesystem::path place() const { return folder_ / "season.journal"; }

private:
    std::filesystem::path folder_;
};

} // namespace panside::bench
