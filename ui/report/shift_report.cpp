#include "ui/report/shift_report.h"

#include "core/boil/alarm_review.h"
#include "core/boil/shift_log.h"
#include "core/files/csv_cell.h"
#include "ui/chart/rise_chart.h"
#include "ui/look/wall_clock.h"
#include "ui/report/pdf_pages.h"
#include "ui/review/alarm_lines.h"
#include "ui/words/alarm_words.h"
#include "ui/words/fact_words.h"
#include "ui/words/season_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <fmt/format.h>

namespace panside {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("Report", text, comment, n);
}

// A figure of the head, or nothing where the shift does not tell it.
struct Line {
    std::string name;
    std::string value;
    std::string unit;
};

std::string decimal(double value, int decimals) { return fmt::format("{:.{}f}", value, decimals); }

std::vector<Line> linesOf(const ShiftSummary& summary) {
    std::string crew;
    for (const auto& name : summary.crew)
        crew += (crew.empty() ? "" : ", ") + name;
    const bool measured = summary.drawsMeasured > 0;
    const bool weighed = summary.loadsWeighed > 0;
    return {
        {"shift", summary.shift.name(), ""},
        {"first fact", textOf(summary.first), ""},
        {"last fact", textOf(summary.last), ""},
        {"fire lit", summary.lit ? textOf(*summary.lit) : "", ""},
        {"crew", crew, ""},
        {"sap taken in", decimal(summary.sap.litre(), 1), "L"},
        {"draws", std::to_string(summary.draws), ""},
        {"draws measured", std::to_string(summary.drawsMeasured), ""},
        {"syrup of those", measured ? decimal(summary.syrup.litre(), 1) : "", "L"},
        {"loads of wood", std::to_string(summary.loads), ""},
        {"loads weighed", std::to_string(summary.loadsWeighed), ""},
        {"wood of those", weighed ? decimal(summary.wood.kilogram(), 0) : "", "kg"},
        {"density checks", std::to_string(summary.checks), ""},
        {"probe readings", std::to_string(summary.readings), ""},
    };
}

// What the engine worked out besides, by the names of the season's table.
std::vector<Line> linesOf(const ShiftAccount& account) {
    std::vector<Line> lines;
    for (const FigureRow& row : allSeasonFigures()) {
        if (row.together == Together::sum && row.figure != SeasonFigure::alarms && row.figure != SeasonFigure::sapTaken)
            continue; // stands above
        const auto told = figureOf(account, row.figure);
        const Unit unit = unitOf(row.dimension, Units::metric);
        lines.push_back(
            {std::string{row.name},
             told ? fmt::format("{:.6g}", row.dimension == Dimension::none ? told->si : fromSi(told->si, unit)) : "",
             std::string{row.dimension == Dimension::none ? "" : nameOf(unit)}});
        if (told && told->atLeast)
            lines.back().name += " at least";
    }
    return lines;
}

bool isDone(const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    return !reading || reading->byHand();
}

Boil boilOf(const Facts& facts) {
    Boil boil{Boil::Alarms::unwatched}; // they come from their own history
    boil.begin(facts);
    boil.fold();
    return boil;
}

class ShiftPage {
public:
    ShiftPage(QPainter& painter, const QRectF& page, const SeasonShift& shift, const Facts& facts, Units units)
        : painter_{painter}, page_{page}, shift_{shift}, facts_{facts}, units_{units}, boil_{boilOf(facts)},
          alarms_{alarmReview(alarmHistory(facts))} {}
    void paint() {
        const double top = head(page_.top());
        const double below = account(top);
        const double foot = cautions();
        // The chart has what the words leave, within what still looks like a curve.
        const double words =
            6 + line(paperLetters) * 1.1 * (1 + static_cast<double>((alarms_.tallies.size() + 1) / 2)) + 8 +
            line(2.6) * 1.2 + line(paperLetters) * 1.1 * static_cast<double>((doneLines().size() + 1) / 2) + 6;
        const double high = std::clamp(foot - below - 8 - words, page_.height() * 0.36, page_.height() * 0.6);
        const QRectF chartPlace{page_.left(), below + 8, page_.width(), high};
        chart(chartPlace);
        done(alarms(chartPlace.bottom() + 6) + 8, foot - 6);
    }

private:
    static QFont letters(double millimetres, bool bold = false) { return lettering(Measure{}, millimetres, bold); }
    double line(double millimetres) const { return QFontMetricsF{letters(millimetres)}.height(); }

