#include "ui/chart/rise_chart.h"

#include "ui/look/press.h"
#include "ui/look/roles.h"

#include <QPaintEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double nowStandsAt = 0.8;       // the right fifth is the future
constexpr double shortestWhole = 120;     // seconds
constexpr double leastStrip = 8;          // mm: a lower strip tells nothing
constexpr int leastBetweenPaintings = 40; // milliseconds: 25 a second

// What lies over one another is painted in one go: each painting costs about as much, however small it is.
std::vector<QRect> partsOf(const QRegion& region) {
    std::vector<QRect> parts;
    for (QRect rect : region) {
        std::erase_if(parts, [&](const QRect& part) {
            const bool over = part.left() <= rect.right() && rect.left() <= part.right();
            if (over)
                rect |= part;
            return over;
        });
        parts.push_back(rect);
    }
    return parts;
}

bool covers(const QRegion& region, const QRegion& all) { return all.subtracted(region).isEmpty(); }

} // namespace

RiseChart::RiseChart(QWidget* parent) : QWidget(parent), now_{new Press{this}} {
    setObjectName(QStringLiteral("riseChart"));
    giveRole(*this, QAccessible::Chart);
    setMouseTracking(true);
    grabGesture(Qt::PinchGesture);
    setAttribute(Qt::WA_OpaquePaintEvent);
    soon_.setSingleShot(true);
    connect(&soon_, &QTimer::timeout, this, &RiseChart::redraw);
    back_.setSingleShot(true);
    back_.setInterval(waitsInThePast);
    connect(&back_, &QTimer::timeout, this, [this] {
        if (picture_.litAt && !picture_.endedAt)
            backToNow();
    });
    now_->setObjectName(QStringLiteral("chartNow"));
    now_->hide();
    connect(now_, &Press::clicked, this, &RiseChart::backToNow);
}

void RiseChart::wear(const Dress& dress) {
    dress_ = dress;
    setAccessibleName(tr("The curve of the boil"));
    now_->wear(dress);
    now_->setShape(KeyShape::due);
    rescale();
    update();
}

void RiseChart::setUnits(Units units) {
    units_ = units;
    update();
}

void RiseChart::follow(const Boil& boil) {
    if (trace_.follow(boil))
        redrawSoon(false);
}

void RiseChart::display(const Picture& picture) {
    if (picture == picture_)
        return;
    const auto calls = [](const Picture& of) {
        return std::ranges::count(of.alarms, AlarmState::unseen, &AlarmPicture::state);
    };
    const bool alarmed = calls(picture) > calls(picture_);
    picture_ = picture;
    if (alarmed && anchor_ && !whole_)
        backToNow();
    tellAway();
    rescale();
    redrawSoon(false);
}

