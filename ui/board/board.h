#pragma once
// The board: the sentence, the chart, three cards and the row of keys. Shows a picture, says what was pressed, decides
// nothing.
#include "ui/board/sentence.h"
#include "ui/keys/actions.h"
#include "ui/look/dress.h"
#include "ui/look/units.h"

#include <QTimer>
#include <QWidget>
#include <array>

namespace panside {

class AcrossView;
class Card;
class FirstBand;
class Press;
class RiseChart;
class SentenceBar;

class Board : public QWidget {
    Q_OBJECT
public:
    explicit Board(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    const Dress& dress() const { return dress_; }
    void setUnits(Units units);
    Units units() const { return units_; }
    void display(const Picture& picture);
    const Picture& picture() const { return picture_; }
    RiseChart& chart() { return *chart_; }
    const SentenceView& sentenceShown() const;

    // Only the sentence and the three numbers.
    void showAcrossTheRoom(bool on);
    bool acrossTheRoom() const;
    // Where an action stands, in this widget's coordinates: a sheet opens there. Empty for one that has only a key.
    QRect placeOf(Action action) const;

signals:
    void actionWanted(panside::Action action);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void want(Action action);
    void arrange();
    int arrangeKeys(const QRect& place, int gap);
    void nameKeys();
    void refresh(const Picture& picture);
    void flash();

    Dress dress_;
    Units units_ = Units::us;
    Picture picture_;
    SentenceBar* bar_;
    FirstBand* first_;
    RiseChart* chart_;
    std::array<Card*, 3> cards_;
    std::vector<std::pair<Action, Press*>> keys_;
    AcrossView* across_;
    QTimer flashing_;
    bool flashOn_ = false;
};

} // namespace panside
