#pragma once
namespace SQLite {
class Database;
}

namespace panside {

// Of a journal whose rows bore no sums but those of facts and readings: gives the others theirs, the shifts their
// order, and seals it all. Of shifts that stand open one beside the other only the latest stays so. Within a
// transaction of the caller's.
void sealWhatWasKept(SQLite::Database& db);

} // namespace panside
