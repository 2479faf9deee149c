#include "app/commands.h"
#include "app/journal_status.h"
#include "app/shift_report.h"
#include "app/text_file.h"

#include <QApplication>
#include <ostream>

namespace panside {

namespace {

// Letters need a QApplication, but no screen.
void writePdf(const ShiftSummary& summary, const std::vector<Boil::Entry>& facts, const std::string& place) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    int argc = 1;
    char name[] = "panside";
    char* argv[] = {name, nullptr};
    const QApplication letters{argc, argv};
    reportAsPdf(summary, facts, place);
}

} // namespace

int reportCommand(const ReportRequest& request, std::ostream& out, std::ostream& err) {
    const bool pdf = request.out.ends_with(".pdf");
    if (!pdf && !request.out.empty() && !request.out.ends_with(".csv")) {
        err << "--out " << request.out << ": name a file that ends in .pdf or .csv.\n";
        return status::wrongUsage;
    }
    try {
        auto journal = Journal::open(request.journal, Journal::Access::read);
        const auto shift = shiftAsked(journal, request.shift, false, out, err);
        if (!shift)
            return status::refused;
        const auto summary = summaryOf(journal, shift->id);
        const auto facts = journal.facts(shift->id);
        if (pdf)
            writePdf(summary, facts, request.out);
        else if (request.out.empty())
            out << reportAsCsv(summary, facts);
        else
            writeText(request.out, reportAsCsv(summary, facts));
        return status::done;
    } catch (const JournalError& trouble) {
        err << trouble.what() << '\n';
        return statusOf(trouble.trouble());
    }
}

} // namespace panside
