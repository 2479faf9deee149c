#include "app/commands.h"
#include "app/exit_status.h"
#include "core/files/text_file.h"
#include "core/journal/log_import.h"

#include <ostream>

namespace panside {

int exportCommand(const ExportRequest& request, std::ostream& out, std::ostream& err) {
    try {
        const auto journal = Journal::open(request.journal, Journal::Access::read);
        const auto shift = shiftAsked(journal, request.shift, request.json, out, err);
        if (!shift)
            return status::refused;
        if (request.out.empty()) {
            exportLog(journal, shift->id, [&](std::string_view piece) { out << piece; });
        } else {
            std::string log;
            exportLog(journal, shift->id, [&](std::string_view piece) { log += piece; });
            writeText(request.out, log);
        }
        return status::done;
    } catch (const JournalError& trouble) {
        err << trouble.what() << '\n';
        return statusOf(trouble.trouble());
    }
}

} // namespace panside
