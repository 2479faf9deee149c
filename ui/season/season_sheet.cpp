#include "core/boil/shift_log.h"
#include "core/files/text_file.h"
#include "ui/look/wall_clock.h"
#include "ui/season/season_report.h"
#include "ui/words/fact_words.h"
#include "ui/words/season_words.h"

#include <QCoreApplication>
#include <QDir>
#include <QTemporaryDir>
#include <xlsxwriter.h>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Report", text); }

// A workbook that is made in a folder of its own, and given its place when it is whole.
class Book {
public:
    explicit Book(const std::string& place)
        : place_{place}, made_{QDir{own_.path()}.filePath(QStringLiteral("book.xlsx")).toStdString()},
          book_{workbook_new(made_.c_str())} {
        bold_ = workbook_add_format(book_);
        format_set_bold(bold_);
        format_set_text_wrap(bold_);
        partial_ = workbook_add_format(book_);
        format_set_italic(partial_);
        format_set_num_format(partial_, "\"≥ \"0.0");
        number_ = workbook_add_format(book_);
        format_set_num_format(number_, "0.0");
        when_ = workbook_add_format(book_);
        format_set_num_format(when_, "yyyy-mm-dd hh:mm");
    }
    ~Book() {
        if (book_)
            workbook_close(book_);
    }
    Book(const Book&) = delete;
    Book& operator=(const Book&) = delete;

    void sheet(const QString& name) {
        sheet_ = workbook_add_worksheet(book_, name.left(LXW_SHEETNAME_MAX).toUtf8().constData());
        row_ = 0;
        column_ = 0;
    }
    void freeze(int rows) { worksheet_freeze_panes(sheet_, static_cast<lxw_row_t>(rows), 1); }
    void wide(lxw_col_t from, lxw_col_t to, double letters) {
        worksheet_set_column(sheet_, from, to, letters, nullptr);
    }
    void words(const QString& words, bool strong = false) {
        worksheet_write_string(sheet_, row_, column_++, words.toUtf8().constData(), strong ? bold_ : nullptr);
    }
    void told(SeasonFigure figure, const std::optional<Told>& told, Units units) {
        if (told) // a hole stays empty: a zero would be summed
            worksheet_write_number(sheet_, row_, column_, inUnits(figure, told->si, units),
                                   told->atLeast ? partial_ : number_);
        ++column_;
    }
    // By the clock on the wall.
    void moment(const QDateTime& at) {
        lxw_datetime when{at.date().year(), at.date().month(),  at.date().day(),
                          at.time().hour(), at.time().minute(), static_cast<double>(at.time().second())};
        worksheet_write_datetime(sheet_, row_, column_++, &when, when_);
    }
    void newRow() {
        ++row_;
        column_ = 0;
    }
    void close() {
        const lxw_error error = workbook_close(book_);
        book_ = nullptr;
        if (error != LXW_NO_ERROR)
            throw FileFault{FileTrouble::machine, place_ + ": cannot be written: " + lxw_strerror(error) +
                                                      " Make room where temporary files go."};
        writeText(place_, readText(made_));
    }

private:
    QTemporaryDir own_;
    std::string place_, made_;
    lxw_workbook* book_;
    lxw_worksheet* sheet_ = nullptr;
    lxw_format *bold_, *partial_, *number_, *when_;
    lxw_row_t row_ = 0;
    lxw_col_t column_ = 0;
};

QString headingWithUnit(SeasonFigure figure, Units units) {
    const QString unit = unitWordOf(figure, units);
    return unit.isEmpty() ? headingOf(figure) : headingOf(figure) + QStringLiteral(", ") + unit;
}

QString crewOf(const SeasonShift& shift) {
    QStringList names;
    if (shift.account)
        for (const auto& [name, time] : shift.account->crew)
            names << QString::fromStdString(name);
    return names.join(QStringLiteral(", "));
}

} // namespace

void seasonAsSheet(const std::vector<SeasonShift>& shifts, Units units, const std::string& place) {
    Book book{place};
    book.sheet(tr("Season"));
    book.freeze(1);
    book.wide(0, 0, 17);
    book.wide(1, seasonFigureCount, 11);
    book.words(tr("shift"), true);
    for (const FigureRow& row : allSeasonFigures())
        book.words(headingWithUnit(row.figure, units), true);
    book.words(tr("crew"), true);
    for (const SeasonShift& shift : shifts) {
        book.newRow();
        book.moment(WallClock{}.at(shift.id));
        for (const FigureRow& row : allSeasonFigures())
            book.told(row.figure, figureOf(shift, row.figure), units);
        book.words(crewOf(shift));
    }
    book.newRow();
    book.words(tr("together"), true);
    for (const FigureRow& row : allSeasonFigures())
        book.told(row.figure, totalOf(shifts, row.figure).told, units);
    book.close();
}

void shiftAsSheet(const SeasonShift& shift, const Facts& facts, Units units, const std::string& place) {
    Book book{place};
    book.sheet(tr("Account"));
    book.wide(0, 0, 26);
    book.words(tr("shift"), true);
    book.moment(WallClock{}.at(shift.id));
    for (const FigureRow& row : allSeasonFigures()) {
        book.newRow();
        book.words(headingWithUnit(row.figure, units));
        book.told(row.figure, figureOf(shift, row.figure), units);
    }
    book.newRow();
    book.words(tr("crew"));
    book.words(crewOf(shift));
    book.sheet(tr("What was done"));
    book.freeze(1);
    book.wide(0, 0, 17);
    book.wide(1, 1, 60);
    for (const QString& heading : {tr("when"), tr("what"), tr("who")})
        book.words(heading, true);
    WallClock clock;
    for (const auto& [id, fact] : facts) {
        if (const auto* step = std::get_if<ClockStep>(&fact.what))
            clock.moved(fact.at, step->by);
        if (const auto* reading = std::get_if<Reading>(&fact.what); reading && !reading->byHand())
            continue;
        book.newRow();
        book.moment(clock.at(fact.at));
        book.words(factWords(fact, units));
        book.words(QString::fromStdString(fact.by));
    }
    book.close();
}

} // namespace panside
