#include "app/console_screens.h"
#include "core/boil/shift_log.h"
#include "core/journal/log_import.h"
#include "ui/importing/import_view.h"
#include "ui/paper/paper_screen.h"
#include "ui/words/fault_words.h"
#include "ui/words/journal_words.h"

#include <sstream>

namespace panside {

// A typed log goes the way of any other: written out, and imported with every check.
void addPaper(Console& console, Session& session) {
    auto* screen = new PaperScreen;
    QObject::connect(screen, &PaperScreen::left, &console, &Console::showBoard);
    QObject::connect(screen, &PaperScreen::keepWanted, screen, [screen, &session](std::vector<Fact> facts) {
        try {
            auto journal = session.journalBeside();
            if (!journal)
                return screen->say(Console::tr("This console may not write in the journal."));
            for (Fact& fact : facts)
                fact.entered = std::chrono::floor<std::chrono::seconds>(session.now());
            std::istringstream log{writeLog(facts)};
            const auto imported = importLog(*journal, log);
            const QString what = importedWords(imported);
            screen->say(Console::tr("Paper log: %1")
                            .arg(imported.faults.empty()
                                     ? what
                                     : what + u' ' + faultWords(imported.faults.front(), Console::tr("Paper log"))));
            if (imported.outcome == ImportOutcome::added)
                screen->clear();
        } catch (const JournalError& trouble) {
            screen->say(journalWords(trouble));
        }
    });
    console.addScreen(
        Action::paper, screen, [&console, screen] { screen->setUnits(console.choices().units); },
        [screen](const Dress& dress) { screen->wear(dress); });
}

} // namespace panside
