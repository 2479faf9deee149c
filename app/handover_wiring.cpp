#include "app/console_screens.h"
#include "ui/handover/handover_view.h"
#include "ui/page/keyed_page.h"
#include "ui/words/journal_words.h"

#include <QFileDialog>

namespace panside {

namespace {

constexpr std::chrono::days lookedBack{14}; // what was drawn longer ago has been packed, or is known otherwise

bool isDeed(const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    return !reading || reading->byHand();
}

HandoverSource sourceOf(Session& session, const std::filesystem::path& place) {
    HandoverSource source;
    source.picture = session.picture();
    source.goesOn = session.openShift().has_value();
    source.started = session.boil().started();
    for (const auto& [id, fact] : session.boil().facts())
        if (isDeed(fact))
            source.shift.push_back(fact);
    const auto journal = Journal::open(place, Journal::Access::read);
    const auto shifts = journal.shifts();
    auto here = session.openShift(); // the shift that the session holds
    for (const Shift& shift : shifts)
        if (!session.openShift() && source.started && !shift.imported)
            here = shift.id; // it has ended: the latest one that was begun here
    for (const Shift& shift : shifts) {
        if (shift.id == here || shift.id + lookedBack < source.picture.at)
            continue;
        // After a shift has ended and the console was started anew, the last shift of the journal is what is handed
        // over.
        for (auto& [id, fact] : journal.deeds(shift.id))
            source.before.push_back(std::move(fact));
        if (!session.boil().started())
            source.started = shift.id;
    }
    return source;
}

} // namespace

void addHandover(Console& console, Session& session, const std::filesystem::path& journal) {
    auto* page = new KeyedPage{QStringLiteral("handover")};
    const auto words = [&console, &session, journal] {
        return handoverWords(sourceOf(session, journal), console.choices().units);
    };
    const auto show = [page, words] {
        page->say({});
        try {
            page->show(words(), {{QStringLiteral("print"), Console::tr("Print"), Qt::Key_P},
                                 {QStringLiteral("pdf"), Console::tr("Write a PDF"), Qt::Key_W}});
        } catch (const JournalError& trouble) {
            page->say(journalWords(trouble));
        }
    };
    QObject::connect(page, &KeyedPage::left, &console, &Console::showBoard);
    QObject::connect(page, &KeyedPage::pressed, page, [page, words](const QString& name) {
        try {
            if (name == u"print") {
                printOut(words(), Console::tr("Hand-over"), page);
                return;
            }
            const auto place = QFileDialog::getSaveFileName(page, Console::tr("Write the hand-over page"),
                                                            QStringLiteral("handover.pdf"), Console::tr("PDF (*.pdf)"));
            if (!place.isEmpty())
                page->say(writePdf(words(), Console::tr("Hand-over"), place)
                              ? Console::tr("Written: %1").arg(place)
                              : Console::tr("%1 could not be written.").arg(place));
        } catch (const JournalError& trouble) {
            page->say(journalWords(trouble));
        }
    });
    console.addScreen(Action::handover, page, show, [page](const Dress& dress) { page->wear(dress); });
}

} // namespace panside
