#pragma once
// The desk of a screen that shows the ledger: asks for it when the screen is opened, shows it when it comes and again
// whenever it changes.
#include "core/files/text_file.h"
#include "ui/files/file_pick.h"
#include "ui/frame/desk.h"
#include "ui/ledger/house.h"
#include "ui/ledger/list_page.h"

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
    const PlaceLaw& law() const { return house_ ? house_->ledger().tables().law() : LedgerTables{}.law(); }
    BookForm form(Deed deed) const { return bookForm(deed, shell_.house().context(units())); }
    void enter(BookForm form) { shell_.openBook(std::move(form)); }
    // Asks for a place, has it written there, and says at the foot what came of it. While the place is picked the house
    // may be read anew: `write` holds what it needs.
    template <class Write>
    void writeTo(const QString& title, const QString& name, const QStringList& endings, Write&& write) {
        const QString place = pickToSave(screen(), shell_.dress(), title, name, endings);
        if (place.isEmpty())
            return;
        try {
            write(place.toStdString());
            shell_.say(Desk::tr("Written: %1").arg(place));
        } catch (const FileFault& fault) {
            shell_.say(QString::fromStdString(fault.what()));
        }
    }

private:
    std::shared_ptr<const HouseLedger> house_;
};

template <class Screen>
class LedgerDeskOf : public LedgerDesk {
public:
    LedgerDeskOf(Shell& shell, Screen* screen) : LedgerDesk{shell, screen}, screen_{screen} {}
    void wear(const Dress& dress) override {
        screen_->wear(dress);
        if (screen_->isVisible())
            showHouse();
    }

protected:
    Screen* screen_;
};

// Of a page that is a list: `act` answers its keys, Qt::Key_Return on a row.
class ListDesk : public LedgerDeskOf<ListPage> {
public:
    ListDesk(Shell& shell, const QString& name) : LedgerDeskOf{shell, new ListPage{name}} {
        connect(screen_, &ListPage::pressed, this, [this](int key) { act(key); });
    }

protected:
    virtual void act(int key) = 0;
};

} // namespace panside
