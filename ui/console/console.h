#pragma once
#include "ui/frame/desk.h"

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
class Console : public QMainWindow, public Shell {
    Q_OBJECT
public:
    // What stands behind the session, as the console needs it.
    struct Behind {
        Session& session;
        std::filesystem::path journal, probeFile;              // empty in a rehearsal, which has no screens of theirs
        ProbeWatch* probes = nullptr;                          // likewise
        std::function<QString()> notice;                       // what it says stands at the foot; may be empty
        std::function<void()> advance;                         // called each second before the picture; may be empty
        std::function<void(const std::vector<Fact>&)> entered; // after facts were entered; may be empty
    };
    Console(Behind behind, Choices choices, QWidget* parent = nullptr);
    ~Console() override;

    Board& board() { return *board_; }

    Session& session() override { return behind_.session; }
    const std::filesystem::path& journalPlace() const override { return behind_.journal; }
    const std::filesystem::path& probePlace() const override { return behind_.probeFile; }
    ProbeWatch* probes() override { return behind_.probes; }
    Voice& voice() override { return *voice_; }
    const Picture& picture() const override;
    const ShiftTrace& trace() const override;
    void refreshSoon() override;
    const Choices& choices() const override { return choices_; }
    void choose(Choices choices) override;
    const Dress& dress() const override { return dress_; }
    void showBoard() override;
    void act(Action action) override;
    void say(const QString& words) override;
    void setNotice(const QString& words) override;
    void keep(const std::vector<Fact>& facts) override;

signals:
    void chosen(const panside::Choices& choices);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
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
    std::map<Action, Desk*> desks_;
    std::optional<Action> sheetFor_;
    QTimer second_, soon_, said_;
    QString lastSaid_;
};

} // namespace panside
