#pragma once
// What each command does. Answers go to `out`, what is wrong to `err`; the return value is the exit status. What a
// journal or a file refuses is thrown (JournalError, FileFault): main says it.
#include "app/command_line.h"

#include <iosfwd>

namespace panside {

namespace status {
inline constexpr int done = 0;
inline constexpr int refused = 1; // because of the input
inline constexpr int wrongUsage = 2;
inline constexpr int machineFailed = 3; // disk, port
} // namespace status

int replayCommand(const ReplayRequest& request, std::ostream& out, std::ostream& err);
int tendCommand(const TendRequest& request, std::ostream& out, std::ostream& err);
int rehearseCommand(const RehearseRequest& request, std::ostream& out, std::ostream& err);
int checkCommand(const CheckRequest& request, std::ostream& out, std::ostream& err);
int importCommand(const ImportRequest& request, std::ostream& out, std::ostream& err);
int exportCommand(const ExportRequest& request, std::ostream& out, std::ostream& err);
int reportCommand(const ReportRequest& request, std::ostream& out, std::ostream& err);
int traceCommand(const TraceRequest& request, std::ostream& out, std::ostream& err);
int consoleCommand(const ConsoleRequest& request, std::ostream& out, std::ostream& err);

} // namespace panside
