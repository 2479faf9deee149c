#pragma once
// The one way through: what a probe reads and what a person does becomes a fact, is kept, is folded, and comes back as
// the picture. The console and `panside tend` both stand on it. One thread.
#include "core/boil/boil.h"
#include "core/shift/book_entries.h"
#include "core/shift/keeper.h"
#include "core/shift/rim_alarm.h"
#include "core/shift/shift_clock.h"
#include "core/words/sentence.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace panside {

class Session {
public:
    explicit Session(std::unique_ptr<Keeper> keeper, ShiftClock clock = ShiftClock{});

    // The journal's open shift, before anything else. It is taken up again, and what lies between its last fact and now
    // stays a gap; but after half a day without a fact it is closed instead, and the next fact begins another.
    void resume(Facts facts);

    // Another program writes this journal: its shift is only shown, and `why` is said to whoever enters something.
    // Again with the facts as they are now, whenever they may have changed.
    void watch(const Facts& facts, const std::string& why);

    Instant now() { return clock_.now(); }
    const ShiftClock& clock() const { return clock_; }
    const Boil& boil() { return boil_.fold(); }
    std::optional<ShiftId> openShift() const { return keeper_->openShift(); }
    // Whose facts the board shows: the open shift, or the last one.
    std::optional<ShiftId> shownShift() const { return shift_; }
    // The settings in force, or that the next shift would begin with.
    std::vector<Set> settings() const { return keeper_->inForce(); }
    // A setting for the next shift.
    void carry(const Set& setting) { keeper_->carry({now(), setting}); }
    // The picture at a moment, with the alarm that only the session knows of.
    Picture pictureAt(Instant moment);
    Picture picture() { return pictureAt(now()); }

    // The house's ledger, whenever it was read anew: tanks that no gauge reads call by it.
    // Between two shifts the sugar that it finds in the pans is carried into the next one.
    void knows(std::shared_ptr<const HouseLedger> house);

    // What a probe has just read. Folded at once, on the disk within a second. More than four readings a
    // second from one probe say nothing more of a pan: those between are left out. After `shift_end` nothing is taken
    // until a person begins the next shift.
    void read(Fact reading);
    // Facts of a source that is probe and crew in one: the rehearsal.
    void follow(std::vector<Fact> facts);

    // What a person did or typed, at `fact.at`; earlier than now it is marked as entered now. On return it is on the
    // disk, or `kept` is false: it is tried again each second, and an alarm stands while that fails.
    struct Entered {
        FactId id;
        bool kept;
    };
    struct Refused {
        Sentence why;
    };
    using Answer = std::variant<Entered, Refused>;
    // A setting: of the shift that is shown, or, where there is none, of the next one. nullopt: it was taken.
    std::optional<Refused> set(const Fact& setting);
    Answer enter(Fact fact);
    // Many at once, in one write; an answer for each.
    std::vector<Answer> enter(std::vector<Fact> facts);

    // Takes back the last thing that a person entered, and says what it was; nullopt when there is none left in the
    // shift.
    std::optional<Fact> undo();
    // What undo() would take back. That an alarm was seen is taken back for half a minute only: afterwards the key
    // means what was entered before.
    const Fact* lastEntered();

    // Rows of the day book go there and not into the shift: enter() keeps them, undo() takes them back, correct() puts
    // them right. These are in memory only, by time: all of them in a rehearsal; else those that no disk took yet.
    const std::vector<Boil::Entry>& heldBook() const { return book_.held(); }
    // Moves with every fact but plain readings, entered, withdrawn or put right.
    long long told() const { return told_; }

    // What was taken back or put right since this was asked the last time, as it stood.
    std::vector<Fact> takenBack() { return std::exchange(takenBack_, {}); }

    // Corrects an entry of any shift or day book: withdraws it and, if there is one, keeps what it should have been,
    // marked as entered now. The old one stays in the journal, as withdrawn. A shift that is over stays over.
    Answer correct(ShiftId shift, FactId fact, std::optional<Fact> instead);

    // Lets go of the journal, so that another can be put in its place: from here on nothing is kept, until takeUp().
    void letGo();
    void takeUp(std::unique_ptr<Keeper> keeper, Facts facts);
    // All of the shift that is going on is in memory only, since the journal could not be opened: letGo() holds it, and
    // takeUp() keeps it in the journal that it is given.
    bool holdsItsShift() const;
    // The same journal with the right to write, for another thread; none where this session keeps nothing.
    std::optional<Journal> journalBeside() const { return keeper_->beside(); }

    // Once a second: notices a moved wall clock, keeps the loads of wood that the stack showed, and what is still held
    // of the day book.
    void tick();
    // Everything to the disk now; false if that failed.
    bool flush() { return keeper_->flush(std::chrono::seconds{5}); }

    // Why facts cannot be kept; none when all is well.
    std::optional<JournalError> journalTrouble() const { return keeper_->trouble(); }
    // The same in English words, for a terminal; empty when all is well.
    std::string trouble() const {
        const auto error = journalTrouble();
        return error ? error->what() : std::string{};
    }

private:
    // The disk may take so long before a fact is shown as not kept yet.
    static constexpr std::chrono::milliseconds patience{250};

    std::optional<Sentence> objection(const Fact& fact, Instant now) const;
    FactId keep(Fact fact, bool entered); // `entered`: by a person, who may take it back
    static std::optional<Sentence> tooFarAhead(const Fact& fact, Instant now);
    struct Undoable {
        FactId id;
        Fact fact;
        long long order = 0; // of entry
    };
    const Undoable* lastOfShift();
    bool bookIsNext(const Undoable* ofShift) const; // of what undo() takes back
    void carryLearned();
    void carryPans(const HouseLedger& house);
    void tellSugar(Fact& fact, Instant now) const;
    bool tooSoon(const Reading& reading, Instant at);
    void addTrouble(Picture& picture);
    bool hearRims(const Fact& fact);
    void keepNoticed();
    void deny(ShiftId shift, const Fact& noticed);
    std::optional<Fact> factOf(ShiftId shift, FactId id) const;

    std::unique_ptr<Keeper> keeper_;
    ShiftClock clock_;
    Boil boil_;
    std::optional<ShiftId> shift_;  // whose facts are folded: it may be over
    bool watched_ = false;          // a shift has been going on since the program began
    std::vector<Undoable> entered_; // what undo() walks back through
    BookEntries book_;              // the day book's
    long long told_ = 0;
    std::vector<Fact> takenBack_;
    std::set<FactId> seen_; // of the shift that is only shown
    std::map<std::pair<Series, std::string>, Instant> lastRead_;
    std::optional<Instant> troubledSince_;
    std::shared_ptr<const HouseLedger> house_; // as it was read last
    RimAlarm rims_;
    std::vector<Fact> held_;              // between letGo and takeUp: what never reached the disk
    std::optional<Sentence> onlyWatches_; // why nothing can be entered; none: it can
};

} // namespace panside
