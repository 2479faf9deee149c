#pragma once
#include "app/choices.h"
#include "app/session.h"
#include "ui/board/actions.h"
#include "ui/look/dress.h"

#include <QMainWindow>
#include <QTimer>
#include <QTranslator>
#include <functional>
#include <map>
#include <memory>

class QLabel;
class QStackedWidget;

namespace panside {

class AlarmFrame;
class Board;
class EntrySheet;
class Page;
class Voice;
class WaterSheet;

// The window: the board, and the screens behind its keys. What is pressed becomes a fact in the session; what the
// session then shows comes back here.
class Console : public QMainWindow {
    Q_OBJECT
public:
    // What stands behind the session, as the console needs it.
    struct Behind {
        Session& session;
        std::function<QString()> notice;                       // what it says stands at the foot; may be empty
        std::function<void()> advance;                         // called each second before the picture; may be empty
        std::function<void(const std::vector<Fact>&)> entered; // after facts were entered; may be empty
    };
    Console(Behind behind, Choices choices, QWidget* parent = nullptr);
    ~Console() override;

    // A reading or anything else came in: shown within a frame's time, however often this is called.
    void refreshSoon();
    Board& board() { return *board_; }
    Voice& voice() { return *voice_; }
    const Choices& choices() const { return choices_; }
    const Dress& dress() const { return dress_; }
    // Adds a screen that an action of the board opens; `left` of that screen must call showBoard.
    void addScreen(Action action, QWidget* screen, std::function<void()> beforeShown,
                   std::function<void(const Dress&)> wear);
    void showBoard();
    void act(Action action);
    // A line at the foot for half a minute: what was kept, and that it can be taken back.
    void say(const QString& words);
    // Enters what a person did, and says at the foot what was kept.
    void keep(const std::vector<Fact>& facts);
    // What stands at the foot until it is changed; empty: nothing.
    void setNotice(const QString& words);
    void choose(Choices choices);

signals:
    void chosen(const panside::Choices& choices);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    struct Screen {
        QWidget* widget;
        std::function<void()> beforeShown;
        std::function<void(const Dress&)> wear;
    };
    void refresh();
    void everySecond();
    void openSheet(Action action);
    void placeSheet();
    void openWaterCheck();
    void lookAtWater(const Picture& picture);
    void showAlarmFrame();
    void undo();
    void showPage(const QString& words, const QString& leaving);
    void wear();
    void speak(const QString& language);
    void footLine();

    Behind behind_;
    Choices choices_;
    Dress dress_;
    QTranslator words_, qtWords_;
    QStackedWidget* stack_;
    Board* board_;
    EntrySheet* sheet_;
    WaterSheet* water_;
    AlarmFrame* frame_;
    Page* page_;
    QLabel* foot_;
    std::unique_ptr<Voice> voice_;
    std::map<Action, Screen> screens_;
    std::optional<Action> sheetFor_;
    QTimer second_, soon_, said_;
    QString lastSaid_;
};

} // namespace panside
