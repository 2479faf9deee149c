#pragma once
// The frame round every screen: the bar, the rail of places, the tabs of the place, the page, a row of actions, the
// foot; on the board the cards beside them. Nothing of it moves when an alarm comes. It shows and says what was
// pressed, and decides nothing.
#include "ui/board/sentence.h"
#include "ui/keys/actions.h"
#include "ui/keys/places.h"
#include "ui/look/dress.h"

#include <QTimer>
#include <QWidget>
#include <vector>

class QStackedWidget;

namespace panside {

class Foot;
class Press;
class RailKey;
class Roll;
class SentenceBar;
class TabKey;

struct FrameTab {
    Action screen;
    int digit;
    QString word;
};

class FrameView : public QWidget {
    Q_OBJECT
public:
    explicit FrameView(QWidget* parent = nullptr);

    void wear(const Dress& dress);
    // The places that have a screen.
    void setPlaces(const std::vector<Place>& places);
    void addPage(QWidget* page);
    // `side`: what stands beside the page, over the whole height (the board's cards); may be none. `row`: the actions
    // under the page.
    void showPage(QWidget* page, QWidget* side, const std::vector<Action>& row);
    void showTabs(Place place, const std::vector<FrameTab>& tabs, Action shown);
    QWidget* page() const;
    void display(const SentenceView& said, const QString& numbers);

    SentenceBar& bar() { return *bar_; }
    Foot& foot() { return *foot_; }
    // Where a sheet opens: over tabs, page and actions, never over bar, rail or foot; on a low screen over the cards.
    QRect sheetPlace() const;
    bool isLow() const; // less than 180 mm high
    // Lit half of the flash of an alarm that nobody has seen.
    bool isLit() const { return lit_; }
    // Nothing moves: an alarm's frame stands, whole until it is seen.
    void setStill(bool still);

signals:
    void placeWanted(panside::Place place);
    void screenWanted(panside::Action screen);
    void actionWanted(panside::Action action);
    void boardWanted();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();
    void arrangeRail(const QRect& place);
    void arrangeTabs(const QRect& place);
    void arrangeRow(const QRect& place);
    void sayWords();
    void flash();

    Dress dress_;
    SentenceBar* bar_;
    Foot* foot_;
    QStackedWidget* stack_; // of rolls
    std::vector<Roll*> rolls_;
    QWidget* side_ = nullptr;
    std::vector<RailKey*> rail_;
    std::vector<TabKey*> tabs_;
    std::vector<FrameTab> shownTabs_;
    std::vector<std::pair<Action, Press*>> row_;
    QRect work_; // `work_`: all right of the rail and under the bar
    QTimer flashing_;
    bool lit_ = false, still_ = false;
};

} // namespace panside
