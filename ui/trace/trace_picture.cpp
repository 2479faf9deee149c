#include "ui/trace/trace_picture.h"

#include "ui/look/roles.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace panside {
namespace {

constexpr double headHigh = 5, rowGap = 1, columnGap = 5; // millimetres

} // namespace

TracePicture::TracePicture(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("tracePicture"));
    giveRole(*this, QAccessible::Chart);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
}

void TracePicture::wear(const Dress& dress) {
    dress_ = dress;
    update();
}

QSize TracePicture::minimumSizeHint() const { return {dress_.px(120), dress_.px(headHigh + 3 * mm::target)}; }

void TracePicture::display(const TraceView& view) {
    if (view == view_)
        return;
    view_ = view;
    from_.assign(view.columns.size(), 0);
    column_ = box_ = 0;
    for (std::size_t i = 0; i < view.columns.size(); ++i)
        if (view.columns[i].asked)
            column_ = i;
    setAccessibleName(view.head);
    update();
}

const TraceBox* TracePicture::at() const {
    return column_ < view_.columns.size() && box_ < view_.columns[column_].boxes.size()
               ? &view_.columns[column_].boxes[box_]
               : nullptr;
}

QRect TracePicture::columnPlace(std::size_t column) const {
    const int count = static_cast<int>(view_.columns.size()), gap = dress_.px(columnGap);
    const int wide = std::min((width() - gap * (count - 1)) / std::max(1, count), dress_.px(70));
    const int all = wide * count + gap * (count - 1);
    const int left = (width() - all) / 2 + static_cast<int>(column) * (wide + gap);
    return {left, 0, wide, height()};
}

int TracePicture::rowsShown() const {
    return std::max(1, (height() - dress_.px(headHigh)) / (dress_.px(mm::target) + dress_.px(rowGap)));
}

std::vector<TracePicture::Place> TracePicture::places() const {
    std::vector<Place> all;
    const int row = dress_.px(mm::target) + dress_.px(rowGap), head = dress_.px(headHigh), shown = rowsShown();
    for (std::size_t c = 0; c < view_.columns.size(); ++c) {
        const QRect column = columnPlace(c);
        const auto count = static_cast<int>(view_.columns[c].boxes.size());
        const bool turns = count > shown;
        const int boxes = turns ? std::max(1, shown - 1) : count;
        const int first = static_cast<int>(from_[c]);
        const int here = std::min(boxes, count - first);
        const int top = head + (height() - head - (here + (turns ? 1 : 0)) * row) / 2;
        for (int i = 0; i < here; ++i)
            all.push_back({c, static_cast<std::size_t>(first + i),
                           QRect{column.left(), top + i * row, column.width(), dress_.px(mm::target)}});
        if (turns)
            all.push_back({c, 0, QRect{column.left(), top + here * row, column.width(), dress_.px(mm::target)}, true});
    }
    return all;
}

