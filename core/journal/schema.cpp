#include "core/journal/schema.h"

#include "core/journal/first_seal.h"
#include "core/journal/journal_error.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <fstream>
#include <string>

namespace panside {
namespace {

// Facts are only ever inserted. Times are microseconds since 1970 UTC. A shift is named by the time of its first row,
// a fact by its number within the shift, in the order in which facts came.
//
//   shift        one row a shift or day book; live: 1 begun here, 0 imported, 2 a day book; opening: how many of its
//   first facts are the settings
//                that were in force when it began
//   turn         opened and closed: the last row of a shift says which it is
//   fact         a row of the shift log, as text; what people do, settings, all that is no plain reading
//   block        plain readings, packed (packing.h). Small ones are merged into large ones as a shift goes on
//   withdrawal   names a fact that is as if it had never been entered
//   carried      settings made, and offsets learned, for the shifts to come: rows of the shift log
// `sum` is the hash of the row (hash.h): SQLite itself would not notice a changed digit.
constexpr const char* firstSchema = R"(
CREATE TABLE shift(id INTEGER PRIMARY KEY, live INTEGER NOT NULL, opening INTEGER NOT NULL);
CREATE TABLE turn(shift INTEGER NOT NULL, number INTEGER NOT NULL, open INTEGER NOT NULL, PRIMARY KEY(shift, number)) WITHOUT ROWID;
CREATE TABLE fact(shift INTEGER NOT NULL, id INTEGER NOT NULL, at INTEGER NOT NULL, row TEXT NOT NULL, sum INTEGER NOT NULL,
    PRIMARY KEY(shift, id)) WITHOUT ROWID;
CREATE TABLE block(shift INTEGER NOT NULL, first INTEGER NOT NULL, last INTEGER NOT NULL, count INTEGER NOT NULL,
    earliest INTEGER NOT NULL, latest INTEGER NOT NULL, sum INTEGER NOT NULL, data BLOB NOT NULL,
    PRIMARY KEY(shift, first)) WITHOUT ROWID;
CREATE TABLE withdrawal(shift INTEGER NOT NULL, id INTEGER NOT NULL, fact INTEGER NOT NULL, at INTEGER NOT NULL, by TEXT NOT NULL,
    PRIMARY KEY(shift, id)) WITHOUT ROWID;
CREATE TABLE carried(id INTEGER PRIMARY KEY, at INTEGER NOT NULL, row TEXT NOT NULL);
)";

// Summaries are derived: they may be dropped at any time and are counted again. `seen` tells what they were counted
// from.
constexpr const char* summarySchema = R"(
CREATE TABLE summary(shift INTEGER PRIMARY KEY, seen INTEGER NOT NULL, first INTEGER NOT NULL, last INTEGER NOT NULL,
    readings INTEGER NOT NULL, facts INTEGER NOT NULL, draws INTEGER NOT NULL, drawsMeasured INTEGER NOT NULL,
    loads INTEGER NOT NULL, loadsWeighed INTEGER NOT NULL, checks INTEGER NOT NULL,
    sap REAL NOT NULL, syrup REAL NOT NULL, wood REAL NOT NULL, lit INTEGER, crew TEXT NOT NULL);
)";

// How forecasts of draws came out (draw_scores.h): derived as well. `form` is the forecast's; ten, five, two are its
// errors so many minutes before, seconds; inside and under are shares.
constexpr const char* scoreSchema = R"(
CREATE TABLE scored(shift INTEGER PRIMARY KEY, seen INTEGER NOT NULL, form INTEGER NOT NULL);
CREATE TABLE score(shift INTEGER NOT NULL, at INTEGER NOT NULL, ten REAL, five REAL, two REAL, inside REAL NOT NULL,
    under10 REAL NOT NULL, under50 REAL NOT NULL, under90 REAL NOT NULL, forecasts INTEGER NOT NULL,
    PRIMARY KEY(shift, at)) WITHOUT ROWID;
)";

// Figures that others worked out from a shift's facts (kept_figures.h): derived too. `seen` as in summary; `form` names
// the rule they were worked out by.
constexpr const char* figureSchema = R"(
CREATE TABLE worked(shift INTEGER PRIMARY KEY, form INTEGER NOT NULL, seen INTEGER NOT NULL);
CREATE TABLE figure(shift INTEGER NOT NULL, name TEXT NOT NULL, value REAL NOT NULL, PRIMARY KEY(shift, name)) WITHOUT ROWID;
)";

// A draw that two keyed counts once: what was counted before is counted anew when it is asked for.
constexpr const char* recountSchema = "DELETE FROM summary;";

// So it is with a load of wood that was keyed twice, or that the stack showed and nobody keyed.
constexpr const char* recountLoadsSchema = "DELETE FROM summary;";

