#include "ui/chart/plot.h"

#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>

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

// Upright strokes a pixel column wide, their ends softened to quarters: many times faster than a stroked polyline, and
// where a column holds several samples there is nothing else to draw.
class Strokes {
public:
    Strokes(double width, const QRect& area)
        : width_{width}, wide_{std::max(1, static_cast<int>(width + 0.5))}, area_{area} {}
    void add(double x, double top, double bottom) {
        top = std::max(top - width_ / 2, area_.top() - 4.0);
        bottom = std::min(bottom + width_ / 2, area_.bottom() + 4.0);
        if (bottom <= top)
            return;
        const int left = static_cast<int>(std::floor(x - width_ / 2));
        const int first = static_cast<int>(std::ceil(top)), last = static_cast<int>(std::floor(bottom));
        if (last > first)
            put(4, QRect{left, first, wide_, last - first});
        put(static_cast<int>(std::lround((first - top) * 4)), QRect{left, first - 1, wide_, 1});
        put(static_cast<int>(std::lround((bottom - last) * 4)), QRect{left, last, wide_, 1});
    }
    void draw(QPainter& painter, QColor ink) {
        painter.save();
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.setPen(Qt::NoPen);
        for (int quarters = 1; quarters <= 4; ++quarters) {
            ink.setAlphaF(static_cast<float>(quarters) / 4);
            painter.setBrush(ink);
            const auto& rects = rects_[static_cast<std::size_t>(quarters)];
            painter.drawRects(rects.data(), static_cast<int>(rects.size()));
        }
        painter.restore();
    }

private:
    void put(int quarters, const QRect& rect) {
        if (quarters > 0)
            rects_[static_cast<std::size_t>(quarters)].push_back(rect);
    }
    double width_;
    int wide_;
    QRect area_;
    std::array<std::vector<QRect>, 5> rects_;
};

void drawDense(QPainter& painter, Columns::const_iterator from, Columns::const_iterator to, const Plot& plot,
               const QColor& ink, double width, std::int64_t shift) {
    Strokes strokes{width, plot.area};
    const Thinned::Column* before = nullptr;
    for (; from != to; ++from) {
        const Thinned::Column& column = *from;
        const double x = plot.time.xOfColumn(column.index + shift);
        const bool joined = before && !column.gapBefore && before->trust != Trust::gone;
        const bool drawn =
            column.trust == Trust::good || (column.trust == Trust::doubtful && column.index % 5 < 2); // dotted
        if (drawn && joined && column.index == before->index + 1)
            strokes.add(x, plot.y(std::max(column.greatest, before->last)),
                        plot.y(std::min(column.least, before->last)));
        else if (drawn)
            strokes.add(x, plot.y(column.greatest), plot.y(column.least));
        if (column.trust == Trust::good && joined && column.index > before->index + 1) {
            painter.setPen(QPen{ink, width, Qt::SolidLine, Qt::FlatCap});
            painter.drawLine(QPointF{plot.time.xOfColumn(before->index + shift), plot.y(before->last)},
                             QPointF{x, plot.y(column.first)});
        }
        before = &column;
    }
    strokes.draw(painter, ink);
}

} // namespace

void drawSeries(QPainter& painter, const Thinned& series, const Plot& plot, const QColor& ink, double width,
                std::int64_t shift) {
    const Columns& columns = series.columns();
    const bool dense = series.size() > 2 * columns.size();
    // A dashed line is drawn from its begin, whatever is to be seen of it: its dashes lie where they lay.
    const std::int64_t hidden = dense ? std::max(0, plot.part.left() - plot.area.left() - 2) : 0;
    const std::int64_t first = plot.time.firstColumn - shift + hidden;
    const std::int64_t last =
        plot.time.firstColumn - shift +
        (dense ? std::min(plot.time.width, plot.part.right() - plot.area.left() + 2) : plot.time.width);
    auto from =
        std::lower_bound(columns.begin(), columns.end(), first,
                         [](const Thinned::Column& column, std::int64_t index) { return column.index < index; });
    if (from != columns.begin())
        --from; // the line comes in from the left
    if (dense) {
        const auto to =
            std::upper_bound(from, columns.end(), last + 1,
                             [](std::int64_t index, const Thinned::Column& column) { return index < column.index; });
        return drawDense(painter, from, to, plot, ink, width, shift);
    }
    QPolygonF points;
    Trust trust = Trust::good;
    for (; from != columns.end(); ++from) {
        const double x = plot.time.xOfColumn(from->index + shift);
        if (from->gapBefore) {
            strokeRun(painter, points, trust, ink, width);
        } else if (!points.isEmpty() && from->trust != trust) {
            const QPointF joint = points.back();
            strokeRun(painter, points, trust, ink, width);
            points << joint; // doubt begins where belief ended, with no hole between
        }
        trust = from->trust;
        addColumn(points, *from, plot, x);
        if (from->index > last)
            break;
    }
    strokeRun(painter, points, trust, ink, width);
}

} // namespace panside
