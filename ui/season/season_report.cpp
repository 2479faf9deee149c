#include "ui/season/season_report.h"
#include "ui/words/season_words.h"

#include "core/boil/shift_log.h"
#include "core/files/csv_cell.h"
#include "core/season/tuning.h"
#include "ui/report/pdf_pages.h"
#include "ui/report/shift_report.h"
#include "ui/season/season_pictures.h"
#include "ui/season/tuning_view.h"

#include <QCoreApplication>
#include <fmt/format.h>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Report", text); }

std::string unitName(const FigureRow& row, Units units) {
    if (row.dimension == Dimension::none)
        return {};
    if (row.figure == SeasonFigure::hours)
        return "_h";
    std::string name{nameOf(unitOf(row.dimension, units))};
    std::erase(name, '/');
    return "_" + name;
}

std::string fieldsOf(const std::function<std::optional<Told>(SeasonFigure)>& tell, Units units) {
    std::string text, partial;
    for (const FigureRow& row : allSeasonFigures()) {
        const auto told = tell(row.figure);
        text += ',' + (told ? fmt::format("{:.6g}", inUnits(row.figure, told->si, units)) : "");
        if (told && told->atLeast)
            partial += (partial.empty() ? "" : " ") + std::string{row.name};
    }
    return text + ',' + partial;
}

std::string crewCell(const ShiftAccount& account) {
    std::string names;
    for (const auto& [name, time] : account.crew)
        names += (names.empty() ? "" : "; ") + name;
    return csvCell(names);
}

class SeasonPages {
public:
    SeasonPages(PdfPages& paper, Units units) : paper_{paper}, units_{units}, painter_{paper.painter()} {}

