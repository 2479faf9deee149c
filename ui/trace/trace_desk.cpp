#include "ui/trace/trace_desk.h"
#include "ui/files/file_pick.h"

#include "core/files/text_file.h"
#include "ui/ledger/ledger_desk.h"
#include "ui/report/ledger_paper.h"
#include "ui/trace/trace_screen.h"

namespace panside {
namespace {

class TraceDesk : public LedgerDesk {
public:
    TraceDesk(Shell& shell, TraceScreen* screen) : LedgerDesk{shell, screen}, screen_{screen} {
        leavesFrom(screen);
        connect(screen, &TraceScreen::wanted, this, [this](const QString& name) {
            if (!asked_.isEmpty() && asked_ != name)
                before_ << asked_;
            ask(name);
        });
        connect(screen, &TraceScreen::backWanted, this, [this] {
            if (!before_.isEmpty())
                ask(before_.takeLast());
        });
        connect(screen, &TraceScreen::recallWanted, this, &TraceDesk::recall);
    }
    void wear(const Dress& dress) override {
        screen_->wear(dress);
        if (screen_->isVisible())
            showHouse();
    }

protected:
    void show(const HouseLedger* house) override {
        if (!house)
            return screen_->display({Desk::tr("Reading the book …"), {}, {}}, false);
        QStringList names;
        const auto& lots = house->ledger().lots();
        for (auto lot = lots.rbegin(); lot != lots.rend() && names.size() < 3; ++lot)
            names << QString::fromStdString(lot->code);
        const auto context = shell_.house().context(units());
        for (const QString& vessel : context->vessels)
            if (names.size() < 6)
                names << vessel;
        screen_->offer(names);
        if (asked_.isEmpty() && !names.isEmpty())
            asked_ = names.front();
        if (asked_.isEmpty())
            return screen_->display({Desk::tr("Nothing can be traced yet: no vessel and no lot has a name."), {}, {}},
                                    false);
        ask(asked_);
    }

private:
    void ask(const QString& name) {
        asked_ = name;
        if (!house())
            return;
        const Ledger& ledger = house()->ledger();
        const auto trace = traceOf(ledger, name.toStdString());
        if (!trace) {
            QStringList like;
            for (const auto& one : namesLike(ledger, name.toStdString()))
                like << QString::fromStdString(one);
            return screen_->refuse(name, like);
        }
        lot_ = trace->kind == TraceKind::lot ? ledger.lotNamed(trace->of) : std::nullopt;
        screen_->display(traceView(ledger, *trace, units()), lot_.has_value());
    }
    void recall() {
        if (!lot_ || !house())
            return;
        // As it is now: while a place is picked the house may be read anew.
        const LedgerPaper paper = recallOnPaper(house()->ledger(), *lot_, units());
        const QString place = pickToSave(screen_, shell_.dress(), Desk::tr("Mock recall on paper"),
                                         QStringLiteral("recall.pdf"), {"pdf", "xlsx", "csv"});
        if (place.isEmpty())
            return;
        try {
            writePaper(paper, place.toStdString());
            shell_.say(Desk::tr("Written: %1").arg(place));
        } catch (const FileFault& fault) {
            shell_.say(QString::fromStdString(fault.what()));
        }
    }

    TraceScreen* screen_;
    QString asked_;
    QStringList before_;
    std::optional<std::size_t> lot_;
};

} // namespace

Desk* traceDesk(Shell& shell) { return new TraceDesk{shell, new TraceScreen}; }

} // namespace panside
