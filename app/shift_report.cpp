#include "app/shift_report.h"

#include "app/commands.h"
#include "app/text_file.h"
#include "core/boil/shift_log.h"
#include "ui/chart/rise_chart.h"
#include "ui/words/fact_words.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>
#include <fmt/format.h>

namespace panside {

namespace {

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

bool isDone(const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    return !reading || reading->byHand();
}

std::string quoted(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos)
        return text;
    std::string out = "\"";
    for (const char c : text)
        out += c == '"' ? std::string{"\"\""} : std::string{c};
    return out + "\"";
}

QString escaped(const std::string& text) { return QString::fromStdString(text).toHtmlEscaped(); }

QString pageOf(const ShiftSummary& summary, const std::vector<Boil::Entry>& facts) {
    auto page = QStringLiteral("<h2>Panside · %1</h2><table cellpadding=\"2\">").arg(escaped(summary.shift.name()));
    for (const auto& line : linesOf(summary))
        page += QStringLiteral("<tr><td>%1</td><td align=\"right\">%2</td><td>%3</td></tr>")
                    .arg(escaped(line.name), line.value.empty() ? QStringLiteral("—") : escaped(line.value),
                         escaped(line.unit));
    page += QStringLiteral("</table><p><img src=\"chart\"></p><h3>What was done</h3><table cellpadding=\"1\">");
    for (const auto& [id, fact] : facts)
        if (isDone(fact))
            page +=
                QStringLiteral("<tr><td>%1</td><td>%2</td><td>%3</td></tr>")
                    .arg(escaped(textOf(fact.at)), factWords(fact, Units::metric).toHtmlEscaped(), escaped(fact.by));
    return page +
           QStringLiteral("</table><p>Figures are as entered and as read by the probes. They take the place of no "
                          "weighed or licensed measurement.</p>");
}

QImage chartOf(const std::vector<Boil::Entry>& facts, const QSize& size) {
    Boil boil;
    for (const auto& [id, fact] : facts)
        boil.add(id, fact);
    RiseChart chart;
    chart.setUnits(Units::metric);
    chart.resize(size);
    chart.follow(boil);
    if (!facts.empty())
        chart.display(boil.pictureAt(facts.back().fact.at));
    chart.showWhole();
    return chart.grab().toImage();
}

} // namespace

std::string reportAsCsv(const ShiftSummary& summary, const std::vector<Boil::Entry>& facts) {
    std::string text = "figure,value,unit\n";
    for (const auto& line : linesOf(summary))
        text += line.name + ',' + quoted(line.value) + ',' + line.unit + '\n';
    text += '\n' + std::string{logHeader} + '\n';
    for (const auto& [id, fact] : facts)
        if (isDone(fact))
            text += rowOf(fact) + '\n';
    return text;
}

void reportAsPdf(const ShiftSummary& summary, const std::vector<Boil::Entry>& facts, const std::string& place) {
    QPdfWriter writer{QString::fromStdString(place)};
    writer.setPageSize(QPageSize{QPageSize::A4});
    writer.setResolution(96);
    writer.setTitle(QStringLiteral("Panside ") + QString::fromStdString(summary.shift.name()));
    QTextDocument document;
    const QRect page = writer.pageLayout().paintRectPixels(writer.resolution());
    document.setPageSize(page.size());
    document.addResource(QTextDocument::ImageResource, QUrl{QStringLiteral("chart")},
                         chartOf(facts, {page.width() - 40, page.width() / 2}));
    document.setHtml(pageOf(summary, facts));
    QPainter painter;
    if (!painter.begin(&writer))
        throw FileFault{status::machineFailed,
                        place + ": cannot be written. Choose a folder that is there and may be written."};
    for (int number = 0; number < document.pageCount(); ++number) {
        if (number > 0)
            writer.newPage();
        painter.save();
        painter.translate(0, -number * page.height());
        document.drawContents(&painter, QRectF(0, number * page.height(), page.width(), page.height()));
        painter.restore();
    }
}

} // namespace panside
