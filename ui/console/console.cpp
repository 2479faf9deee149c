#include "ui/console/console.h"

#include "core/boil/vocabulary.h"
#include "core/shift/rehearsal_feed.h"
#include "ui/board/across_view.h"
#include "ui/board/board.h"
#include "ui/board/card.h"
#include "ui/chart/rise_chart.h"
#include "ui/console/screens.h"
#include "ui/entry/entry_sheet.h"
#include "ui/entry/water_sheet.h"
#include "ui/frame/foot.h"
#include "ui/frame/key_map.h"
#include "ui/frame/sentence_bar.h"
#include "ui/ledger/book_sheet.h"
#include "ui/ledger/house.h"
#include "ui/ledger/known_vessels.h"
#include "ui/ledger/ledger_desk.h"
#include "ui/look/typed_line.h"
#include "ui/look/typing.h"
#include "ui/lookin/looked_at.h"
#include "ui/pack/touched_words.h"
#include "ui/page/keyed_page.h"
#include "ui/page/page.h"
#include "ui/rehearsal/rehearsal_words.h"
#include "ui/sound/voice.h"
#include "ui/words/fact_words.h"
#include "ui/words/ground_words.h"
#include "ui/words/mark_words.h"
#include "ui/words/said.h"

#include <QAbstractScrollArea>
#include <QApplication>
#include <QLibraryInfo>
#include <QScreen>

