#include "ui/console/console.h"

#include "ui/board/across_view.h"
#include "ui/board/board.h"
#include "ui/chart/rise_chart.h"
#include "ui/console/screens.h"
#include "ui/entry/entry_sheet.h"
#include "ui/entry/water_sheet.h"
#include "ui/frame/key_map.h"
#include "ui/frame/sentence_bar.h"
#include "ui/ledger/book_sheet.h"
#include "ui/ledger/house.h"
#include "ui/look/typed_line.h"
#include "ui/look/typing.h"
#include "ui/lookin/looked_at.h"
#include "ui/pack/touched_words.h"
#include "ui/page/page.h"
#include "ui/sound/voice.h"
#include "ui/words/ground_words.h"

#include <QApplication>
#include <QScreen>
#include <utility>

namespace panside {
namespace {

using namespace std::chrono_literals;

constexpr auto pictureEvery = 40ms; // at most 25 pictures a second
constexpr auto askHouseAfter = 1s;  // the board comes first
constexpr auto unseenAfter = 3s;    // a window that is made small is never painted

std::vector<Action> boardRow() {
    std::vector<Action> row;
    for (const ActionRow& one : allActions())
        if (one.seat == Seat::boardRow)
            row.push_back(one.action);
    return row;
}

} // namespace

Console::Console(Behind behind, Choices choices, QWidget* parent)
    : QMainWindow{parent}, behind_{std::move(behind)}, choices_{std::move(choices)}, frame_{new FrameView{this}},
      board_{new Board{this}}, map_{new KeyMap}, sheet_{new EntrySheet{frame_}}, water_{new WaterSheet{frame_}},
      book_{new BookSheet{frame_}}, house_{new House{behind_.session, behind_.journal, this}}, page_{new Page},
      voice_{std::make_unique<Voice>()}, looked_{std::make_unique<LookedAt>()} {
    setObjectName(QStringLiteral("console"));
    QApplication::setStyle(bars_);
    resize(QApplication::primaryScreen()->availableSize()); // where no window manager makes it so
    setCentralWidget(frame_);
    for (QWidget* page : std::initializer_list<QWidget*>{board_, map_, page_})
        frame_->addPage(page);
    board_->across().setParent(frame_);
    ownBackups_ = choices_.backupFolder;
    if (behind_.rehearsal && withJournal()) // made-up nights do not go among the person's own
        choices_.backupFolder = QString::fromStdString((behind_.journal.parent_path() / "backups").string());
    if (behind_.folding.valid())
        board_->await();
    frame_->setPlaces(placesWithScreens(withJournal()));
    connectAll();
    speak(choices_.language);
    wear();
    showScreen(Action::board, board_);
    if (!choices_.cautioned)
        openScreen(Action::cautions);
    else
        askFirst();
    if (!behind_.folding.valid())
        begin();
    else if (behind_.folding.wait_for(0s) == std::future_status::ready)
        refresh();
    else
        frame_->display(board_->sentenceShown(), board_->numbersLine());
    QTimer::singleShot(unseenAfter, this, &Console::begin);
    QApplication::instance()->installEventFilter(this);
}

// What is not needed to show the window: once it was seen, or something was pressed, or nobody saw it in a while.
void Console::begin() {
    if (std::exchange(begun_, true))
        return;
    second_.start(); // whatever fails below
    for (const ScreenRow& row : allScreens())
        if (row.unseen)
            desk(row.screen);
    everySecond();
    QTimer::singleShot(askHouseAfter, house_,
                       &House::ask); // a tank may call; the draw's sheet has the pails that there are
    emit begun();
}

Session& Console::session() {
    if (behind_.folding.valid())
        behind_.folding.wait();
    return behind_.session;
}

// What goes with the window hands the focus on: by then nobody of this kind is there to hear of it.
Console::~Console() { disconnect(qApp, nullptr, this, nullptr); }

// Made when it is first asked for: a start waits for no screen that nobody looks at. nullptr: it has none here.
Desk* Console::desk(Action screen) {
    const ScreenRow& row = *screenRow(screenRow(screen)->leafOf.value_or(screen));
    if (const auto made = desks_.find(row.screen); made != desks_.end())
        return made->second;
    if (!row.make || (row.ofTheJournal && !withJournal()))
        return nullptr;
    Desk* made = row.make(*this);
    frame_->addPage(made->screen());
    wear(row, *made);
    return desks_.emplace(row.screen, made).first->second;
}

void Console::connectAll() {
    connect(frame_, &FrameView::actionWanted, this, &Console::act);
    connect(frame_, &FrameView::screenWanted, this, &Console::openScreen);
    connect(frame_, &FrameView::placeWanted, this, &Console::goTo);
    connect(frame_, &FrameView::boardWanted, this, &Console::showBoard);
    connect(map_, &KeyMap::screenWanted, this, &Console::openScreen);
    connect(map_, &KeyMap::actionWanted, this, &Console::act);
    connect(board_, &Board::actionWanted, this, &Console::act);
    connect(sheet_, &EntrySheet::kept, this, &Console::keep);
    connect(sheet_, &EntrySheet::left, this, &Console::sheetLeft);
    connect(book_, &BookSheet::kept, this, &Console::keep);
    connect(house_, &House::changed, this, [this] { // a tab comes with its first fact
        frame_->showTabs(screenRow(shown_)->place, tabsOf(screenRow(shown_)->place, withJournal(), this), shown_);
        session().knows(house_->ledger());
    });
    connect(house_, &House::touchedLots, this, [this](const std::vector<TouchedLot>& lots) {
        if (hasSheet()) // what is being typed stays
            return say(touchedLine(lots));
        page_->show(touchedPage(lots), tr("Board"));
        showScreen(Action::lots, page_);
    });
    connect(book_, &BookSheet::left, this, &Console::sheetLeft);
    connect(water_, &WaterSheet::kept, this, &Console::keep);
    connect(water_, &WaterSheet::left, this, &Console::sheetLeft);
    connect(water_, &WaterSheet::typeWanted, this, [this] { openSheet(Action::waterCheck); });
    connect(page_, &Page::left, this, &Console::showBoard);
    // A key's cap shows the key that works now: in a field letters are typed.
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
        frame_->bar().setTyping(takesLetters(now));
        if (!now || !now->isVisible())
            QMetaObject::invokeMethod(this, &Console::holdFocus, Qt::QueuedConnection);
    });
    soon_.setSingleShot(true);
    soon_.setInterval(pictureEvery);
    connect(&soon_, &QTimer::timeout, this, &Console::refresh);
    said_.setSingleShot(true);
    connect(&said_, &QTimer::timeout, this, [this] { say({}); });
    second_.setInterval(1s);
    connect(&second_, &QTimer::timeout, this, &Console::everySecond);
}

