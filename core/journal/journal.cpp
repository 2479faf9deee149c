#include "core/journal/journal.h"

#include "core/boil/shift_log.h"
#include "core/journal/inside.h"
#include "core/journal/schema.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <unistd.h>

namespace panside {
namespace fs = std::filesystem;
namespace {

fs::path beside(const fs::path& place, const char* ending) { return fs::path{place.string() + ending}; }

bool mayWrite(const fs::path& place) { return ::access(place.c_str(), W_OK) == 0; }

void makeFolder(const fs::path& place) {
    std::error_code error;
    fs::create_directories(place.parent_path(), error);
    if (error)
        throw JournalError{JournalTrouble::noFolder, place.parent_path(), asWritten(error.message())};
}

// The right to write, or why there is none.
void takeRight(Journal::Inside& inside) {
    const fs::path& place = inside.place;
    const bool there = isThere(place);
    if (there && !mayWrite(place)) {
        inside.readOnly.emplace(JournalTrouble::readOnly, place, say("the file may not be written"));
        return;
    }
    WriterLock::Refusal refusal{};
    if (auto lock = WriterLock::acquire(place, refusal)) {
        inside.lock = std::make_shared<WriterLock>(std::move(*lock));
        return;
    }
    if (refusal.held)
        inside.readOnly.emplace(JournalTrouble::heldByOther, place, refusal.why);
    else if (there)
        inside.readOnly.emplace(JournalTrouble::readOnly, place,
                                say("its folder may not be written: %1", {english(refusal.why)}));
    else
        throw JournalError{JournalTrouble::noPermission, place.parent_path(), refusal.why};
}

// What a crew writes down at night is its user's own. A file of an earlier program, or one that was copied, is put
// right by its name: to open and close it beside SQLite would drop SQLite's locks.
void keepFromOthers(const fs::path& place) {
    const int made = ::open(place.c_str(), O_RDWR | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0600);
    if (made >= 0)
        ::close(made);
    for (const char* ending : {"", "-wal", "-shm", ".lock"}) {
        const fs::path file = beside(place, ending);
        struct stat info {};
        if (::lstat(file.c_str(), &info) == 0 && S_ISREG(info.st_mode) && info.st_uid == ::geteuid() &&
            (info.st_mode & 077) != 0 && ::chmod(file.c_str(), info.st_mode & 0700) != 0)
            return; // a disk that knows no rights
    }
}

std::unique_ptr<SQLite::Database> openToWrite(const Journal::Inside& inside) {
    keepFromOthers(inside.place);
    auto db = std::make_unique<SQLite::Database>(inside.place.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE,
                                                 inside.options.patienceMs);
    const auto version = versionOf(*db, inside.place); // before anything is changed
    db->exec("PRAGMA journal_mode=WAL");
    db->exec("PRAGMA synchronous=FULL");
    db->exec("PRAGMA journal_size_limit=16777216");
    if (inside.options.largestBytes) {
        const std::int64_t page = db->execAndGet("PRAGMA page_size");
        db->exec("PRAGMA max_page_count=" + std::to_string(*inside.options.largestBytes / page));
    }
    migrate(*db, version);
    return db;
}

// A path as part of an SQLite URI.
std::string escaped(const fs::path& place) {
    std::string out;
    for (const char c : place.string()) {
        if (c == '%' || c == '?' || c == '#') {
            constexpr std::string_view digits = "0123456789ABCDEF";
            out += {'%', digits[static_cast<unsigned char>(c) >> 4], digits[static_cast<unsigned char>(c) & 15]};
        } else {
            out += c;
        }
    }
    return out;
}

bool isEmptyOrMissing(const fs::path& place) {
    std::error_code error;
    const auto size = fs::file_size(place, error);
    return error || size == 0;
}

// SQLite needs a file beside the journal even to read it, once it was written in WAL mode. In a folder that cannot be
// written it is read without; or, where a crash left facts in the WAL file, from a copy.
std::unique_ptr<SQLite::Database> openWithoutFolder(Journal::Inside& inside) {
    if (isEmptyOrMissing(beside(inside.place, "-wal")))
        return std::make_unique<SQLite::Database>("file:" + escaped(inside.place) + "?immutable=1",
                                                  SQLite::OPEN_READONLY | SQLite::OPEN_URI, inside.options.patienceMs);
    std::string folder = (fs::temp_directory_path() / "panside-XXXXXX").string(); // may throw: see guarded
    if (::mkdtemp(folder.data()) == nullptr)
        throw JournalError{JournalTrouble::cannotRead, inside.place, asWritten(std::strerror(errno))};
    inside.copy = folder;
    const fs::path copy = inside.copy / "journal";
    fs::copy_file(inside.place, copy);
    fs::copy_file(beside(inside.place, "-wal"), beside(copy, "-wal"));
    fs::permissions(copy, fs::perms::owner_read | fs::perms::owner_write);
    fs::permissions(beside(copy, "-wal"), fs::perms::owner_read | fs::perms::owner_write);
    return std::make_unique<SQLite::Database>(copy.string(), SQLite::OPEN_READWRITE, inside.options.patienceMs);
}

std::unique_ptr<SQLite::Database> openToRead(Journal::Inside& inside) {
    try {
        auto db =
            std::make_unique<SQLite::Database>(inside.place.string(), SQLite::OPEN_READONLY, inside.options.patienceMs);
        versionOf(*db, inside.place); // the first read: only now does SQLite look for its other files
        return db;
    } catch (const SQLite::Exception& error) {
        // No right to the folder, or no room on its disk: SQLite cannot make the files that it reads with.
        const int code = error.getErrorCode();
        if (code != SQLITE_CANTOPEN && code != SQLITE_READONLY && code != SQLITE_FULL &&
            error.getExtendedErrorCode() != SQLITE_IOERR_SHMSIZE &&
            error.getExtendedErrorCode() != SQLITE_IOERR_SHMOPEN)
            throw;
        return openWithoutFolder(inside);
    }
}

// Back again after it had gone: only if it is the journal that went, not another with its name.
void requireSame(const Journal::Inside& old) {
    if (!isThere(old.place))
        throw JournalError{JournalTrouble::gone, old.place};
    Journal::Inside seen;
    seen.place = old.place;
    seen.options = old.options;
    seen.inspect(false);
    seen.connect();
    if (old.newest && seen.newest != old.newest)
        throw JournalError{JournalTrouble::gone, old.place, say("another journal lies in its place")};
}

} // namespace

bool isThere(const fs::path& place) {
    std::error_code error;
    const auto status = fs::status(place, error);
    if (fs::exists(status))
        return true;
    if (error && error != std::errc::no_such_file_or_directory && error != std::errc::not_a_directory)
        throw errorOf(error, place);
    return false;
}

JournalError errorOf(const std::error_code& error, const fs::path& place) {
    if (error == std::errc::no_space_on_device || error == std::errc{EDQUOT})
        return JournalError{JournalTrouble::diskFull, place};
    const bool permission = error == std::errc::permission_denied || error == std::errc::operation_not_permitted;
    return JournalError{permission ? JournalTrouble::noPermission : JournalTrouble::cannotRead, place,
                        asWritten(error.message())};
}

JournalError thrownAt(const fs::path& place) {
    try {
        throw;
    } catch (const JournalError& error) {
        return error;
    } catch (const SQLite::Exception& error) {
        return errorOf(error, place);
    } catch (const std::system_error& error) {
        return errorOf(error.code(), place);
    } catch (const std::exception& error) {
        return JournalError{JournalTrouble::cannotWrite, place, asWritten(error.what())};
    } catch (...) {
        return JournalError{JournalTrouble::cannotWrite, place, asWritten("an error without a name")};
    }
}

JournalError errorOf(const SQLite::Exception& error, const fs::path& place) {
    const auto as = [&](JournalTrouble trouble) { return JournalError{trouble, place, asWritten(error.what())}; };
    std::error_code ignored;
    switch (error.getErrorCode()) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return JournalError{JournalTrouble::locked, place};
    case SQLITE_FULL:
        return JournalError{JournalTrouble::diskFull, place};
    case SQLITE_READONLY:
        return as(JournalTrouble::readOnly);
    case SQLITE_NOTADB:
    case SQLITE_CORRUPT:
        return as(JournalTrouble::damaged);
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return as(JournalTrouble::noPermission);
    case SQLITE_CANTOPEN:
        return as(fs::exists(place, ignored) ? JournalTrouble::noPermission : JournalTrouble::gone);
    case SQLITE_IOERR:
        if (!fs::exists(place, ignored))
            return as(JournalTrouble::gone);
        return as(error.getExtendedErrorCode() == SQLITE_IOERR_READ ||
                          error.getExtendedErrorCode() == SQLITE_IOERR_SHORT_READ
                      ? JournalTrouble::cannotRead
                      : JournalTrouble::cannotWrite);
    case SQLITE_CONSTRAINT: // another program wrote what this one was about to write
    case SQLITE_NOMEM:
    case SQLITE_TOOBIG:
    case SQLITE_MISUSE:
        return as(JournalTrouble::cannotWrite);
    default:
        // A table that should be there is not, or a row does not fit: the file is not what it says it is.
        return as(JournalTrouble::damaged);
    }
}

