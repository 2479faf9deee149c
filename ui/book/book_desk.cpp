#include "ui/frame/desks.h"

#include "ui/ledger/ledger_desk.h"
#include "ui/report/ledger_paper.h"

namespace panside {
namespace {

class BookDesk : public ListDesk {
public:
    using ListDesk::ListDesk;
    void open() override {
        table_.reset();
        LedgerDesk::open();
    }

protected:
    void show(const HouseLedger* house) override {
        if (!house)
            return screen_->display({{}, {}, {}, Desk::tr("Reading the book …"), {}, keys()});
        paper_ = bookOnPaper(house->ledger(), units());
        screen_->display(table_ ? table(paper_.tables[*table_]) : contents());
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
        for (const QStringList& row : of.rows) {
            TableRow& shown = view.rows.emplace_back();
            for (const QString& cell : row)
                shown.cells << asPrinted(cell);
        }
        return view;
    }
    void act(int key) override {
        if (key == Qt::Key_Escape && !table_)
            return shell_.showBoard();
        if (key == Qt::Key_P)
            return write();
        if (key == Qt::Key_Return && !table_ && screen_->chosen() >= 0 &&
            static_cast<std::size_t>(screen_->chosen()) < paper_.tables.size())
            table_ = static_cast<std::size_t>(screen_->chosen());
        else if (key == Qt::Key_Escape)
            table_.reset();
        showHouse();
    }
    void write() {
        if (house())
            writeTo(paper_.title, QStringLiteral("book.pdf"), {"pdf", "xlsx", "csv"},
                    [&](const std::string& place) { writePaper(paper_, place); });
    }

    LedgerPaper paper_;
    std::optional<std::size_t> table_;
};

} // namespace

Desk* bookDesk(Shell& shell) { return new BookDesk{shell, QStringLiteral("book")}; }

} // namespace panside
