#include "ui/season/season_pictures.h"

#include "ui/look/roles.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("Season", text, comment, n);
}

QString plain(double value) {
    return QLocale{}
        .toString(value, 'f', std::abs(value) < 20 && value != std::round(value) ? 1 : 0)
        .replace(u'-', QChar{0x2212});
}

QDate dayOf(Instant at) {
    return QDateTime::fromSecsSinceEpoch(static_cast<qint64>(secondsBetween(Instant{}, at))).date();
}

// A mark of a scale at a round number: 1, 2 or 5 times a power of ten.
double roundStep(double span, int marks) {
    if (span <= 0)
        return 1;
    const double raw = span / marks, power = std::pow(10.0, std::floor(std::log10(raw)));
    const double times = raw / power;
    return power * (times <= 1 ? 1 : times <= 2 ? 2 : times <= 5 ? 5 : 10);
}

class CurvePainter {
public:
    CurvePainter(QPainter& painter, const QRectF& place, const SeasonCurve& curve, const Dress& dress)
        : painter_{painter}, curve_{curve}, dress_{dress}, letters_{dress.letters(mm::smallWords)} {
        const QFontMetricsF metrics{letters_};
        line_ = metrics.height();
        plot_ = place.adjusted(metrics.horizontalAdvance(QStringLiteral("88888")) + dress.px(mm::gap), line_ * 1.3,
                               -dress.px(mm::gap), -line_ * 1.5);
        place_ = place;
    }
    void paint() {
        painter_.setFont(letters_);
        painter_.setPen(dress_.inks().word);
        painter_.drawText(QRectF{plot_.left(), place_.top(), plot_.width(), line_ * 1.2}, Qt::AlignLeft, curve_.name);
        if (curve_.bars.empty())
            return;
        scale();
        for (const SeasonBar& bar : curve_.bars)
            paintBar(bar);
        days();
    }

private:
    void scale() {
        for (const SeasonBar& bar : curve_.bars)
            if (bar.value) {
                top_ = std::max(top_, *bar.value);
                bottom_ = any_ ? std::min(bottom_, *bar.value) : *bar.value;
                any_ = true;
            }
        // A bar begins at nought, or it lies. Where all stand far from it and near each other, as pressures do, the
        // scale begins near the least of them, and marks stand in the bars' place.
        dots_ = any_ && bottom_ > 0.9 * top_ && curve_.bars.size() > 1;
        bottom_ = dots_ ? bottom_ - 0.3 * (top_ - bottom_ + 1e-9) : 0;
        if (top_ <= bottom_)
            top_ = bottom_ + 1;
        top_ += 0.05 * (top_ - bottom_);
        const double step = roundStep(top_ - bottom_, 3);
        painter_.setPen(QPen{dress_.inks().faint, 0});
        for (double mark = std::ceil(bottom_ / step) * step; mark <= top_; mark += step) {
            painter_.setPen(QPen{dress_.inks().faint, 0});
            painter_.drawLine(QPointF{plot_.left(), y(mark)}, QPointF{plot_.right(), y(mark)});
            painter_.setPen(dress_.inks().quiet);
            painter_.drawText(QRectF{place_.left(), y(mark) - line_ / 2, plot_.left() - place_.left() - 4, line_},
                              Qt::AlignRight | Qt::AlignVCenter, plain(mark));
        }
        first_ = dayOf(curve_.bars.front().shift).toJulianDay();
        span_ = static_cast<double>(dayOf(curve_.bars.back().shift).toJulianDay() - first_ + 1);
    }
    double y(double value) const { return plot_.bottom() - (value - bottom_) / (top_ - bottom_) * plot_.height(); }
    double x(double day) const { return plot_.left() + (day + 0.5) / span_ * plot_.width(); }
    double width() const { return std::clamp(plot_.width() / span_ * 0.7, 1.5, static_cast<double>(dress_.px(8))); }

