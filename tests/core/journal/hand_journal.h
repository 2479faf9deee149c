#pragma once
// A journal that is written in by hand, one thing at a time; the console has a thread of its own for it.
#include "core/journal/journal.h"

#include <utility>

namespace panside {

class HandJournal : public Journal {
public:
    HandJournal(Journal journal) : Journal{std::move(journal)} {}

    Scribe::Kept append(Fact fact) {
        std::vector<Change> changes;
        auto kept = scribe().keep(std::move(fact), changes);
        keep(changes);
        return kept;
    }
    bool withdraw(FactId fact, Instant at, std::string by = {}) {
        std::vector<Change> changes;
        const bool known = scribe().withdraw(fact, at, std::move(by), changes);
        keep(changes);
        return known;
    }
    void close() { // without a shift_end
        std::vector<Change> changes;
        scribe().close(changes);
        keep(changes);
    }
    void carry(Fact setting) {
        std::vector<Change> changes;
        scribe().carry(std::move(setting), changes);
        keep(changes);
    }
    void withdrawFrom(ShiftId shift, FactId fact, Instant at, std::string by = {}) {
        std::vector<Change> changes;
        scribe().withdrawFrom(shift, fact, at, std::move(by), changes);
        keep(changes);
    }
    FactId appendTo(ShiftId shift, Fact fact) {
        std::vector<Change> changes;
        scribe().keepIn(shift, std::move(fact), changes);
        keep(changes);
        return std::get<KeepFact>(changes.front()).id;
    }

private:
    Scribe& scribe() { return scribe_ ? *scribe_ : scribe_.emplace(standing()); }
    // If the disk refuses, the scribe must not believe that it was kept: it looks again next time.
    void keep(std::vector<Change>& changes) {
        try {
            if (!changes.empty())
                commit(changes);
        } catch (...) {
            scribe_.reset();
            throw;
        }
    }
    std::optional<Scribe> scribe_;
};

} // namespace panside
