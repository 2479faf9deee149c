#include "ui/frame/desks.h"

#include "ui/ledger/grade_form.h"
#include "ui/ledger/ledger_desk.h"
#include "ui/vessels/vessels_screen.h"
#include "ui/words/said.h"

namespace panside {
namespace {

class VesselsDesk : public LedgerDeskOf<VesselsScreen> {
public:
    explicit VesselsDesk(Shell& shell) : LedgerDeskOf{shell, new VesselsScreen} {
        leavesFrom(screen_);
        connect(screen_, &VesselsScreen::deedWanted, this, &VesselsDesk::openForm);
        connect(screen_, &VesselsScreen::traceWanted, this,
                [this](const QString& name) { openTrace(shell_, *screen_, name); });
        connect(screen_, &VesselsScreen::told, this, &VesselsDesk::tell);
    }
    void open() override {
        chooseLast_ = true;
        LedgerDesk::open();
    }

protected:
    void show(const HouseLedger* house) override {
        const auto view = vesselsView(house, session().settings(), units());
        screen_->display(view, drawsView(house, session().settings(), units()));
        screen_->setDeeds(deeds());
        if (!chooseLast_ || !house || !shell_.house().isFresh())
            return;
        chooseLast_ = false;
        // What was just drawn is what one comes for: also in the moment before the house knows of it.
        screen_->choose(lastDrawn(view, *house, session().now()));
    }

private:
    std::vector<Deed> deeds() const {
        std::vector<Deed> all{Deed::moved,  Deed::dipped,       Deed::graded,  Deed::lost,   Deed::sold,
                              Deed::bought, Deed::pans_emptied, Deed::cleaned, Deed::tested, Deed::vessel};
        return all;
    }
    void openForm(Deed deed, const QString& vessel) {
        if (deed == Deed::graded)
            return enter(gradeForm(form(deed), law(), vessel));
        BookForm filled = form(deed);
        for (const Key key : {Key::from, Key::in, Key::vessel, Key::of})
            if (const BookField* field = filled.field(key);
                field && deed != Deed::bought && (key != Key::from || keyOf(deed, key).text == DayText::vessel))
                filled.put(key, vessel);
        if (const auto known = shell_.house().ledger();
            known && (deed == Deed::moved || deed == Deed::sold || deed == Deed::lost))
            filled.live = [known, shown = units()](const BookForm& typed) {
                return leavesSentence(known->ledger(), typed, shown);
            };
        if (deed == Deed::moved || deed == Deed::sold)
            filled.caution = Desk::tr("Hot syrup burns deeply: carry it covered. What goes into a vessel that is not "
                                      "empty is a blend.");
        if (deed == Deed::cleaned)
            filled.caution = Desk::tr("Rinse with plenty of water after every cleaner, and never mix two.");
        if (deed == Deed::pans_emptied)
            filled.caution = Desk::tr("Only emptying the pans breaks the trace through them. Empty them cold.");
        enter(std::move(filled));
    }
    // The draw is put right in its own shift: it went there.
    void tell(const LostDraw& draw, const QString& vessel) {
        Fact now = draw.fact;
        auto* closed = std::get_if<DrawClosed>(&now.what);
        if (!closed)
            return;
        closed->to = vessel.toStdString();
        const auto answer = session().correct(draw.shift, draw.id, now);
        if (const auto* refused = std::get_if<Session::Refused>(&answer))
            return shell_.say(Desk::tr("Not kept: %1").arg(said(refused->why, "Session")));
        shell_.say(Desk::tr("Kept: %1 went into %2").arg(draw.words, vessel));
        shell_.house().touched();
        shell_.refreshSoon();
    }

    bool chooseLast_ = false;
};

} // namespace

Desk* vesselsDesk(Shell& shell) { return new VesselsDesk{shell}; }

} // namespace panside
