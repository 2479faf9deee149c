#include "ui/frame/desks.h"

#include "ui/files/file_pick.h"
#include "ui/frame/desk.h"

#include "ui/handover/handover_view.h"
#include "ui/page/keyed_page.h"
#include "ui/words/fault_words.h"

#include <QPrinterInfo>

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

class HandoverDesk : public Desk {
public:
    HandoverDesk(Shell& shell, KeyedPage* page) : Desk{shell, page}, page_{page} {
        leavesFrom(page);
        connect(page, &KeyedPage::pressed, this, [this](const QString& name) {
            tell([&] {
                if (name == u"pdf")
                    write();
                else if (name == u"print")
                    print();
                else if (name == u"leave")
                    open();
                else
                    printBy(name);
            });
        });
    }
    void open() override {
        page_->say({});
        tell([&] {
            page_->show(words(), {{QStringLiteral("print"), Desk::tr("Print"), Qt::Key_P},
                                  {QStringLiteral("pdf"), Desk::tr("Write a PDF"), Qt::Key_W}});
        });
    }
    void wear(const Dress& dress) override { page_->wear(dress); }

private:
    QString words() const { return handoverWords(sourceOf(session(), shell_.journalPlace()), units()); }
    template <class Work>
    void tell(Work&& work) {
        try {
            work();
        } catch (const JournalError& trouble) {
            page_->say(journalWords(trouble));
        }
    }
    // By the one printer there is; of several the person chooses.
    void print() {
        const QStringList names = QPrinterInfo::availablePrinterNames();
        if (names.isEmpty())
            return page_->say(Desk::tr("No printer is set up on this machine. Write a PDF, and print that elsewhere."));
        if (names.size() == 1)
            return printBy(names.front());
        static constexpr Qt::Key letters[] = {Qt::Key_G, Qt::Key_H, Qt::Key_I, Qt::Key_J, Qt::Key_L, Qt::Key_M};
        std::vector<KeyedPage::Key> keys{{QStringLiteral("leave"), Desk::tr("Leave it"), Qt::Key_N}};
        for (qsizetype i = 0; i < std::min<qsizetype>(names.size(), std::size(letters)); ++i)
            keys.push_back({names[i], names[i], letters[i]});
        page_->show(words(), keys);
        page_->say(Desk::tr("Which printer?"));
    }
    void printBy(const QString& printer) {
        const bool taken = printOut(words(), Desk::tr("Hand-over"), printer);
        open();
        page_->say(taken ? Desk::tr("Sent to %1.").arg(printer) : Desk::tr("%1 takes nothing.").arg(printer));
    }
    void write() {
        const auto place = pickToSave(page_, shell_.dress(), Desk::tr("Write the hand-over page"),
                                      QStringLiteral("handover.pdf"), {"pdf"});
        if (!place.isEmpty())
            page_->say(writePdf(words(), Desk::tr("Hand-over"), place)
                           ? Desk::tr("Written: %1").arg(place)
                           : Desk::tr("%1 could not be written.").arg(place));
    }

    KeyedPage* page_;
};

} // namespace

Desk* handoverDesk(Shell& shell) { return new HandoverDesk{shell, new KeyedPage{QStringLiteral("handover")}}; }

} // namespace panside