    void paintBar(const SeasonBar& bar) {
        const double middle = x(static_cast<double>(dayOf(bar.shift).toJulianDay() - first_)), half = width() / 2;
        const bool chosen = curve_.chosen == bar.shift;
        const bool marked = std::ranges::find(curve_.marked, bar.shift) != curve_.marked.end();
        const QColor ink = chosen ? dress_.inks().trace : marked ? dress_.inks().word : dress_.inks().line;
        if (!bar.value) { // a hole: nothing stands there, and that is said
            painter_.setPen(QPen{ink, std::max(1.0, half / 3)});
            painter_.drawLine(QPointF{middle - half, plot_.bottom() + 3}, QPointF{middle + half, plot_.bottom() + 3});
            if (half * 2 >= QFontMetricsF{letters_}.horizontalAdvance(u'?'))
                painter_.drawText(QRectF{middle - half, plot_.bottom() - line_, 2 * half, line_}, Qt::AlignCenter,
                                  QStringLiteral("?"));
            return;
        }
        const QRectF body{QPointF{middle - half, y(*bar.value)}, QPointF{middle + half, plot_.bottom()}};
        painter_.fillRect(dots_ ? QRectF{middle - half, body.top() - half / 2, 2 * half, half} : body, ink);
        if (bar.atLeast && !dots_) // it may have been more
            painter_.fillRect(QRectF{body.left() + half / 2, body.top(), half, std::min(body.height(), line_ / 2)},
                              dress_.inks().panel);
        if (marked) {
            painter_.setPen(QPen{dress_.inks().word, 2});
            painter_.drawLine(body.bottomLeft() + QPointF{0, 4}, body.bottomRight() + QPointF{0, 4});
        }
    }
    void days() {
        painter_.setPen(dress_.inks().quiet);
        const QFontMetricsF metrics{letters_};
        double free = plot_.left();
        // The first shift of each stretch of days that has room for its date.
        for (const SeasonBar& bar : curve_.bars) {
            const QDate day = dayOf(bar.shift);
            const QString words =
                QLocale{}.toString(day, span_ > 300 ? QStringLiteral("MMM yyyy") : QStringLiteral("d MMM"));
            const double wide = metrics.horizontalAdvance(words);
            const double from =
                std::min(x(static_cast<double>(day.toJulianDay() - first_)) - wide / 2, plot_.right() - wide);
            if (from < free)
                continue;
            painter_.drawText(QRectF{from, plot_.bottom() + 6, wide + 1, line_}, Qt::AlignLeft, words);
            free = from + wide + 3 * metrics.averageCharWidth();
        }
    }

    QPainter& painter_;
    const SeasonCurve& curve_;
    const Dress& dress_;
    QFont letters_;
    double line_ = 0;
    QRectF plot_, place_;
    double top_ = 0, bottom_ = 0, span_ = 1;
    bool any_ = false, dots_ = false;
    qint64 first_ = 0;
};

// An interval with its middle, as a bar on a scale.
void paintInterval(QPainter& painter, double low, double middle, double high, double y, double thick, const QColor& ink,
                   bool solid) {
    QPen pen{ink, thick};
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    if (solid)
        painter.drawLine(QPointF{low, y}, QPointF{high, y});
    else
        painter.drawRect(QRectF{QPointF{low, y - thick}, QPointF{high, y + thick}});
    painter.setPen(QPen{ink, std::max(2.0, thick / 2)});
    painter.drawLine(QPointF{middle, y - 2 * thick}, QPointF{middle, y + 2 * thick});
}

} // namespace

void paintCurve(QPainter& painter, const QRectF& place, const SeasonCurve& curve, const Dress& dress) {
    CurvePainter{painter, place, curve, dress}.paint();
}

void paintEffects(QPainter& painter, const QRectF& place, const std::vector<EffectLine>& lines, const Dress& dress) {
    if (lines.empty())
        return;
    const QFont letters = dress.letters(mm::smallWords);
    const QFontMetricsF metrics{letters};
    const double height = std::min(place.height() / (static_cast<double>(lines.size()) + 1), metrics.height() * 2.2);
    // The words take what they need, as far as a fifth of the width is left for the scale.
    const QFontMetricsF strong{dress.letters(mm::smallWords, true)};
    double causes = 0, figures = 0, verdicts = 0;
    for (const EffectLine& line : lines) {
        causes = std::max(causes, strong.horizontalAdvance(line.cause) + 2.0 * dress.px(mm::gap));
        figures = std::max(figures, strong.horizontalAdvance(line.figure) + 2.0 * dress.px(mm::gap));
        verdicts = std::max(verdicts, strong.horizontalAdvance(line.verdict) + dress.px(mm::gap));
    }
    const double share = std::min(1.0, place.width() * 0.8 / (causes + figures + verdicts));
    const double right = place.right() - share * verdicts;
    const QRectF scale{QPointF{place.left() + share * causes, place.top()},
                       QPointF{right - share * figures - dress.px(mm::gap), place.bottom()}};
    double reach = 5;
    for (const EffectLine& line : lines)
        reach = std::max({reach, std::abs(line.low), std::abs(line.high)});
    reach = std::min(reach, 60.0);
    const auto x = [&](double percent) {
        return scale.center().x() + std::clamp(percent / reach, -1.0, 1.0) * scale.width() / 2;
    };
    const double bottom = place.top() + height * static_cast<double>(lines.size());
    painter.setFont(letters);
    // As many figures as stand beside each other.
    const double wide = 1.3 * metrics.horizontalAdvance(plain(-60) + QStringLiteral(" %"));
    const double step = roundStep(reach, std::clamp(static_cast<int>(scale.width() / 2 / wide), 2, 3));
    for (double mark = -std::floor(reach / step) * step; mark <= reach; mark += step) {
        painter.setPen(QPen{std::abs(mark) < 1e-9 ? dress.inks().word : dress.inks().faint, 0});
        painter.drawLine(QPointF{x(mark), place.top()}, QPointF{x(mark), bottom});
        painter.setPen(dress.inks().quiet);
        painter.drawText(QRectF{x(mark) - 40, bottom, 80, metrics.height()}, Qt::AlignHCenter,
                         plain(mark) + QStringLiteral(" %"));
    }
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const EffectLine& line = lines[i];
        const QRectF row{place.left(), place.top() + height * static_cast<double>(i), place.width(), height};
        const int gap = dress.px(mm::gap);
        const auto put = [&](double from, double to, const QString& words, bool chief) {
            painter.setPen(chief ? dress.inks().word : dress.inks().quiet);
            drawFitted(painter, QRectF{from, row.top(), to - from - gap, height}.toRect(),
                       Qt::AlignLeft | Qt::AlignVCenter, dress.letters(mm::smallWords, chief && line.claimed), words,
                       2);
        };
        put(row.left(), scale.left(), line.cause, true);
        paintInterval(painter, x(line.low), x(line.middle), x(line.high), row.center().y(), std::max(2.0, height / 10),
                      line.claimed ? dress.inks().trace : dress.inks().quiet, line.claimed);
        put(scale.right() + gap, right, line.figure, line.claimed);
        put(right, row.right() + gap, line.verdict, line.claimed);
    }
}

