#pragma once
// The chart, drawn. Functions of what is shown and of where; they keep nothing.
#include "core/boil/alarm_review.h"
#include "core/boil/hindsight.h"
#include "ui/chart/shift_trace.h"
#include "ui/chart/time_scale.h"
#include "ui/look/dress.h"
#include "ui/look/units.h"

#include <QRect>
#include <memory>

class QPainter;

namespace panside {

// A field of the chart: a rectangle, its time across and its values up.
struct Plot {
    QRect area;
    TimeScale time;
    double low = 0, high = 1; // values at the lower and upper edge
    QRect part;               // of the chart, that is painted
    QRect visible() const { return area.intersected(part); }
    double y(double value) const { return area.bottom() - (value - low) / (high - low) * (area.height() - 1); }
};

// Another shift, laid under this one from a moment that both have: each fire lit, unless another is chosen.
struct Laid {
    std::shared_ptr<ShiftTrace> trace;
    QString name;
};

// The alarms of a shift that is over, a lane each.
struct LaidAlarms {
    AlarmReview review;
    std::optional<std::size_t> chosen; // its lane stands out
};

struct ChartScene {
    const ShiftTrace& trace;
    const Picture& picture;
    const std::vector<Laid>& under;
    const std::vector<PastForecast>& past; // forecasts as they stood, under the line that came
    Dress dress;
    Units units = Units::us;
    bool future = true; // false: a shift that is over, in review
    std::optional<Instant> pointed;
    LaidFrom from = LaidFrom::lit;
    const LaidAlarms* alarms = nullptr;
    QRect part = {}; // of the chart, that is painted
};

// The field of the rise, and under the same time the field of the fire.
void drawRise(QPainter& painter, const ChartScene& scene, const Plot& plot);
void drawFire(QPainter& painter, const ChartScene& scene, const QRect& area, const TimeScale& time);
// What was said and done, each kind by a shape of its own; and what the shapes mean, of those in sight and as far as
// the place goes, from its right: returns how far left they came.
void drawMarks(QPainter& painter, const ChartScene& scene, const Plot& plot);
int drawLegend(QPainter& painter, const ChartScene& scene, const TimeScale& time, const QRect& place);
// Under the same time a lane for each alarm that stood. Its height tells the priority, a full bar that nobody had seen
// it yet, a hollow one that somebody had, a broken line that it was shelved; its number is that of the table.
void drawAlarms(QPainter& painter, const ChartScene& scene, const QRect& area, const TimeScale& time,
                const QRect& gutter);
int alarmsHeight(const LaidAlarms& alarms, const Dress& dress); // none stood: 0
// Scales: the rise and, beside it, the degrees the probe would show, each in round steps of its own and with its name
// above; hours and minutes below.
void drawRiseScale(QPainter& painter, const ChartScene& scene, const Plot& plot, const QRect& gutter);
void drawTimeScale(QPainter& painter, const ChartScene& scene, const TimeScale& time, const QRect& row);

// A thinned series as strokes: parted at gaps, dotted where it is in doubt, absent where it is gone.
void drawSeries(QPainter& painter, const Thinned& series, const Plot& plot, const QColor& ink, double width,
                std::int64_t shift = 0);
// The least and greatest value on the screen; nothing if there is none.
using Seen = std::optional<std::pair<double, double>>;
Seen seen(const Thinned& series, const TimeScale& time);
// The words over the fire, which tell of this moment, and where they stand.
QString fireWords(const ChartScene& scene);
QRect fireWordsPlace(const QString& words, const Dress& dress, const QRect& area);
// The kelvins at the lower and upper edge that show the band, and whatever rises above it.
std::pair<double, double> riseRange(const ChartScene& scene, const TimeScale& time);

} // namespace panside