const Picture& Console::picture() const { return board_->picture(); }

const ShiftTrace& Console::trace() const { return board_->chart().trace(); }

void Console::showBoard() {
    if (frame_->page() == page_ && !choices_.cautioned) {
        choices_.cautioned = true;
        saveChoices();
        if (askFirst())
            return;
    }
    showScreen(Action::board, board_);
    refresh();
}

// Once for a journal that has nothing in it yet; they stay under F7.
bool Console::askFirst() {
    const QString journal = QString::fromStdString(behind_.journal.string());
    if (!behind_.isNew || choices_.askedFor == journal)
        return false;
    choices_.askedFor = journal;
    saveChoices();
    openScreen(Action::start);
    return true;
}

void Console::goTo(Place place) {
    const auto tabs = tabsOf(place, withJournal(), this);
    if (tabs.empty()) {
        say(tr("There is nothing here yet: %1.").arg(wordOf(place)));
        return;
    }
    // The board is what F3 is for; elsewhere one comes back to where one was.
    const auto last = lastIn_.find(place);
    openScreen(place == Place::boil || last == lastIn_.end() ? tabs.front().screen : last->second);
    if (tabs.size() > 1)
        restOnPage();
}

// "F7, then 3" is a tab: no field takes the digit that follows a place's key. Tab or a touch goes to the first.
void Console::restOnPage() {
    QWidget* page = frame_->page();
    const QWidget* focused = QApplication::focusWidget();
    if (!takesDigits(focused) && !hasKeysOfItsOwn(focused))
        return;
    if (page->focusProxy()) { // or the page would hand it on to its field
        rested_ = page;
        itsProxy_ = page->focusProxy();
        page->setFocusProxy(nullptr);
    }
    page->setFocus();
}

