#include "ui/frame/desks.h"

#include "core/boil/alarm_review.h"
#include "core/boil/hindsight.h"
#include "core/files/whole_file.h"
#include "core/journal/draw_scores.h"
#include "core/journal/log_import.h"
#include "core/journal/shift_summary.h"
#include "core/journal/unforeseen.h"
#include "ui/chart/shift_chart.h"
#include "ui/files/file_pick.h"
#include "ui/frame/desk.h"
#include "ui/ledger/house.h"
#include "ui/review/night_story.h"
#include "ui/review/review_screen.h"
#include "ui/words/fault_words.h"
#include "ui/words/said.h"

#include <thread>

namespace panside {
namespace {

// What the review reads: a second connection, so that the shift that goes on is never held up.
class ReviewDesk : public Desk {
public:
    ReviewDesk(Shell& shell, ReviewScreen* screen)
        : Desk{shell, screen}, place_{shell.journalPlace()}, screen_{screen} {
        leavesFrom(screen);
        connect(screen, &ReviewScreen::openWanted, this, [this](ShiftId shift) { tell([&] { openShift(shift); }); });
        connect(screen, &ReviewScreen::layOverWanted, this, [this](ShiftId shift) { tell([&] { lay(shift); }); });
        connect(screen, &ReviewScreen::forecastsWanted, this,
                [this](ShiftId shift) { tell([&] { layForecasts(shift); }); });
        connect(screen, &ReviewScreen::entriesWanted, this, [this](ShiftId shift) { tell([&] { entries(shift); }); });
        connect(screen, &ReviewScreen::correctionWanted, this,
                [this](ShiftId shift, FactId fact, const std::optional<Fact>& instead) {
                    tell([&] { correct(shift, fact, instead); });
                });
        connect(screen, &ReviewScreen::exportWanted, this,
                [this](ShiftId shift) { tell([&] { exportShift(shift); }); });
        connect(screen, &ReviewScreen::turned, this, [this](Action leaf) { shell_.act(leaf); });
    }
    void open() override {
        tell([&] {
            auto journal = reading();
            screen_->display(reviewRows(summaries(journal), units()), units());
        });
        shell_.house().ask(); // so that it knows how it was, should an entry be put right here
    }

    void openLeaf(Action leaf) override { screen_->turn(leaf); }
    void wear(const Dress& dress) override { screen_->wear(dress); }

private:
    Journal reading() const { return Journal::open(place_, Journal::Access::read); }

    // A journal that cannot be read is said on the screen, and the screen stays.
    template <class Work>
    void tell(Work&& work) {
        try {
            work();
        } catch (const JournalError& trouble) {
            screen_->say(journalWords(trouble));
        }
    }
    // The chart at once; what the engine must be run for comes from a thread of its own.
    void openShift(ShiftId shift, bool tellStory = true) {
        worker_ = {}; // the one before stops first
        auto journal = reading();
        const Units units = Desk::units();
        const auto summary = summaryOf(journal, shift);
        auto [trace, last] = shiftChart(journal, shift);
        screen_->showShift(shift, std::move(trace), last, shiftStory(summary, units), units);
        worker_ = std::jthread{[this, shift, tellStory, opened = ++opened_,
                                own = std::make_shared<Journal>(std::move(journal))](const std::stop_token& stop) {
            work(*own, shift, tellStory, opened, stop);
        }};
    }
    // On the worker's thread.
    void work(Journal& journal, ShiftId shift, bool tellStory, int opened, const std::stop_token& stop) {
        try {
            ShiftAccountant accountant;
            journal.visit(shift, [&](FactId, const Fact& fact) {
                accountant.add(fact);
                return !stop.stop_requested();
            });
            if (stop.stop_requested())
                return;
            auto scores = drawScores(journal, shift);
            QMetaObject::invokeMethod(this, [this, tellStory, opened, scores = std::move(scores),
                                             account = accountant.account(),
                                             alarms = alarmReview(accountant.alarms())]() mutable {
                if (opened != opened_)
                    return; // another has been opened since
                screen_->tellScores(scores);
                screen_->tellAlarms(std::move(alarms));
                if (tellStory)
                    screen_->tellNight(nightStory(account, scores, units()).join(u' '));
            });
        } catch (...) {
            QMetaObject::invokeMethod(this,
                                      [this, trouble = thrownAt(place_)] { screen_->say(journalWords(trouble)); });
        }
    }
    void layForecasts(ShiftId shift) {
        Hindsight hindsight{std::chrono::minutes{5}};
        reading().visit(shift, [&](FactId, const Fact& fact) {
            hindsight.add(fact);
            return true;
        });
        screen_->layForecasts(hindsight.fans());
    }
    void lay(ShiftId shift) {
        if (screen_->isLaidOver(shift))
            return screen_->takeOff(shift);
        screen_->layOver(shift, shiftChart(reading(), shift).trace);
    }
    void entries(ShiftId shift) {
        const auto journal = reading();
        const Units units = Desk::units();
        screen_->showEntries(
            entryLines(journal.deeds(shift), journal.withdrawn(shift), screen_->chart().trace().clock(), units));
    }
    // The screen changes because the journal has: it is read again.
    void correct(ShiftId shift, FactId fact, const std::optional<Fact>& instead) {
        const auto answer = session().correct(shift, fact, instead);
        if (const auto* refused = std::get_if<Session::Refused>(&answer))
            return screen_->say(said(refused->why, "Session"));
        const bool kept = std::get<Session::Entered>(answer).kept;
        open();
        openShift(shift, false);
        entries(shift);
        shell_.refreshSoon();
        shell_.house().touched(); // packed lots may rest on it
        screen_->say(!kept     ? Desk::tr("Not on the disk yet. Trying again each second.")
                     : instead ? Desk::tr("Corrected. The old entry can still be read.")
                               : Desk::tr("Taken back. The old entry can still be read."));
    }
    void exportShift(ShiftId shift) {
        const auto place =
            pickToSave(screen_, shell_.dress(), Desk::tr("Export the shift"), QStringLiteral("shift.csv"), {"csv"});
        if (place.isEmpty())
            return;
        try {
            WholeFile log{place.toStdString()};
            exportLog(reading(), shift, [&](std::string_view piece) { log.add(piece); });
            log.finish();
            screen_->say(Desk::tr("Written: %1").arg(place));
        } catch (const std::filesystem::filesystem_error&) {
            screen_->say(Desk::tr("%1 could not be written.").arg(place));
        } catch (const JournalError& trouble) {
            screen_->say(journalWords(trouble));
        }
    }

    std::filesystem::path place_;
    ReviewScreen* screen_;
    int opened_ = 0;      // which opening what the worker brings belongs to
    std::jthread worker_; // last: it stops before anything else goes
};

} // namespace

Desk* reviewDesk(Shell& shell) { return new ReviewDesk{shell, new ReviewScreen}; }

} // namespace panside
