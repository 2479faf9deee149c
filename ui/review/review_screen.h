#pragma once
#include "ui/chart/rise_chart.h"
#include "ui/keys/actions.h"
#include "ui/look/dress.h"
#include "ui/review/entry_lines.h"
#include "ui/review/review_view.h"

#include <QWidget>

class QLabel;
class QStackedWidget;
class QVBoxLayout;

namespace panside {

class AlarmsPane;
class EntriesPane;
class ShiftsPane;

// The shifts so far: a list, one of them opened on the rise chart, others laid over it from the moment each fire was
// lit, each pan first boiled, or each last draw was opened. Shows what it is given, says what is wanted; the journal is
// the app's business.
class ReviewScreen : public QWidget {
    Q_OBJECT
public:
    explicit ReviewScreen(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    void display(const std::vector<ReviewRow>& rows, Units units);
    // A shift's facts, opened: it fills the chart. Whatever was laid over another goes.
    void showShift(ShiftId shift, ShiftTrace trace, const std::optional<Picture>& last, const QString& story,
                   Units units);
    void showShift(ShiftId shift, const Boil& boil, const QString& story, Units units);
    // How the forecasts of the one that is open came out.
    void tellScores(const std::vector<DrawScore>& scores);
    // What was foretold in it, under the line as it came.
    void layForecasts(std::vector<PastForecast> past);
    // Another one, over or off the one that is open.
    void layOver(ShiftId shift, ShiftTrace trace);
    void layOver(ShiftId shift, const Boil& boil);
    bool isLaidOver(ShiftId shift) const;
    void takeOff(ShiftId shift);
    // Its alarms, from beginning to end; they come a moment after it is opened.
    void tellAlarms(AlarmReview review);
    // What people entered in the one that is open, to be put right; and again, when the journal has changed.
    void showEntries(std::vector<EntryLine> lines);
    // To the list of shifts, to its alarms, to what was entered in it.
    void turn(Action leaf);
    // What came of an import or an export.
    void say(const QString& words);
    // The story of the night that is open: it stands under the nights, and leaves the other leaves their height.
    void tellNight(const QString& story);
    RiseChart& chart() { return *chart_; }
    std::optional<ShiftId> chosen() const;

signals:
    void openWanted(panside::ShiftId shift);
    void layOverWanted(panside::ShiftId shift);
    void forecastsWanted(panside::ShiftId shift);
    void entriesWanted(panside::ShiftId shift);
    void correctionWanted(panside::ShiftId shift, panside::FactId fact, const std::optional<panside::Fact>& instead);
    void exportWanted(panside::ShiftId shift);
    void turned(panside::Action leaf); // by a key of its own
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fitLeaf();
    void fitHeights();
    void keepPlace();
    bool act(int key);
    void drawOver();
    void turnForecasts();
    void showAlarms();
    void showShifts();
    void leaveLeaf();
    void turnFrom();
    QString fromWord() const;

    struct Over {
        ShiftId shift;
        Laid laid;
    };
    std::vector<Over> over_;
    std::optional<ShiftId> opened_;
    std::vector<DrawScore> scores_;
    bool forecastsLie_ = false;
    LaidFrom laidFrom_ = LaidFrom::lit;
    Units units_ = Units::us;
    Dress dress_;
    QString tale_;  // what was said before the chart was pointed at
    QString night_; // the story
    QVBoxLayout* column_;
    QStackedWidget* lower_; // the keys of the list, or the entries of one shift, or its alarms
    ShiftsPane* shifts_;
    EntriesPane* entries_;
    AlarmsPane* alarms_;
    RiseChart* chart_;
    QLabel* story_;
    QLabel* said_;
};

} // namespace panside