void Console::openScreen(Action screen) {
    if (screen == Action::board)
        return showBoard();
    if (screen == Action::help) {
        showKeys();
        return showScreen(screen, map_);
    }
    if (screen == Action::cautions) {
        page_->show(cautionWords(), choices_.cautioned ? tr("Board") : tr("I have read it"));
        return showScreen(screen, page_);
    }
    Desk* its = desk(screen);
    if (!its)
        return say(tr("This key does nothing here."));
    its->open();
    showScreen(screen, its->screen());
    its->openLeaf(screen);
}

void Console::showScreen(Action screen, QWidget* page) {
    const ScreenRow* row = screenRow(screen);
    shown_ = screen;
    // What comes by itself before the first boil is not where the person was.
    if (screen != Action::start && (screen != Action::cautions || choices_.cautioned))
        lastIn_[row->place] = screen;
    hideSheets();
    const bool board = screen == Action::board;
    if (!board)
        board_->across().hide();
    frame_->showPage(page, board ? &board_->cards() : nullptr, board ? boardRow() : std::vector<Action>{});
    frame_->showTabs(row->place, tabsOf(row->place, withJournal(), this), screen);
    focusPage();
}

// The first field of a page that has fields has the focus: what is typed goes somewhere.
void Console::focusPage() {
    QWidget* page = frame_->page();
    if (rested_ == page && itsProxy_)
        page->setFocusProxy(itsProxy_);
    rested_.clear();
    page->setFocus();
    if (hasKeysOfItsOwn(QApplication::focusWidget())) // a table that is typed into
        return;
    for (QWidget* next = page->nextInFocusChain(); next && next != page; next = next->nextInFocusChain())
        if (page->isAncestorOf(next) && next->isVisibleTo(page) && next->isEnabled() &&
            qobject_cast<TypedLine*>(next)) {
            next->setFocus(Qt::TabFocusReason);
            return;
        }
}

// What had the focus is gone, and Qt found nobody else: no key may go nowhere.
void Console::holdFocus() {
    const QWidget* now = QApplication::focusWidget();
    if (!isActiveWindow() || QApplication::activePopupWidget() || QApplication::activeModalWidget() ||
        (now && now->isVisible()))
        return;
    if (sheet_->isVisible())
        sheet_->takeFocus();
    else if (water_->isVisible())
        water_->setFocus();
    else
        focusPage();
    // A page may have nothing that takes it, or hand it on to what is not seen.
    now = QApplication::focusWidget();
    if (!now || !now->isVisible())
        frame_->setFocus();
}

void Console::showKeys() {
    std::vector<std::pair<Place, std::vector<FrameTab>>> places;
    for (const Place place : placesWithScreens(withJournal()))
        places.emplace_back(place, tabsOf(place, withJournal(), this));
    map_->display(places);
}

void Console::act(Action action) {
    if (isScreen(action))
        return openScreen(action);
    if (action == Action::remedy)
        return openScreen(Action::vessels);
    if (action == Action::waterCheck)
        return openWaterCheck();
    if (makesFact(action))
        return openSheet(action);
    auto choices = choices_;
    switch (action) {
    case Action::alarmSeen:
        seen();
        break;
    case Action::undo:
        undo();
        break;
    case Action::acrossTheRoom: {
        const bool on = board_->across().isHidden();
        if (on)
            showScreen(Action::board, board_);
        board_->across().setVisible(on);
        board_->across().raise();
        break;
    }
    case Action::why: // in the board's place: its cards stay
        page_->show(whyPage(board_->picture(), choices_.units), tr("Board"));
        showScreen(Action::board, page_);
        break;
    case Action::dayOrNight:
        choices.look = choices.look == Look::day ? Look::night : Look::day;
        choose(choices);
        break;
    default:
        break;
    }
}

// One press, one alarm: the one that the bar names.
void Console::seen() {
    const auto& said = frame_->bar().view();
    if (!said.alarm || !said.canBeSeen)
        return say(tr("There is no alarm that nobody has seen."));
    keep({Fact{.at = session().now(), .what = AlarmSeen{std::string{nameOf(*said.alarm)}}}});
}

} // namespace panside
