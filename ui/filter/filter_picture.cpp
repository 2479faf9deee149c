#include "ui/filter/filter_picture.h"

#include "ui/words/reading_words.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// A round number not above it: 1, 2 or 5 of its tens.
double roundStep(double above) {
    const double ten = std::pow(10, std::floor(std::log10(std::max(above, 1e-6))));
    return above >= 5 * ten ? 5 * ten : above >= 2 * ten ? 2 * ten : ten;
}

} // namespace

FilterChart filterChart(const FilterNow& now, Units units) {
    FilterChart chart;
    if (!now.run)
        return chart;
    const Unit gauge = readingUnit(Series::filter_pressure, units), volume = units == Units::us ? Unit::gal : Unit::L;
    chart.byVolume = now.flow.has_value();
    chart.upUnit = symbolOf(gauge);
    chart.acrossUnit = symbolOf(chart.byVolume ? volume : Unit::min);
    const auto across = [&](double seconds) {
        return now.flow ? fromSi(now.flow->si() * seconds, volume) : seconds / 60;
    };
    const auto curveOf = [&](std::span<const CakeReading> readings) {
        FilterChart::Curve curve;
        for (const CakeReading& one : readings)
            curve.emplace_back(across(one.through), fromSi(one.pressure.si(), gauge));
        return curve;
    };
    for (const CakeRun& run : now.before)
        chart.before.push_back(curveOf(run.readings));
    const auto readings = cakeOf(now.readings, now.run->begun);
    chart.now = curveOf(readings);
    if (!now.limit)
        return chart;
    chart.limit = fromSi(now.limit->si(), gauge);
    const auto said = cakeForecast(readings, *now.limit, now.before);
    if (const auto* forecast = std::get_if<CakeForecast>(&said)) {
        chart.meetsFrom = across(forecast->p10);
        if (forecast->p90)
            chart.meetsTo = across(*forecast->p90);
    }
    return chart;
}

FilterPicture::FilterPicture(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("resistance"));
    setMinimumHeight(1);
    hide();
}

void FilterPicture::wear(const Dress& dress) {
    dress_ = dress;
    update();
}

void FilterPicture::display(const FilterChart& chart) {
    setVisible(chart.now.size() >= 2);
    if (chart == chart_)
        return;
    chart_ = chart;
    highest_ = chart.limit.value_or(0);
    widest_ = chart.meetsTo.value_or(chart.meetsFrom.value_or(0));
    const auto hold = [&](const FilterChart::Curve& curve) {
        for (const QPointF& at : curve) {
            widest_ = std::max(widest_, at.x());
            highest_ = std::max(highest_, at.y());
        }
    };
    hold(chart.now);
    for (const auto& curve : chart.before)
        hold(curve);
    widest_ = std::max(widest_ * 1.05, 1e-3);
    highest_ = std::max(highest_ * 1.1, 1e-3);
    setAccessibleName(tr("Resistance of the cake against what went through"));
    if (!chart.now.empty())
        setAccessibleDescription(tr("%1 %2 at %3 %4")
                                     .arg(QLocale{}.toString(chart.now.back().y(), 'f', 0), chart.upUnit,
                                          QLocale{}.toString(chart.now.back().x(), 'f', 1), chart.acrossUnit));
    update();
}

QRectF FilterPicture::plot() const {
    return {dress_.px(12) * 1.0, dress_.px(7) * 1.0, width() - dress_.px(15) * 1.0,
            height() - dress_.px(18) * 1.0}; // above its title, below figures and their unit
}

QPointF FilterPicture::placeOf(const QPointF& at) const {
    const QRectF room = plot();
    return {room.left() + std::min(at.x() / widest_, 1.0) * room.width(),
            room.bottom() - std::min(at.y() / highest_, 1.0) * room.height()};
}

void FilterPicture::paintScales(QPainter& painter) const {
    const QRectF room = plot();
    const double line = dress_.px(5);
    painter.setFont(dress_.letters(mm::smallWords));
    for (double up = 0, step = roundStep(highest_ / 2.5); up <= highest_; up += step) {
        const double y = placeOf({0, up}).y();
        painter.setPen(QPen{dress_.inks().line, 1});
        painter.drawLine(QPointF{room.left(), y}, QPointF{room.right(), y});
        painter.setPen(dress_.inks().quiet);
        painter.drawText(QRectF{0, y - line / 2, room.left() - dress_.px(1), line}, Qt::AlignRight | Qt::AlignVCenter,
                         QLocale{}.toString(up, 'g', 4));
    }
    for (double along = 0, step = roundStep(widest_ / 2.5); along <= widest_; along += step)
        painter.drawText(QRectF{placeOf({along, 0}).x() - dress_.px(10), room.bottom() + 1, dress_.px(20) * 1.0, line},
                         Qt::AlignCenter, QLocale{}.toString(along, 'g', 4));
    painter.drawText(QRectF{room.left(), height() - line * 0.95, room.width(), line}, Qt::AlignRight | Qt::AlignVCenter,
                     chart_.byVolume ? tr("%1 through").arg(chart_.acrossUnit) : chart_.acrossUnit);
    drawFitted(painter, QRectF{dress_.px(1) * 1.0, 0, width() - dress_.px(2) * 1.0, line}.toRect(),
               Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::smallWords),
               tr("Resistance of the cake: %1 on the gauge, at a steady flow").arg(chart_.upUnit), 1);
}

void FilterPicture::paintLimit(QPainter& painter) const {
    if (!chart_.limit)
        return;
    const QRectF room = plot();
    const Inks& inks = dress_.inks();
    const double y = placeOf({0, *chart_.limit}).y();
    painter.setPen(QPen{inks.word, static_cast<double>(dress_.px(0.5)), Qt::DashLine});
    painter.drawLine(QPointF{room.left(), y}, QPointF{room.right(), y});
    painter.setPen(inks.word);
    painter.drawText(QRectF{room.left() + dress_.px(1), y - dress_.px(5), room.width(), dress_.px(5) * 1.0},
                     Qt::AlignLeft | Qt::AlignVCenter, tr("limit of the maker"));
    if (!chart_.meetsFrom)
        return;
    // Where it will be met: a bar on the limit, open where it may never be.
    const double from = placeOf({*chart_.meetsFrom, 0}).x();
    const double to = chart_.meetsTo ? placeOf({*chart_.meetsTo, 0}).x() : room.right();
    painter.setPen(QPen{inks.trace, static_cast<double>(dress_.px(1.6)), Qt::SolidLine, Qt::FlatCap});
    painter.drawLine(QPointF{from, y}, QPointF{std::max(to, from + dress_.px(1)), y});
}

void FilterPicture::paintCurves(QPainter& painter) const {
    const auto line = [&](const FilterChart::Curve& curve) {
        for (std::size_t i = 1; i < curve.size(); ++i)
            painter.drawLine(placeOf(curve[i - 1]), placeOf(curve[i]));
    };
    painter.setPen(QPen{dress_.inks().quiet, static_cast<double>(dress_.px(0.3)), Qt::DotLine});
    for (const auto& curve : chart_.before)
        line(curve);
    painter.setPen(QPen{dress_.inks().trace, static_cast<double>(dress_.px(0.6))});
    line(chart_.now);
    painter.setBrush(dress_.inks().trace);
    for (const QPointF& at : chart_.now)
        painter.drawEllipse(placeOf(at), dress_.px(0.7), dress_.px(0.7));
}

void FilterPicture::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), dress_.inks().panel);
    paintScales(painter);
    paintLimit(painter);
    paintCurves(painter);
}

} // namespace panside
