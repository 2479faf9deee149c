// The fire under the same time: stack, loads, evaporation, so that sag and load are seen together.
#include "core/boil/loads.h"
#include "ui/chart/plot.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("RiseChart", text); }

// The least and greatest value on the screen, widened a little; nothing if there is none.
std::optional<std::pair<double, double>> seen(const Thinned& series, const TimeScale& time) {
    std::optional<std::pair<double, double>> range;
    for (const auto& column : series.columns()) {
        if (column.index < time.firstColumn || column.index > time.firstColumn + time.width)
            continue;
        const double least = column.least, greatest = column.greatest;
        range = range ? std::pair{std::min(range->first, least), std::max(range->second, greatest)}
                      : std::pair{least, greatest};
    }
    return range;
}

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
        if (x < plot.area.left() || x > plot.area.right())
            continue;
        const auto next = std::max(1, static_cast<int>(10e6 / static_cast<double>(plot.time.column.count())) + 1);
        painter.fillRect(QRectF{x, y, next * 1.0, plot.area.bottom() + 1 - y}, scene.dress.inks().faint);
    }
    painter.setRenderHint(QPainter::Antialiasing);
    drawSeries(painter, series, plot, scene.dress.inks().quiet, 1);
}

void drawStack(QPainter& painter, const ChartScene& scene, Plot plot) {
    const auto range = seen(scene.trace.stack(), plot.time);
    if (!range)
        return;
    const double margin = std::max(15.0, 0.12 * (range->second - range->first));
    plot.low = range->first - margin;
    plot.high = range->second + 2.5 * margin; // room for the words over it
    drawSeries(painter, scene.trace.stack(), plot, scene.dress.inks().word, std::max(1.2, scene.dress.px(0.4) * 1.0));
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

QString named(const ChartScene& scene) {
    QStringList words;
    const auto& stack = scene.picture.reading(Series::stack);
    if (stack && stack->si)
        words << tr(QT_TRANSLATE_NOOP("RiseChart", "stack %1"))
                     .arg(figure(Temperature::kelvin(*stack->si), scene.units, 0).text());
    else
        words << tr(QT_TRANSLATE_NOOP("RiseChart", "stack"));
    words << (scene.picture.evaporation ? tr(QT_TRANSLATE_NOOP("RiseChart", "boils off %1"))
                                              .arg(figure(*scene.picture.evaporation, scene.units).text())
                                        : tr(QT_TRANSLATE_NOOP("RiseChart", "boils off –")));
    return words.join(QStringLiteral(" · "));
}

void nameFire(QPainter& painter, const ChartScene& scene, const QRect& area) {
    const QFont font = scene.dress.letters(mm::smallWords);
    const QString name = named(scene);
    const QFontMetrics metrics{font};
    const QRect place{area.left() + scene.dress.px(1), area.top() + 1,
                      metrics.horizontalAdvance(name) + scene.dress.px(2), metrics.height()};
    QColor ground = scene.dress.inks().panel;
    ground.setAlphaF(0.8F);
    painter.fillRect(place, ground);
    painter.setFont(font);
    painter.setPen(scene.dress.inks().quiet);
    painter.drawText(place, Qt::AlignCenter, name);
}

} // namespace

void drawFire(QPainter& painter, const ChartScene& scene, const QRect& area, const TimeScale& time) {
    painter.save();
    painter.setClipRect(area);
    const Plot plot{area, time, 0, 1};
    drawEvaporation(painter, scene, plot);
    drawLoads(painter, scene, plot);
    drawStack(painter, scene, plot);
    if (scene.future) {
        const double x = time.x(scene.picture.at);
        painter.setPen(QPen{scene.dress.inks().word, 1});
        painter.drawLine(QPointF{x, area.top() * 1.0}, QPointF{x, area.bottom() + 1.0});
    }
    nameFire(painter, scene, area);
    painter.restore();
}

} // namespace panside
