#include "ui/chart/plot.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("RiseChart", text); }

// Slanting hairlines: the band is known by its texture, by day and by night and to whoever sees no colours.
QBrush texture(const Dress& dress) {
    const int side = std::max(6, dress.px(2));
    QPixmap tile{side, side};
    tile.fill(Qt::transparent);
    QPainter painter{&tile};
    painter.setRenderHint(QPainter::Antialiasing);
    QColor ink = dress.inks().band;
    ink.setAlphaF(0.6F);
    painter.setPen(QPen{ink, 1});
    painter.drawLine(QPointF{-1.0, side + 1.0}, QPointF{side + 1.0, -1.0});
    painter.drawLine(QPointF{-1.0, 1.0}, QPointF{1.0, -1.0});
    painter.drawLine(QPointF{side - 1.0, side + 1.0}, QPointF{side + 1.0, side - 1.0});
    return QBrush{tile};
}

double nowX(const ChartScene& scene, const Plot& plot) {
    const double right = plot.area.right() + 1.0;
    return scene.future ? std::clamp(plot.time.x(scene.picture.at), static_cast<double>(plot.area.left()), right)
                        : right;
}

// A level line: firm in the past, broken in the future.
void level(QPainter& painter, const ChartScene& scene, const Plot& plot, double value, QPen pen) {
    const double y = plot.y(value), now = nowX(scene, plot);
    painter.setPen(pen);
    painter.drawLine(QPointF{static_cast<double>(plot.area.left()), y}, QPointF{now, y});
    pen.setStyle(Qt::CustomDashLine);
    pen.setDashPattern({3, 5});
    painter.setPen(pen);
    painter.drawLine(QPointF{now, y}, QPointF{plot.area.right() + 1.0, y});
}

void drawBand(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    const Picture& picture = scene.picture;
    if (!picture.targetRise)
        return;
    const double target = picture.targetRise->kelvin();
    const double legal = picture.legalRise ? picture.legalRise->kelvin() : target;
    const double heavy = picture.heavyRise ? picture.heavyRise->kelvin() : target;
    const Inks& inks = scene.dress.inks();
    const QRectF band{QPointF{static_cast<double>(plot.area.left()), plot.y(heavy)},
                      QPointF{plot.area.right() + 1.0, plot.y(legal)}};
    painter.fillRect(band, texture(scene.dress));
    level(painter, scene, plot, heavy, QPen{inks.band, 1});
    level(painter, scene, plot, legal, QPen{inks.band, 1});
    level(painter, scene, plot, target, QPen{inks.word, scene.dress.px(0.4) * 1.0});
}

void drawDraws(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    for (const auto& draw : scene.trace.draws()) {
        const double from = plot.time.x(draw.opened), to = plot.time.x(draw.closed.value_or(scene.picture.at));
        if (to < plot.area.left() || from > plot.area.right())
            continue;
        const QRectF shade{from, static_cast<double>(plot.area.top()), std::max(2.0, to - from),
                           plot.area.height() * 1.0};
        painter.fillRect(shade.intersected(plot.area), scene.dress.inks().shade);
    }
}

// From the reading now to the band: a wedge between one in ten and nine in ten, its middle a broken line.
void drawFan(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    const Picture& picture = scene.picture;
    const auto& eta = picture.drawing ? picture.closeEta : picture.drawEta;
    if (!scene.future || !eta || !picture.rise || !picture.targetRise || eta->p50.count() <= 0)
        return;
    const double target = plot.y(picture.targetRise->kelvin()), rise = plot.y(picture.rise->kelvin());
    const QPointF start{nowX(scene, plot), rise};
    const auto meets = [&](Duration in) { return QPointF{plot.time.x(picture.at + in), target}; };
    QPainterPath wedge{start};
    wedge.lineTo(meets(eta->p10));
    if (eta->p90) {
        wedge.lineTo(meets(*eta->p90));
    } else { // some futures never get there: the wedge stays open
        wedge.lineTo(plot.area.right() + 1.0, target);
        wedge.lineTo(plot.area.right() + 1.0, rise);
    }
    wedge.closeSubpath();
    QColor ink = scene.dress.inks().trace;
    ink.setAlphaF(0.25F);
    painter.fillPath(wedge, ink);
    QPen pen{scene.dress.inks().trace, scene.dress.px(0.5) * 1.0, Qt::CustomDashLine, Qt::FlatCap};
    pen.setDashPattern({2, 2});
    painter.setPen(pen);
    painter.drawLine(start, meets(eta->p50));
}

