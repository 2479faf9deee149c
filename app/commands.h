#pragma once
// What each command does. Answers go to `out`, what is wrong to `err`; the return value is the exit status.
#include "app/command_line.h"

#include <iosfwd>

namespace panside {

namespace status {
inline constexpr int done = 0;
inline constexpr int refused = 1; // because of the input
inline constexpr int wrongUsage = 2;
inline constexpr int machineFailed = 3; // disk, port
} // namespace status

int replayCommand(const ReplayOptions& options, std::ostream& out, std::ostream& err);
int tendCommand(const TendOptions& options, std::ostream& out, std::ostream& err);
int rehearseCommand(const RehearseOptions& options, std::ostream& out, std::ostream& err);
int checkCommand(const CheckOptions& options, std::ostream& out, std::ostream& err);
int importCommand(const ImportOptions& options, std::ostream& out, std::ostream& err);
int exportCommand(const ExportOptions& options, std::ostream& out, std::ostream& err);
int reportCommand(const ReportOptions& options, std::ostream& out, std::ostream& err);
int consoleCommand(const ConsoleOptions& options, std::ostream& out, std::ostream& err);

} // namespace panside
