#include "ui/chart/plot.h"

#include <QPainter>
#include <algorithm>

namespace panside {
namespace {

using Columns = std::vector<Thinned::Column>;

void strokeRun(QPainter& painter, QPolygonF& points, Trust trust, const QColor& ink, double width) {
    if (trust == Trust::gone || points.isEmpty()) {
        points.clear();
        return;
    }
    QPen pen{ink, width, Qt::SolidLine, Qt::FlatCap, Qt::BevelJoin};
    if (trust == Trust::doubtful) {
        pen.setStyle(Qt::CustomDashLine);
        pen.setCapStyle(Qt::FlatCap);
        pen.setDashPattern({1, 2.5});
    }
    painter.setPen(pen);
    if (points.size() == 1) {
        painter.setBrush(ink);
        painter.drawEllipse(points.front(), width / 2, width / 2);
        painter.setBrush(Qt::NoBrush);
    } else {
        painter.drawPolyline(points);
    }
    points.clear();
}

// One column as at most four points, its whole height covered.
void addColumn(QPolygonF& points, const Thinned::Column& column, const Plot& plot, double x) {
    points << QPointF{x, plot.y(column.first)};
    if (column.least == column.greatest)
        return;
    if (column.least < std::min(column.first, column.last))
        points << QPointF{x, plot.y(column.least)};
    if (column.greatest > std::max(column.first, column.last))
        points << QPointF{x, plot.y(column.greatest)};
    points << QPointF{x, plot.y(column.last)};
}

}  // namespace

void drawSeries(QPainter& painter, const Thinned& series, const Plot& plot, const QColor& ink, double width,
                std::int64_t shift) {
    const Columns& columns = series.columns();
    const std::int64_t first = plot.time.firstColumn - shift, last = first + plot.time.width;
    auto from = std::lower_bound(columns.begin(), columns.end(), first,
                                 [](const Thinned::Column& column, std::int64_t index) { return column.index < index; });
    if (from != columns.begin())
        --from;  // the line comes in from the left
    QPolygonF points;
    Trust trust = Trust::good;
    for (; from != columns.end(); ++from) {
        const double x = plot.time.xOfColumn(from->index + shift);
        if (from->gapBefore) {
            strokeRun(painter, points, trust, ink, width);
        } else if (!points.isEmpty() && from->trust != trust) {
            const QPointF joint = points.back();
            strokeRun(painter, points, trust, ink, width);
            points << joint;  // doubt begins where belief ended, with no hole between
        }
        trust = from->trust;
        addColumn(points, *from, plot, x);
        if (from->index > last)
            break;
    }
    strokeRun(painter, points, trust, ink, width);
}

}  // namespace panside
