#include "app/commands.h"
#include "app/exit_status.h"
#include "core/boil/shift_log.h"
#include "core/files/whole_file.h"
#include "core/journal/day_books.h"
#include "core/journal/log_import.h"

#include <ostream>

namespace panside {

int exportCommand(const ExportRequest& request, std::ostream& out, std::ostream& err) {
    const auto journal = Journal::open(request.journal, Journal::Access::read);
    if (const auto year = bookAsked(journal, request.shift)) {
        std::vector<Fact> facts;
        for (auto& entry : bookFacts(journal, year))
            facts.push_back(std::move(entry.fact));
        writeOut(request.out, writeLog(facts), out);
        return status::done;
    }
    const auto shift = shiftAsked(journal, request.shift, request.json, out, err);
    if (!shift)
        return status::refused;
    if (request.out.empty()) {
        exportLog(journal, shift->id, [&](std::string_view piece) { out << piece; });
        return status::done;
    }
    try {
        WholeFile log{request.out};
        exportLog(journal, shift->id, [&](std::string_view piece) { log.add(piece); });
        log.finish();
    } catch (const std::filesystem::filesystem_error& error) {
        throw notWritten(request.out, error);
    }
    return status::done;
}

} // namespace panside
