#include "core/journal/backup.h"

#include "core/boil/shift_log.h"
#include "core/files/whole_file.h"
#include "core/journal/full_check.h"
#include "core/journal/hash.h"
#include "core/journal/inside.h"
#include "core/journal/schema.h"

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <cstring>
#include <fcntl.h>
#include <future>
#include <map>
#include <set>
#include <sqlite3.h>
#include <tuple>
#include <unistd.h>

namespace panside {
namespace fs = std::filesystem;
namespace {

constexpr std::string_view backupBegins = "panside-", backupEnds = ".journal";

// 2025-03-14T18:00:00Z as 20250314T180000Z: no file system minds it.
std::string stampOf(Instant at) {
    std::string stamp = textOf(std::chrono::floor<std::chrono::seconds>(at));
    std::erase_if(stamp, [](char c) { return c == '-' || c == ':'; });
    return stamp;
}

std::optional<Instant> instantOfStamp(std::string_view stamp) {
    if (stamp.size() != 16 || stamp[8] != 'T' || stamp[15] != 'Z')
        return std::nullopt;
    const auto part = [&](std::size_t from, std::size_t count) { return std::string{stamp.substr(from, count)}; };
    return instantIn(part(0, 4) + "-" + part(4, 2) + "-" + part(6, 2) + "T" + part(9, 2) + ":" + part(11, 2) + ":" +
                     part(13, 2) + "Z");
}

// Everything that was ever said, as one number for each shift: from the sums beside the rows.
using Sums = std::map<std::int64_t, std::uint64_t>;
Sums sumsOf(SQLite::Database& db) {
    Sums sums;
    for (const char* rows : {"SELECT shift, id, sum FROM fact", "SELECT shift, first, sum FROM block",
                             "SELECT shift, id, fact FROM withdrawal", "SELECT id, live, opening FROM shift"}) {
        SQLite::Statement query{db, rows};
        while (query.executeStep())
            sums[query.getColumn(0).getInt64()] +=
                mixed(mixed(static_cast<std::uint64_t>(query.getColumn(1).getInt64())) ^
                      static_cast<std::uint64_t>(query.getColumn(2).getInt64()));
    }
    return sums;
}

JournalHealth check(SQLite::Database& db, bool full) {
    JournalHealth health;
    try {
        SQLite::Statement query{db, full ? "PRAGMA integrity_check" : "PRAGMA quick_check"};
        while (query.executeStep())
            if (std::string finding = query.getColumn(0).getString(); finding != "ok")
                health.findings.push_back(asWritten(std::move(finding)));
        if (full)
            checkRows(db, health.findings);
    } catch (const SQLite::Exception& error) {
        if (error.getErrorCode() != SQLITE_CORRUPT && error.getErrorCode() != SQLITE_NOTADB)
            throw;
        health.findings.push_back(asWritten(error.what()));
    }
    return health;
}

// Removes what was not finished, however the writing ends.
struct Unfinished {
    fs::path place;
    ~Unfinished() {
        std::error_code ignored;
        fs::remove(place, ignored);
        fs::remove(place.string() + "-journal", ignored);
    }
};

// The journal's file as it is at one moment, in memory: what the last minutes left in the WAL file is in it.
class Image {
public:
    explicit Image(SQLite::Database& db) : bytes_{sqlite3_serialize(db.getHandle(), "main", &size_, 0), &sqlite3_free} {
        if (!bytes_ || size_ < 100)
            throw SQLite::Exception{"the journal cannot be read whole", SQLITE_NOMEM};
        // Bytes 18 and 19 of an SQLite file say that a WAL file belongs to it (2) or not (1): a back-up is one file.
        bytes_.get()[18] = bytes_.get()[19] = 1;
    }
    std::string_view bytes() const {
        return {reinterpret_cast<const char*>(bytes_.get()), static_cast<std::size_t>(size_)};
    }
    // SQLite's structures, and every fact and reading against the sum beside it.
    JournalHealth health() const {
        SQLite::Database db{":memory:", SQLite::OPEN_READWRITE};
        if (sqlite3_deserialize(db.getHandle(), "main", bytes_.get(), size_, size_, SQLITE_DESERIALIZE_READONLY) !=
            SQLITE_OK)
            return {{say("the copy cannot be opened")}};
        return check(db, true);
    }

private:
    sqlite3_int64 size_ = 0;
    std::unique_ptr<unsigned char, decltype(&sqlite3_free)> bytes_;
};

constexpr std::size_t pieceSize = std::size_t{1} << 19; // often enough to keep the disk busy, seldom enough to be fast

struct Descriptor {
    int number;
    ~Descriptor() { ::close(number); }
};

[[noreturn]] void refused(const fs::path& place) {
    std::error_code ignored;
    const int why = errno;
    if (why == ENOSPC || why == EDQUOT)
        throw JournalError{JournalTrouble::diskFull, place};
    throw JournalError{fs::exists(place.parent_path(), ignored) ? JournalTrouble::cannotWrite : JournalTrouble::gone,
                       place, asWritten(std::strerror(why))};
}

// Steps of both halves of the work, writing and reading back, are told as pages of 4096 bytes.
bool told(const BackupProgress& progress, std::size_t done, std::size_t all) {
    return !progress || progress(static_cast<int>(done / 4096), static_cast<int>(all / 4096));
}

// Written, forced to the disk, taken out of the system's memory, and read back from the disk byte for byte.
bool writtenAndReadBack(std::string_view bytes, const fs::path& place, const BackupProgress& progress) {
    // Never what lies there, be it a link to another file.
    ::unlink(place.c_str());
    const Descriptor file{::open(place.c_str(), O_RDWR | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0600)};
    if (file.number < 0)
        refused(place);
    for (std::size_t at = 0; at < bytes.size();) {
        const auto wrote = ::write(file.number, bytes.data() + at, std::min(pieceSize, bytes.size() - at));
        if (wrote < 0)
            refused(place);
        // The disk begins with this piece while the next is handed over; fsync below waits for them all.
        ::sync_file_range(file.number, static_cast<off_t>(at), wrote, SYNC_FILE_RANGE_WRITE);
        at += static_cast<std::size_t>(wrote);
        if (!told(progress, at, 2 * bytes.size()))
            return false;
    }
    if (::fsync(file.number) != 0)
        refused(place);
    ::posix_fadvise(file.number, 0, 0, POSIX_FADV_DONTNEED);
    std::string read(pieceSize, '\0');
    for (std::size_t at = 0; at < bytes.size();) {
        const auto got =
            ::pread(file.number, read.data(), std::min(pieceSize, bytes.size() - at), static_cast<off_t>(at));
        if (got < 0)
            refused(place);
        const auto count = static_cast<std::size_t>(got);
        if (got == 0 || bytes.substr(at, count) != std::string_view{read.data(), count})
            throw JournalError{JournalTrouble::damaged, place, say("the disk does not give back what was written")};
        at += count;
        if (!told(progress, bytes.size() + at, 2 * bytes.size()))
            return false;
    }
    return true;
}

// What a back-up left behind when its stick was pulled out.
void removeLeftOvers(const fs::path& folder) {
    std::error_code error;
    std::vector<fs::path> left;
    for (const auto& file : fs::directory_iterator{folder, error})
        if (const std::string name = file.path().filename().string();
            name.starts_with(backupBegins) && name.ends_with(std::string{backupEnds} + ".part"))
            left.push_back(file.path());
    for (const fs::path& file : left)
        fs::remove(file, error);
}

// 20250314T180000Z, or with the number: 20250314T180000Z-7.
std::optional<Backup> backupNamed(const fs::path& place) {
    const std::string name = place.filename().string();
    if (name.size() < backupBegins.size() + backupEnds.size() || !name.starts_with(backupBegins) ||
        !name.ends_with(backupEnds))
        return std::nullopt;
    const auto middle =
        std::string_view{name}.substr(backupBegins.size(), name.size() - backupBegins.size() - backupEnds.size());
    const auto dash = middle.find('-');
    const auto at = instantOfStamp(middle.substr(0, dash));
    if (!at)
        return std::nullopt;
    int number = 0;
    if (dash != std::string_view::npos) {
        const auto digits = middle.substr(dash + 1);
        const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
        if (error != std::errc{} || end != digits.data() + digits.size() || number < 1)
            return std::nullopt;
    }
    return Backup{place, *at, number};
}

int nextNumber(const fs::path& folder) {
    const auto there = backupsIn(folder);
    return there.empty() ? 1 : there.front().number + 1;
}

// Facts of the last minutes may be in the WAL file alone: into the journal with them, where it still can be written. It
// is about to be put aside, and is worth no error.
void takeInWal(const fs::path& journal) {
    try {
        SQLite::Database db{journal.string(), SQLite::OPEN_READWRITE};
        db.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    } catch (const SQLite::Exception&) {
        return;
    }
}

// The journal under another name as well, so that at no moment there is none; where a disk knows no second names,
// moved.
void putAside(const fs::path& journal, const fs::path& kept) {
    std::error_code error;
    fs::create_hard_link(journal, kept, error);
    if (error)
        fs::rename(journal, kept);
}

void copyWhole(const fs::path& from, const fs::path& to) {
    const Descriptor file{::open(from.c_str(), O_RDONLY | O_CLOEXEC)};
    if (file.number < 0)
        throw JournalError{JournalTrouble::cannotRead, from, asWritten(std::strerror(errno))};
    WholeFile whole{to, WholeFile::For::userAlone};
    std::string piece(pieceSize, '\0');
    while (true) {
        const auto got = ::read(file.number, piece.data(), piece.size());
        if (got < 0)
            throw JournalError{JournalTrouble::cannotRead, from, asWritten(std::strerror(errno))};
        if (got == 0)
            break;
        whole.add({piece.data(), static_cast<std::size_t>(got)});
    }
    whole.finish();
}

} // namespace

JournalHealth quickCheck(const Journal& journal) {
    return guarded(journal.place(), [&] { return check(*journal.inside().db, false); });
}

JournalHealth fullCheck(const Journal& journal) {
    return guarded(journal.place(), [&] { return check(*journal.inside().db, true); });
}

std::optional<Backup> backUp(const Journal& journal, const fs::path& folder, Instant now,
                             const BackupProgress& progress) {
    std::error_code error;
    fs::create_directories(folder, error);
    if (error)
        throw JournalError{JournalTrouble::noFolder, folder, asWritten(error.message())};
    const int number = nextNumber(folder);
    const fs::path place =
        folder / (std::string{backupBegins} + stampOf(now) + "-" + std::to_string(number) + std::string{backupEnds});
    removeLeftOvers(folder);
    const Unfinished part{place.string() + ".part"};
    // A connection of its own, in one read transaction: what others write meanwhile neither waits nor disturbs.
    const Journal source = Journal::open(journal.place(), Journal::Access::read);
    const Image image = guarded(journal.place(), [&] {
        const Snapshot snapshot{*source.inside().db};
        return Image{*source.inside().db};
    });
    // Looked through on another core while the disk writes.
    auto looking = std::async(std::launch::async, [&] { return image.health(); });
    if (!writtenAndReadBack(image.bytes(), part.place, progress))
        return std::nullopt;
    if (const JournalHealth health = looking.get(); !health.sound())
        throw JournalError{JournalTrouble::damaged, journal.place(), health.findings.front()};
    if (::rename(part.place.c_str(), place.c_str()) != 0)
        refused(place);
    syncFolderOf(place);
    return Backup{place, std::chrono::floor<std::chrono::seconds>(now), number};
}

std::vector<Backup> backupsIn(const fs::path& folder) {
    std::vector<Backup> backups;
    std::error_code error;
    for (const auto& file : fs::directory_iterator{folder, error})
        if (const auto backup = backupNamed(file.path()))
            backups.push_back(*backup);
    std::ranges::sort(backups, [](const Backup& a, const Backup& b) {
        return std::tuple{a.number, a.at, a.place} > std::tuple{b.number, b.at, b.place};
    });
    return backups;
}

std::vector<Backup> pruneBackups(const fs::path& folder) {
    constexpr std::size_t lastKept = 10, daysKept = 60;
    std::vector<Backup> removed;
    std::set<std::chrono::sys_days> days;
    std::set<std::chrono::year> years;
    std::size_t rank = 0;
    for (const Backup& backup : backupsIn(folder)) { // the last made first: the first met of a day is its last
        const auto day = std::chrono::floor<std::chrono::days>(backup.at);
        const bool lastOfDay = days.insert(day).second && days.size() <= daysKept;
        const bool lastOfYear = years.insert(std::chrono::year_month_day{day}.year()).second;
        if (rank++ < lastKept || lastOfDay || lastOfYear)
            continue;
        std::error_code error;
        if (fs::remove(backup.place, error))
            removed.push_back(backup);
    }
    return removed;
}

RestorePreview previewRestore(const fs::path& backup, const fs::path& journal) {
    const Journal from = Journal::open(backup, Journal::Access::read);
    RestorePreview preview;
    if (!fs::exists(journal)) {
        preview.gained = from.shifts();
        return preview;
    }
    const Journal to = Journal::open(journal, Journal::Access::read);
    return guarded(journal, [&] {
        const Sums theirs = sumsOf(*from.inside().db), ours = sumsOf(*to.inside().db);
        for (const Shift& shift : from.shifts()) {
            const auto here = ours.find(microsOf(shift.id));
            if (here == ours.end())
                preview.gained.push_back(shift);
            else if (here->second == theirs.at(here->first))
                ++preview.same;
            else
                preview.changed.push_back(shift);
        }
        for (const Shift& shift : to.shifts())
            if (!theirs.contains(microsOf(shift.id)))
                preview.lost.push_back(shift);
        return preview;
    });
}

fs::path restore(const fs::path& backup, const fs::path& journal, Instant now) {
    inspectFile(backup, false);
    guarded(backup, [&] {
        SQLite::Database db{backup.string(), SQLite::OPEN_READONLY};
        if (const auto health = check(db, true); !health.sound())
            throw JournalError{JournalTrouble::damaged, backup, health.findings.front()};
    });
    WriterLock::Refusal refusal{};
    const auto lock = WriterLock::acquire(journal, refusal);
    if (!lock)
        throw JournalError{refusal.held ? JournalTrouble::heldByOther : JournalTrouble::noPermission, journal,
                           refusal.why};
    fs::path kept = journal.string() + ".before-" + stampOf(now);
    try {
        if (isThere(journal)) {
            takeInWal(journal);
            for (int more = 2; isThere(kept); ++more) // under a clock that was set back
                kept = journal.string() + ".before-" + stampOf(now) + "-" + std::to_string(more);
            putAside(journal, kept);
        }
        // It goes with its journal, and must be gone before another lies there.
        if (isThere(journal.string() + "-wal"))
            fs::rename(journal.string() + "-wal", kept.string() + "-wal");
        std::error_code ignored;
        fs::remove(journal.string() + "-shm", ignored);
        copyWhole(backup, journal);
    } catch (const fs::filesystem_error& error) {
        throw JournalError{JournalTrouble::cannotWrite, journal, asWritten(error.code().message())};
    }
    return kept;
}

} // namespace panside
