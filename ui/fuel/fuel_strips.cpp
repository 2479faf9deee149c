#include "ui/fuel/fuel_strips.h"

#include "core/boil/loads.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPolygonF>
#include <algorithm>
#include <limits>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Fuel", text); }

struct Across {
    Instant begin, end;
    QRect area;
    double x(Instant at) const {
        return area.left() + secondsBetween(begin, at) / std::max(1.0, secondsBetween(begin, end)) * area.width();
    }
};

// A series over the strip: no peak is lost, nothing is drawn across a gap.
void line(QPainter& painter, const Thinned& series, const Across& across, const QRect& strip, const QColor& ink,
          bool fromZero) {
    float least = std::numeric_limits<float>::max(), most = std::numeric_limits<float>::lowest();
    for (std::size_t i = 0; i < series.size(); ++i) {
        const auto sample = series.sample(i);
        if (sample.trust == Trust::gone)
            continue;
        least = std::min(least, sample.value);
        most = std::max(most, sample.value);
    }
    if (most < least)
        return;
    const double low = fromZero ? 0 : least, span = std::max(most - low, 1e-12) * 1.1;
    painter.setPen(QPen{ink, 1.2});
    QPolygonF path;
    double last = -1;
    for (std::size_t i = 0; i < series.size(); ++i) {
        const auto sample = series.sample(i);
        if (sample.gapBefore || sample.trust == Trust::gone) {
            painter.drawPolyline(path);
            path.clear();
        }
        const double x = across.x(sample.at);
        if (sample.trust == Trust::gone || (x - last < 0.3 && !path.isEmpty()))
            continue;
        last = x;
        path << QPointF{x, strip.bottom() - (sample.value - low) / span * (strip.height() * 0.78)};
    }
    painter.drawPolyline(path);
}

void loads(QPainter& painter, const ShiftTrace& trace, const Across& across, const QRect& strip, const Dress& dress) {
    double most = 0;
    for (const Fact& fact : trace.events())
        if (const auto* fired = std::get_if<Fired>(&fact.what); fired && fired->load)
            most = std::max(most, fired->load->value.kilogram());
    for (const Fact& fact : trace.events()) {
        const auto* fired = std::get_if<Fired>(&fact.what);
        if (!fired || deniesLoad(*fired))
            continue;
        const double share = fired->load && most > 0 ? fired->load->value.kilogram() / most : 0.8;
        const double x = across.x(fact.at), height = 0.7 * strip.height() * share;
        // What nobody keyed is hollow.
        painter.setPen(QPen{dress.inks().word, 1});
        painter.setBrush(fired->inferred ? QBrush{} : QBrush{dress.inks().word});
        painter.drawRect(QRectF{x - 1, strip.bottom() - height, dress.px(0.6) * 1.0, height});
    }
    painter.setBrush({});
}

} // namespace

void drawFuelStrips(QPainter& painter, const ShiftTrace& trace, Instant now, const Dress& dress, double letters,
                    const QRect& area) {
    const int scale = dress.px(1.67 * letters), height = (area.height() - scale) / 3;
    const char* const names[] = {QT_TR_NOOP("loads"), QT_TR_NOOP("stack"), QT_TR_NOOP("water boiled off")};
    // Their names stand before them: a word over a line hides it.
    int gutter = 0;
    for (const char* name : names)
        gutter = std::max(gutter, QFontMetrics{dress.letters(letters)}.horizontalAdvance(tr(name)) + dress.px(2));
    const QRect plots = area.adjusted(gutter, 0, 0, 0);
    const Across across{trace.begun().value_or(now - std::chrono::hours{1}), std::max(now, trace.begun().value_or(now)),
                        plots};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (int i = 0; i < 3; ++i) {
        const QRect strip{plots.left(), area.top() + i * height, plots.width(), height - dress.px(1)};
        painter.fillRect(strip, dress.inks().panel);
        if (i == 0) {
            loads(painter, trace, across, strip, dress);
        } else {
            // The loads go through, faint, so that each sag is seen against its load.
            painter.setPen(QPen{dress.inks().faint, 1});
            for (const Fact& fact : trace.events())
                if (const auto* fired = std::get_if<Fired>(&fact.what); fired && !deniesLoad(*fired))
                    painter.drawLine(QPointF{across.x(fact.at), strip.top() * 1.0},
                                     QPointF{across.x(fact.at), strip.bottom() * 1.0});
            line(painter, i == 1 ? trace.stack() : trace.evaporation(), across, strip, dress.inks().trace, i == 2);
        }
        painter.setPen(dress.inks().quiet);
        painter.setFont(dress.letters(letters));
        painter.drawText(QRect{area.left(), strip.top(), gutter, strip.height()}, Qt::AlignLeft | Qt::AlignVCenter,
                         tr(names[i]));
    }
    painter.setPen(dress.inks().quiet);
    painter.setFont(dress.letters(letters));
    const double hours = secondsBetween(across.begin, across.end) / 3600;
    for (int i = 0; i <= 4; ++i) {
        const QRect place{plots.left() + i * plots.width() / 4 - dress.px(4 * letters), area.bottom() - scale,
                          dress.px(8 * letters), scale};
        const int align = i == 0 ? Qt::AlignRight : i == 4 ? Qt::AlignLeft : Qt::AlignHCenter;
        painter.drawText(place, align | Qt::AlignBottom,
                         trace.clock().hourAndMinute(across.begin + Duration{hours * 900 * i}));
    }
    painter.restore();
}

} // namespace panside
