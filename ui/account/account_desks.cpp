#include "ui/frame/desks.h"

#include "ui/account/account_view.h"
#include "ui/account/flow_screen.h"
#include "ui/ledger/ledger_desk.h"

namespace panside {
namespace {

// A list with nothing to press but the way back.
class LeafDesk : public ListDesk {
public:
    using View = ListView (*)(const Ledger*, Units);
    LeafDesk(Shell& shell, const QString& name, View view) : ListDesk{shell, name}, view_{view} {}

protected:
    void show(const HouseLedger* house) override {
        ListView view = view_(house ? &house->ledger() : nullptr, units());
        view.keys = {wayToBoard()};
        screen_->display(view);
    }
    void act(int key) override {
        if (key == Qt::Key_Escape)
            shell_.showBoard();
    }

private:
    View view_;
};

class SugarDesk : public LedgerDesk {
public:
    SugarDesk(Shell& shell, FlowScreen* screen) : LedgerDesk{shell, screen}, screen_{screen} { leavesFrom(screen); }
    void wear(const Dress& dress) override {
        dress_ = dress;
        if (screen_->isVisible())
            showHouse();
    }

protected:
    void show(const HouseLedger* house) override {
        dress_ = shell_.dress();
        screen_->display(flowView(house ? &house->ledger() : nullptr, units()), dress_);
    }

private:
    FlowScreen* screen_;
    Dress dress_;
};

} // namespace

Desk* sugarDesk(Shell& shell) { return new SugarDesk{shell, new FlowScreen}; }
Desk* accountDesk(Shell& shell) { return new LeafDesk{shell, QStringLiteral("account"), &accountView}; }
Desk* tellsDesk(Shell& shell) { return new LeafDesk{shell, QStringLiteral("tells"), &tellsView}; }

} // namespace panside
