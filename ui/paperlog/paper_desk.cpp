#include "ui/paperlog/paper_desk.h"

#include "core/boil/shift_log.h"
#include "core/journal/log_import.h"
#include "ui/importing/import_view.h"
#include "ui/paperlog/paper_screen.h"
#include "ui/words/fault_words.h"
#include "ui/words/journal_words.h"

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

    PaperScreen* screen_;
};

} // namespace

Desk* paperDesk(Shell& shell) { return new PaperDesk{shell, new PaperScreen}; }

} // namespace panside
