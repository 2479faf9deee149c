#include "ui/fuel/plan_picture.h"

#include <QCoreApplication>
#include <QFontMetrics>
#include <QPainter>
#include <QPolygonF>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Plan", text); }

Instant later(Instant now, Duration span) { return now + std::chrono::round<std::chrono::microseconds>(span); }

class PlanPainter {
public:
    PlanPainter(QPainter& painter, const PlanView& view, const Dress& dress, double letters, const QRect& area,
                bool changes)
        : painter_{painter}, view_{view}, dress_{dress}, letters_{letters}, words_{dress.px(1.67 * letters)},
          changes_{changes}, margin_{dress.px(4.3 * letters)}, field_{area.adjusted(margin_, dress.px(1), -dress.px(1),
                                                                                    -words_ - dress.px(1))} {
        const EndPlan& plan = view.plan;
        double last = std::max({seconds(plan.coldFire.p90.value_or(plan.coldFire.p50)), seconds(plan.runsOut.p50)});
        Volume most = std::max(plan.tank, plan.keepBack);
        for (const auto* other : {&view.withSap, &view.withFire})
            if (changes && *other) {
                last = std::max(last, seconds((*other)->coldFire.p50));
                most = std::max(most, (*other)->tank);
            }
        span_ = Duration{last * 1.04 + 60};
        most_ = most * 1.25;
    }

    void draw() {
        painter_.save();
        painter_.setRenderHint(QPainter::Antialiasing);
        painter_.fillRect(field_, dress_.inks().panel);
        reserve();
        scales();
        lastLoad();
        if (changes_) {
            fall(view_.withSap, Qt::DotLine);
            fall(view_.withFire, Qt::DashDotLine);
        }
        fall(view_.plan, Qt::DashLine, true);
        marks();
        painter_.restore();
    }

private:
    double x(Duration from) const { return field_.left() + from / span_ * field_.width(); }
    double y(Volume volume) const { return field_.bottom() - volume / most_ * field_.height(); }
    QString clockAt(Duration from) const { return view_.clock.hourAndMinute(later(view_.now, from)); }
    void say(QRectF place, int align, const QString& text, const QColor& ink) {
        painter_.setPen(ink);
        drawFitted(painter_, place.toRect(), align, dress_.letters(letters_), text);
    }

    // Kept back for the pans: a texture, as all that is a limit.
    void reserve() {
        const double top = y(view_.plan.keepBack);
        painter_.fillRect(QRectF{field_.left() * 1.0, top, field_.width() * 1.0, field_.bottom() - top},
                          QBrush{dress_.inks().band, Qt::BDiagPattern});
    }

    void scales() {
        const Unit unit = unitOf(Dimension::volume, view_.units);
        const double top = fromSi(most_.si(), unit);
        double step = std::pow(10, std::floor(std::log10(std::max(top, 1.0))));
        for (const double part : {0.1, 0.2, 0.5, 1.0})
            if (top / (part * step) <= 5.5) {
                step *= part;
                break;
            }
        for (double mark = 0; mark <= top; mark += step) {
            const double at = y(Volume::ofSi(toSi(mark, unit)));
            painter_.setPen(QPen{dress_.inks().faint, 1});
            painter_.drawLine(QPointF{field_.left() * 1.0, at}, QPointF{field_.right() * 1.0, at});
            const bool first = mark == 0;
            say({field_.left() - margin_ * 1.0, at - words_ / 2.0 - (first ? words_ / 4.0 : 0.0),
                 margin_ - dress_.px(1) * 1.0, words_ * 1.0},
                Qt::AlignRight | Qt::AlignVCenter, first ? symbolOf(unit) : QString::number(std::lround(mark)),
                dress_.inks().quiet);
        }
        hours();
    }

