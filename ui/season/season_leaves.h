#pragma once
// The leaves of the season beside its table. Each shows what it is given.
#include "ui/look/dress.h"
#include "ui/season/season_view.h"
#include "ui/season/tuning_view.h"

#include <QWidget>

class QLabel;
class QListWidget;
class QTableWidget;

namespace panside {

class SeasonPicture;

// Two shifts' accounts side by side.
class BesideLeaf : public QWidget {
    Q_OBJECT
public:
    explicit BesideLeaf(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const SeasonShift& first, const SeasonShift& second, Units units);

private:
    QLabel* title_;
    QTableWidget* table_;
};

// What the nights teach of one outcome.
class TuningLeaf : public QWidget {
    Q_OBJECT
public:
    explicit TuningLeaf(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const TuningWords& words);

private:
    Dress dress_;
    QLabel *title_, *notes_;
    SeasonPicture* effects_;
};

// How the forecast kept its word.
class CalibrationLeaf : public QWidget {
    Q_OBJECT
public:
    explicit CalibrationLeaf(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const CalibrationPicture& calibration);

private:
    Dress dress_;
    QLabel* title_;
    SeasonPicture* picture_;
};

// Which columns the table shows, ticked. The list takes the focus; `doneWith` is said by the keys that end choosing.
class ColumnsLeaf : public QWidget {
    Q_OBJECT
public:
    explicit ColumnsLeaf(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const std::vector<SeasonFigure>& shown);
    std::vector<SeasonFigure> ticked() const;

signals:
    void doneWith();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    Dress dress_;
    QListWidget* list_;
};

} // namespace panside
