#pragma once
#include "ui/look/dress.h"
#include "ui/season/season_view.h"
#include "ui/season/tuning_view.h"

#include <QWidget>

class QLabel;
class QStackedWidget;

namespace panside {

class ActionKeys;
class BesideLeaf;
class CalibrationLeaf;
class ColumnsLeaf;
class SeasonTableLeaf;
class TuningLeaf;

// The season: every shift a row, with totals and a picture of the chosen column; two shifts side by side; what the
// nights teach; how the forecast kept its word. Shows what it is given and says what is wanted.
class SeasonScreen : public QWidget {
    Q_OBJECT
public:
    enum class Leaf { table, beside, tuning, calibration, columns };

    explicit SeasonScreen(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void setUnits(Units units);
    // All shifts of all seasons; the newest season is shown first.
    void display(std::vector<SeasonShift> shifts);
    void say(const QString& words);
    // Those that a person chose earlier; none: as they are.
    void setColumns(const std::vector<SeasonFigure>& columns);

    const SeasonTable& table() const;
    const SeasonChoice& choice() const { return choice_; }
    std::optional<Instant> chosen() const;
    Leaf leaf() const;
    void turnTo(Leaf leaf);

signals:
    void openWanted(panside::Instant shift);
    void columnsChosen(const std::vector<panside::SeasonFigure>& columns);
    void paperWanted(const panside::SeasonChoice& choice);
    void turned(); // back to the table
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void sayKeys();
    void refresh();
    void drawCurve();
    void showBeside();
    void takeColumns();
    bool act(int key);
    bool actOnTable(int key);
    void moveColumn(int by);
    void sortByChosen();
    void nextYear();
    void mark();
    void back();
    std::optional<SeasonFigure> chosenFigure() const;
    const SeasonShift* shiftOf(Instant id) const;

    Dress dress_;
    Units units_ = Units::metric;
    std::vector<SeasonShift> shifts_;
    SeasonChoice choice_;
    std::vector<Instant> marked_; // at most two
    int column_ = 4;              // the chosen one: syrup
    bool seen_ = false;           // a year was chosen, by the newest shift or by hand
    Outcome outcome_ = Outcome::evaporation;

    QStackedWidget* leaves_;
    SeasonTableLeaf* table_;
    BesideLeaf* beside_;
    TuningLeaf* tuning_;
    CalibrationLeaf* calibration_;
    ColumnsLeaf* columns_;
    QLabel* said_;
    ActionKeys* keys_;
};

} // namespace panside
