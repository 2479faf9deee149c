#pragma once
// The engine over a whole log, on the log's own clock.
#include "core/boil/picture.h"
#include "core/boil/shift_log.h"

#include <functional>
#include <string_view>
#include <vector>

namespace panside {

struct ReplayOptions {
    Duration every{1};           // more than 0
    bool asEntered = false;      // a picture rests only on what had been entered by then
    std::vector<Set> settings{}; // stand for settings that the log lacks
};

// Calls back with each picture: the first at the first row's time rounded up to a whole second, then one each `every`
// seconds, the last at or after the last row. A log with faults is refused with all of them and nothing is called.
std::vector<Fault> replay(std::string_view log, const ReplayOptions& options,
                          const std::function<void(const Picture&)>& each);
// The same over facts, by time.
void replay(std::vector<Fact> facts, const ReplayOptions& options, const std::function<void(const Picture&)>& each);

} // namespace panside
