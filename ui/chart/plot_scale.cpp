#include "ui/chart/plot.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

double toUnit(double kelvin, Units units) { return units == Units::us ? kelvin * 1.8 : kelvin; }
double fromUnit(double step, Units units) { return units == Units::us ? step / 1.8 : step; }

} // namespace

void drawRiseScale(QPainter& painter, const ChartScene& scene, const Plot& plot, const QRect& gutter) {
    const Inks& inks = scene.dress.inks();
    const int most = std::max(2, plot.area.height() / scene.dress.px(14));
    const QFont font = scene.dress.letters(mm::smallWords);
    const int half = QFontMetrics{font}.height() / 2;
    const bool degrees = scene.picture.waterBoils.has_value();
    painter.setFont(font);
    for (const double step : roundSteps(toUnit(plot.low, scene.units), toUnit(plot.high, scene.units), most)) {
        const double kelvin = fromUnit(step, scene.units);
        const int y = static_cast<int>(std::lround(plot.y(kelvin)));
        if (y - half < plot.area.top() || y + half > plot.area.bottom() + scene.dress.px(1))
            continue;
        painter.setPen(QPen{inks.faint, 1});
        painter.drawLine(plot.area.left(), y, plot.area.right(), y);
        const auto rise = TemperatureDifference::kelvin(kelvin);
        const int decimals = std::abs(step - std::round(step)) > 1e-6 ? 1 : 0;
        const QRect row{gutter.left(), y - half, gutter.width() - scene.dress.px(1), 2 * half};
        painter.setPen(inks.word);
        painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, figure(rise, scene.units, decimals).number);
        if (degrees) {
            painter.setPen(inks.quiet);
            painter.drawText(
                row, Qt::AlignLeft | Qt::AlignVCenter,
                figure(*scene.picture.waterBoils + rise + scene.picture.probeOffset, scene.units, 1).number);
        }
    }
}

void drawTimeScale(QPainter& painter, const ChartScene& scene, const TimeScale& time, const QRect& row) {
    const Inks& inks = scene.dress.inks();
    const QFont font = scene.dress.letters(mm::smallWords);
    const QFontMetrics metrics{font};
    const int wide = metrics.horizontalAdvance(QStringLiteral("00:00")) + scene.dress.px(4);
    const double now = scene.future ? time.x(scene.picture.at) : -1e6;
    painter.setFont(font);
    const double step = tickStep(time, 2 * wide).count();
    // Ticks stand on round wall-clock times of the person's own zone.
    const double zone = scene.trace.clock().at(time.begin()).offsetFromUtc();
    const double begin = secondsBetween(Instant{}, time.begin()) + zone,
                 end = begin + secondsBetween(time.begin(), time.end());
    painter.setPen(inks.quiet);
    for (double tick = std::ceil(begin / step) * step; tick < end; tick += step) {
        const Instant at = Instant{} + Duration{tick - zone};
        const double x = time.x(at);
        if (std::abs(x - now) < wide || x - wide / 2.0 < row.left() || x + wide / 2.0 > row.right())
            continue;
        painter.drawText(QRectF{x - wide / 2.0, row.top() * 1.0, wide * 1.0, row.height() * 1.0}, Qt::AlignCenter,
                         scene.trace.clock().hourAndMinute(at));
    }
    if (now < row.left() || now > row.right())
        return;
    painter.setFont(scene.dress.letters(mm::words, true));
    painter.setPen(inks.word);
    painter.drawText(QRectF{now - wide, row.top() * 1.0, wide * 2.0, row.height() * 1.0}, Qt::AlignCenter,
                     scene.trace.clock().hourAndMinute(scene.picture.at));
}

} // namespace panside