Journal::Inside::~Inside() {
    db.reset();
    std::error_code ignored;
    if (!copy.empty())
        fs::remove_all(copy, ignored);
}

void Journal::Inside::inspect(bool mayBeNew) const {
    const auto opening = OpenFile::whileOpening();
    if (!OpenFile::isOpen(place))
        inspectFile(place, mayBeNew);
}

void Journal::Inside::connect() {
    const auto opening = OpenFile::whileOpening();
    guarded(place, [this] {
        db = lock ? openToWrite(*this) : openToRead(*this);
        file = OpenFile{place};
        version = versionOf(*db, place);
        // A large shift is read in one sweep: no need to keep more of the file than this in memory.
        db->exec("PRAGMA cache_size=-4096");
        SQLite::Statement query{*db, std::string{"SELECT id FROM shift WHERE live=1 ORDER BY "} +
                                         (version < firstSealed ? "id" : "begun") + " DESC LIMIT 1"};
        if (query.executeStep())
            newest = instantOf(query.getColumn(0).getInt64());
    });
}

std::string Shift::name() const { return textOf(id); }

Journal::Journal(std::unique_ptr<Inside> inside) : inside_{std::move(inside)} {}
Journal::~Journal() = default;
Journal::Journal(Journal&&) noexcept = default;
Journal& Journal::operator=(Journal&&) noexcept = default;

