#include "app/console_screens.h"
#include "core/boil/shift_log.h"
#include "core/journal/log_import.h"
#include "ui/paper/paper_screen.h"

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
            screen->say(QString::fromStdString(sentence(imported, Console::tr("Paper log").toStdString())));
            if (imported.outcome == ImportOutcome::added)
                screen->clear();
        } catch (const JournalError& trouble) {
            screen->say(QString::fromStdString(trouble.what()));
        }
    });
    console.addScreen(
        Action::paper, screen, [&console, screen] { screen->setUnits(console.choices().units); },
        [screen](const Dress& dress) { screen->wear(dress); });
}

} // namespace panside