namespace panside {

namespace {

using namespace std::chrono_literals;

constexpr auto pictureEvery = 40ms; // at most 25 pictures a second
constexpr auto readable = 30s;      // how long what was kept stands at the foot
constexpr auto askHouseAfter = 1s;  // the board comes first

std::vector<Action> boardRow() {
    std::vector<Action> row;
    for (const ActionRow& one : allActions())
        if (one.seat == Seat::boardRow)
            row.push_back(one.action);
    return row;
}

// For a screen reader: the page, its lists and whatever rolls in it are called as its tab is.
void nameForReaders(QWidget& page, const QString& word) {
    page.setAccessibleName(word);
    for (auto* part : page.findChildren<QAbstractScrollArea*>())
        part->setAccessibleName(word);
    for (auto* leaf : page.findChildren<KeyedPage*>())
        leaf->setAccessibleName(word);
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
    buildScreens();
    connectAll();
    speak(choices_.language);
    wear();
    showScreen(Action::board, board_);
    if (!choices_.cautioned)
        openScreen(Action::cautions);
    else
        askFirst();
    everySecond();
    QTimer::singleShot(askHouseAfter, house_,
                       &House::ask); // a tank may call; the draw's sheet has the pails that there are
    QApplication::instance()->installEventFilter(this);
}

Console::~Console() = default;

void Console::buildScreens() {
    frame_->setPlaces(placesWithScreens(withJournal()));
    for (const ScreenRow& row : allScreens())
        if (row.make && (!row.ofTheJournal || withJournal())) {
            Desk* desk = row.make(*this);
            frame_->addPage(desk->screen());
            desks_.emplace(row.screen, desk);
        }
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
        behind_.session.knows(house_->ledger());
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
    second_.start();
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
    const auto desk = desks_.find(screenRow(screen)->leafOf.value_or(screen));
    if (desk == desks_.end())
        return say(tr("This key does nothing here."));
    desk->second->open();
    showScreen(screen, desk->second->screen());
    desk->second->openLeaf(screen);
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
    page->setFocus();
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
    keep({Fact{.at = behind_.session.now(), .what = AlarmSeen{std::string{nameOf(*said.alarm)}}}});
}

bool Console::hasSheet() const { return sheet_->isVisible() || water_->isVisible() || book_->isVisible(); }

void Console::hideSheets() {
    sheet_->hide();
    water_->hide();
    book_->hide();
}

void Console::openBook(BookForm form) {
    hideSheets();
    placeSheets();
    if (book_->isAside() && book_->form().deed == form.deed)
        return book_->resume();
    book_->open(std::move(form), choices_.units, board_->chart().trace().clock(), [this](const Fact& fact) {
        QStringList words;
        for (const LedgerMark& mark : house_->marksOf(fact))
            words << markWords(mark, choices_.units);
        return words;
    });
}

void Console::openSheet(Action action) {
    water_->hide();
    book_->hide();
    placeSheets();
    if (sheet_->isPutAside(action))
        return sheet_->resume();
    EntryForm form = formFor(action, board_->picture(), choices_.units, behind_.session.now());
    for (const Set& set : behind_.session.settings())
        if (set.key == Setting::elevation)
            form.elevation = Length::metre(set.si);
    if (action == Action::drawClose)
        form.draws = drawsIn(behind_.session.boil().facts());
    if (const auto ledger = house_->ledger())
        offerVessels(form, ledger->ledger());
    sheet_->open(form, choices_.units, board_->chart().trace().clock());
}

void Console::sheetLeft() { focusPage(); }

// An alarm is read and answered first.
void Console::putSheetsAside(const Picture& picture) {
    std::set<std::pair<Alarm, std::optional<Series>>> unseen;
    bool isNew = false;
    for (const AlarmPicture& alarm : picture.alarms)
        if (alarm.state == AlarmState::unseen && alarm.priority != Priority::low) {
            unseen.emplace(alarm.alarm, alarm.series);
            isNew = isNew || !unseen_.contains({alarm.alarm, alarm.series});
        }
    unseen_ = std::move(unseen);
    if (!isNew || !hasSheet())
        return;
    if (book_->isVisible()) {
        book_->putAside();
        say(tr("Put aside for an alarm: %1. Open it again: what you typed is still there.").arg(book_->form().title));
        return focusPage();
    }
    if (sheet_->isVisible()) {
        const Action about = sheet_->form().action;
        sheet_->putAside();
        say(tr("Put aside for an alarm: %1. %2 opens it again.").arg(wordOf(about), keyOf(about)));
    } else {
        water_->hide();
        say(tr("Put aside for an alarm: %1. %2 opens it again.")
                .arg(wordOf(Action::waterCheck), keyOf(Action::waterCheck)));
    }
    focusPage();
}

// Where a probe reads the pan, the console watches it; where none does, the temperature is typed in.
void Console::openWaterCheck() {
    const auto& pan = board_->picture().reading(Series::syrup_pan);
    if (!pan || pan->byHand || pan->reason == Reason::silent) {
        openSheet(Action::waterCheck);
        return;
    }
    hideSheets();
    placeSheets();
    water_->begin(pan->probe, behind_.session.now(), choices_.units);
    lookAtWater(board_->picture());
}

WaterLikely Console::likely() const {
    std::optional<Length> height;
    for (const Set& set : behind_.session.settings())
        if (set.key == Setting::elevation)
            height = Length::metre(set.si);
    return likelyBoil(board_->picture(), height);
}

void Console::lookAtWater(const Picture& picture) {
    if (!water_->isVisible())
        return;
    const auto samples = waterSamples(behind_.session.boil().facts(), water_->probe(), water_->since());
    const auto expected = expectedBoil(picture);
    water_->display(panside::lookAtWater(samples, picture.at, expected), expected, likely(), picture.at);
}

// In one place, never over the sentence or the cards.
void Console::placeSheets() {
    const QRect place = frame_->sheetPlace();
    sheet_->setGeometry(place);
    water_->setGeometry(place);
    book_->setGeometry(place);
    const int edge = dress_.px(2);
    board_->across().setGeometry(frame_->rect().adjusted(edge, edge, -edge, -edge));
}

void Console::keep(const std::vector<Fact>& facts) {
    focusPage();
    const auto answers = behind_.session.enter(facts);
    QString words;
    std::vector<Fact> taken;
    for (std::size_t i = 0; i < answers.size(); ++i) {
        if (const auto* refused = std::get_if<Session::Refused>(&answers[i])) {
            words = tr("Not kept: %1").arg(said(refused->why, "Session"));
            continue;
        }
        taken.push_back(facts[i]);
        const auto what = factWords(facts[i], choices_.units) + QStringLiteral(", ") +
                          board_->chart().trace().clock().hourAndMinute(facts[i].at);
        words = std::get<Session::Entered>(answers[i]).kept
                    ? tr("Kept: %1").arg(what)
                    : tr("Not on the disk yet: %1. Trying again each second.").arg(what);
    }
    if (behind_.rehearsal)
        behind_.rehearsal->perform(taken);
    say(words);
    touchHouse(std::any_of(taken.begin(), taken.end(), fillsTanks));
    refresh();
}

// Read again only where somebody looks at it, or where a tank may call: the others ask when they are opened.
void Console::touchHouse(bool fills) {
    const auto desk = desks_.find(shown_);
    if (fills || (desk != desks_.end() && dynamic_cast<LedgerDesk*>(desk->second)))
        house_->touched();
}

void Console::undo() {
    const auto fact = behind_.session.undo();
    say(fact ? tr("Taken back: %1.").arg(factWords(*fact, choices_.units)) : tr("There is nothing to take back."));
    house_->touched(); // packed lots may rest on it
    refresh();
}

void Console::say(const QString& words) {
    lastSaid_ = words;
    said_.start(readable);
    footLine();
}

void Console::setNotice(const QString& words) {
    behind_.notice = [words] { return words; };
    footLine();
}

// In a rehearsal, that it is one, and what its crew has just done.
QString Console::notice() const {
    if (!behind_.rehearsal)
        return behind_.notice ? behind_.notice() : QString{};
    const QStringList done =
        lastDone(behind_.session.boil().facts(), 1, choices_.units, board_->chart().trace().clock());
    return done.isEmpty() || behind_.rehearsal->isCrewAway()
               ? tr("Rehearsal: a made-up boil. Nothing of it is kept.")
               : tr("Rehearsal, a made-up boil. Last: %1").arg(done.front());
}

void Console::footLine() {
    // The notice is asked for each time: the language may have been changed since. What was just said comes first.
    QStringList all{lastSaid_, notice()};
    all.removeAll(QString{});
    frame_->foot().say(all.join(QStringLiteral("  ·  ")));
    const auto& clock = board_->chart().trace().clock();
    const Fact* last = behind_.session.lastEntered();
    frame_->foot().offerUndo(
        last ? factWords(*last, choices_.units) + QStringLiteral(", ") + clock.hourAndMinute(last->at) : QString{});
    frame_->foot().tellTime(clock.hourAndMinute(behind_.session.now()),
                            behind_.rehearsal ? tr("rehearsal") : QString{});
}

void Console::everySecond() {
    behind_.session.tick();
    if (behind_.advance)
        behind_.advance();
    if (behind_.rehearsal)
        behind_.rehearsal->advance();
    refresh();
    lookAtTheEnd();
}

// A rehearsal ends with its shift: it says what it was and offers another.
void Console::lookAtTheEnd() {
    const bool over = behind_.rehearsal && behind_.rehearsal->isOver();
    if (over && !toldOver_)
        openScreen(Action::rehearsal);
    toldOver_ = over;
}

void Console::refreshSoon() {
    if (!soon_.isActive())
        soon_.start();
}

void Console::refresh() {
    const auto picture = behind_.session.picture();
    board_->chart().follow(behind_.session.boil());
    board_->display(picture);
    frame_->display(board_->sentenceShown(), board_->numbersLine());
    voice_->display(picture);
    tellPhones();
    putSheetsAside(picture);
    lookAtWater(picture);
    footLine();
}

// What the board shows, no other reckoning of it.
void Console::tellPhones() {
    if (!looked_->isOn())
        return;
    const auto& cards = board_->cards().cards();
    looked_->tell({.picture = board_->picture(),
                   .sentence = board_->sentenceShown(),
                   .cards = {cards[0]->view(), cards[1]->view(), cards[2]->view()},
                   .units = choices_.units},
                  behind_.session.boil(), behind_.rehearsal);
}

void Console::choose(Choices choices) {
    const bool otherLanguage = choices.language != choices_.language;
    choices_ = std::move(choices);
    saveChoices();
    if (otherLanguage) {
        speak(choices_.language);
        say({});
    }
    wear();
    refresh();
    emit chosen(choices_);
}

void Console::saveChoices() const {
    Choices kept = choices_;
    if (behind_.rehearsal)
        kept.backupFolder = ownBackups_;
    kept.save();
}

void Console::speak(const QString& language) {
    QCoreApplication::removeTranslator(&words_);
    QCoreApplication::removeTranslator(&qtWords_);
    QLocale::setDefault(QLocale{language == "fr" ? QStringLiteral("fr_CA") : QStringLiteral("en_US")});
    if (language != "en") {
        if (words_.load(QStringLiteral("panside_") + language, QStringLiteral(":/translations")))
            QCoreApplication::installTranslator(&words_);
        if (qtWords_.load(QStringLiteral("qtbase_") + language, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
            QCoreApplication::installTranslator(&qtWords_);
    }
    setWindowTitle(behind_.rehearsal ? tr("Panside, rehearsal") : tr("Panside"));
}

void Console::wear() {
    dress_ = {Measure::of(*this).grownTo(width(), height()), choices_.look};
    // What is hidden must not take the focus while it changes its dress.
    QWidget* focused = QApplication::focusWidget();
    setPalette(paletteOf(dress_.look));
    bars_->setBreadth(dress_.px(mm::target) * 2 / 3);
    frame_->wear(dress_);
    frame_->setStill(choices_.sound.still);
    board_->wear(dress_);
    board_->setUnits(choices_.units);
    for (const auto& [action, desk] : desks_) {
        nameForReaders(*desk->screen(), wordOf(*screenRow(action)));
        desk->wear(dress_);
    }
    board_->setAccessibleName(wordOf(*screenRow(Action::board)));
    map_->setAccessibleName(wordOf(*screenRow(Action::help)));
    nameForReaders(*page_, wordOf(*screenRow(Action::cautions)));
    water_->setAccessibleName(wordOf(Action::waterCheck));
    map_->wear(dress_);
    page_->wear(dress_);
    sheet_->wear(dress_);
    water_->wear(dress_);
    book_->wear(dress_);
    voice_->setVolume(choices_.sound.volume / 100.0);
    voice_->setSpoken(choices_.sound.spoken);
    looked_->apply(choices_.lookIn);
    if (frame_->page() == map_)
        showKeys();
    if (frame_->page() && shown_ != Action::help)
        frame_->showTabs(screenRow(shown_)->place, tabsOf(screenRow(shown_)->place, withJournal(), this), shown_);
    placeSheets();
    QWidget* now = focusWidget();
    if (isVisible() && (!now || !now->isVisible())) {
        if (focused && focused->isVisible() && isAncestorOf(focused))
            focused->setFocus();
        else if (!hasSheet())
            focusPage();
    }
}

void Console::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        setWindowTitle(behind_.rehearsal ? tr("Panside, rehearsal") : tr("Panside"));
}

void Console::showEvent(QShowEvent* event) {
    QMainWindow::showEvent(event);
    wear();
    focusPage();
}

void Console::resizeEvent(QResizeEvent* event) {
    QMainWindow::resizeEvent(event);
    if (Measure::of(*this).grownTo(width(), height()) != dress_.measure)
        wear();
    placeSheets();
}

} // namespace panside
