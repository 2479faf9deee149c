// The alarms of a shift under the same time as its rise and its fire.
#include "ui/chart/plot.h"
#include "ui/words/alarm_words.h"

#include <QCoreApplication>
#include <QPainter>
#include <algorithm>

namespace panside {
namespace {

constexpr double laneMost = 4, laneLeast = 1.6, allMost = 20; // millimetres
constexpr double laneNamed = 2.8;                             // in a lower lane the number of the table stands alone

double laneOf(const LaidAlarms& alarms) {
    return std::clamp(allMost / static_cast<double>(alarms.review.tallies.size()), laneLeast, laneMost);
}

// Of the lane's height: an urgent alarm fills it, one to know of is hardly more than a line.
double shareOf(Priority priority) {
    switch (priority) {
    case Priority::high:
        return 0.9;
    case Priority::medium:
        return 0.6;
    case Priority::low:
        return 0.3;
    }
    return 0;
}

struct Bar {
    QPainter& painter;
    const ChartScene& scene;
    const TimeScale& time;
    double top, bottom;
    QColor ink;

    QRectF place(Instant from, Instant to) const {
        const double x = time.x(from), least = std::max(2.0, scene.dress.px(0.6) * 1.0);
        return {x, top, std::max(least, time.x(to) - x), bottom - top};
    }
    void draw(const AlarmSpan& span, Instant until) const {
        const Instant ended = span.ended.value_or(until);
        painter.setPen(QPen{ink, 1});
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(place(span.began, ended).adjusted(0, 0, 0, -1));
        const Instant unseen = std::clamp(span.seen.value_or(ended), span.began, ended);
        if (unseen > span.began)
            painter.fillRect(place(span.began, unseen), ink);
        for (const AlarmSpan::Shelf& shelf : span.shelved)
            shelved(std::max(shelf.from, span.began), std::min(shelf.until, ended));
    }
    void shelved(Instant from, Instant to) const {
        if (to <= from)
            return;
        const QRectF where = place(from, to);
        painter.fillRect(where, scene.dress.inks().panel);
        QPen pen{ink, std::max(1.0, scene.dress.px(0.4) * 1.0), Qt::CustomDashLine, Qt::FlatCap};
        pen.setDashPattern({2, 3});
        painter.setPen(pen);
        painter.drawLine(QPointF{where.left(), where.center().y()}, QPointF{where.right(), where.center().y()});
    }
};

} // namespace

int alarmsHeight(const LaidAlarms& alarms, const Dress& dress) {
    if (alarms.review.tallies.empty())
        return 0;
    return dress.px(laneOf(alarms) * static_cast<double>(alarms.review.tallies.size())) + 2;
}

void drawAlarms(QPainter& painter, const ChartScene& scene, const QRect& area, const TimeScale& time,
                const QRect& gutter) {
    const auto& tallies = scene.alarms->review.tallies;
    const Inks& inks = scene.dress.inks();
    const double lane = area.height() / static_cast<double>(tallies.size());
    const QFont font = letteringOfPixels(std::min(lane * 0.75, scene.dress.px(mm::smallWords) * 1.0));
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        const double top = area.top() + lane * static_cast<double>(i);
        const bool chosen = scene.alarms->chosen == i;
        if (chosen)
            painter.fillRect(QRectF{gutter.left() * 1.0, top, area.right() - gutter.left() + 1.0, lane}, inks.shade);
        painter.setPen(chosen ? inks.word : inks.quiet);
        painter.setFont(font);
        painter.drawText(
            QRectF{gutter.left() * 1.0, top - lane / 2, gutter.width() - scene.dress.px(1) * 1.0, 2 * lane},
            Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip, QString::number(i + 1));
    }
    painter.setFont(scene.dress.letters(mm::smallWords));
    painter.setPen(inks.quiet);
    painter.drawText(gutter, Qt::AlignLeft | Qt::AlignTop | Qt::TextDontClip,
                     QCoreApplication::translate("RiseChart", QT_TRANSLATE_NOOP("RiseChart", "alarms")));
    painter.setClipRect(area);
    for (std::size_t i = 0; i < tallies.size(); ++i) {
        const double middle = area.top() + lane * (static_cast<double>(i) + 0.5);
        const double high = std::max(3.0, lane * shareOf(tallies[i].priority));
        const Bar bar{painter, scene, time, middle - high / 2, middle + high / 2, inks.word};
        painter.setPen(QPen{inks.faint, 1});
        painter.drawLine(QPointF{area.left() * 1.0, middle}, QPointF{area.right() * 1.0, middle});
        for (const AlarmSpan& span : tallies[i].spans)
            bar.draw(span, scene.alarms->review.until);
        if (lane < scene.dress.px(laneNamed))
            continue;
        // Its name, where no bar stands: at the end that is free, else at the beginning.
        painter.setFont(font);
        const QString name = alarmName(tallies[i].alarm, tallies[i].series);
        const double wide = QFontMetricsF{font}.horizontalAdvance(name) + scene.dress.px(2);
        QRectF place{area.left() * 1.0, middle - lane / 2, wide, lane};
        const auto covered = [&](const QRectF& where) {
            return std::any_of(tallies[i].spans.begin(), tallies[i].spans.end(), [&](const AlarmSpan& span) {
                return bar.place(span.began, span.ended.value_or(scene.alarms->review.until)).intersects(where);
            });
        };
        if (const QRectF end = place.translated(area.width() - wide, 0); covered(place) && !covered(end))
            place = end;
        painter.fillRect(place, inks.panel);
        painter.setPen(inks.word);
        painter.drawText(place, Qt::AlignCenter | Qt::TextDontClip, name);
    }
    painter.restore();
}

} // namespace panside