// How far the chart has been left behind, on the key that goes back to now.
void RiseChart::tellAway() {
    const bool away = anchor_ && !whole_;
    now_->setVisible(away);
    if (!away)
        return back_.stop();
    now_->say(tr("now is %1 on").arg(spanText(Duration{secondsBetween(*anchor_, picture_.at)})), tr("Home"));
    const QSize size = now_->sizeHint();
    const QRect rise = fields().rise;
    now_->setGeometry(rise.right() - size.width() - dress_.px(1), rise.top() + dress_.px(1), size.width(),
                      size.height());
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

void RiseChart::redrawSoon(bool all) {
    all_ = all_ || all;
    if (soon_.isActive())
        return;
    const auto since = sincePainted_.isValid() ? sincePainted_.elapsed() : leastBetweenPaintings;
    if (since >= leastBetweenPaintings)
        redraw();
    else
        soon_.start(static_cast<int>(leastBetweenPaintings - since));
}

void RiseChart::redraw() {
    asked_ = all_ || whole_ || anchor_ || !(still() == painted_) ? QRegion{rect()} : moving();
    update(asked_);
}

RiseChart::Still RiseChart::still() const {
    const ChartScene shown = scene();
    const auto [low, high] = riseRange(shown, time_);
    const Plot plot{fields().rise, time_, low, high, {}};
    Still still{time_,
                size(),
                low,
                high,
                {},
                seen(trace_.stack(), time_),
                seen(trace_.evaporation(), time_),
                trace_.events().size(),
                trace_.draws().size(),
                trace_.takenAnew(),
                waterWords()};
    const std::array rises{picture_.targetRise, picture_.legalRise, picture_.heavyRise};
    for (std::size_t i = 0; i < rises.size(); ++i)
        still.band[i] = rises[i] ? std::llround(plot.y(rises[i]->kelvin()) * 8) : -1;
    return still;
}

// Its last column may still grow, and a line goes on from there.
double RiseChart::drawnUpTo() const {
    double x = time_.x(picture_.at);
    for (const Thinned* series : {&trace_.rise(), &trace_.stack(), &trace_.evaporation()})
        if (!series->columns().empty())
            x = std::min(x, time_.xOfColumn(series->columns().back().index));
    return x;
}

QRegion RiseChart::moving() const {
    const Fields where = fields();
    const int from = static_cast<int>(std::min(paintedUpTo_, drawnUpTo())) - dress_.px(3);
    const int bottom = std::max(where.fire.bottom(), where.alarms.bottom()) + 1;
    QRegion region{QRect{QPoint{std::max(from, where.rise.left()), where.rise.top()}, QPoint{rect().right(), bottom}}};
    const int label = QFontMetrics{dress_.letters(mm::words, true)}.horizontalAdvance(QStringLiteral("00:00"));
    region += QRect{QPoint{from - 2 * label, where.times.top()}, QPoint{rect().right(), where.times.bottom()}};
    return region + paintedFireWords_ + fireWordsPlace(fireWords(scene()), dress_, where.fire);
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

void RiseChart::resizeEvent(QResizeEvent*) {
    rescale();
    tellAway();
}

RiseChart::Fields RiseChart::fields() const {
    const int edge = dress_.px(2), head = dress_.px(7), times = dress_.px(6.5), gutter = dress_.px(22);
    const QRect all = rect().adjusted(edge, dress_.px(0.5), -edge, 0);
    const int strip = std::min(alarmsHeight(alarms_, dress_), all.height() / 4);
    const int open = std::max(2, all.height() - head - times - strip);
    int fire = std::min(static_cast<int>(open * 0.24), dress_.px(45));
    if (fire < dress_.px(leastStrip)) // the curve has it all
        fire = 2;
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
    return {trace_, picture_, under_, past_, dress_, units_, !whole_, pointed_, from_, &alarms_, rect()};
}

void RiseChart::paintEvent(QPaintEvent* event) {
    ++paintings_;
    sincePainted_.start();
    for (const Laid& laid : under_)
        laid.trace->setColumn(time_.column);
    QPainter painter{this};
    const QRegion& region = event->region();
    if (covers(region, rect())) {
        ++wholePaintings_;
        paint(painter, rect());
        painted_ = still();
        all_ = false;
    } else {
        for (const QRect& part : partsOf(region)) {
            painter.setClipRect(part);
            paint(painter, part);
        }
    }
    if (!covers(region, asked_)) // some other part was to be painted; what moved is still to come
        return;
    paintedUpTo_ = drawnUpTo();
    paintedFireWords_ = fireWordsPlace(fireWords(scene()), dress_, fields().fire);
}

void RiseChart::paint(QPainter& painter, const QRect& part) {
    const Fields where = fields();
    ChartScene shown = scene();
    shown.part = part;
    const auto [low, high] = riseRange(shown, time_);
    const Plot plot{where.rise, time_, low, high, part};
    painter.fillRect(part, dress_.inks().panel);
    const bool unread = whole_ && trace_.rise().size() == 0 && under_.empty();
    if (!unread) // axes without a curve would look like a fault
        drawRiseScale(painter, shown, plot, where.gutter);
    drawRise(painter, shown, plot);
    if (unread) {
        painter.setPen(dress_.inks().quiet);
        drawFitted(painter, where.rise, Qt::AlignCenter, dress_.letters(mm::words),
                   tr("Nobody read the syrup pan in this shift: there is no curve."), 2);
    }
    if (where.fire.height() > 1)
        drawFire(painter, shown, where.fire, time_);
    if (where.alarms.height() > 0)
        drawAlarms(painter, shown, where.alarms, time_,
                   QRect{where.gutter.left(), where.alarms.top(), where.gutter.width(), where.alarms.height()});
    drawTimeScale(painter, shown, time_, where.times);
    painter.setPen(QPen{dress_.inks().line, 1});
    painter.drawLine(where.rise.left(), where.rise.bottom() + 1, where.rise.right(), where.rise.bottom() + 1);
    painter.drawLine(where.fire.left(), where.fire.bottom() + 1, where.fire.right(), where.fire.bottom() + 1);
    if (part.intersects(where.head))
        drawHead(painter, where.head.adjusted(where.gutter.width() + dress_.px(mm::gap), 0, 0, 0));
    drawPointer(painter, where, plot);
}

QString RiseChart::waterWords() const {
    QString water;
    if (picture_.waterBoils)
        water = tr("water boils at %1").arg(figure(*picture_.waterBoils, units_).text());
    if (picture_.pressure)
        water += QStringLiteral(" · ") + figure(*picture_.pressure, units_).text();
    else if (picture_.waterBoils)
        water += QStringLiteral(" · ") + tr("checked %1 ago").arg(spanText(picture_.waterBoilsAge));
    return water;
}

void RiseChart::drawHead(QPainter& painter, const QRect& place) const {
    const QString pointed = whole_ ? QString{} : pointedWords(); // under a past night they have a place of their own
    painter.setPen(pointed.isEmpty() ? dress_.inks().quiet : dress_.inks().word);
    const QFont font = dress_.letters(pointed.isEmpty() ? mm::smallWords : mm::words);
    if (!pointed.isEmpty()) {
        drawFitted(painter, place, Qt::AlignLeft | Qt::AlignVCenter, font, pointed);
        return;
    }
    const QString unit = symbolOf(unitOf(Dimension::temperature, units_));
    const QString title = tr("rise above boiling water, %1").arg(unit);
    painter.setFont(font);
    const QString water = waterWords();
    painter.drawText(place, Qt::AlignRight | Qt::AlignVCenter, water);
    const QFontMetrics metrics{font};
    const int gap = dress_.px(4);
    if (metrics.horizontalAdvance(title) + gap + metrics.horizontalAdvance(water) > place.width())
        return; // where there is no room for both, what water boils at is the news
    painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter, title);
    const QRect between = place.adjusted(metrics.horizontalAdvance(title) + gap, 0,
                                         water.isEmpty() ? 0 : -metrics.horizontalAdvance(water) - gap, 0);
    drawLegend(painter, scene(), time_, between);
}

void RiseChart::drawPointer(QPainter& painter, const Fields& where, const Plot& plot) const {
    if (!pointed_)
        return;
    const int x = static_cast<int>(std::lround(time_.x(*pointed_)));
    if (x < where.rise.left() || x > where.rise.right())
        return;
    painter.setPen(QPen{dress_.inks().word, 1, Qt::DotLine});
    painter.drawLine(x, where.rise.top(), x, std::max(where.fire.bottom(), where.alarms.bottom()));
    if (trace_.rise().size() == 0 || (!whole_ && *pointed_ > picture_.at))
        return;
    const auto sample = trace_.rise().nearest(*pointed_);
    const double y = plot.y(sample.value);
    if (std::abs(time_.x(sample.at) - x) > dress_.px(2) || y < where.rise.top() || y > where.rise.bottom())
        return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen{dress_.inks().panel, dress_.px(0.4) * 1.0});
    painter.setBrush(dress_.inks().word);
    painter.drawEllipse(QPointF{x * 1.0, y}, dress_.px(1.2), dress_.px(1.2));
}

} // namespace panside
