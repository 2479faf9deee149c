#pragma once
// The ledger on paper: lots, the inspector's book, a mock recall. First as plain tables, then as CSV, PDF or a
// spreadsheet.
#include "core/ledger/trace.h"
#include "ui/look/units.h"

#include <QStringList>
#include <string>
#include <vector>

namespace panside {

struct PaperTable {
    QString title;
    QStringList headings;
    std::vector<QStringList> rows;
    QString note; // under it
};
struct LedgerPaper {
    QString title;
    std::vector<PaperTable> tables;
    QStringList cautions;
};

LedgerPaper lotsOnPaper(const Ledger& ledger, Units units);
LedgerPaper bookOnPaper(const Ledger& ledger, Units units);
// Of a lot that there is.
LedgerPaper recallOnPaper(const Ledger& ledger, std::size_t lot, Units units);

// Cells are for a spreadsheet too, with points; where they are read a number is written as the language has it.
QString asPrinted(const QString& cell);

std::string paperAsCsv(const LedgerPaper& paper);
// Both write beside the place and then move it there; they throw FileFault. The PDF needs a QApplication.
void paperAsPdf(const LedgerPaper& paper, const std::string& place);
void paperAsSheet(const LedgerPaper& paper, const std::string& place);
// As the place's ending says: .csv, .xlsx, else a PDF.
void writePaper(const LedgerPaper& paper, const std::string& place);

} // namespace panside
