#pragma once
#include "core/journal/journal.h"

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace panside {

// Keeps facts on a thread of its own, so that no commit ever holds up the drawing. What a person did is written at
// once; readings are gathered and written at most a second after they came. While the disk refuses, everything is held
// in memory and tried again; nothing is lost as long as the program lives.
class JournalWriter {
public:
    // Called on the writer's thread: pass on, touch no widget.
    struct Listener {
        std::function<void(ShiftId, FactId)> kept;        // a fact that is no plain reading is on the disk
        std::function<void(const JournalError&)> trouble; // when it begins, and when its kind changes
        std::function<void()> well;                       // all that was held is kept
    };
    struct Pace {
        std::chrono::milliseconds gather{900}; // readings wait so long for others: with the write itself, a second
        std::chrono::milliseconds again{1000}; // from a failed try to the next
    };

    // The journal must be open to write.
    JournalWriter(Journal journal, Listener listener, Pace pace);
    // One that cannot be opened now, for the reason `why`: it is tried again as a failed write is, and meanwhile all is
    // held. `standing` is what could be read of it; nothing, where that was none.
    JournalWriter(std::filesystem::path place, Standing standing, const JournalError& why, Listener listener,
                  Pace pace);
    JournalWriter(Journal journal, Listener listener)
        : JournalWriter{std::move(journal), std::move(listener), Pace{}} {}
    ~JournalWriter(); // writes what is left, one try
    JournalWriter(const JournalWriter&) = delete;
    JournalWriter& operator=(const JournalWriter&) = delete;

    // These return at once, with the number the fact will have. See Scribe.
    Scribe::Kept keep(Fact fact);
    bool withdraw(FactId fact, Instant at, std::string by = {});
    FactId keepIn(ShiftId shift, Fact fact); // 0: the listener is told its number
    void withdrawFrom(ShiftId shift, FactId fact, Instant at, std::string by = {});
    void close();
    void carry(Fact setting);

    // A name for a book that is begun beside the shifts: of no shift, also of none that waits to be written.
    ShiftId name(Instant first);

    std::optional<ShiftId> openShift() const;
    std::vector<Set> inForce() const; // what a shift would begin with now
    // Waits until all that was given so far is on the disk; false if it is not in that time.
    bool flush(std::chrono::milliseconds patience);
    // What is held in memory only, to be rescued elsewhere if need be.
    std::vector<Fact> unkept() const;
    // Another connection with the right to write; none as long as the journal was never open. May throw JournalError.
    std::optional<Journal> beside() const;

private:
    template <class Work>
    auto enter(bool urgent, Work&& work);
    void run();
    bool write(std::vector<Change>& batch);
    void report(const JournalError& error);

    void open(std::vector<Change>& batch);

    std::filesystem::path place_;
    std::optional<Journal> journal_; // the writer's thread's own, once that runs
    std::optional<Journal> beside_;  // to make others of; under the mutex
    Listener listener_;
    Pace pace_;
    mutable std::mutex mutex_;
    std::condition_variable wake_, done_;
    Scribe scribe_;
    std::vector<Change> waiting_, writing_;
    std::optional<std::chrono::steady_clock::time_point> since_; // when the first of those waiting came
    bool urgent_ = false, stop_ = false;
    std::optional<JournalTrouble> trouble_; // the writer's thread's own
    std::thread thread_;
};

} // namespace panside
