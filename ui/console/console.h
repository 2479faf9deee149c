#pragma once
#include "ui/frame/desk.h"
#include "ui/frame/languages.h"
#include "ui/keys/places.h"
#include "ui/look/broad_bars.h"

#include <QMainWindow>
#include <QPointer>
#include <QTimer>
#include <functional>
#include <future>
#include <map>
#include <memory>
#include <set>

namespace panside {

class Board;
class BookSheet;
class EntrySheet;
class FrameView;
class House;
class KeyMap;
class LookedAt;
class Page;
class RehearsalFeed;
class Voice;
class WaterSheet;
struct ScreenRow;
struct WaterLikely;

// The window: the frame with the board and the other screens in it. What is pressed becomes a fact in the session; what
// the session then shows comes back here.
class Console : public QMainWindow, public Shell {
    Q_OBJECT
public:
    // What stands behind the session, as the console needs it.
    struct Behind {
        Session& session;
        std::filesystem::path journal, probeFile; // empty in a rehearsal, which has no screens of theirs
        ProbeSource* probes = nullptr;            // likewise
        std::function<QString()> notice;          // what it says stands at the foot; may be empty
        std::function<void()> advance;            // called each second before the picture; may be empty
        RehearsalFeed* rehearsal = nullptr;       // the boil is made up, and so is its journal
        bool isNew = false;                       // a journal that has nothing: the first questions come
        // Another thread folds the shift, and the session is its own until it has; not valid: nobody does. The window
        // comes without the night then, and the night as soon as it is read.
        std::shared_future<void> folding = {};
    };
    Console(Behind behind, Choices choices, QWidget* parent = nullptr);
    ~Console() override;

    Board& board() { return *board_; }
    FrameView& frame() { return *frame_; }

    Session& session() override;
    const std::filesystem::path& journalPlace() const override { return behind_.journal; }
    const std::filesystem::path& probePlace() const override { return behind_.probeFile; }
    ProbeSource* probes() override { return behind_.probes; }
    RehearsalFeed* rehearsal() override { return behind_.rehearsal; }
    Voice& voice() override { return *voice_; }
    LookedAt& lookedAt() override { return *looked_; }
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
    House& house() override { return *house_; }
    void openBook(BookForm form) override;

signals:
    // The night is on the board: from here on there is more of it.
    void begun();
    void chosen(const panside::Choices& choices);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    bool withJournal() const { return !behind_.journal.empty(); }
    void saveChoices() const;
    void connectAll();
    void begin();
    Desk* desk(Action screen);
    void refresh();
    void tellPhones();
    void everySecond();
    bool takesKey(const QKeyEvent& event);
    bool goesByKey(const QKeyEvent& event);
    bool goesByDigit(const QKeyEvent& event);
    void goTo(Place place);
    void openScreen(Action screen);
    void showScreen(Action screen, QWidget* page);
    void focusPage();
    void restOnPage();
    void holdFocus();
    void showKeys();
    void openSheet(Action action);
    bool hasSheet() const;
    void hideSheets();
    void placeSheets();
    void putSheetsAside(const Picture& picture);
    void sheetLeft();
    void openWaterCheck();
    void lookAtWater(const Picture& picture);
    WaterLikely likely();
    void seen();
    void undo();
    void touchHouse(bool fills);
    void lookAtTheEnd();
    bool askFirst();
    QString notice();
    Measure measureHere() const;
    void wear();
    void wear(const ScreenRow& row, Desk& desk);
    void speak(const QString& language);
    void footLine();

    Behind behind_;
    Choices choices_;
    Dress dress_;
    BroadBars* bars_ = new BroadBars; // the application's
    Spoken spoken_;
    FrameView* frame_;
    Board* board_;
    KeyMap* map_;
    EntrySheet* sheet_;
    WaterSheet* water_;
    BookSheet* book_;
    House* house_;
    Page* page_;
    std::unique_ptr<Voice> voice_;
    std::unique_ptr<LookedAt> looked_;
    std::map<Action, Desk*> desks_;  // of the screens that were opened
    std::map<Place, Action> lastIn_; // where one was in a place
    Action shown_ = Action::board;
    std::set<std::pair<Alarm, std::optional<Series>>> unseen_;
    QTimer second_, soon_, said_;
    QString lastSaid_;
    QString ownBackups_;                   // where the person's own journal is backed up
    bool blind_ = behind_.folding.valid(); // the night was not painted yet
    bool begun_ = false, toldOver_ = false, passing_ = false;
    QPointer<QWidget> rested_, itsProxy_; // a page that the digit after a place's key is not typed into, for now
};

} // namespace panside