// Sums beside every row and over them (seal.h, rows.h). `begun` is a shift's place in the order in which they were
// begun here or came in, which no clock can turn round; `after` is that of the shift which was the latest when a
// setting was carried.
constexpr const char* sealSchema = R"(
CREATE TABLE seal(shift INTEGER NOT NULL, part INTEGER NOT NULL, rows INTEGER NOT NULL, sum INTEGER NOT NULL,
    PRIMARY KEY(shift, part)) WITHOUT ROWID;
ALTER TABLE shift ADD COLUMN begun INTEGER NOT NULL DEFAULT 0;
ALTER TABLE shift ADD COLUMN sum INTEGER NOT NULL DEFAULT 0;
ALTER TABLE turn ADD COLUMN sum INTEGER NOT NULL DEFAULT 0;
ALTER TABLE withdrawal ADD COLUMN sum INTEGER NOT NULL DEFAULT 0;
ALTER TABLE carried ADD COLUMN after INTEGER NOT NULL DEFAULT 0;
ALTER TABLE carried ADD COLUMN sum INTEGER NOT NULL DEFAULT 0;
ALTER TABLE summary ADD COLUMN sum INTEGER NOT NULL DEFAULT 0;
ALTER TABLE scored ADD COLUMN sum INTEGER NOT NULL DEFAULT 0;
ALTER TABLE worked ADD COLUMN sum INTEGER NOT NULL DEFAULT 0;
)";

// And with a check that was told twice, and a draw that nobody keyed shut.
constexpr const char* recountDrawsSchema = "DELETE FROM summary;";

// migrations[n] makes version n + 1 of version n.
constexpr std::array<const char*, journalVersion> migrations{firstSchema,  summarySchema,     scoreSchema,
                                                             figureSchema, recountSchema,     recountLoadsSchema,
                                                             sealSchema,   recountDrawsSchema};

std::int32_t bigEndian(const char* bytes) {
    std::uint32_t n = 0;
    for (int i = 0; i < 4; ++i)
        n = (n << 8) | static_cast<unsigned char>(bytes[i]);
    return static_cast<std::int32_t>(n);
}

Sentence formsOf(std::int32_t version) {
    return say("its form is %1, this program knows forms up to %2",
               {std::to_string(version), std::to_string(journalVersion)});
}

void judge(std::int32_t application, std::int32_t version, bool empty, const std::filesystem::path& place) {
    if (application != journalApplicationId && !(application == 0 && empty))
        throw JournalError{JournalTrouble::notOurs, place};
    if (application == journalApplicationId && version > journalVersion)
        throw JournalError{JournalTrouble::newer, place, formsOf(version)};
}

} // namespace

void inspectFile(const std::filesystem::path& place, bool mayBeNew) {
    std::error_code error;
    const auto status = std::filesystem::status(place, error);
    if (!std::filesystem::exists(status)) {
        if (error && error != std::errc::no_such_file_or_directory && error != std::errc::not_a_directory)
            throw JournalError{JournalTrouble::noPermission, place, asWritten(error.message())};
        if (mayBeNew)
            return;
        throw JournalError{JournalTrouble::noSuchFile, place};
    }
    if (std::filesystem::is_directory(status))
        throw JournalError{JournalTrouble::cannotRead, place, say("it is a folder")};
    std::ifstream file{place, std::ios::binary};
    if (!file)
        throw JournalError{errno == EACCES ? JournalTrouble::noPermission : JournalTrouble::cannotRead, place,
                           asWritten(std::strerror(errno))};
    std::array<char, 100> header{};
    file.read(header.data(), header.size());
    const auto got = file.gcount();
    if (got == 0 && mayBeNew)
        return;
    if (got < static_cast<std::streamsize>(header.size()) || std::memcmp(header.data(), "SQLite format 3", 16) != 0)
        throw JournalError{JournalTrouble::notSqlite, place};
    // Whether a file without our mark is empty is seen only when it is open: versionOf.
    judge(bigEndian(header.data() + 68), bigEndian(header.data() + 60), true, place);
}

std::int32_t versionOf(SQLite::Database& db, const std::filesystem::path& place) {
    const std::int32_t application = db.execAndGet("PRAGMA application_id");
    const std::int32_t version = db.execAndGet("PRAGMA user_version");
    const std::int32_t tables = db.execAndGet("SELECT count(*) FROM sqlite_schema");
    judge(application, version, tables == 0, place);
    return application == journalApplicationId ? version : 0;
}

void migrate(SQLite::Database& db, std::int32_t from) {
    if (from == journalVersion)
        return;
    SQLite::Transaction transaction{db, SQLite::TransactionBehavior::IMMEDIATE};
    for (auto version = static_cast<std::size_t>(from); version < migrations.size(); ++version)
        db.exec(migrations[version]);
    if (from < firstSealed)
        sealWhatWasKept(db);
    db.exec("PRAGMA application_id=" + std::to_string(journalApplicationId));
    db.exec("PRAGMA user_version=" + std::to_string(journalVersion));
    transaction.commit();
}

} // namespace panside
