#include "app/commands.h"
#include "app/exit_status.h"
#include "app/plain_letters.h"
#include "app/reckon_command.h"
#include "core/boil/fact.h"

#include <iostream>
#include <optional>
#include <unistd.h>

namespace {

using namespace panside;

int perform(const Command& command, std::ostream& out, std::ostream& err) {
    return std::visit(Overloaded{
                          [](const Answered& answered) { return answered.status; },
                          [&](const ConsoleRequest& console) { return consoleCommand(console, out, err); },
                          [&](const ReplayRequest& replay) { return replayCommand(replay, out, err); },
                          [&](const TendRequest& tend) { return tendCommand(tend, out, err); },
                          [&](const RehearseRequest& rehearse) { return rehearseCommand(rehearse, out, err); },
                          [&](const CheckRequest& check) { return checkCommand(check, out, err); },
                          [&](const ImportRequest& import) { return importCommand(import, out, err); },
                          [&](const ExportRequest& exporting) { return exportCommand(exporting, out, err); },
                          [&](const ReportRequest& report) { return reportCommand(report, out, err); },
                          [&](const TraceRequest& trace) { return traceCommand(trace, out, err); },
                          [&](const ReckonRequest& reckon) { return reckonCommand(reckon.words, out, err); },
                      },
                      command);
}

// What is for people is shown letter by letter; what another program or a file takes up goes out as it is.
bool isForPeople(const Command& command) {
    const bool isData =
        std::holds_alternative<ReplayRequest>(command) || std::holds_alternative<TendRequest>(command) ||
        std::holds_alternative<RehearseRequest>(command) || std::holds_alternative<ExportRequest>(command) ||
        std::holds_alternative<ReportRequest>(command);
    return !isData || ::isatty(STDOUT_FILENO) == 1;
}

} // namespace

int main(int argc, char** argv) {
    std::ios::sync_with_stdio(false);
    const PlainLetters plainErrors{std::cerr};
    try {
        const auto command = commandIn({argv + 1, argv + argc}, std::cout, std::cerr);
        std::optional<PlainLetters> plain;
        if (isForPeople(command))
            plain.emplace(std::cout);
        const int result = perform(command, std::cout, std::cerr);
        std::cout.flush();
        if (std::cout)
            return result;
        std::cerr << "panside: the output could not be written: is the disk full?\n";
        return status::machineFailed;
    } catch (const JournalError& trouble) {
        std::cout.flush();
        std::cerr << trouble.what() << '\n';
        return statusOf(trouble.trouble());
    } catch (const FileFault& fault) {
        std::cout.flush();
        std::cerr << fault.what() << '\n';
        return statusOf(fault.trouble());
    } catch (const std::exception& broken) {
        std::cout.flush();
        std::cerr << "panside: " << broken.what() << '\n';
        return status::machineFailed;
    }
}