Journal Journal::open(const fs::path& place, Access access, JournalOptions options) {
    auto inside = std::make_unique<Inside>();
    std::error_code error;
    const fs::path whole = fs::absolute(place, error);
    inside->place = error ? place : fs::weakly_canonical(whole, error);
    if (error)
        inside->place = whole.empty() ? place : whole;
    inside->options = options;
    inside->inspect(access == Access::write);
    if (access == Access::write) {
        makeFolder(inside->place);
        takeRight(*inside);
    } else {
        inside->readOnly.emplace(JournalTrouble::readOnly, inside->place, say("it was opened to read"));
    }
    inside->connect();
    return Journal{std::move(inside)};
}

Journal Journal::beside() const {
    auto inside = std::make_unique<Inside>();
    inside->place = inside_->place;
    inside->options = inside_->options;
    inside->lock = inside_->lock;
    inside->readOnly = inside_->readOnly;
    inside->connect();
    return Journal{std::move(inside)};
}

void Journal::reopen() {
    const Inside& old = *inside_;
    requireSame(old);
    auto inside = std::make_unique<Inside>();
    inside->place = old.place;
    inside->options = old.options;
    if (old.lock && old.lock->isOn(old.place))
        inside->lock = old.lock;
    else
        takeRight(*inside);
    if (!inside->lock)
        throw JournalError{*inside->readOnly};
    // Closed last of all, a connection takes the WAL file of its name away: that is the other file's by now.
    sqlite3_db_config(old.db->getHandle(), SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
    inside->connect();
    inside_ = std::move(inside);
}

const fs::path& Journal::place() const { return inside_->place; }
const std::optional<JournalError>& Journal::readOnly() const { return inside_->readOnly; }

} // namespace panside