void paintCalibration(QPainter& painter, const QRectF& place, const CalibrationPicture& calibration,
                      const Dress& dress) {
    const QFont letters = dress.letters(mm::words);
    const QFontMetricsF metrics{letters};
    painter.setFont(letters);
    painter.setPen(dress.inks().word);
    if (calibration.levels.empty()) {
        painter.drawText(
            place, Qt::AlignLeft | Qt::TextWordWrap,
            tr("No draw of these shifts was predicted and then came, so nothing can be said of the forecast yet."));
        return;
    }
    const double height = std::min(place.height() / 6, metrics.height() * 3.0);
    const QRectF scale{place.left() + place.width() * 0.36, place.top(), place.width() * 0.40, place.height()};
    const auto x = [&](double share) { return scale.left() + share * scale.width(); };
    const double bottom = place.top() + height * static_cast<double>(calibration.levels.size());
    for (int tenth = 0; tenth <= 10; tenth += 2) {
        painter.setPen(QPen{dress.inks().faint, 0});
        painter.drawLine(QPointF{x(tenth / 10.0), place.top()}, QPointF{x(tenth / 10.0), bottom});
        painter.setPen(dress.inks().quiet);
        painter.drawText(QRectF{x(tenth / 10.0) - 40, bottom, 80, metrics.height()}, Qt::AlignHCenter,
                         QStringLiteral("%1 %").arg(10 * tenth));
    }
    double y = place.top() + height / 2;
    for (const Calibration& level : calibration.levels) {
        const QString said = level.range           ? tr("between the early and the late end: %1 % promised")
                             : level.nominal < 0.3 ? tr("before the early end: %1 % promised")
                             : level.nominal < 0.7 ? tr("before the middle: %1 % promised")
                                                   : tr("before the late end: %1 % promised");
        painter.setPen(dress.inks().word);
        drawFitted(
            painter,
            QRectF{place.left(), y - height / 2, scale.left() - place.left() - dress.px(mm::gap), height}.toRect(),
            Qt::AlignLeft | Qt::AlignVCenter, letters, said.arg(100 * level.nominal), 2);
        paintInterval(painter, x(level.low), x(level.share), x(level.high), y, std::max(3.0, height / 12),
                      dress.inks().trace, true);
        // What was promised: a hollow mark that the bar should reach over.
        painter.setPen(QPen{dress.inks().word, 2});
        painter.drawEllipse(QPointF{x(level.nominal), y}, height / 6, height / 6);
        painter.setPen(dress.inks().word);
        drawFitted(
            painter,
            QRectF{scale.right() + dress.px(mm::gap), y - height / 2, place.right() - scale.right(), height}.toRect(),
            Qt::AlignLeft | Qt::AlignVCenter, letters,
            tr("%1 %, between %2 and %3")
                .arg(plain(std::round(100 * level.share)), plain(std::round(100 * level.low)),
                     plain(std::round(100 * level.high))));
        y += height;
    }
}

SeasonPicture::SeasonPicture(QWidget* parent) : QWidget{parent} { giveRole(*this, QAccessible::Chart); }

void SeasonPicture::show(const QString& name, std::function<void(QPainter&, const QRectF&)> paint) {
    setAccessibleName(name);
    paint_ = std::move(paint);
    update();
}

void SeasonPicture::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), palette().color(QPalette::Window));
    if (paint_)
        paint_(painter, QRectF{rect()}.adjusted(4, 4, -4, -4));
}

} // namespace panside
