#include "ui/chart/rise_chart.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double nowStandsAt = 0.8;       // the right fifth is the future
constexpr double shortestWhole = 120;     // seconds
constexpr int leastBetweenPaintings = 40; // milliseconds: 25 a second

} // namespace

RiseChart::RiseChart(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("riseChart"));
    setMouseTracking(true);
    grabGesture(Qt::PinchGesture);
    setAttribute(Qt::WA_OpaquePaintEvent);
    soon_.setSingleShot(true);
    connect(&soon_, &QTimer::timeout, this, [this] { update(); });
}

void RiseChart::wear(const Dress& dress) {
    dress_ = dress;
    rescale();
    update();
}

void RiseChart::setUnits(Units units) {
    units_ = units;
    update();
}

void RiseChart::follow(const Boil& boil) {
    if (trace_.follow(boil))
        redrawSoon();
}

void RiseChart::display(const Picture& picture) {
    if (picture == picture_)
        return;
    picture_ = picture;
    rescale();
    redrawSoon();
}

void RiseChart::layUnder(std::vector<Laid> under) {
    under_ = std::move(under);
    redrawSoon();
}

void RiseChart::layFrom(LaidFrom from) {
    from_ = from;
    redrawSoon();
}

void RiseChart::layForecasts(std::vector<PastForecast> past) {
    past_ = std::move(past);
    redrawSoon();
}

void RiseChart::layAlarms(AlarmReview review) {
    alarms_ = {std::move(review), {}};
    rescale();
    redrawSoon();
}

void RiseChart::chooseAlarm(std::optional<std::size_t> chosen) {
    if (chosen == alarms_.chosen)
        return;
    alarms_.chosen = chosen;
    redrawSoon();
}

void RiseChart::showWhole() {
    whole_ = true;
    span_.reset();
    anchor_.reset();
    rescale();
    update();
}

void RiseChart::redrawSoon() {
    if (soon_.isActive())
        return;
    const auto since = sincePainted_.isValid() ? sincePainted_.elapsed() : leastBetweenPaintings;
    if (since >= leastBetweenPaintings)
        update();
    else
        soon_.start(static_cast<int>(leastBetweenPaintings - since));
}

// From the fire's lighting to now as far as two hours; in steps, so that the chart does not creep with every second.
Duration RiseChart::usualSpan() const {
    const auto begun = trace_.litAt() ? trace_.litAt() : trace_.begun();
    const double past = begun ? std::max(0.0, secondsBetween(*begun, picture_.at)) : 0;
    if (whole_)
        return Duration{std::max(shortestWhole, past * 1.02)};
    for (const double minutes : {20.0, 40.0, 60.0, 90.0})
        if (past <= minutes * 60)
            return Duration{minutes * 60 / nowStandsAt};
    return Duration{7200 / nowStandsAt};
}

void RiseChart::rescale() {
    const Fields where = fields();
    const double nowAt = whole_ ? 1.0 : nowStandsAt;
    time_ = scaleFor(anchor_.value_or(picture_.at), span_.value_or(usualSpan()), nowAt, where.rise.left(),
                     where.rise.width());
    trace_.setColumn(time_.column);
}

void RiseChart::resizeEvent(QResizeEvent*) { rescale(); }

RiseChart::Fields RiseChart::fields() const {
    const int edge = dress_.px(2), head = dress_.px(7), times = dress_.px(6.5), gutter = dress_.px(22);
    const QRect all = rect().adjusted(edge, dress_.px(0.5), -edge, 0);
    const int strip = std::min(alarmsHeight(alarms_, dress_), all.height() / 4);
    const int open = std::max(2, all.height() - head - times - strip);
    const int fire = std::clamp(static_cast<int>(open * 0.24), 1, std::max(1, dress_.px(45)));
    Fields where;
    where.head = QRect{all.left(), all.top(), all.width(), head};
    where.rise = QRect{all.left() + gutter, all.top() + head, std::max(1, all.width() - gutter), open - fire};
    where.gutter = QRect{all.left(), where.rise.top(), gutter, where.rise.height()};
    where.fire = QRect{where.rise.left(), where.rise.bottom() + 2, where.rise.width(), fire - 1};
    where.alarms = QRect{where.fire.left(), where.fire.bottom() + 2, where.fire.width(), std::max(0, strip - 1)};
    where.times = QRect{all.left(), where.fire.bottom() + 1 + strip, all.width(), times};
    return where;
}

ChartScene RiseChart::scene() const {
    return {trace_, picture_, under_, past_, dress_, units_, !whole_, pointed_, from_, &alarms_};
}

void RiseChart::paintEvent(QPaintEvent*) {
    ++paintings_;
    sincePainted_.start();
    for (const Laid& laid : under_)
        laid.trace->setColumn(time_.column);
    const Fields where = fields();
    const ChartScene shown = scene();
    const auto [low, high] = riseRange(shown, time_);
    const Plot plot{where.rise, time_, low, high};
    QPainter painter{this};
    painter.fillRect(rect(), dress_.inks().panel);
    drawRiseScale(painter, shown, plot, where.gutter);
    drawRise(painter, shown, plot);
    drawFire(painter, shown, where.fire, time_);
    if (where.alarms.height() > 0)
        drawAlarms(painter, shown, where.alarms, time_,
                   QRect{where.gutter.left(), where.alarms.top(), where.gutter.width(), where.alarms.height()});
    drawTimeScale(painter, shown, time_, where.times);
    painter.setPen(QPen{dress_.inks().line, 1});
    painter.drawLine(where.rise.left(), where.rise.bottom() + 1, where.rise.right(), where.rise.bottom() + 1);
    painter.drawLine(where.fire.left(), where.fire.bottom() + 1, where.fire.right(), where.fire.bottom() + 1);
    drawHead(painter, where.head);
    drawPointer(painter, where);
}

void RiseChart::drawHead(QPainter& painter, const QRect& place) const {
    const QString pointed = pointedWords();
    painter.setPen(pointed.isEmpty() ? dress_.inks().quiet : dress_.inks().word);
    const QFont font = dress_.letters(pointed.isEmpty() ? mm::smallWords : mm::words);
    if (!pointed.isEmpty()) {
        drawFitted(painter, place, Qt::AlignLeft | Qt::AlignVCenter, font, pointed);
        return;
    }
    const QString unit = symbolOf(unitOf(Dimension::temperature, units_));
    const QString title = tr("rise above boiling water, %1").arg(unit);
    painter.setFont(font);
    painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter, title);
    QString water;
    if (picture_.waterBoils)
        water = tr("water boils at %1").arg(figure(*picture_.waterBoils, units_).text());
    if (picture_.pressure)
        water += QStringLiteral(" · ") + figure(*picture_.pressure, units_).text();
    else if (picture_.waterBoils)
        water += QStringLiteral(" · ") + tr("checked %1 ago").arg(spanText(picture_.waterBoilsAge));
    painter.drawText(place, Qt::AlignRight | Qt::AlignVCenter, water);
}

void RiseChart::drawPointer(QPainter& painter, const Fields& where) const {
    if (!pointed_)
        return;
    const int x = static_cast<int>(std::lround(time_.x(*pointed_)));
    if (x < where.rise.left() || x > where.rise.right())
        return;
    painter.setPen(QPen{dress_.inks().word, 1, Qt::DotLine});
    painter.drawLine(x, where.rise.top(), x, std::max(where.fire.bottom(), where.alarms.bottom()));
}

} // namespace panside
