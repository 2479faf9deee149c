#pragma once
// What a screen's desk may ask of the console around it. The console is one; a test may be another.
#include "core/shift/session.h"
#include "ui/frame/choices.h"
#include "ui/keys/actions.h"
#include "ui/look/dress.h"

#include <filesystem>

namespace panside {

class LookedAt;
struct BookForm;
class House;
class ProbeSource;
class RehearsalFeed;
class ShiftTrace;
class Voice;

class Shell {
public:
    Shell() = default;
    Shell(const Shell&) = delete;
    Shell& operator=(const Shell&) = delete;
    virtual ~Shell() = default;

    virtual Session& session() = 0;
    // Where the journal and the probe file lie; empty in a rehearsal that is kept nowhere.
    virtual const std::filesystem::path& journalPlace() const = 0;
    virtual const std::filesystem::path& probePlace() const = 0;
    virtual ProbeSource* probes() = 0;
    virtual RehearsalFeed* rehearsal() = 0; // none on a journal of one's own
    virtual Voice& voice() = 0;
    virtual LookedAt& lookedAt() = 0;

    // The picture and the chart's traces as the board shows them.
    virtual const Picture& picture() const = 0;
    virtual const ShiftTrace& trace() const = 0;
    // A reading or anything else came in: shown within a frame's time, however often this is called.
    virtual void refreshSoon() = 0;

    virtual const Choices& choices() const = 0;
    virtual void choose(Choices choices) = 0;
    virtual const Dress& dress() const = 0;

    virtual void showBoard() = 0;
    virtual void act(Action action) = 0;
    // A line at the foot for half a minute: what was kept, and that it can be taken back.
    virtual void say(const QString& words) = 0;
    // What stands at the foot until it is changed; empty: nothing.
    virtual void setNotice(const QString& words) = 0;
    // Enters what a person did, and says at the foot what was kept.
    virtual void keep(const std::vector<Fact>& facts) = 0;
    // The house's ledger, and the sheet for a row of its day book.
    virtual House& house() = 0;
    virtual void openBook(BookForm form) = 0;
};

} // namespace panside
