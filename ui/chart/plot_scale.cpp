#include "ui/chart/plot.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

double toUnit(double kelvin, Units units) { return units == Units::us ? kelvin * 1.8 : kelvin; }
double fromUnit(double step, Units units) { return units == Units::us ? step / 1.8 : step; }
QString stepText(double step) {
    return QLocale{}.toString(step, 'f', std::abs(step - std::round(step)) > 1e-6 ? 1 : 0);
}

} // namespace

void drawRiseScale(QPainter& painter, const ChartScene& scene, const Plot& plot, const QRect& gutter) {
    const Inks& inks = scene.dress.inks();
    const int most = std::max(2, plot.area.height() / scene.dress.px(10));
    const QFont font = scene.dress.letters(mm::smallWords);
    const int half = QFontMetrics{font}.height() / 2, mark = scene.dress.px(1);
    const double low = toUnit(plot.low, scene.units), high = toUnit(plot.high, scene.units);
    painter.setFont(font);
    const auto rowAt = [&](double kelvin) {
        const int y = static_cast<int>(std::lround(plot.y(kelvin)));
        const bool seen = y - half >= plot.area.top() && y + half <= plot.area.bottom() + mark;
        return seen ? std::optional{QRect{gutter.left(), y - half, gutter.width() - mark, 2 * half}} : std::nullopt;
    };
    for (const double step : roundSteps(low, high, most))
        if (const auto row = rowAt(fromUnit(step, scene.units))) {
            painter.setPen(QPen{inks.faint, 1});
            painter.drawLine(plot.area.left(), row->center().y(), plot.area.right(), row->center().y());
            painter.setPen(inks.word);
            if (row->intersects(plot.part))
                painter.drawText(*row, Qt::AlignRight | Qt::AlignVCenter, stepText(step));
        }
    if (!scene.picture.waterBoils)
        return;
    const QRect head{gutter.left(), gutter.top() - scene.dress.px(7), gutter.width() - mark, scene.dress.px(7)};
    painter.setPen(inks.quiet);
    painter.drawText(head, Qt::AlignLeft | Qt::AlignVCenter,
                     symbolOf(unitOf(Dimension::temperature, scene.units))); // of the pan; the rise has its title
    const Temperature foot = *scene.picture.waterBoils + scene.picture.probeOffset;
    const double from = scene.units == Units::us ? foot.fahrenheit() : foot.celsius();
    for (const double step : roundSteps(from + low, from + high, most))
        if (const auto row = rowAt(fromUnit(step - from, scene.units)); row && row->intersects(plot.part)) {
            const QString words = stepText(step);
            const int right = row->left() + QFontMetrics{font}.horizontalAdvance(words) + mark / 2;
            painter.drawText(*row, Qt::AlignLeft | Qt::AlignVCenter, words);
            painter.drawLine(right, row->center().y(), right + mark, row->center().y());
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
        const QRectF place{x - wide / 2.0, row.top() * 1.0, wide * 1.0, row.height() * 1.0};
        if (place.intersects(scene.part))
            painter.drawText(place, Qt::AlignCenter, scene.trace.clock().hourAndMinute(at));
    }
    if (now < row.left() || now > row.right() || !row.intersects(scene.part))
        return;
    painter.setFont(scene.dress.letters(mm::words, true));
    painter.setPen(inks.word);
    painter.drawText(QRectF{now - wide, row.top() * 1.0, wide * 2.0, row.height() * 1.0}, Qt::AlignCenter,
                     scene.trace.clock().hourAndMinute(scene.picture.at));
}

} // namespace panside
