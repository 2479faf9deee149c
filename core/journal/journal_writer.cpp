#include "core/journal/journal_writer.h"

#include "core/journal/inside.h"

#include <iterator>

namespace panside {

JournalWriter::JournalWriter(Journal journal, Listener listener, Pace pace)
    : place_{journal.place()}, journal_{std::move(journal)}, beside_{journal_->beside()},
      listener_{std::move(listener)}, pace_{pace}, scribe_{journal_->standing()} {
    thread_ = std::thread{[this] { run(); }};
}

JournalWriter::JournalWriter(std::filesystem::path place, Standing standing, const JournalError& why, Listener listener,
                             Pace pace)
    : place_{std::move(place)}, listener_{std::move(listener)}, pace_{pace}, scribe_{std::move(standing)} {
    report(why);
    thread_ = std::thread{[this] { run(); }};
}

std::optional<Journal> JournalWriter::beside() const {
    const std::scoped_lock lock{mutex_};
    return beside_ ? std::optional{beside_->beside()} : std::nullopt;
}

// Where nothing could be read of the journal, what is held begins a shift of its own: no other stays open beside it.
void JournalWriter::open(std::vector<Change>& batch) {
    Journal journal = Journal::open(place_);
    requireRight(journal.inside());
    if (const auto open = journal.openShift();
        open && !batch.empty() && std::holds_alternative<BeginShift>(batch.front()))
        batch.insert(batch.begin(), TurnShift{open->id, false});
    auto beside = journal.beside();
    journal_.emplace(std::move(journal));
    const std::scoped_lock lock{mutex_};
    beside_.emplace(std::move(beside));
}

JournalWriter::~JournalWriter() {
    {
        const std::scoped_lock lock{mutex_};
        stop_ = true;
    }
    wake_.notify_all();
    thread_.join();
}

template <class Work>
auto JournalWriter::enter(bool urgent, Work&& work) {
    struct Wake { // after the lock is given back
        std::condition_variable& condition;
        ~Wake() { condition.notify_all(); }
    };
    const Wake wake{wake_};
    const std::scoped_lock lock{mutex_};
    urgent_ = urgent_ || urgent;
    if (!since_)
        since_ = std::chrono::steady_clock::now();
    return work();
}

Scribe::Kept JournalWriter::keep(Fact fact) {
    return enter(!isPlain(fact), [&] { return scribe_.keep(std::move(fact), waiting_); });
}

bool JournalWriter::withdraw(FactId fact, Instant at, std::string by) {
    return enter(true, [&] { return scribe_.withdraw(fact, at, std::move(by), waiting_); });
}

FactId JournalWriter::keepIn(ShiftId shift, Fact fact) {
    return enter(true, [&] { return scribe_.keepIn(shift, std::move(fact), waiting_); });
}

void JournalWriter::withdrawFrom(ShiftId shift, FactId fact, Instant at, std::string by) {
    enter(true, [&] { scribe_.withdrawFrom(shift, fact, at, std::move(by), waiting_); });
}

void JournalWriter::close() {
    enter(true, [&] { scribe_.close(waiting_); });
}

void JournalWriter::carry(Fact setting) {
    enter(true, [&] { scribe_.carry(std::move(setting), waiting_); });
}

ShiftId JournalWriter::name(Instant first) {
    const std::scoped_lock lock{mutex_};
    return scribe_.name(first);
}

std::optional<ShiftId> JournalWriter::openShift() const {
    const std::scoped_lock lock{mutex_};
    return scribe_.openShift();
}

std::vector<Set> JournalWriter::inForce() const {
    const std::scoped_lock lock{mutex_};
    return scribe_.inForce();
}

bool JournalWriter::flush(std::chrono::milliseconds patience) {
    std::unique_lock lock{mutex_};
    urgent_ = true;
    wake_.notify_all();
    return done_.wait_for(lock, patience, [this] { return waiting_.empty() && writing_.empty(); });
}

std::vector<Fact> JournalWriter::unkept() const {
    const std::scoped_lock lock{mutex_};
    std::vector<Fact> facts;
    for (const auto* changes : {&writing_, &waiting_})
        for (const Change& change : *changes)
            if (const auto* keep = std::get_if<KeepFact>(&change))
                facts.push_back(keep->fact);
    return facts;
}

void JournalWriter::run() {
    std::unique_lock lock{mutex_};
    while (true) {
        wake_.wait(lock, [this] { return stop_ || !waiting_.empty(); });
        if (waiting_.empty())
            return;
        wake_.wait_until(lock, *since_ + pace_.gather, [this] { return stop_ || urgent_; });
        writing_ = std::move(waiting_);
        waiting_.clear();
        since_.reset();
        urgent_ = false;
        std::vector<Change> batch = writing_; // unkept() may read the other one meanwhile
        lock.unlock();
        const bool kept = write(batch);
        lock.lock();
        if (kept) {
            writing_.clear();
            done_.notify_all();
            continue;
        }
        waiting_.insert(waiting_.begin(), std::make_move_iterator(writing_.begin()),
                        std::make_move_iterator(writing_.end()));
        writing_.clear();
        if (stop_)
            return;
        since_ = std::chrono::steady_clock::now();
        wake_.wait_for(lock, pace_.again, [this] { return stop_; });
    }
}

// Nothing may leave it: an exception on this thread would end the console, and with it all that is held in memory.
bool JournalWriter::write(std::vector<Change>& batch) {
    const auto trouble = troubleIn(place_, [&] {
        if (!journal_)
            open(batch);
        if (journal_->inside().moved())
            journal_->reopen();
        journal_->commit(batch);
    });
    if (trouble) {
        report(*trouble);
        return false;
    }
    // It is kept: what a listener throws must not have it kept again.
    troubleIn(place_, [&] {
        if (listener_.kept)
            for (const Change& change : batch)
                if (const auto* keep = std::get_if<KeepFact>(&change); keep && !isPlain(keep->fact))
                    listener_.kept(keep->shift, keep->id);
        if (trouble_ && listener_.well)
            listener_.well();
    });
    trouble_.reset();
    return true;
}

void JournalWriter::report(const JournalError& error) {
    if (trouble_ == error.trouble())
        return;
    trouble_ = error.trouble();
    troubleIn(place_, [&] {
        if (listener_.trouble)
            listener_.trouble(error);
    });
}

} // namespace panside