// From each box a thread to the spine between two columns, and on to what is asked about.
void TracePicture::paintThreads(QPainter& painter, const std::vector<Place>& all) const {
    const auto asked = std::ranges::find_if(view_.columns, [](const TraceColumn& c) { return c.asked; });
    const auto middle = static_cast<std::size_t>(asked - view_.columns.begin());
    const int centre = dress_.px(headHigh) + (height() - dress_.px(headHigh)) / 2;
    painter.setRenderHint(QPainter::Antialiasing);
    for (const Place& place : all) {
        if (place.more || place.column == middle)
            continue;
        const TraceBox& box = view_.columns[place.column].boxes[place.box];
        const bool before = place.column > middle;
        const double gap = dress_.px(columnGap);
        const double x = before ? place.rect.left() : place.rect.right();
        const double to = before ? x - gap : x + gap;
        QPainterPath path{QPointF{x, static_cast<double>(place.rect.center().y())}};
        path.cubicTo((x + to) / 2, place.rect.center().y(), (x + to) / 2, centre, to, centre);
        QPen pen{dress_.inks().trace};
        pen.setWidthF(std::max(1.5, box.share * dress_.px(5)));
        if (!box.shareKnown)
            pen.setStyle(Qt::DotLine);
        QColor ink = dress_.inks().trace;
        ink.setAlphaF(0.55F);
        pen.setColor(ink);
        painter.setPen(pen);
        painter.drawPath(path);
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
}

void TracePicture::paintBox(QPainter& painter, const Place& place) const {
    const Inks& inks = dress_.inks();
    const TraceColumn& column = view_.columns[place.column];
    const bool stands = hasFocus() && place.column == column_ && (place.more ? false : place.box == box_);
    painter.setBrush(column.asked ? inks.sel : inks.key);
    const bool hole = !place.more && column.boxes[place.box].hole;
    QPen edge{stands ? inks.trace : inks.line};
    edge.setWidth(stands ? dress_.px(0.8) : 1);
    if (hole)
        edge.setStyle(Qt::DashLine);
    painter.setPen(edge);
    painter.drawRect(place.rect.adjusted(0, 0, -1, -1));
    const int side = dress_.px(1.5);
    const QRect inside = place.rect.adjusted(side, 0, -side, 0);
    painter.setPen(inks.word);
    if (place.more) {
        const auto shown = static_cast<int>(column.boxes.size());
        drawFitted(painter, inside, Qt::AlignCenter, dress_.letters(3.5), tr("all %1 ▾").arg(shown), 1);
        return;
    }
    const TraceBox& box = column.boxes[place.box];
    const int half = inside.height() / 2;
    const bool two = !box.second.isEmpty();
    drawFitted(painter,
               QRect{inside.left(), inside.top() + dress_.px(0.6), inside.width(), two ? half : inside.height()},
               Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(3.6, true), box.title, 1);
    if (!two)
        return;
    painter.setPen(inks.quiet);
    drawFitted(painter, QRect{inside.left(), inside.top() + half, inside.width(), half - dress_.px(0.6)},
               Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::smallWords), box.second, 1);
}

void TracePicture::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    const Inks& inks = dress_.inks();
    painter.fillRect(rect(), inks.panel);
    if (view_.columns.empty())
        return;
    const auto all = places();
    paintThreads(painter, all);
    for (std::size_t c = 0; c < view_.columns.size(); ++c) {
        const QRect column = columnPlace(c);
        painter.setPen(inks.quiet);
        drawFitted(painter, QRect{column.left(), 0, column.width(), dress_.px(headHigh)}, Qt::AlignCenter,
                   dress_.letters(mm::smallWords), view_.columns[c].head, 1);
    }
    for (const Place& place : all)
        paintBox(painter, place);
}

void TracePicture::mouseReleaseEvent(QMouseEvent* event) {
    for (const Place& place : places()) {
        if (!place.rect.contains(event->pos()))
            continue;
        column_ = place.column;
        if (place.more) {
            const auto step = static_cast<std::size_t>(std::max(1, rowsShown() - 1));
            from_[column_] = from_[column_] + step < view_.columns[column_].boxes.size() ? from_[column_] + step : 0;
            box_ = from_[column_];
            update();
            return;
        }
        box_ = place.box;
        return press();
    }
}

void TracePicture::press() {
    update();
    if (const TraceBox* box = at(); box && !box->asks.isEmpty())
        emit asked(box->asks);
}

void TracePicture::step(int columns, int boxes) {
    if (view_.columns.empty())
        return;
    const auto last = static_cast<int>(view_.columns.size()) - 1;
    column_ = static_cast<std::size_t>(std::clamp(static_cast<int>(column_) + columns, 0, last));
    const auto count = static_cast<int>(view_.columns[column_].boxes.size());
    box_ = static_cast<std::size_t>(std::clamp(static_cast<int>(box_) + boxes, 0, std::max(0, count - 1)));
    const auto shown = static_cast<std::size_t>(count > rowsShown() ? std::max(1, rowsShown() - 1) : count);
    if (box_ < from_[column_] || box_ >= from_[column_] + shown)
        from_[column_] = box_ - box_ % std::max<std::size_t>(1, shown);
    update();
}

void TracePicture::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void TracePicture::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Left:
        return step(-1, 0);
    case Qt::Key_Right:
        return step(1, 0);
    case Qt::Key_Up:
        return step(0, -1);
    case Qt::Key_Down:
        return step(0, 1);
    case Qt::Key_PageUp:
        return step(0, -rowsShown());
    case Qt::Key_PageDown:
        return step(0, rowsShown());
    case Qt::Key_Return:
    case Qt::Key_Enter:
        return press();
    default:
        QWidget::keyPressEvent(event);
    }
}

} // namespace panside
