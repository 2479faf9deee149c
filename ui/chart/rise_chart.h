#pragma once
// The big chart: the rise above boiling water, and the fire under the same time. Its right fifth is the future.
// Drawn by QPainter from thinned columns: a new second costs one column and one painting (tests/bench/board_bench has
// the comparison with Qt Charts, given all points and given thinned ones).
#include "ui/chart/plot.h"

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>
#include <array>

namespace panside {

class Press;

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
    // Left in the past while the fire is lit it comes back by itself after so long, and when an alarm comes.
    static constexpr std::chrono::seconds waitsInThePast{60};
    void setPatience(std::chrono::milliseconds patience) { back_.setInterval(patience); } // for tests
    int paintings() const { return paintings_; }
    int wholePaintings() const { return wholePaintings_; }
    // What has come since the last painting, at once.
    void redraw();

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
    // What the past is drawn by. As long as it stays, a new second changes only what stands at now and after it.
    struct Still {
        TimeScale time;
        QSize size;
        double low = 0, high = 0;
        std::array<long long, 3> band{}; // where target, legal and heavy rise stand, eighths of a pixel
        Seen stack, evaporation;
        std::size_t events = 0, draws = 0;
        std::uint64_t takenAnew = 0;
        QString head;
        bool operator==(const Still&) const = default;
    };
    Still still() const;
    double drawnUpTo() const; // where what may still change begins, pixels
    QRegion moving() const;
    void paint(QPainter& painter, const QRect& part);
    Duration usualSpan() const;
    void rescale();
    void redrawSoon(bool all = true); // else only what is new, where that is all
    void drawHead(QPainter& painter, const QRect& place) const;
    QString waterWords() const;
    void drawPointer(QPainter& painter, const Fields& fields, const Plot& plot) const;
    QString aheadWords() const;
    void tellAway();
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
    QTimer soon_, back_;
    Press* now_;      // there while the chart is not at now
    bool all_ = true; // the past is to be drawn anew too
    Still painted_;
    QRegion asked_; // to be painted
    double paintedUpTo_ = 0;
    QRect paintedFireWords_;
    QElapsedTimer sincePainted_;
    int paintings_ = 0, wholePaintings_ = 0;
};

} // namespace panside
