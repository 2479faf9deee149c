#include "ui/frame/desks.h"

#include "ui/ledger/ledger_desk.h"
#include "ui/report/ledger_paper.h"
#include "ui/trace/trace_screen.h"

namespace panside {
namespace {

class TraceDesk : public LedgerDeskOf<TraceScreen> {
public:
    explicit TraceDesk(Shell& shell) : LedgerDeskOf{shell, new TraceScreen} {
        leavesFrom(screen_);
        connect(screen_, &TraceScreen::wanted, this, [this](const QString& name) {
            if (!asked_.isEmpty() && asked_ != name)
                before_ << asked_;
            ask(name);
        });
        connect(screen_, &TraceScreen::backWanted, this, [this] {
            if (!before_.isEmpty())
                ask(before_.takeLast());
        });
        connect(screen_, &TraceScreen::recallWanted, this, &TraceDesk::recall);
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
        const LedgerPaper paper = recallOnPaper(house()->ledger(), *lot_, units());
        writeTo(Desk::tr("Mock recall on paper"), QStringLiteral("recall.pdf"), {"pdf", "xlsx", "csv"},
                [&](const std::string& place) { writePaper(paper, place); });
    }

    QString asked_;
    QStringList before_;
    std::optional<std::size_t> lot_;
};

} // namespace

Desk* traceDesk(Shell& shell) { return new TraceDesk{shell}; }

void openTrace(Shell& shell, const QWidget& from, const QString& name) {
    shell.act(Action::trace);
    if (auto* trace = from.window()->findChild<TraceScreen*>())
        emit trace->wanted(name);
}

} // namespace panside
