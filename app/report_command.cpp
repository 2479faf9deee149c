#include "app/commands.h"
#include "app/exit_status.h"
#include "core/files/text_file.h"
#include "core/journal/shift_summary.h"
#include "core/shift/house_ledger.h"
#include "core/shift/season_book.h"
#include "core/shift/shift_clock.h"
#include "ui/frame/choices.h"
#include "ui/frame/languages.h"
#include "ui/report/ledger_paper.h"
#include "ui/report/shift_report.h"
#include "ui/sap/route_view.h"
#include "ui/season/season_report.h"

#include <QApplication>
#include <algorithm>
#include <ostream>

namespace panside {
namespace {

// Letters need a QApplication, but no screen; words need the person's language.
class Letters {
public:
    explicit Letters(const ReportRequest& request) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        application_.emplace(count_, words_);
        choices_ = Choices::load();
        if (!request.language.empty())
            choices_.language = QString::fromStdString(request.language);
        if (!request.units.empty())
            choices_.units = request.units == "us" ? Units::us : Units::metric;
        spoken_.speak(choices_.language);
    }
    Units units() const { return choices_.units; }

private:
    int count_ = 1;
    char name_[8] = "panside";
    char* words_[2] = {name_, nullptr};
    std::optional<QApplication> application_;
    Spoken spoken_;
    Choices choices_;
};

enum class Form { csv, pdf, sheet };
std::optional<Form> formOf(const std::string& place) {
    if (place.empty() || place.ends_with(".csv"))
        return Form::csv;
    if (place.ends_with(".pdf"))
        return Form::pdf;
    return place.ends_with(".xlsx") ? std::optional{Form::sheet} : std::nullopt;
}

int reportShift(Journal& journal, const ReportRequest& request, Form form, std::ostream& out, std::ostream& err) {
    const auto shift = shiftAsked(journal, request.shift, false, out, err);
    if (!shift)
        return status::refused;
    const auto facts = journal.facts(shift->id);
    const SeasonShift told{shift->id, shift->open, workOut(journal, *shift)};
    if (form == Form::csv) {
        writeOut(request.out, reportAsCsv(summaryOf(journal, shift->id), *told.account, facts), out);
        return status::done;
    }
    const Letters letters{request};
    if (form == Form::pdf)
        reportAsPdf(told, facts, letters.units(), request.out);
    else
        shiftAsSheet(told, facts, letters.units(), request.out);
    return status::done;
}

int reportSeason(Journal& journal, const ReportRequest& request, Form form, std::ostream& out, std::ostream& err) {
    auto shifts = wholeSeason(journal);
    const auto years = seasonsOf(shifts);
    if (request.year && std::ranges::find(years, *request.year) == years.end()) {
        err << journal.place().string() << ": holds no shift of season " << *request.year << ".";
        for (const int year : years)
            err << (year == years.front() ? " It holds " : ", ") << year;
        err << (years.empty() ? " It holds no shift yet." : ".")
            << " A season is named by its spring, from July of the year before to June.\n";
        return status::refused;
    }
    if (request.year)
        std::erase_if(shifts, [&](const SeasonShift& shift) { return seasonOf(shift.id) != *request.year; });
    if (form == Form::csv) {
        writeOut(request.out, seasonAsCsv(shifts, request.units == "us" ? Units::us : Units::metric), out);
        return status::done;
    }
    const Letters letters{request};
    SeasonChoice choice;
    choice.year = request.year;
    choice.falling = false;
    if (form == Form::pdf)
        seasonAsPdf(
            shifts, choice, letters.units(), [&](Instant shift) { return journal.facts(shift); }, request.out);
    else
        seasonAsSheet(shifts, letters.units(), request.out);
    return status::done;
}

int reportLedger(Journal& journal, const ReportRequest& request, Form form, std::ostream& out, std::ostream& err) {
    const HouseLedger house{&journal};
    const Ledger& ledger = house.ledger();
    std::optional<std::size_t> lot;
    if (!request.recall.empty() && !(lot = ledger.lotNamed(request.recall)))
        return refuseName(namesLike(ledger, request.recall, Like::lot), request.recall, "no lot has this code.", err);
    const auto paper = [&](Units units) {
        return lot            ? recallOnPaper(ledger, *lot, units)
               : request.lots ? lotsOnPaper(ledger, units)
                              : bookOnPaper(ledger, units);
    };
    if (form == Form::csv) {
        writeOut(request.out, paperAsCsv(paper(request.units == "us" ? Units::us : Units::metric)), out);
        return status::done;
    }
    const Letters letters{request};
    (form == Form::pdf ? paperAsPdf : paperAsSheet)(paper(letters.units()), request.out);
    return status::done;
}

int reportRoute(Journal& journal, const ReportRequest& request, Form form, std::ostream& err) {
    if (form != Form::pdf) {
        err << "--route is a page to write on: name a file that ends in .pdf with --out.\n";
        return status::wrongUsage;
    }
    const HouseLedger house{&journal};
    const Letters letters{request};
    routeAsPdf(routeOf(house.ledger()), ShiftClock{}.now(), letters.units(), request.out);
    return status::done;
}

} // namespace

int reportCommand(const ReportRequest& request, std::ostream& out, std::ostream& err) {
    const auto form = formOf(request.out);
    if (!form) {
        err << "--out " << request.out << ": name a file that ends in .pdf, .csv or .xlsx.\n";
        return status::wrongUsage;
    }
    auto journal = Journal::open(request.journal, Journal::Access::read);
    if (request.route)
        return reportRoute(journal, request, *form, err);
    if (request.lots || request.book || !request.recall.empty())
        return reportLedger(journal, request, *form, out, err);
    return request.season ? reportSeason(journal, request, *form, out, err)
                          : reportShift(journal, request, *form, out, err);
}

} // namespace panside