// What was foretold then: a faint wedge from the reading of that moment to the band, its middle a hair line. Where one
// in ten never gets there the wedge ends at the middle.
void drawPastFans(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    QColor ink = scene.dress.inks().trace;
    ink.setAlphaF(0.10F);
    QColor middle = scene.dress.inks().trace;
    middle.setAlphaF(0.45F);
    for (const PastForecast& past : scene.past) {
        const QPointF start{plot.time.x(past.at), plot.y(past.rise.kelvin())};
        const double last = plot.time.x(past.at + past.draw.p90.value_or(past.draw.p50));
        if (last < plot.area.left() || start.x() > plot.area.right())
            continue;
        const double target = plot.y(past.targetRise.kelvin());
        QPainterPath wedge{start};
        wedge.lineTo(plot.time.x(past.at + past.draw.p10), target);
        wedge.lineTo(last, target);
        wedge.closeSubpath();
        painter.fillPath(wedge, ink);
        painter.setPen(QPen{middle, 1});
        painter.drawLine(start, QPointF{plot.time.x(past.at + past.draw.p50), target});
    }
}

void drawUnder(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    const auto mine = scene.trace.momentOf(scene.from);
    if (!mine)
        return;
    const Inks& inks = scene.dress.inks();
    for (const Laid& laid : scene.under) {
        const auto theirs = laid.trace->momentOf(scene.from);
        if (!theirs)
            continue;
        const std::int64_t shift = (*mine - *theirs).count() / plot.time.column.count();
        drawSeries(painter, laid.trace->rise(), plot, inks.line, 1, shift);
    }
}

// Where a laid curve's number stands on it: a share of what can be seen of it, so that two do not meet.
std::optional<QPointF> placeOnCurve(const Thinned& series, const Plot& plot, std::int64_t shift, double share) {
    const auto& columns = series.columns();
    const std::int64_t first = plot.time.firstColumn - shift;
    const auto before = [](const Thinned::Column& column, std::int64_t index) { return column.index < index; };
    const auto from = std::lower_bound(columns.begin(), columns.end(), first, before);
    const auto to = std::lower_bound(columns.begin(), columns.end(), first + plot.time.width, before);
    const auto seen = [&](const Thinned::Column& column) {
        return column.trust == Trust::good && column.last >= plot.low && column.last <= plot.high;
    };
    const auto middle = from + static_cast<std::ptrdiff_t>(static_cast<double>(to - from) * share);
    auto found = std::find_if(middle, to, seen);
    if (found == to)
        found = std::find_if(from, to, seen);
    if (found == to)
        return std::nullopt;
    return QPointF{plot.time.xOfColumn(found->index + shift), plot.y(found->last)};
}

// Which curve is which night: a number on each, and their names at the left.
void nameUnder(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    const auto mine = scene.trace.momentOf(scene.from);
    if (!mine)
        return;
    const Dress& dress = scene.dress;
    const Inks& inks = dress.inks();
    const QFont font = dress.letters(mm::smallWords, true);
    const QFontMetricsF metrics{font};
    const double high = metrics.height() + dress.px(0.5), edge = dress.px(1);
    const auto plate = [&](const QRectF& place, const QString& words) {
        painter.fillRect(place, inks.panel);
        painter.setPen(inks.word);
        painter.drawText(place, Qt::AlignCenter | Qt::TextDontClip, words);
    };
    painter.save();
    painter.setFont(font);
    // Before the boil, under the marks and the band: there the chart is empty.
    double top = plot.area.top() + plot.area.height() * 0.4;
    for (std::size_t i = 0; i < scene.under.size(); ++i) {
        const Laid& laid = scene.under[i];
        const auto theirs = laid.trace->momentOf(scene.from);
        if (!theirs)
            continue;
        const std::int64_t shift = (*mine - *theirs).count() / plot.time.column.count();
        const QString number = QString::number(i + 1);
        const double share = static_cast<double>(i + 1) / static_cast<double>(scene.under.size() + 1);
        if (const auto at = placeOnCurve(laid.trace->rise(), plot, shift, share)) {
            const double wide = metrics.horizontalAdvance(number) + 2 * edge;
            const QRectF place{at->x() - wide / 2, at->y() - high / 2, wide, high};
            plate(place, number);
            painter.setPen(QPen{inks.line, 1});
            painter.drawRect(place);
        }
        const QString words = number + QStringLiteral("  ") + laid.name;
        plate({plot.area.left() + edge, top, metrics.horizontalAdvance(words) + 2 * edge, high}, words);
        top += high;
    }
    painter.restore();
}

