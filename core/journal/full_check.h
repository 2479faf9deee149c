#pragma once
#include "core/journal/journal_error.h"

#include <vector>

namespace SQLite {
class Database;
}

namespace panside {

// Every row of a journal against its sum, and all that is there against the seals (seal.h): whatever was altered, added
// or taken out is named. Of older forms only facts and readings bear sums.
void checkRows(SQLite::Database& db, std::vector<Sentence>& findings);

} // namespace panside
