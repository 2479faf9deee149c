#include "ui/frame/desks.h"

#include "ui/files/file_pick.h"
#include "ui/frame/desk.h"

#include "core/journal/unforeseen.h"
#include "ui/keeping/keeping_view.h"
#include "ui/keys/places.h"
#include "ui/words/fault_words.h"

#include <QTimer>
#include <atomic>
#include <thread>

namespace panside {
namespace {

using namespace std::chrono_literals;

constexpr auto lookForAnEnd = 2s;

std::filesystem::path pathOf(const QString& place) { return {place.toStdString()}; }
QString textOfPath(const std::filesystem::path& place) { return QString::fromStdString(place.string()); }

// Back-ups, checks and salvage, each on a thread of its own; only the last step, putting another file in the journal's
// place, is done while the console waits.
class KeepingDesk : public Desk {
public:
    KeepingDesk(Shell& shell, KeyedPage* page) : Desk{shell, page}, place_{shell.journalPlace()}, page_{page} {
        state_.journal = textOfPath(place_);
        connect(page, &KeyedPage::pressed, this, &KeepingDesk::act);
        connect(page, &KeyedPage::left, this, [this] {
            forget();
            shell_.showBoard();
        });
        connect(&ends_, &QTimer::timeout, this, &KeepingDesk::watchForAnEnd);
        ends_.start(lookForAnEnd);
        look([](const Journal& open) { return quickCheck(open); });
    }
    ~KeepingDesk() override {
        stop_ = true;
        if (worker_.joinable())
            worker_.join();
    }
    void open() override { show(); }
    void wear(const Dress& dress) override {
        page_->wear(dress);
        show();
    }

private:
    void show() {
        state_.folder = shell_.choices().backupFolder;
        state_.backups = state_.folder.isEmpty() ? std::vector<Backup>{} : backupsIn(pathOf(state_.folder));
        page_->show(keepingWords(state_), keepingKeys(state_));
        if (!state_.working)
            page_->progress(std::nullopt);
    }
    void act(const QString& name) {
        page_->say({});
        if (name == u"folder")
            chooseFolder();
        else if (name == u"backUp")
            backUpNow();
        else if (name == u"stop")
            stop_ = true;
        else if (name == u"check")
            look([](const Journal& open) { return fullCheck(open); });
        else if (name == u"restore")
            chooseBackup();
        else if (name == u"salvage")
            salvageNow();
        else if (name == u"putBack")
            putInPlace();
        else if (name == u"leaveIt")
            forget();
        show();
    }
    void forget() {
        state_.restoring.reset();
        state_.salvaged.reset();
        chosen_.clear();
    }
    // One piece of work at a time. It gives back what is to be done on the window's thread when it has ended.
    using Ending = std::function<void()>;
    bool begin(std::function<Ending()> work) {
        if (state_.working || state_.looking)
            return false;
        if (worker_.joinable())
            worker_.join();
        stop_ = false;
        worker_ = std::thread{[this, work = std::move(work)] {
            Ending ending;
            try {
                ending = work();
            } catch (...) { // whatever it is, it must not end the boil
                ending = [this, said = journalWords(thrownAt(place_))] {
                    page_->say(said);
                    shell_.say(said);
                };
            }
            QMetaObject::invokeMethod(this, [this, ending] {
                state_.working = state_.looking = false;
                ending();
                show();
            });
        }};
        return true;
    }
    void look(JournalHealth (*check)(const Journal&)) {
        const bool begun = begin([this, check]() -> Ending {
            JournalHealth health;
            try {
                health = check(Journal::open(place_, Journal::Access::read));
            } catch (const JournalError& trouble) {
                if (trouble.trouble() != JournalTrouble::damaged)
                    throw;
                health.findings.push_back(asWritten(journalWords(trouble).toStdString()));
            }
            return [this, health] { found(health); };
        });
        state_.looking = state_.looking || begun;
    }
    void found(const JournalHealth& health) {
        state_.health = health;
        if (!health.sound())
            shell_.say(Desk::tr("The journal is damaged. %1 shows what can be done.")
                           .arg(keyOf(Place::rig) + QStringLiteral(", 5")));
    }
    void chooseFolder() {
        const auto folder =
            pickFolder(page_, shell_.dress(), Desk::tr("Where back-ups go"), shell_.choices().backupFolder);
        if (folder.isEmpty())
            return;
        auto choices = shell_.choices();
        choices.backupFolder = folder;
        shell_.choose(choices);
    }
    void backUpNow() {
        const auto folder = pathOf(shell_.choices().backupFolder);
        const Instant now = session().now();
        const bool begun = begin([this, folder, now]() -> Ending {
            const auto made =
                backUp(Journal::open(place_, Journal::Access::read), folder, now, [this](int done, int all) {
                    QMetaObject::invokeMethod(this,
                                              [this, done, all] { page_->progress(100 * done / std::max(1, all)); });
                    return !stop_;
                });
            const auto removed = made ? pruneBackups(folder).size() : 0;
            return [this, made, removed] { backedUp(made, removed); };
        });
        state_.working = state_.working || begun;
    }
    void backedUp(const std::optional<Backup>& made, std::size_t removed) {
        const QString said = !made ? Desk::tr("Stopped. The back-ups made before are as they were.")
                             : removed == 0
                                 ? Desk::tr("Backed up and read back: %1.").arg(textOfPath(made->place))
                                 : Desk::tr("Backed up and read back: %1. Older ones removed by the rule: %2.")
                                       .arg(textOfPath(made->place))
                                       .arg(removed);
        page_->say(said);
        shell_.say(said);
    }
    // A shift that has ended is backed up by itself.
    void watchForAnEnd() {
        const bool open = session().openShift().has_value();
        if (open)
            backUpDue_ = false;
        else if (wasOpen_)
            backUpDue_ = true;
        wasOpen_ = open;
        if (!backUpDue_ || shell_.choices().backupFolder.isEmpty() || state_.working || state_.looking)
            return;
        backUpDue_ = false;
        backUpNow();
        show();
    }
    void chooseBackup() {
        const auto place = pickFile(page_, shell_.dress(), Desk::tr("Which back-up"), state_.folder, {"journal"});
        if (place.isEmpty())
            return;
        try {
            state_.restoring = previewRestore(pathOf(place), place_);
            state_.restoringFrom = place;
            chosen_ = pathOf(place);
        } catch (const JournalError& trouble) {
            if (trouble.place() == place_ && trouble.trouble() == JournalTrouble::damaged) {
                // The journal itself cannot be read: all that the back-up holds would come back.
                state_.restoring.emplace().gained = Journal::open(pathOf(place), Journal::Access::read).shifts();
                state_.restoringFrom = place;
                chosen_ = pathOf(place);
            } else {
                page_->say(journalWords(trouble));
            }
        }
    }
    void salvageNow() {
        auto into = place_;
        into += ".saved-" +
                std::to_string(std::chrono::floor<std::chrono::seconds>(session().now()).time_since_epoch().count());
        const bool begun = begin([this, into]() -> Ending {
            const auto saved = salvage(place_, into);
            return [this, saved, into] {
                state_.salvaged = saved;
                state_.salvagedInto = textOfPath(into);
                chosen_ = into;
            };
        });
        state_.looking = state_.looking || begun;
    }
    void putInPlace() {
        if (session().openShift() && !session().holdsItsShift()) {
            page_->say(Desk::tr("A shift is going on. End it first, so that nothing of it is lost."));
            return;
        }
        session().letGo();
        try {
            const auto kept = restore(chosen_, place_,
                                      std::chrono::floor<std::chrono::microseconds>(std::chrono::system_clock::now()));
            page_->say(Desk::tr("It is in place. What was there before is kept as %1.").arg(textOfPath(kept)));
            state_.health.reset();
        } catch (const JournalError& trouble) {
            page_->say(journalWords(trouble));
        }
        takeUp();
        forget();
        shell_.refreshSoon();
        look([](const Journal& open) { return quickCheck(open); });
    }
    void takeUp() {
        try {
            auto journal = Journal::open(place_);
            if (journal.readOnly())
                throw JournalError{*journal.readOnly()};
            const auto shift = journal.openShift();
            auto facts = shift ? journal.facts(shift->id) : Facts{};
            session().takeUp(keeperIn(std::move(journal)), std::move(facts));
            shell_.setNotice({});
        } catch (const JournalError& trouble) {
            shell_.say(journalWords(trouble));
        }
    }

    std::filesystem::path place_, chosen_;
    KeyedPage* page_;
    KeepingState state_;
    QTimer ends_;
    bool wasOpen_ = false, backUpDue_ = false;
    std::atomic<bool> stop_ = false;
    std::thread worker_;
};

} // namespace

Desk* keepingDesk(Shell& shell) { return new KeepingDesk{shell, new KeyedPage{QStringLiteral("keeping")}}; }

} // namespace panside
