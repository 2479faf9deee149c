#include "ui/account/account_desks.h"

#include "ui/account/account_view.h"
#include "ui/account/flow_screen.h"
#include "ui/ledger/ledger_desk.h"

namespace panside {
namespace {

// A list with nothing to press but the way back.
class LeafDesk : public LedgerDesk {
public:
    using View = ListView (*)(const Ledger*, Units);
    LeafDesk(Shell& shell, ListPage* page, View view) : LedgerDesk{shell, page}, page_{page}, view_{view} {
        connect(page, &ListPage::pressed, this, [this](int key) {
            if (key == Qt::Key_Escape)
                shell_.showBoard();
        });
    }
    void wear(const Dress& dress) override {
        page_->wear(dress);
        if (page_->isVisible())
            showHouse();
    }

protected:
    void show(const HouseLedger* house) override {
        ListView view = view_(house ? &house->ledger() : nullptr, units());
        view.keys = {wayToBoard()};
        page_->display(view);
    }

private:
    ListPage* page_;
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
Desk* accountDesk(Shell& shell) { return new LeafDesk{shell, new ListPage{QStringLiteral("account")}, &accountView}; }
Desk* tellsDesk(Shell& shell) { return new LeafDesk{shell, new ListPage{QStringLiteral("tells")}, &tellsView}; }

} // namespace panside
