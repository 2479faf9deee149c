#pragma once
// The board: the chart as the page, the three cards beside it, and both over the whole window from across the room.
// Shows a picture, says what was pressed, decides nothing.
#include "ui/board/falling_clock.h"
#include "ui/board/sentence.h"
#include "ui/keys/actions.h"
#include "ui/look/dress.h"
#include "ui/look/units.h"

#include <QWidget>
#include <array>

namespace panside {

class AcrossView;
class Card;
class RiseChart;

// The three cards, one over the other.
class CardColumn : public QWidget {
    Q_OBJECT
public:
    explicit CardColumn(QWidget* parent = nullptr);
    const std::array<Card*, 3>& cards() const { return cards_; }
    void wear(const Dress& dress);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    Dress dress_;
    std::array<Card*, 3> cards_;
};

class Board : public QWidget {
    Q_OBJECT
public:
    explicit Board(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    const Dress& dress() const { return dress_; }
    void setUnits(Units units);
    Units units() const { return units_; }
    // Of a shift that is still being read nothing is known: no number, no curve and no call is there until display().
    void await();
    void display(const Picture& picture);
    const Picture& picture() const { return picture_; }
    RiseChart& chart() { return *chart_; }
    CardColumn& cards() { return *cards_; }
    const SentenceView& sentenceShown() const { return said_; }
    // "Draw 12 min, 9 to 16 · Fire 3 min, Odile · Last load 1 h 45": for the screens without cards.
    QString numbersLine() const;
    // Only the sentence and the three numbers: to be laid over everything.
    AcrossView& across() { return *across_; }

signals:
    void actionWanted(panside::Action action);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void refresh();

    Dress dress_;
    Units units_ = Units::us;
    Picture picture_;
    FallingClock fireClock_;
    SentenceView said_;
    bool awaiting_ = false;
    RiseChart* chart_;
    CardColumn* cards_;
    AcrossView* across_;
};

} // namespace panside
