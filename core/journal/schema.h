#pragma once
// The tables of the journal, and how an older file becomes a newer one. Old schemas stay in the tests.
#include <cstdint>
#include <filesystem>

namespace SQLite {
class Database;
}

namespace panside {

// "Pans", so that a file that is SQLite but another program's is known as such. On disk: never change.
inline constexpr std::int32_t journalApplicationId = 0x50616e73;
inline constexpr std::int32_t journalVersion = 8;
// From this form on every row bears a sum and each shift's rows are sealed (seal.h), and shifts know their order.
inline constexpr std::int32_t firstSealed = 7;

// What a file is, from its first bytes: nothing is opened or changed. Throws JournalError (notSqlite, notOurs, newer,
// noSuchFile, noPermission, cannotRead). A file that is not there yet, or has no byte in it, is fine when `mayBeNew`.
void inspectFile(const std::filesystem::path& place, bool mayBeNew);

// The version of an open file; 0 for an empty one. Throws JournalError (notOurs, newer).
std::int32_t versionOf(SQLite::Database& db, const std::filesystem::path& place);

// Makes the tables or brings them to journalVersion, all in one transaction.
void migrate(SQLite::Database& db, std::int32_t from);

} // namespace panside