    double head(double y) {
        painter_.setFont(letters(4, true));
        painter_.setPen(Qt::black);
        painter_.drawText(QRectF{page_.left(), y, page_.width(), line(4)}, Qt::AlignLeft, seasonShiftName(shift_.id));
        QStringList rest;
        if (shift_.account)
            for (const auto& [name, time] : shift_.account->crew)
                rest << QString::fromStdString(name);
        if (shift_.open)
            rest << tr("still going on");
        painter_.setFont(letters(paperLetters));
        painter_.drawText(QRectF{page_.left(), y + line(4) * 1.1, page_.width(), line(paperLetters)}, Qt::AlignLeft,
                          rest.join(QStringLiteral(", ")));
        return y + line(4) * 1.1 + line(paperLetters) * 1.6;
    }
    // Every figure of the season's table, in two columns; a hole is a dash.
    double account(double y) {
        const auto rows = allSeasonFigures();
        const std::size_t half = (rows.size() + 1) / 2;
        const double height = line(paperLetters) * 1.15, wide = page_.width() / 2 - 12;
        painter_.setFont(letters(paperLetters));
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const QRectF place{page_.left() + (i < half ? 0 : page_.width() / 2 + 12),
                               y + height * static_cast<double>(i % half), wide, height};
            const auto told = shift_.account ? figureOf(*shift_.account, rows[i].figure) : std::nullopt;
            const QString unit = unitWordOf(rows[i].figure, units_);
            painter_.drawText(place, Qt::AlignLeft, headingOf(rows[i].figure));
            painter_.drawText(place, Qt::AlignRight,
                              told ? numberOf(rows[i].figure, *told, units_) + QChar{0x00a0} + unit
                                   : QStringLiteral("–"));
        }
        return y + height * static_cast<double>(half);
    }
    // Drawn at twice its size, so that its lines are fine; lettered for paper.
    void chart(const QRectF& place) {
        RiseChart chart;
        constexpr double whole = 1.06; // its letters are whole pixels, and none is under the 9 points
        chart.wear({Measure{2 * Measure::usualDpi * whole * paperLetters / mm::smallWords}, Look::paper});
        chart.setUnits(units_);
        chart.resize((place.size() * 2).toSize());
        chart.follow(boil_);
        if (!facts_.empty())
            chart.display(boil_.pictureAt(facts_.back().fact.at));
        chart.showWhole();
        chart.layAlarms(alarms_);
        painter_.save();
        painter_.translate(place.topLeft());
        painter_.scale(0.5, 0.5);
        chart.render(&painter_, QPoint{}, QRegion{}, QWidget::DrawChildren);
        painter_.restore();
    }
    // How many there were, and the names to the numbers of the chart's lanes.
    double alarms(double y) {
        const WallClock clock = clockOf();
        painter_.setPen(Qt::black);
        drawFitted(painter_, QRectF{page_.left(), y, page_.width(), line(paperLetters)}.toRect(), Qt::AlignLeft,
                   letters(paperLetters, true), alarmsStory(alarms_, clock));
        y += line(paperLetters) * 1.1;
        const std::size_t half = (alarms_.tallies.size() + 1) / 2;
        const double height = line(paperLetters) * 1.1, wide = page_.width() / 2 - 8;
        for (std::size_t i = 0; i < alarms_.tallies.size(); ++i) {
            const AlarmTally& tally = alarms_.tallies[i];
            const QRectF place{page_.left() + (i < half ? 0 : page_.width() / 2 + 8),
                               y + height * static_cast<double>(i % half), wide, height};
            drawFitted(painter_, place.toRect(), Qt::AlignLeft | Qt::AlignVCenter, letters(paperLetters),
                       tr("%1 %2: %3×, %4, at most %5")
                           .arg(i + 1)
                           .arg(alarmName(tally.alarm, tally.series))
                           .arg(tally.times)
                           .arg(spanText(tally.total), spanText(tally.longest)));
        }
        return y + height * static_cast<double>(half);
    }
    WallClock clockOf() const {
        WallClock clock;
        for (const auto& [id, fact] : facts_)
            if (const auto* step = std::get_if<ClockStep>(&fact.what))
                clock.moved(fact.at, step->by);
        return clock;
    }
    QStringList doneLines() const {
        QStringList lines;
        const WallClock clock = clockOf();
        for (const auto& [id, fact] : facts_)
            if (std::holds_alternative<DrawClosed>(fact.what) || std::holds_alternative<DensityCheck>(fact.what) ||
                std::holds_alternative<WaterCheck>(fact.what) || std::holds_alternative<PanSwapped>(fact.what) ||
                std::holds_alternative<Note>(fact.what))
                lines << clock.hourAndMinute(fact.at) + QStringLiteral("  ") + factWords(fact, units_);
        return lines;
    }
    // Draws and checks, in two columns; what has no room is counted.
    void done(double top, double bottom) {
        QStringList lines = doneLines();
        painter_.setFont(letters(2.6, true));
        painter_.drawText(QRectF{page_.left(), top, page_.width(), line(2.6)}, Qt::AlignLeft,
                          tr("Draws, checks and notes"));
        top += line(2.6) * 1.2;
        const double height = line(paperLetters) * 1.1;
        auto each = std::max(1, static_cast<int>((bottom - top) / height));
        if (lines.size() <= 2 * each) {
            each = static_cast<int>(lines.size() + 1) / 2;
        } else {
            const auto more = static_cast<int>(lines.size()) - 2 * each + 1;
            lines = lines.mid(0, 2 * each - 1);
            lines << tr("and %n more, in the shift's log", nullptr, more);
        }
        const double wide = page_.width() / 2 - 8;
        for (qsizetype i = 0; i < lines.size(); ++i) {
            const QRectF place{page_.left() + (i < each ? 0 : page_.width() / 2 + 8),
                               top + height * static_cast<double>(i % each), wide, height};
            drawFitted(painter_, place.toRect(), Qt::AlignLeft | Qt::AlignVCenter, letters(paperLetters), lines[i]);
        }
    }
    double cautions() {
        const QString words =
            tr("Figures are as entered and as read by the probes; \"≥\" means that not all was measured, a dash that "
               "it is not known. They take the place of no weighed or licensed measurement. The hydrometer decides "
               "what is syrup; local codes and inspectors come first.");
        painter_.setFont(letters(paperLetters));
        const double height = QFontMetricsF{letters(paperLetters)}
                                  .boundingRect(QRectF{0, 0, page_.width(), 1000}, Qt::TextWordWrap, words)
                                  .height();
        const QRectF place{page_.left(), page_.bottom() - height, page_.width(), height};
        painter_.drawText(place, Qt::TextWordWrap, words);
        return place.top();
    }

    QPainter& painter_;
    QRectF page_;
    const SeasonShift& shift_;
    const Facts& facts_;
    Units units_;
    Boil boil_;
    AlarmReview alarms_;
};

} // namespace

std::string reportAsCsv(const ShiftSummary& summary, const ShiftAccount& account, const Facts& facts) {
    std::string text = "figure,value,unit\n";
    for (const auto& lines : {linesOf(summary), linesOf(account)})
        for (const auto& line : lines)
            text += line.name + ',' + csvCell(line.value) + ',' + line.unit + '\n';
    text += '\n' + std::string{logHeader} + '\n';
    for (const auto& [id, fact] : facts)
        if (isDone(fact))
            text += csvRowHarmless(rowOf(fact)) + '\n';
    return text;
}

void paintShiftPage(QPainter& painter, const QRectF& page, const SeasonShift& shift, const Facts& facts, Units units) {
    ShiftPage{painter, page, shift, facts, units}.paint();
}

void reportAsPdf(const SeasonShift& shift, const Facts& facts, Units units, const std::string& place) {
    PdfPages paper{place, QStringLiteral("Panside, ") + seasonShiftName(shift.id)};
    paintShiftPage(paper.painter(), paper.page(), shift, facts, units);
    paper.finish();
}

} // namespace panside
