#pragma once
// The big chart: the rise above boiling water, and the fire under the same time. Its right fifth is the future.
// Drawn by QPainter from thinned columns: a new second costs one column and one painting (tests/bench/board_bench has
// the comparison with Qt Charts, given all points and given thinned ones).
#include "ui/chart/plot.h"

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>

namespace panside {

class RiseChart : public QWidget {
    Q_OBJECT
public:
    explicit RiseChart(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    void setUnits(Units units);
    // What is new in the shift; redrawn at most 25 times a second, however often this is called.
    void follow(const Boil& boil);
    void display(const Picture& picture);
    ShiftTrace& trace() { return trace_; }
    // Other shifts under this one, from the moment each fire was lit, or another.
    void layFrom(LaidFrom from);
    void layUnder(std::vector<Laid> under);
    // What was foretold then, under the line as it came; none: taken away.
    void layForecasts(std::vector<PastForecast> past);
    // Its alarms, under the fire; none: taken away. `chosen`: the one whose lane stands out.
    void layAlarms(AlarmReview review);
    void chooseAlarm(std::optional<std::size_t> chosen);
    // The whole of a shift that is over, without a future: for the review.
    void showWhole();

    void zoom(double factor); // above 1: closer
    // Closer or further, the moment at `x` staying where it is; while the chart follows now, now stays.
    void zoomAbout(double factor, double x);
    void pan(double share); // of the width; positive: later
    void backToNow();
    // Zoom, pan, point and back by keys; false for a key that is none of the chart's.
    bool press(const QKeyEvent& event);

    // What stands at the moment pointed at: time, value, trust, what was said; empty when nothing is pointed at.
    QString pointedWords() const;
    void pointAt(std::optional<Instant> moment);
    const TimeScale& timeScale() const { return time_; }
    bool followsNow() const { return !anchor_; }
    int paintings() const { return paintings_; }

signals:
    void pointedAt(const QString& words);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    bool event(QEvent* event) override;

private:
    struct Fields {
        QRect head, gutter, rise, fire, alarms, times;
    };
    Fields fields() const;
    ChartScene scene() const;
    Duration usualSpan() const;
    void rescale();
    void redrawSoon();
    void drawHead(QPainter& painter, const QRect& place) const;
    void drawPointer(QPainter& painter, const Fields& fields) const;
    QString pointedAlarms(double near) const; // `near`: seconds
    void movePointer(int pixels);
    void moveTo(Instant anchor); // or as near as there is something to see
    void dragTo(double x);
    void letGo();

    Dress dress_;
    Units units_ = Units::us;
    ShiftTrace trace_;
    Picture picture_;
    std::vector<Laid> under_;
    std::vector<PastForecast> past_;
    LaidAlarms alarms_;
    TimeScale time_;
    std::optional<Duration> span_;  // chosen by zooming
    std::optional<Instant> anchor_; // stands where now would; none: now
    std::optional<Instant> pointed_;
    // Held with a button or a finger. A short slip of a gloved hand is no drag.
    struct Held {
        double x;
        Instant anchor;
        bool moved = false;
    };
    std::optional<Held> held_;
    bool whole_ = false;
    LaidFrom from_ = LaidFrom::lit;
    QTimer soon_;
    QElapsedTimer sincePainted_;
    int paintings_ = 0;
};

} // namespace panside
