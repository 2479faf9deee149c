#include "ui/book/book_desk.h"
#include "ui/files/file_pick.h"

#include "core/files/text_file.h"
#include "ui/ledger/ledger_desk.h"
#include "ui/ledger/list_page.h"
#include "ui/report/ledger_paper.h"

namespace panside {
namespace {

class BookDesk : public LedgerDesk {
public:
    BookDesk(Shell& shell, ListPage* page) : LedgerDesk{shell, page}, page_{page} {
        connect(page, &ListPage::pressed, this, &BookDesk::act);
    }
    void open() override {
        table_.reset();
        LedgerDesk::open();
    }
    void wear(const Dress& dress) override {
        page_->wear(dress);
        if (page_->isVisible())
            showHouse();
    }

protected:
    void show(const HouseLedger* house) override {
        if (!house)
            return page_->display({{}, {}, {}, Desk::tr("Reading the book …"), {}, keys()});
        paper_ = bookOnPaper(house->ledger(), units());
        page_->display(table_ ? table(paper_.tables[*table_]) : contents());
    }

private:
    std::vector<PageKey> keys() const {
        return {{Qt::Key_P, QStringLiteral("paper"), Desk::tr("The whole book on paper"), true},
                {Qt::Key_Return, QStringLiteral("open"), Desk::tr("View it"), false, !table_},
                table_ ? PageKey{Qt::Key_Escape, QStringLiteral("back"), Desk::tr("Back")} : wayToBoard()};
    }
    ListView contents() const {
        ListView view{{{Desk::tr("in the book")}, {Desk::tr("rows"), true}}, {}, {}, paper_.title, {}, keys()};
        for (const PaperTable& one : paper_.tables)
            view.rows.push_back({{one.title, QString::number(one.rows.size())}, false, one.rows.empty()});
        view.notes = paper_.cautions.join(u' ');
        return view;
    }
    ListView table(const PaperTable& of) const {
        ListView view{{}, {}, {}, of.title, of.note, keys()};
        for (qsizetype i = 0; i < of.headings.size(); ++i)
            view.columns.push_back({of.headings[i], false, static_cast<int>(i)});
        for (const QStringList& row : of.rows)
            view.rows.push_back({row});
        return view;
    }
    void act(int key) {
        if (key == Qt::Key_Escape && !table_)
            return shell_.showBoard();
        if (key == Qt::Key_P)
            return write();
        if (key == Qt::Key_Return && !table_ && page_->chosen() >= 0 &&
            static_cast<std::size_t>(page_->chosen()) < paper_.tables.size())
            table_ = static_cast<std::size_t>(page_->chosen());
        else if (key == Qt::Key_Escape)
            table_.reset();
        showHouse();
    }
    void write() {
        if (!house())
            return;
        const QString place =
            pickToSave(page_, shell_.dress(), paper_.title, QStringLiteral("book.pdf"), {"pdf", "xlsx", "csv"});
        if (place.isEmpty())
            return;
        try {
            writePaper(paper_, place.toStdString());
            shell_.say(Desk::tr("Written: %1").arg(place));
        } catch (const FileFault& fault) {
            shell_.say(QString::fromStdString(fault.what()));
        }
    }

    ListPage* page_;
    LedgerPaper paper_;
    std::optional<std::size_t> table_;
};

} // namespace

Desk* bookDesk(Shell& shell) { return new BookDesk{shell, new ListPage{QStringLiteral("book")}}; }

} // namespace panside
