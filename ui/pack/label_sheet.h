#pragma once
// Labels for containers and the tag of a drum, as PDF, each with a code that a phone reads (ISO/IEC 18004).
#include "core/ledger/ledger.h"
#include "ui/look/units.h"

#include <QString>
#include <QStringList>
#include <string>
#include <vector>

namespace panside {

struct Label {
    QString head;      // "Maple syrup"
    QStringList lines; // size, class, lot, date
    QString warning;   // an allergen; empty: none
    QString code;      // what the phone reads
    bool operator==(const Label&) const = default;
};
// One for each container of a size that was made, `most` at the most.
std::vector<Label> labelsOf(const Ledger& ledger, const Lot& lot, std::size_t size, int most);
Label drumTag(const Ledger& ledger, const Vessel& vessel, Units units);

// Both write beside the place and then move it there; they throw FileFault.
void labelsAsPdf(const std::vector<Label>& labels, const std::string& place); // three by eight on a page
void tagAsPdf(const Label& tag, const std::string& place);                    // half a page, to be read from afar

} // namespace panside