    void table(const std::vector<SeasonShift>& shifts, const SeasonChoice& choice) {
        const auto table = seasonTable(shifts, choice, units_);
        double y = title(table.title, 0);
        const SeasonFigure figure = choice.sortBy.value_or(SeasonFigure::syrup);
        const QString unit = unitWordOf(figure, units_);
        paintCurve(painter_, QRectF{0, y, paper_.page().width(), 190},
                   {headingOf(figure) + (unit.isEmpty() ? QString{} : QStringLiteral(", ") + unit),
                    seasonBars(chosenShifts(shifts, choice), figure, units_),
                    {},
                    {}},
                   paperDress());
        y += 200;
        widths(table);
        y = headings(table, y);
        for (const SeasonLine& line : table.lines) {
            if (y + 2 * height_ > paper_.page().bottom()) {
                paper_.newPage();
                y = headings(table, 0);
            }
            y = row(line.cells, y, false);
        }
        row(table.totals, y + 2, true);
    }
    void lessons(const std::vector<SeasonShift>& chosen) {
        paper_.newPage(QPageLayout::Portrait);
        const Dress dress = paperDress();
        double y = 0;
        for (const Outcome outcome : {Outcome::evaporation, Outcome::syrupPerCord}) {
            const auto words = tuningWords(tune(chosen, outcome), units_);
            y = title(words.title, y);
            QStringList notes{words.basis};
            notes << words.notes << words.tomorrow << words.caution;
            if (!words.lines.empty()) {
                const double high = 28.0 * static_cast<double>(words.lines.size() + 1);
                paintEffects(painter_, QRectF{0, y, paper_.page().width(), high}, words.lines, dress);
                y += high + 4;
            }
            y = paragraph(notes.join(u'\n'), y) + 12;
        }
        y = title(tr("Was the forecast right?"), y);
        paintCalibration(painter_, QRectF{0, y, paper_.page().width(), paper_.page().bottom() - y},
                         calibrationOf(chosen), dress);
    }

private:
    static QFont letters(double millimetres, bool bold = false) { return lettering(Measure{}, millimetres, bold); }
    // The letters of the pictures' axes as small as paper allows.
    static Dress paperDress() { return {Measure{Measure::usualDpi * paperLetters / mm::smallWords}, Look::paper}; }
    double title(const QString& words, double y) {
        painter_.setPen(Qt::black);
        painter_.setFont(letters(3.4, true));
        const double high = QFontMetricsF{letters(3.4, true)}.height();
        painter_.drawText(QRectF{0, y, paper_.page().width(), high}, Qt::AlignLeft, words);
        return y + high * 1.3;
    }
    double paragraph(const QString& words, double y) {
        painter_.setPen(Qt::black);
        painter_.setFont(letters(paperLetters));
        QRectF used;
        painter_.drawText(QRectF{0, y, paper_.page().width(), 1000}, Qt::TextWordWrap, words, &used);
        return used.bottom();
    }
    // As wide as its words want, shared out where the page is narrower.
    void widths(const SeasonTable& table) {
        const QFontMetricsF metrics{letters(paperLetters)}, strong{letters(paperLetters, true)};
        widths_.assign(static_cast<std::size_t>(table.headings.size()), 0.0);
        double sum = 0;
        for (std::size_t c = 0; c < widths_.size(); ++c) {
            const auto column = static_cast<qsizetype>(c);
            for (const QString& part : table.headings[column].split(u'\n'))
                widths_[c] = std::max(widths_[c], strong.horizontalAdvance(part));
            for (const SeasonLine& line : table.lines)
                widths_[c] = std::max(widths_[c], metrics.horizontalAdvance(line.cells.value(column)));
            widths_[c] += 8;
            sum += widths_[c];
        }
        for (double& wide : widths_)
            wide *= std::min(1.0, paper_.page().width() / sum);
        height_ = metrics.height() * 1.3;
    }
    double headings(const SeasonTable& table, double y) {
        painter_.setFont(letters(paperLetters, true));
        cells(table.headings, y, 2 * height_, 2);
        y += 2 * height_;
        painter_.drawLine(QPointF{0, y}, QPointF{paper_.page().width(), y});
        return y + 2;
    }
    double row(const QStringList& texts, double y, bool strong) {
        painter_.setFont(letters(paperLetters, strong));
        if (strong)
            painter_.drawLine(QPointF{0, y}, QPointF{paper_.page().width(), y});
        cells(texts, y, height_, 1);
        return y + height_;
    }
    void cells(const QStringList& texts, double y, double high, int lines) {
        double x = 0;
        painter_.setPen(Qt::black);
        for (std::size_t c = 0; c < widths_.size(); ++c) {
            const bool words = c == 0 || c + 1 == widths_.size();
            const QRectF place{x + 3, y, widths_[c] - 6, high};
            drawFitted(painter_, place.toRect(), (words ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter,
                       painter_.font(), texts.value(static_cast<qsizetype>(c)), lines);
            x += widths_[c];
        }
    }

    PdfPages& paper_;
    Units units_;
    QPainter& painter_;
    std::vector<double> widths_;
    double height_ = 12;
};

} // namespace

std::string seasonAsCsv(const std::vector<SeasonShift>& shifts, Units units) {
    std::string text = "shift";
    for (const FigureRow& row : allSeasonFigures())
        text += ',' + std::string{row.name} + unitName(row, units);
    text += ",at_least,crew\n";
    for (const SeasonShift& shift : shifts) {
        const auto tell = [&](SeasonFigure figure) {
            return shift.account ? figureOf(*shift.account, figure) : std::nullopt;
        };
        text += textOf(shift.id) + fieldsOf(tell, units) + ',' + (shift.account ? crewCell(*shift.account) : "") + '\n';
    }
    text += "together" + fieldsOf([&](SeasonFigure figure) { return totalOf(shifts, figure).told; }, units) + ",\n";
    return text;
}

void seasonAsPdf(const std::vector<SeasonShift>& shifts, const SeasonChoice& choice, Units units,
                 const FactsOf& factsOf, const std::string& place) {
    PdfPages paper{place, QStringLiteral("Panside, ") + seasonTable(shifts, choice, units).title,
                   QPageLayout::Landscape}; // the season's table is broad
    SeasonPages pages{paper, units};
    pages.table(shifts, choice);
    const auto chosen = chosenShifts(shifts, choice);
    pages.lessons(chosen);
    for (const SeasonShift& shift : chosen) {
        paper.newPage();
        paintShiftPage(paper.painter(), paper.page(), shift, factsOf(shift.id), units);
    }
    paper.finish();
}

} // namespace panside
