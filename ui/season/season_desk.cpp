#include "ui/frame/desks.h"

#include "core/files/places.h"
#include "core/files/text_file.h"
#include "core/journal/unforeseen.h"
#include "core/shift/season_book.h"
#include "ui/files/file_pick.h"
#include "ui/frame/desk.h"
#include "ui/review/review_screen.h"
#include "ui/season/season_report.h"
#include "ui/season/season_screen.h"
#include "ui/words/fault_words.h"

#include <QSettings>
#include <thread>

namespace panside {
namespace {

QSettings columnMemory() { return QSettings{QString::fromStdString(choicesFile().string()), QSettings::IniFormat}; }

// By their names in files: those of another version that this one does not know are left out.
std::vector<SeasonFigure> columnsKept() {
    std::vector<SeasonFigure> columns;
    const auto names = columnMemory().value("seasonColumns").toStringList();
    for (const FigureRow& row : allSeasonFigures())
        if (names.contains(QString::fromUtf8(row.name.data(), static_cast<qsizetype>(row.name.size()))))
            columns.push_back(row.figure);
    return columns;
}

void keepColumns(const std::vector<SeasonFigure>& columns) {
    QStringList names;
    for (const SeasonFigure figure : columns)
        names << QString::fromUtf8(rowOf(figure).name.data(), static_cast<qsizetype>(rowOf(figure).name.size()));
    columnMemory().setValue("seasonColumns", names);
}

// What the season shows: at once what is kept; what is missing is worked out on a thread of its own, shift by shift.
class SeasonDesk : public Desk {
public:
    SeasonDesk(Shell& shell, SeasonScreen* screen)
        : Desk{shell, screen}, place_{shell.journalPlace()}, screen_{screen} {
        leavesFrom(screen);
        screen->setColumns(columnsKept());
        connect(screen, &SeasonScreen::columnsChosen, screen, &keepColumns);
        connect(screen, &SeasonScreen::openWanted, this, &SeasonDesk::openInReview);
        connect(screen, &SeasonScreen::turned, this, [this] { shell_.act(Action::season); });
        connect(screen, &SeasonScreen::paperWanted, this, &SeasonDesk::putOnPaper);
    }
    void open() override {
        try {
            worker_ = {}; // the one before stops first
            shifts_ = keptSeason(Journal::open(place_, Journal::Access::read));
            screen_->display(shifts_);
            workOutTheRest();
        } catch (const JournalError& trouble) {
            screen_->say(journalWords(trouble));
        }
    }
    void openLeaf(Action leaf) override {
        screen_->turnTo(leaf == Action::whatPays       ? SeasonScreen::Leaf::tuning
                        : leaf == Action::forecastKept ? SeasonScreen::Leaf::calibration
                                                       : SeasonScreen::Leaf::table);
    }
    void wear(const Dress& dress) override {
        screen_->setUnits(units());
        screen_->wear(dress);
    }

private:
    void openInReview(ShiftId shift) {
        shell_.act(Action::review);
        if (auto* review = screen()->window()->findChild<ReviewScreen*>())
            emit review->openWanted(shift);
    }
    void putOnPaper(const SeasonChoice& choice) {
        const auto place = pickToSave(screen_, shell_.dress(), Desk::tr("The season on paper"),
                                      QStringLiteral("season.pdf"), {"pdf", "xlsx", "csv"});
        if (place.isEmpty())
            return;
        try {
            write(choice, place.toStdString());
            screen_->say(Desk::tr("Written: %1").arg(place));
        } catch (const FileFault& fault) {
            screen_->say(QString::fromStdString(fault.what()));
        } catch (const JournalError& trouble) {
            screen_->say(journalWords(trouble));
        }
    }
    void write(const SeasonChoice& choice, const std::string& place) {
        const auto chosen = chosenShifts(shifts_, choice);
        if (place.ends_with(".csv")) {
            writeText(place, seasonAsCsv(chosen, units()));
        } else if (place.ends_with(".xlsx")) {
            seasonAsSheet(chosen, units(), place);
        } else {
            const auto journal = Journal::open(place_, Journal::Access::read);
            seasonAsPdf(
                shifts_, choice, units(), [&](Instant shift) { return journal.facts(shift); },
                place.ends_with(".pdf") ? place : place + ".pdf");
        }
    }
    void workOutTheRest() {
        std::vector<Shift> missing;
        for (auto shift = shifts_.rbegin(); shift != shifts_.rend(); ++shift) // the newest first
            if (!shift->account)
                missing.push_back({shift->id, shift->open, false});
        if (missing.empty())
            return;
        auto journal = session().journalBeside();
        worker_ = std::jthread{[this, missing = std::move(missing),
                                journal = std::make_shared<Journal>(
                                    journal ? std::move(*journal) : Journal::open(place_, Journal::Access::read))](
                                   const std::stop_token& stop) { work(*journal, missing, stop); }};
    }
    // On the worker's thread.
    void work(Journal& journal, const std::vector<Shift>& missing, const std::stop_token& stop) {
        try {
            for (const Shift& shift : missing) {
                auto account = workOut(journal, shift, [&] { return stop.stop_requested(); });
                if (!account || stop.stop_requested())
                    return;
                QMetaObject::invokeMethod(this, [this, id = shift.id, account = std::move(*account)]() mutable {
                    put(id, std::move(account));
                });
            }
        } catch (...) {
            QMetaObject::invokeMethod(this, [this, words = journalWords(thrownAt(place_))] { screen_->say(words); });
        }
    }
    void put(ShiftId id, ShiftAccount account) {
        for (SeasonShift& shift : shifts_)
            if (shift.id == id)
                shift.account = std::move(account);
        screen_->display(shifts_);
    }

    std::filesystem::path place_;
    SeasonScreen* screen_;
    std::vector<SeasonShift> shifts_;
    std::jthread worker_; // last: it stops before anything else goes
};

} // namespace

Desk* seasonDesk(Shell& shell) { return new SeasonDesk{shell, new SeasonScreen}; }

} // namespace panside
