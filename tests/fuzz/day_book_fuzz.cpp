// Any text as a day book: every fault has a sentence; what was read comes back as it was written; and the ledger folds
// whatever is left of it, holding no less than nothing in any vessel.
#include "core/boil/picture.h"
#include "core/boil/shift_log.h"
#include "core/ledger/book_check.h"
#include "core/ledger/trace.h"
#include "tests/core/ledger/together.h"

#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace panside;
    std::string text{logHeader};
    text += '\n';
    text.append(reinterpret_cast<const char*>(data), size);
    const ReadLog read = readLog(text);
    for (const Fault& fault : read.faults)
        if (sentence(fault, "f").size() < 10)
            std::abort();
    if (read.facts.size() != read.lines.size())
        std::abort();
    if (readLog(writeLog(read.facts)).facts != read.facts && !read.facts.empty())
        std::abort();
    for (const Fault& fault : bookFaults(read, {}))
        if (sentence(fault, "f").size() < 10)
            std::abort();
    std::vector<std::vector<Boil::Entry>> books(1);
    for (const Fact& fact : read.facts)
        books[0].push_back({1, fact});
    const Ledger ledger{ledgerInput(books, {})};
    for (const Vessel& vessel : ledger.vessels()) {
        if (!(vessel.content.mass >= 0) || !(vessel.content.sugar >= -1e-9))
            std::abort();
        if (!traceOf(ledger, vessel.name) && !vessel.name.empty())
            std::abort();
    }
    for (const LedgerMark& mark : ledger.marks())
        if (sentence(mark).size() < 10)
            std::abort();
    return 0;
}
