#pragma once
// The one way through: what a probe reads and what a person does becomes a fact, is kept, is folded, and comes back as
// the picture. The console and `panside tend` both stand on it. One thread.
#include "app/keeping.h"
#include "app/shift_clock.h"
#include "core/boil/boil.h"

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace panside {

class Session {
public:
    // Without a keeping nothing is kept on disk: a rehearsal.
    explicit Session(std::unique_ptr<Keeping> keeping, ShiftClock clock = ShiftClock{});

    // Before the first fact: the settings that a new shift starts with.
    void carryOver(std::vector<Set> settings);
    // Before the first fact: an open shift is taken up again. What lies between its last fact and now stays a gap.
    void resume(std::vector<Boil::Entry> entries);

    Instant now() { return clock_.now(); }
    const ShiftClock& clock() const { return clock_; }
    const Boil& boil() const { return boil_; }
    // The picture now, with the alarms that only the session knows of.
    Picture picture();

    // What a probe read just now. Folded at once, on the disk within a second (see tick). More than four readings a
    // second from one probe say nothing more of a pan: those between are left out. After `shift_end` nothing is taken
    // until a person begins the next shift.
    void read(const std::vector<What>& readings);

    // What a person did or typed, at `fact.at`; earlier than now it is marked as entered now. On return it is on the
    // disk, or `kept` is false, an alarm stands, and it is tried again each second.
    struct Entered {
        FactId id;
        bool kept;
    };
    struct Refused {
        std::string why;
    };
    std::variant<Entered, Refused> enter(Fact fact);
    // Many at once, in one write; an answer for each.
    std::vector<std::variant<Entered, Refused>> enter(std::vector<Fact> facts);

    // Takes back the last thing that a person entered, and says what it was; nullopt when there is none left in the
    // shift, or the disk would not have it.
    std::optional<Fact> undo();
    // The last thing a person entered, which undo() would take back.
    const Fact* lastEntered() const { return entered_.empty() ? nullptr : &entered_.back().fact; }

    // Once a second: keeps the readings, tries again what could not be kept, notices a moved wall clock.
    void tick();
    // Everything to the disk now; false if that failed.
    bool flush();

    // Since when facts cannot be kept, and why; empty when all is well.
    const std::string& trouble() const { return trouble_; }
    bool keeps() const { return keeping_ != nullptr; }
    // Whether a shift is going on: begun and not ended.
    bool inShift() const;

private:
    struct Said {
        FactId id;                  // in the fold
        std::optional<FactId> kept; // in the journal
        Fact fact;
    };
    struct Waiting {
        FactId id;
        Fact fact;
        bool beginsShift;
    };
    std::optional<std::string> objection(const Fact& fact, Instant now) const;
    void begin(Instant at);
    FactId take(Fact fact);
    bool keepGroup();
    bool tooSoon(const Reading& reading, Instant at);
    void addTrouble(Picture& picture) const;
    std::optional<Instant> endedAt() const;

    std::unique_ptr<Keeping> keeping_;
    ShiftClock clock_;
    Boil boil_;
    std::vector<Set> carried_;
    bool begun_ = false;
    bool beginsNext_ = false; // the next fact is the first of a shift
    FactId nextId_ = 1;
    std::vector<Waiting> waiting_; // folded, not yet on the disk, in order
    std::vector<Said> entered_;    // what undo() walks back through
    std::map<std::pair<Series, std::string>, Instant> lastRead_;
    std::string trouble_;
    std::optional<Instant> troubledSince_;
};

// The settings in force after these facts, with what was learned of the probe: what the next shift starts with.
std::vector<Set> settingsAfter(const std::vector<Boil::Entry>& facts);

} // namespace panside