    void hours() {
        int step = 15;
        for (const int minutes : {15, 30, 60, 120, 240, 480}) {
            step = minutes;
            if (seconds(span_) / 60 / minutes <= field_.width() / dress_.px(7.3 * letters_))
                break;
        }
        const QTime now = view_.clock.at(view_.now).time();
        const int past = (now.hour() * 60 + now.minute()) % step;
        for (Duration mark{(step - past) * 60.0 - now.second()}; mark < span_; mark += Duration{step * 60.0}) {
            painter_.setPen(QPen{dress_.inks().faint, 1});
            painter_.drawLine(QPointF{x(mark), field_.top() * 1.0}, QPointF{x(mark), field_.bottom() * 1.0});
            if (x(mark) < field_.right() - dress_.px(2.3 * letters_))
                say({x(mark) - dress_.px(3 * letters_), field_.bottom() + dress_.px(0.5) * 1.0,
                     dress_.px(6 * letters_) * 1.0, words_ * 1.0},
                    Qt::AlignHCenter | Qt::AlignVCenter, clockAt(mark), dress_.inks().quiet);
        }
    }

    void lastLoad() {
        const Range& range = view_.plan.lastLoad;
        const double from = x(range.p10), to = std::max(x(range.p90.value_or(range.p50)), from + 2);
        painter_.fillRect(QRectF{from, field_.top() * 1.0, to - from, field_.height() * 1.0}, dress_.inks().shade);
        const double top = std::max(y(view_.plan.keepBack), field_.top() * 1.0);
        painter_.fillRect(QRectF{from, top, to - from, field_.bottom() - top},
                          QBrush{dress_.inks().band, Qt::BDiagPattern});
    }

    void fall(const std::optional<EndPlan>& plan, Qt::PenStyle style, bool main = false) {
        if (!plan)
            return;
        painter_.setPen(
            QPen{main ? dress_.inks().trace : dress_.inks().quiet, main ? dress_.px(0.6) * 1.0 : 1.6, style});
        QPolygonF path;
        constexpr int parts = 60;
        const Duration end = std::min(plan->coldFire.p50, span_);
        for (int i = 0; i <= parts; ++i)
            path << QPointF{x(end * (1.0 * i / parts)), y(tankAt(*plan, end * (1.0 * i / parts)))};
        painter_.drawPolyline(path);
    }

    // The moments, each in a row of its own under the top edge.
    void marks() {
        const Inks& inks = dress_.inks();
        mark(0, view_.plan.lastLoad.p50, Qt::SolidLine, view_.lastIsNext ? inks.medium : inks.word, tr("last load %1"));
        mark(1, view_.plan.coldFire.p50, Qt::DotLine, inks.quiet, tr("burnt out %1"));
        if (changes_)
            mark(2, view_.plan.runsOut.p50, Qt::DashDotDotLine, inks.quiet, tr("tank empty %1, if you fire on"));
        const QString keep = tr("keep back %1").arg(figure(view_.plan.keepBack, view_.units).text());
        const QFontMetrics metrics{dress_.letters(letters_)};
        const double wide = std::min(metrics.horizontalAdvance(keep) + dress_.px(2), field_.width() / 2);
        const QRectF place{field_.left() + dress_.px(1) * 1.0,
                           std::min(y(view_.plan.keepBack), field_.bottom() - words_ * 1.0) - words_, wide,
                           words_ * 1.0};
        painter_.fillRect(place, inks.panel);
        say(place, Qt::AlignLeft | Qt::AlignVCenter, keep, inks.word);
    }

    void mark(int row, Duration from, Qt::PenStyle style, const QColor& ink, const QString& words) {
        const double at = x(from), top = field_.top() + row * words_;
        if (at > field_.right())
            return;
        painter_.setPen(QPen{ink, 1.4, style});
        painter_.drawLine(QPointF{at, top}, QPointF{at, field_.bottom() * 1.0});
        const QString text = words.arg(clockAt(from));
        const double wide = QFontMetrics{dress_.letters(letters_)}.horizontalAdvance(text) + dress_.px(1);
        const double gap = dress_.px(1);
        const bool left = at + gap + wide > field_.right();
        const double place = left ? std::max(at - gap - wide, field_.left() * 1.0) : at + gap;
        say({place, top, left ? at - gap - place : wide, words_ * 1.0},
            (left ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter, text, ink);
    }

    QPainter& painter_;
    const PlanView& view_;
    const Dress& dress_;
    double letters_;
    int words_;
    bool changes_;
    int margin_;
    QRect field_;
    Duration span_{};
    Volume most_;
};

} // namespace

void drawPlan(QPainter& painter, const PlanView& view, const Dress& dress, double letters, const QRect& area,
              bool changes) {
    PlanPainter{painter, view, dress, letters, area, changes}.draw();
}

} // namespace panside
