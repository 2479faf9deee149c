// Pointing, zooming and panning: by mouse, by finger, by wheel, by two fingers and by keys.
#include "ui/chart/rise_chart.h"

#include "ui/words/alarm_words.h"
#include "ui/words/fact_words.h"
#include "ui/words/reading_words.h"

#include <QGestureEvent>
#include <QKeyEvent>
#include <QPinchGesture>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double shortestSpan = 120, longestSpan = 4 * 86400; // seconds
constexpr double step = 1.5;                                  // one press of + or -
constexpr double slip = 2.5;                                  // millimetres that a hand may move and still only point
constexpr double farUnder = -5;                               // kelvin: nobody counts a cold pan from boiling water

} // namespace

void RiseChart::zoom(double factor) {
    const double span = span_.value_or(usualSpan()).count() / factor;
    span_ = Duration{std::clamp(span, shortestSpan, longestSpan)};
    rescale();
    update();
}

void RiseChart::zoomAbout(double factor, double x) {
    const Instant held = time_.at(x);
    zoom(factor);
    if (whole_ || anchor_)
        moveTo(anchor_.value_or(picture_.at) + Duration{secondsBetween(time_.at(x), held)});
}

void RiseChart::pan(double share) {
    moveTo(anchor_.value_or(picture_.at) + Duration{span_.value_or(usualSpan()).count() * share});
}

void RiseChart::moveTo(Instant anchor) {
    if (anchor >= picture_.at) {
        anchor_.reset();
    } else {
        // The whole of a shift stays in the window; live, its beginning may come as far as where now stands.
        const Duration before = whole_ ? span_.value_or(usualSpan()) : Duration{};
        const Instant earliest = trace_.begun().value_or(anchor) + before;
        anchor_ = std::max(anchor, earliest);
        if (*anchor_ >= picture_.at)
            anchor_.reset();
    }
    back_.start();
    tellAway();
    rescale();
    update();
}

// The moment that was taken hold of follows the hand.
void RiseChart::dragTo(double x) {
    const double by = x - held_->x;
    if (!held_->moved && std::abs(by) < dress_.px(slip))
        return;
    if (!held_->moved) {
        held_->moved = true;
        setCursor(Qt::ClosedHandCursor);
        pointAt(std::nullopt);
    }
    moveTo(held_->anchor + Duration{-1e-6 * static_cast<double>(time_.column.count()) * by});
}

void RiseChart::letGo() {
    held_.reset();
    unsetCursor();
}

void RiseChart::backToNow() {
    span_.reset();
    anchor_.reset();
    pointAt(std::nullopt);
    tellAway();
    rescale();
    update();
}

bool RiseChart::press(const QKeyEvent& event) {
    const bool shift = event.modifiers().testFlag(Qt::ShiftModifier);
    switch (event.key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoom(step);
        return true;
    case Qt::Key_Minus:
        zoom(1 / step);
        return true;
    case Qt::Key_Left:
        shift ? movePointer(-dress_.px(2)) : pan(-0.25);
        return true;
    case Qt::Key_Right:
        shift ? movePointer(dress_.px(2)) : pan(0.25);
        return true;
    case Qt::Key_Home:
        backToNow();
        return true;
    default:
        return false;
    }
}

void RiseChart::movePointer(int pixels) {
    const double from = pointed_ ? time_.x(*pointed_) : time_.x(picture_.at);
    pointAt(time_.at(std::clamp(from + pixels, time_.left * 1.0, time_.left + time_.width - 1.0)));
}

void RiseChart::pointAt(std::optional<Instant> moment) {
    if (moment == pointed_)
        return;
    pointed_ = moment;
    const QString words = pointedWords();
    setAccessibleDescription(words);
    emit pointedAt(words);
    redrawSoon();
}

// All about the one that stands there; of several only the names, or the line grows too small to be read.
QString RiseChart::pointedAlarms(double near) const {
    QStringList names, whole;
    for (const AlarmTally& tally : alarms_.review.tallies)
        for (const AlarmSpan& span : tally.spans)
            if (secondsBetween(span.began, *pointed_) >= -near &&
                secondsBetween(*pointed_, span.ended.value_or(alarms_.review.until)) >= -near) {
                const QString name = alarmName(tally.alarm, tally.series);
                if (!names.contains(name))
                    names << name;
                whole << tr("alarm: %1, %2").arg(name, alarmSpan(span, alarms_.review.until, trace_.clock()));
            }
    return whole.size() <= 1 ? whole.join(QString{}) : tr("alarms: %1").arg(names.join(QStringLiteral(", ")));
}

