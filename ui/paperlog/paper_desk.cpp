#include "ui/frame/desks.h"

#include "core/boil/shift_log.h"
#include "core/journal/day_books.h"
#include "core/journal/log_import.h"
#include "core/ledger/book_check.h"
#include "core/shift/house_ledger.h"
#include "ui/frame/desk.h"
#include "ui/importing/import_view.h"
#include "ui/ledger/house.h"
#include "ui/paperlog/paper_screen.h"
#include "ui/words/fault_words.h"

#include <iterator>
#include <sstream>

namespace panside {
namespace {

class PaperDesk : public Desk {
public:
    PaperDesk(Shell& shell, PaperScreen* screen) : Desk{shell, screen}, screen_{screen} {
        leavesFrom(screen);
        connect(screen, &PaperScreen::keepWanted, this, [this](std::vector<Fact> facts) {
            try {
                keep(std::move(facts));
            } catch (const JournalError& trouble) {
                screen_->say(journalWords(trouble));
            }
        });
    }
    void open() override { screen_->setUnits(units()); }
    void wear(const Dress& dress) override { screen_->wear(dress); }

private:
    void keep(std::vector<Fact> facts) {
        auto journal = session().journalBeside();
        if (!journal)
            return screen_->say(Desk::tr("This console may not write in the journal."));
        for (Fact& fact : facts)
            fact.entered = std::chrono::floor<std::chrono::seconds>(session().now());
        // What was gathered stands in the day book.
        const auto isBook = [](const Fact& fact) { return std::holds_alternative<DayRow>(fact.what); };
        const auto shift = std::stable_partition(facts.begin(), facts.end(), isBook);
        const std::vector<Fact> gathered{std::make_move_iterator(facts.begin()), std::make_move_iterator(shift)};
        facts.erase(facts.begin(), shift);
        if (!keepInBook(*journal, gathered))
            return;
        if (facts.empty()) {
            screen_->say(Desk::tr("Paper log: kept in the day book."));
            return screen_->clear();
        }
        std::istringstream log{writeLog(facts)};
        const auto imported = importLog(*journal, log);
        const QString what = importedWords(imported);
        screen_->say(Desk::tr("Paper log: %1")
                         .arg(imported.faults.empty()
                                  ? what
                                  : what + u' ' + faultWords(imported.faults.front(), Desk::tr("Paper log"))));
        if (imported.outcome == ImportOutcome::added)
            screen_->clear();
    }

    bool keepInBook(Journal& journal, const std::vector<Fact>& facts) {
        if (facts.empty())
            return true;
        ReadLog book;
        book.facts = facts;
        book.dayRows = facts.size();
        for (std::size_t i = 0; i < facts.size(); ++i)
            book.lines.push_back(static_cast<std::uint32_t>(i + 1));
        if (const auto faults = bookFaults(book, bookKnown(&journal)); !faults.empty()) {
            screen_->say(faultWords(faults.front(), Desk::tr("Paper log")));
            return false;
        }
        importBook(journal, facts);
        shell_.house().touched();
        return true;
    }

    PaperScreen* screen_;
};

} // namespace

Desk* paperDesk(Shell& shell) { return new PaperDesk{shell, new PaperScreen}; }

} // namespace panside
