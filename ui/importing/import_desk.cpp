#include "ui/frame/desks.h"

#include "ui/files/file_pick.h"
#include "ui/frame/desk.h"

#include "core/files/text_file.h"
#include "core/journal/day_books.h"
#include "core/journal/unforeseen.h"
#include "core/shift/book_marks.h"
#include "ui/importing/import_screen.h"
#include "ui/importing/table_maps.h"
#include "ui/look/local_time.h"
#include "ui/words/fault_words.h"

#include <QFileInfo>
#include <QTimeZone>
#include <algorithm>
#include <fstream>
#include <thread>

namespace panside {
namespace {

std::string beginningAt(const QString& place) {
    std::ifstream file{place.toStdString(), std::ios::binary};
    return beginningOf(file);
}

// A day book's rows, all or none of them.
Imported importedBook(Journal& journal, const ReadLog& book) {
    const BookJudged judged = judgedBook(book, &journal);
    Imported imported;
    imported.facts = book.facts.size();
    imported.warnings = book.warnings;
    imported.warningCount = book.warnings.size();
    imported.faults = judged.faults;
    imported.faultCount = judged.faults.size();
    if (!judged.faults.empty() || book.facts.empty())
        return imported;
    const BookImported kept = importBook(journal, book.facts);
    imported.outcome = kept.added > 0 ? ImportOutcome::added : ImportOutcome::alreadyThere;
    imported.shift = kept.added > 0 ? kept.book : book.facts.front().at;
    return imported;
}

// Logs read in, one after another, on a thread of its own: the window goes on, and so does the shift.
class ImportDesk : public Desk {
public:
    ImportDesk(Shell& shell, ImportScreen* screen) : Desk{shell, screen}, screen_{screen} {
        leavesFrom(screen);
        connect(screen, &ImportScreen::pressed, this, &ImportDesk::act);
        connect(screen, &ImportScreen::mapped, this, &ImportDesk::mapped);
    }
    void wear(const Dress& dress) override {
        screen_->wear(dress);
        open();
    }
    void open() override {
        state_.mayWrite = session().journalBeside().has_value();
        screen_->display(state_);
    }

private:
    struct Job {
        std::size_t line; // of the state
        QString place;
        std::optional<ForeignMap> map;
        bool book = false;
    };
    void act(const QString& key) {
        screen_->say({});
        if (key == u"choose")
            choose();
        else if (key == u"stop")
            worker_.request_stop();
        else if (key == u"map")
            askMap();
    }
    void choose() {
        if (state_.working)
            return;
        const auto places = pickFiles(screen_, shell_.dress(), Desk::tr("Read logs in"), {"csv", "txt", "tsv", "log"});
        if (places.isEmpty())
            return;
        state_ = {};
        places_ = places;
        std::vector<Job> jobs;
        for (const QString& place : places) {
            state_.lines.push_back({QFileInfo{place}.fileName(), {}, {}, false, 0});
            if (auto job = jobFor(state_.lines.size() - 1))
                jobs.push_back(std::move(*job));
        }
        // A day book may name vessels that only a shift named: the shifts come first.
        std::stable_partition(jobs.begin(), jobs.end(), [](const Job& job) { return !job.book; });
        begin(std::move(jobs));
    }
    std::optional<Job> jobFor(std::size_t line) {
        const QString place = places_[static_cast<qsizetype>(line)];
        const auto beginning = beginningAt(place);
        if (isShiftLog(beginning) || beginning.empty())
            return Job{line, place, {}, beginsAsBook(beginning)};
        auto map = rememberedMap(beginning);
        if (!map) {
            state_.lines[line].unmapped = true;
            return std::nullopt;
        }
        return Job{line, place, std::move(map), false};
    }
    void askMap() {
        const auto line = std::ranges::find_if(state_.lines, [](const ImportLine& one) { return one.unmapped; });
        if (line == state_.lines.end())
            return;
        asked_ = static_cast<std::size_t>(line - state_.lines.begin());
        beginning_ = beginningAt(places_[static_cast<qsizetype>(asked_)]);
        screen_->askMap(line->name, beginning_, proposedMap(beginning_, QTimeZone::systemTimeZoneId().toStdString()),
                        units());
    }
    // Every table with the same heading is read by it from now on, also those that wait.
    void mapped(const ForeignMap& map) {
        rememberMap(beginning_, map);
        std::vector<Job> jobs;
        for (std::size_t i = 0; i < state_.lines.size(); ++i) {
            if (!state_.lines[i].unmapped)
                continue;
            state_.lines[i].unmapped = false;
            if (auto job = jobFor(i))
                jobs.push_back(std::move(*job));
        }
        begin(std::move(jobs));
    }
    std::optional<Journal> beside() {
        const auto& place = shell_.journalPlace();
        std::optional<Journal> journal;
        if (const auto trouble = troubleIn(place, [&] { journal = session().journalBeside(); }))
            screen_->say(journalWords(*trouble));
        return journal;
    }
    void begin(std::vector<Job> jobs) {
        auto journal = beside();
        if (!journal || jobs.empty())
            return open();
        state_.working = true;
        state_.stopped = false;
        state_.at = static_cast<int>(jobs.front().line);
        worker_ = std::jthread{[this, jobs = std::move(jobs), journal = std::make_shared<Journal>(std::move(*journal))](
                                   const std::stop_token& stop) { work(*journal, jobs, stop); }};
        open();
    }
    // On the worker's thread, as all down to here().
    void work(Journal& journal, const std::vector<Job>& jobs, const std::stop_token& stop) {
        std::vector<std::string> books; // a shift may name a vessel of a day book that comes after it
        for (const Job& job : jobs)
            if (job.book)
                try {
                    books.push_back(readText(job.place.toStdString()));
                } catch (const FileFault&) { // is told when it is read in
                }
        for (const Job& job : jobs) {
            if (stop.stop_requested())
                break;
            here([this, line = job.line] {
                state_.at = static_cast<int>(line);
                screen_->display(state_);
            });
            ImportLine done = read(journal, job, books, stop);
            here([this, line = job.line, done = std::move(done)] {
                state_.lines[line] = done;
                screen_->display(state_);
            });
        }
        here([this, stopped = stop.stop_requested()] {
            state_.working = false;
            state_.stopped = stopped;
            open();
        });
    }
    ImportLine read(Journal& journal, const Job& job, const std::vector<std::string>& books,
                    const std::stop_token& stop) {
        ImportLine line{QFileInfo{job.place}.fileName(), {}, {}, false, 0};
        std::ifstream file{job.place.toStdString(), std::ios::binary};
        if (!file) {
            line.trouble = Desk::tr("cannot be read. See whether the stick is still in, and who may read the file.");
            return line;
        }
        const auto all = static_cast<std::uint64_t>(std::max<qint64>(1, QFileInfo{job.place}.size()));
        int shown = -1;
        ImportOptions options;
        options.goOn = [&](std::uint64_t bytes) {
            const int percent = static_cast<int>(std::min<std::uint64_t>(100, 100 * bytes / all));
            if (percent != shown)
                here([this, percent] { screen_->progress(percent); });
            shown = percent;
            return !stop.stop_requested();
        };
        options.judge = [&](const ReadLog& rows) { return bookFaults(rows, knownWith(&journal, books)); };
        try {
            if (job.map) {
                ForeignRows rows{file, *job.map, zoneClock(QTimeZone{QByteArray::fromStdString(job.map->zone)})};
                line.imported = importLog(journal, rows, options);
                line.blanks = rows.blanks();
            } else if (job.book) {
                const ReadLog book = readLog(readText(job.place.toStdString()));
                line.imported = book.isDayBook() ? importedBook(journal, book) : importLog(journal, file, options);
            } else {
                line.imported = importLog(journal, file, options);
            }
        } catch (...) {
            line.trouble = journalWords(thrownAt(shell_.journalPlace()));
        }
        return line;
    }
    template <class Work>
    void here(Work&& work) {
        QMetaObject::invokeMethod(this, std::forward<Work>(work));
    }

    ImportScreen* screen_;
    ImportState state_;
    QStringList places_;
    std::size_t asked_ = 0; // whose columns are being named
    std::string beginning_; // of it
    std::jthread worker_;   // last: it stops before anything else goes
};

} // namespace

Desk* importDesk(Shell& shell) { return new ImportDesk{shell, new ImportScreen}; }

} // namespace panside
