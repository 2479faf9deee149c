#include "core/shift/keeper.h"

#include <mutex>

namespace panside {
namespace {

class Nothing : public Keeper {
public:
    Scribe::Kept keep(Fact fact) override { return scribe_.keep(std::move(fact), nowhere()); }
    void withdraw(FactId fact, Instant at) override { scribe_.withdraw(fact, at, {}, nowhere()); }
    void close() override { scribe_.close(nowhere()); }
    void carry(Fact setting) override { scribe_.carry(std::move(setting), nowhere()); }
    std::optional<ShiftId> openShift() const override { return scribe_.openShift(); }
    std::vector<Set> inForce() const override { return scribe_.inForce(); }
    bool flush(std::chrono::milliseconds) override { return true; }
    void withdrawFrom(ShiftId, FactId, Instant) override {}
    FactId keepIn(ShiftId, Fact) override { return 0; }
    std::optional<Journal> beside() const override { return std::nullopt; }
    std::optional<JournalError> trouble() const override { return {}; }
    std::vector<Fact> unkept() const override { return {}; }

private:
    std::vector<Change>& nowhere() {
        changes_.clear();
        return changes_;
    }
    Scribe scribe_{Standing{}};
    std::vector<Change> changes_;
};

class InJournal : public Keeper {
public:
    explicit InJournal(Journal journal) : writer_{std::move(journal), listener()} {}
    InJournal(const std::filesystem::path& place, Standing standing, const JournalError& why)
        : writer_{place, std::move(standing), why, listener(), {}} {}

    Scribe::Kept keep(Fact fact) override { return writer_.keep(std::move(fact)); }
    void withdraw(FactId fact, Instant at) override { writer_.withdraw(fact, at); }
    void close() override { writer_.close(); }
    void carry(Fact setting) override { writer_.carry(std::move(setting)); }
    std::optional<ShiftId> openShift() const override { return writer_.openShift(); }
    std::vector<Set> inForce() const override { return writer_.inForce(); }
    bool flush(std::chrono::milliseconds patience) override { return writer_.flush(patience); }
    void withdrawFrom(ShiftId shift, FactId fact, Instant at) override { writer_.withdrawFrom(shift, fact, at); }
    FactId keepIn(ShiftId shift, Fact fact) override { return writer_.keepIn(shift, std::move(fact)); }
    ShiftId name(Instant first) override { return writer_.name(first); }
    std::optional<Journal> beside() const override { return writer_.beside(); }
    std::vector<Fact> unkept() const override { return writer_.unkept(); }
    std::optional<JournalError> trouble() const override {
        const std::lock_guard lock{mutex_};
        return trouble_;
    }

private:
    JournalWriter::Listener listener() {
        return {.kept = {}, .trouble = [this](const JournalError& error) { say(error); }, .well = [this] { say({}); }};
    }
    void say(std::optional<JournalError> trouble) {
        const std::lock_guard lock{mutex_};
        trouble_ = std::move(trouble);
    }
    mutable std::mutex mutex_;
    std::optional<JournalError> trouble_;
    JournalWriter writer_; // last: its thread speaks to what stands above
};

} // namespace

std::unique_ptr<Keeper> keeperOfNothing() { return std::make_unique<Nothing>(); }

std::unique_ptr<Keeper> keeperIn(Journal journal) { return std::make_unique<InJournal>(std::move(journal)); }

std::unique_ptr<Keeper> keeperWaitingFor(const std::filesystem::path& place, Standing standing,
                                         const JournalError& why) {
    return std::make_unique<InJournal>(place, std::move(standing), why);
}

} // namespace panside
