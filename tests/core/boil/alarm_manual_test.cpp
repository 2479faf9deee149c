// The manual's table of alarms says what the code does.
#include "core/boil/alarms.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace panside {
namespace {

std::string wordFor(Priority priority) {
    return priority == Priority::high ? "high" : priority == Priority::medium ? "medium" : "low";
}

TEST(AlarmManual, NamesEachAlarmWithThePriorityAndTheDelaysOfTheCode) {
    std::ifstream file{PANSIDE_SOURCE "/resources/manual/alarms.md"};
    std::stringstream read;
    read << file.rdbuf();
    const std::string manual = read.str();
    for (std::size_t i = 0; i < alarmCount; ++i) {
        const AlarmRow& row = rowOf(static_cast<Alarm>(i));
        const auto line =
            fmt::format("\n| `{}` | {} | {:g} | {:g} |", row.name, wordFor(row.priority), row.delay, row.release);
        EXPECT_NE(manual.find(line), std::string::npos) << line;
        // Twice: why it is there, and what it is judged by.
        const auto named = fmt::format("\n| `{}` |", row.name);
        EXPECT_NE(manual.rfind(named), manual.find(named)) << row.name;
    }
}

} // namespace
} // namespace panside
