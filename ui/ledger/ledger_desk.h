#pragma once
// The desk of a screen that shows the ledger: asks for it when the screen is opened, shows it when it comes and again
// whenever it changes.
#include "ui/frame/desk.h"
#include "ui/ledger/house.h"

namespace panside {

class LedgerDesk : public Desk {
public:
    LedgerDesk(Shell& shell, QWidget* screen) : Desk{shell, screen} {
        connect(&shell.house(), &House::changed, this, [this] {
            if (this->screen()->isVisible())
                showHouse();
        });
    }
    void open() override {
        showHouse(); // what is known already, at once
        shell_.house().ask();
    }

protected:
    // `house` is none until it was read for the first time.
    virtual void show(const HouseLedger* house) = 0;
    void showHouse() {
        house_ = shell_.house().ledger();
        show(house_.get());
    }
    const HouseLedger* house() const { return house_.get(); }
    BookForm form(Deed deed) const { return bookForm(deed, shell_.house().context(units())); }
    void enter(BookForm form) { shell_.openBook(std::move(form)); }

private:
    std::shared_ptr<const HouseLedger> house_;
};

} // namespace panside
