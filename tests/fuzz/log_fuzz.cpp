// Any text as a shift log: every fault has a sentence and a line that is there, what was read comes back as it was
// written, and the engine tells a night of whatever is left of it.
#include "core/boil/picture.h"
#include "core/boil/replay.h"
#include "core/boil/shift_log.h"
#include "tests/fuzz/demand.h"

#include <algorithm>
#include <cmath>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace panside;
    // Most of the time the header is there, or nothing else would be tried.
    std::string text;
    if (size > 0 && data[0] != '!')
        text = std::string{logHeader} + '\n';
    text.append(reinterpret_cast<const char*>(data), size);
    const auto lines = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n')) + 1;
    const ReadLog read = readLog(text);
    for (const auto* faults : {&read.faults, &read.warnings})
        for (const Fault& fault : *faults)
            demand(fault.line <= lines && sentence(fault, "f").size() >= 10);
    demand(read.facts.size() == read.lines.size());
    if (read.facts.empty() || !read.faults.empty()) // what is left of a refused log need not be one
        return 0;
    const std::string written = writeLog(read.facts);
    const ReadLog again = readLog(written);
    demand(again.facts == read.facts);
    demand(writeLog(again.facts) == written);
    // A picture each tenth of its span: the last comes at its end, whatever lies between.
    const Duration span = read.facts.back().at - read.facts.front().at;
    std::string json;
    replay(read.facts, {.every = std::max(Duration{1}, Duration{std::ceil(span.count() / 10)})},
           [&](const Picture& picture) {
               json.clear();
               appendJson(json, picture);
               // No number in it that JSON has no word for.
               demand(json.find("nan") == std::string::npos && json.find("inf") == std::string::npos);
           });
    return 0;
}
