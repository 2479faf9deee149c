// The fire under the same time: stack, loads, evaporation, so that sag and load are seen together.
#include "core/boil/loads.h"
#include "ui/chart/plot.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("RiseChart", text); }

// Evaporation stands as a filled height over the floor: another shape than the stack's line.
void drawEvaporation(QPainter& painter, const ChartScene& scene, Plot plot) {
    const Thinned& series = scene.trace.evaporation();
    const auto range = seen(series, plot.time);
    if (!range || range->second <= 0)
        return;
    plot.low = 0;
    plot.high = range->second * 1.6;
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const auto& column : series.columns()) {
        const double x = plot.time.xOfColumn(column.index), y = plot.y(column.last);
        const auto next = std::max(1, static_cast<int>(10e6 / static_cast<double>(plot.time.column.count())) + 1);
        if (x + next < plot.visible().left() || x > plot.visible().right())
            continue;
        painter.fillRect(QRectF{x, y, next * 1.0, plot.area.bottom() + 1 - y}, scene.dress.inks().faint);
    }
    painter.setRenderHint(QPainter::Antialiasing);
    drawSeries(painter, series, plot, scene.dress.inks().quiet, 1);
}

// Where the stack's line stands; nothing while none is read.
std::optional<Plot> stackPlot(const ChartScene& scene, Plot plot) {
    const auto range = seen(scene.trace.stack(), plot.time);
    if (!range)
        return std::nullopt;
    const double margin = std::max(15.0, 0.12 * (range->second - range->first));
    plot.low = range->first - margin;
    plot.high = range->second + 2.5 * margin; // room for the words over it
    return plot;
}

// Its degrees, at the left of the field, in round steps.
void drawStackScale(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    const bool us = scene.units == Units::us;
    const auto inUnit = [us](double kelvin) {
        const auto at = Temperature::kelvin(kelvin);
        return us ? at.fahrenheit() : at.celsius();
    };
    const QFont font = scene.dress.letters(mm::smallWords);
    const int half = QFontMetrics{font}.height() / 2, mark = scene.dress.px(1);
    painter.setFont(font);
    painter.setPen(scene.dress.inks().quiet);
    for (const double step : roundSteps(inUnit(plot.low), inUnit(plot.high), plot.area.height() / scene.dress.px(7))) {
        const auto at = us ? Temperature::fahrenheit(step) : Temperature::celsius(step);
        const int y = static_cast<int>(plot.y(at.kelvin()));
        if (y - half < plot.area.top() || y + half > plot.area.bottom() + mark)
            continue;
        painter.drawText(
            QRect{plot.area.left() - scene.dress.px(22), y - half, scene.dress.px(22) - 2 * mark, 2 * half},
            Qt::AlignRight | Qt::AlignVCenter, QString::number(step, 'f', 0));
        painter.drawLine(plot.area.left() - mark, y, plot.area.left(), y);
    }
}

void drawLoads(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    QPen pen{scene.dress.inks().line, 1};
    for (const Fact& fact : scene.trace.events()) {
        const auto* fired = std::get_if<Fired>(&fact.what);
        if (!fired || deniesLoad(*fired))
            continue;
        const double x = plot.time.x(fact.at);
        if (x < plot.area.left() || x > plot.area.right())
            continue;
        painter.setPen(pen);
        painter.drawLine(QPointF{x, plot.area.top() * 1.0}, QPointF{x, plot.area.bottom() + 1.0});
    }
}

void nameFire(QPainter& painter, const ChartScene& scene, const QRect& area) {
    const QString words = fireWords(scene);
    const QRect place = fireWordsPlace(words, scene.dress, area);
    QColor ground = scene.dress.inks().panel;
    ground.setAlphaF(0.8F);
    painter.fillRect(place, ground);
    painter.setFont(scene.dress.letters(mm::smallWords));
    painter.setPen(scene.dress.inks().quiet);
    painter.drawText(place, Qt::AlignCenter, words);
}

} // namespace

Seen seen(const Thinned& series, const TimeScale& time) {
    Seen range;
    for (const auto& column : series.columns()) {
        if (column.index < time.firstColumn || column.index > time.firstColumn + time.width)
            continue;
        const double least = column.least, greatest = column.greatest;
        range = range ? std::pair{std::min(range->first, least), std::max(range->second, greatest)}
                      : std::pair{least, greatest};
    }
    return range;
}

QString fireWords(const ChartScene& scene) {
    QStringList words;
    const auto& stack = scene.picture.reading(Series::stack);
    if (stack && stack->si)
        words << tr("stack %1").arg(figure(Temperature::kelvin(*stack->si), scene.units, 0).text());
    else
        words << tr("stack");
    words << (scene.picture.evaporation ? tr("boils off %1").arg(figure(*scene.picture.evaporation, scene.units).text())
                                        : tr("boils off –"));
    return words.join(QStringLiteral(" · "));
}

QRect fireWordsPlace(const QString& words, const Dress& dress, const QRect& area) {
    const QFontMetrics metrics{dress.letters(mm::smallWords)};
    return {area.left() + dress.px(1), area.top() + 1, metrics.horizontalAdvance(words) + dress.px(2),
            metrics.height()};
}

void drawFire(QPainter& painter, const ChartScene& scene, const QRect& area, const TimeScale& time) {
    painter.save();
    const Plot plot{area, time, 0, 1, scene.part};
    painter.setClipRect(plot.visible());
    drawEvaporation(painter, scene, plot);
    drawLoads(painter, scene, plot);
    const auto stack = stackPlot(scene, plot);
    if (stack)
        drawSeries(painter, scene.trace.stack(), *stack, scene.dress.inks().word,
                   std::max(1.2, scene.dress.px(0.4) * 1.0));
    if (scene.future) {
        const double x = time.x(scene.picture.at);
        painter.setPen(QPen{scene.dress.inks().word, 1});
        painter.drawLine(QPointF{x, area.top() * 1.0}, QPointF{x, area.bottom() + 1.0});
    }
    nameFire(painter, scene, area);
    painter.restore();
    if (stack)
        drawStackScale(painter, scene, *stack);
}

} // namespace panside