// What is foretold of a moment to come.
QString RiseChart::aheadWords() const {
    const auto& eta = picture_.drawing ? picture_.closeEta : picture_.drawEta;
    QStringList words{tr("in %1").arg(spanText(Duration{secondsBetween(picture_.at, *pointed_)}))};
    if (!eta || eta->p50.count() <= 0)
        words << tr("no forecast");
    else if (!eta->p90)
        words << (picture_.drawing ? tr("the draw closes in %1 or later") : tr("the draw comes in %1 or later"))
                     .arg(spanText(eta->p10));
    else
        words << (picture_.drawing ? tr("the draw closes in %1 to %2") : tr("the draw comes in %1 to %2"))
                     .arg(spanText(eta->p10), spanText(*eta->p90));
    return words.join(QStringLiteral(" · "));
}

QString RiseChart::pointedWords() const {
    if (!pointed_)
        return {};
    QStringList words{trace_.clock().hourAndMinute(*pointed_)};
    const double near = static_cast<double>(time_.column.count()) * 1e-6 * dress_.px(2); // seconds that 2 mm hold
    if (!whole_ && *pointed_ > picture_.at) {
        words << aheadWords();
        return words.join(QStringLiteral(" · "));
    }
    if (trace_.rise().size() > 0) {
        const auto sample = trace_.rise().nearest(*pointed_);
        if (std::abs(secondsBetween(sample.at, *pointed_)) > std::max(near, 15.0) || sample.trust == Trust::gone)
            words << tr("nothing was read");
        else
            words << (sample.value < farUnder && picture_.waterBoils
                          ? tr("pan %1").arg(
                                figure(*picture_.waterBoils + TemperatureDifference::kelvin(sample.value), units_, 0)
                                    .text())
                          : tr("rise %1").arg(figure(TemperatureDifference::kelvin(sample.value), units_).text()))
                  << trustWord(sample.trust);
    }
    if (trace_.stack().size() > 0) {
        const auto sample = trace_.stack().nearest(*pointed_);
        if (std::abs(secondsBetween(sample.at, *pointed_)) <= std::max(near, 15.0))
            words << tr("stack %1").arg(figure(Temperature::kelvin(sample.value), units_, 0).text());
    }
    if (const QString alarms = pointedAlarms(near); !alarms.isEmpty())
        words << alarms;
    for (const Fact& fact : trace_.events())
        if (std::abs(secondsBetween(fact.at, *pointed_)) <= near)
            words << trace_.clock().hourAndMinute(fact.at) + u' ' + factWords(fact, units_);
    return words.join(QStringLiteral(" · "));
}

void RiseChart::wheelEvent(QWheelEvent* event) {
    const double notches = event->angleDelta().y() / 120.0;
    if (event->modifiers().testFlag(Qt::ShiftModifier))
        pan(-notches * 0.1);
    else
        zoomAbout(std::pow(1.2, notches), event->position().x());
    event->accept();
}

void RiseChart::mouseMoveEvent(QMouseEvent* event) {
    const double x = event->position().x();
    if (held_ && event->buttons().testFlag(Qt::LeftButton)) {
        dragTo(x);
        return;
    }
    if (x < time_.left || x >= time_.left + time_.width)
        pointAt(std::nullopt);
    else
        pointAt(time_.at(x));
}

// A finger comes as a button: Qt makes mouse events of the touches that a widget leaves alone.
void RiseChart::mousePressEvent(QMouseEvent* event) {
    held_.reset();
    mouseMoveEvent(event);
    if (event->button() == Qt::LeftButton)
        held_ = Held{event->position().x(), anchor_.value_or(picture_.at)};
}

void RiseChart::mouseReleaseEvent(QMouseEvent*) { letGo(); }
void RiseChart::mouseDoubleClickEvent(QMouseEvent*) { backToNow(); }

void RiseChart::leaveEvent(QEvent*) { pointAt(std::nullopt); }

bool RiseChart::event(QEvent* event) {
    if (event->type() == QEvent::Gesture) {
        if (auto* pinch = static_cast<QPinchGesture*>(static_cast<QGestureEvent*>(event)->gesture(Qt::PinchGesture))) {
            letGo(); // the first of two fingers began as a drag
            zoomAbout(pinch->scaleFactor(), mapFromGlobal(pinch->hotSpot()).x());
            return true;
        }
    }
    return QWidget::event(event);
}

} // namespace panside
