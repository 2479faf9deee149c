#pragma once
// The journal: every fact of every shift, in one SQLite file. Append-only; one writer, any number of readers.
#include "core/journal/journal_error.h"
#include "core/journal/packing.h"
#include "core/journal/scribe.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace panside {

struct Shift {
    ShiftId id;
    bool open;
    bool imported;
    std::string name() const; // as people type it
};

struct JournalOptions {
    int patienceMs = 2000;                    // how long to wait for another program's lock
    std::optional<std::int64_t> largestBytes; // refuse to grow beyond (diskFull); none: as far as the disk goes
};

// Every call may throw JournalError; what a call that throws would have written is not kept in any part.
// A Journal is used by one thread at a time; another thread takes its own (beside, or open to read).
class Journal {
public:
    enum class Access : std::uint8_t { write, read };

    // Opens or makes the file, and the folders above it. Where it cannot be written because another console holds it,
    // or for want of permission, it is opened to read and readOnly() says why. A file that is not ours, or of a later
    // version, is refused and stays as it was.
    static Journal open(const std::filesystem::path& place, Access access = Access::write, JournalOptions options = {});
    // A second connection to the same file with the same right to write, for another thread of this program.
    Journal beside() const;

    ~Journal();
    Journal(Journal&&) noexcept;
    Journal& operator=(Journal&&) noexcept;

    const std::filesystem::path& place() const;
    const std::optional<JournalError>& readOnly() const;

    // In the order in which they were begun here, whatever the clock said then; imported ones among them, by time.
    std::vector<Shift> shifts() const;
    std::vector<Shift> books() const; // day books (day_books.h), by time
    // The last that was begun here, if it is open.
    std::optional<Shift> openShift() const;
    // The latest moment of which there is a fact that was kept here, not imported. A wall clock that lies before it is
    // wrong, or was.
    std::optional<Instant> latest() const;
    // The shift that a person named: its whole name, or as much of its beginning as only one shift has. Throws
    // noSuchShift.
    Shift shiftNamed(std::string_view name) const;
    // A shift's facts by time, equal times in the order they came; withdrawn ones left out.
    Facts facts(ShiftId shift) const;
    Facts openFacts() const; // of the open shift; none where there is none
    // The same without the probe's plain readings, however many they are: what was done, said, set and typed in.
    std::vector<Boil::Entry> deeds(ShiftId shift) const;
    struct Withdrawn {
        Boil::Entry entry;
        Instant at; // when it was withdrawn
        std::string by;
    };
    std::vector<Withdrawn> withdrawn(ShiftId shift) const;
    // The same facts one by one, in little memory however long the shift; ends early when `visitor` returns false.
    // `only`: of the probe's plain readings none but these.
    void visit(ShiftId shift, const std::function<bool(FactId, const Fact&)>& visitor,
               std::optional<Series> only = {}) const;

    // On return everything is on the disk (WAL, synchronous=FULL), or all of it is not.
    void commit(std::span<Change> changes);
    // The same of one fact, in a shift or day book that is there; its number.
    FactId appendTo(ShiftId shift, Fact fact);
    Standing standing() const;
    // After the file had gone: opens it again where it was. Throws `gone` while it is not there, or is another.
    void reopen();

    struct Inside; // core/journal/inside.h
    Inside& inside() const { return *inside_; }

private:
    explicit Journal(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

} // namespace panside
