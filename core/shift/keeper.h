#pragma once
#include "core/journal/journal_writer.h"

#include <memory>

namespace panside {

// Where a session's facts go: numbers them, begins and ends shifts, keeps them.
class Keeper {
public:
    Keeper() = default;
    Keeper(const Keeper&) = delete;
    Keeper& operator=(const Keeper&) = delete;
    virtual ~Keeper() = default;

    // These return at once; what they were given is on the disk soon after (see flush).
    virtual Scribe::Kept keep(Fact fact) = 0;
    virtual void withdraw(FactId fact, Instant at) = 0;
    virtual void close() = 0;
    virtual void carry(Fact setting) = 0;

    virtual std::optional<ShiftId> openShift() const = 0;
    // The settings in force, or that the next shift would begin with.
    virtual std::vector<Set> inForce() const = 0;
    // Waits until all that was given is on the disk; false if it is not in that time.
    virtual bool flush(std::chrono::milliseconds patience) = 0;
    // As withdraw and keep, in a shift that is over: a correction.
    virtual void withdrawFrom(ShiftId shift, FactId fact, Instant at) = 0;
    virtual FactId keepIn(ShiftId shift, Fact fact) = 0; // 0: the journal will number it
    // A name for a day book that is begun beside: of no shift, kept already or not yet.
    virtual ShiftId name(Instant first) { return first; }
    // Another connection to the same journal with the right to write, for another thread; none where nothing is kept.
    virtual std::optional<Journal> beside() const = 0;
    // Why facts cannot be kept now; none when all is well.
    virtual std::optional<JournalError> trouble() const = 0;
    // What is held in memory only.
    virtual std::vector<Fact> unkept() const = 0;
};

// A rehearsal: nothing is kept.
std::unique_ptr<Keeper> keeperOfNothing();
// The journal, which must be open to write.
std::unique_ptr<Keeper> keeperIn(Journal journal);
// A journal that cannot be opened now: all is held, and it is tried again by itself. `standing` is what could be read.
std::unique_ptr<Keeper> keeperWaitingFor(const std::filesystem::path& place, Standing standing,
                                         const JournalError& why);

} // namespace panside