// Where the reading stands now; hollow when it is not to be believed.
void drawHead(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    const Picture& picture = scene.picture;
    if (!scene.future || !picture.rise)
        return;
    const auto& pan = picture.reading(Series::syrup_pan);
    const bool believed = !pan || pan->trust == Trust::good;
    const Inks& inks = scene.dress.inks();
    const double y = std::clamp(plot.y(picture.rise->kelvin()), plot.area.top() * 1.0, plot.area.bottom() * 1.0);
    painter.setPen(QPen{inks.trace, std::max(1.0, scene.dress.px(0.4) * 1.0)});
    painter.setBrush(believed ? inks.trace : inks.panel);
    painter.drawEllipse(QPointF{nowX(scene, plot), y}, scene.dress.px(1.1), scene.dress.px(1.1));
}

void drawNow(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    if (!scene.future)
        return;
    const double x = plot.time.x(scene.picture.at);
    if (x < plot.area.left() || x > plot.area.right())
        return;
    painter.setPen(QPen{scene.dress.inks().word, 1});
    painter.drawLine(QPointF{x, plot.area.top() * 1.0}, QPointF{x, plot.area.bottom() + 1.0});
}

void nameTheBand(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    if (!scene.picture.targetRise)
        return;
    const QString name = tr("syrup");
    const QFont font = scene.dress.letters(mm::smallWords);
    const QFontMetrics metrics{font};
    const int high = metrics.height(), wide = metrics.horizontalAdvance(name) + scene.dress.px(2);
    const double edge = scene.picture.heavyRise ? plot.y(scene.picture.heavyRise->kelvin())
                                                : plot.y(scene.picture.targetRise->kelvin());
    if (edge - high < plot.area.top()) // so low a chart has no room for it
        return;
    painter.setFont(font);
    painter.setPen(scene.dress.inks().quiet);
    // Behind the marks of what was said as the night began. Not clipped: a clip within a clip goes wrong in Qt's PDFs.
    painter.drawText(QRectF{plot.area.left() + scene.dress.px(9) * 1.0, edge - high, wide * 1.0, high * 1.0},
                     Qt::AlignLeft | Qt::AlignBottom | Qt::TextDontClip, name);
}

} // namespace

std::pair<double, double> riseRange(const ChartScene& scene, const TimeScale& time) {
    const double target = scene.picture.targetRise ? scene.picture.targetRise->kelvin() : 4;
    const double heavy = scene.picture.heavyRise ? scene.picture.heavyRise->kelvin() : target + 0.5;
    double high = heavy + 0.22 * target;
    for (const auto& column : scene.trace.rise().columns())
        if (column.index >= time.firstColumn && column.trust == Trust::good)
            high = std::max(high, std::min(column.greatest + 0.2, 25.0));
    return {-0.35, high};
}

void drawRise(QPainter& painter, const ChartScene& scene, const Plot& plot) {
    painter.save();
    painter.setClipRect(plot.visible());
    painter.setRenderHint(QPainter::Antialiasing);
    drawDraws(painter, scene, plot);
    drawBand(painter, scene, plot);
    drawUnder(painter, scene, plot);
    drawPastFans(painter, scene, plot);
    drawFan(painter, scene, plot);
    nameTheBand(painter, scene, plot);
    drawSeries(painter, scene.trace.rise(), plot, scene.dress.inks().trace, std::max(1.5, scene.dress.px(0.55) * 1.0));
    drawMarks(painter, scene, plot);
    nameUnder(painter, scene, plot);
    drawNow(painter, scene, plot);
    drawHead(painter, scene, plot);
    painter.restore();
}

} // namespace panside
