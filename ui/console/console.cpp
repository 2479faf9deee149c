#include "ui/console/console.h"

#include "ui/board/alarm_frame.h"
#include "ui/board/board.h"
#include "ui/chart/rise_chart.h"
#include "ui/console/screens.h"
#include "ui/entry/entry_sheet.h"
#include "ui/entry/water_sheet.h"
#include "ui/page/page.h"
#include "ui/sound/voice.h"
#include "ui/words/fact_words.h"
#include "ui/words/said.h"

#include <QApplication>
#include <QLabel>
#include <QLibraryInfo>
#include <QScreen>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace panside {

namespace {

using namespace std::chrono_literals;

constexpr auto frame = 40ms;   // at most 25 pictures a second
constexpr auto readable = 30s; // how long what was kept stands at the foot

} // namespace

Console::Console(Behind behind, Choices choices, QWidget* parent)
    : QMainWindow{parent}, behind_{std::move(behind)}, choices_{std::move(choices)}, voice_{std::make_unique<Voice>()} {
    setObjectName(QStringLiteral("console"));
    setWindowTitle(tr("Panside"));
    resize(QApplication::primaryScreen()->availableSize()); // where no window manager makes it so
    speak(choices_.language);
    auto* inside = new QWidget{this};
    auto* column = new QVBoxLayout{inside};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    stack_ = new QStackedWidget{inside};
    board_ = new Board{stack_};
    page_ = new Page{stack_};
    stack_->addWidget(board_);
    stack_->addWidget(page_);
    foot_ = new QLabel{inside};
    foot_->setObjectName(QStringLiteral("foot"));
    foot_->setAutoFillBackground(true);
    column->addWidget(stack_, 1);
    column->addWidget(foot_);
    setCentralWidget(inside);
    sheet_ = new EntrySheet{inside};
    water_ = new WaterSheet{inside};
    frame_ = new AlarmFrame{stack_};

    connect(board_, &Board::actionWanted, this, &Console::act);
    connect(sheet_, &EntrySheet::kept, this, &Console::keep);
    connect(sheet_, &EntrySheet::left, this, [this] { board_->setFocus(); });
    connect(water_, &WaterSheet::kept, this, &Console::keep);
    connect(water_, &WaterSheet::left, this, [this] { board_->setFocus(); });
    connect(water_, &WaterSheet::typeWanted, this, [this] { openSheet(Action::waterCheck); });
    connect(page_, &Page::left, this, &Console::showBoard);
    connect(stack_, &QStackedWidget::currentChanged, this, &Console::showAlarmFrame);

    soon_.setSingleShot(true);
    soon_.setInterval(frame);
    connect(&soon_, &QTimer::timeout, this, &Console::refresh);
    said_.setSingleShot(true);
    connect(&said_, &QTimer::timeout, this, [this] { say({}); });
    second_.setInterval(1s);
    connect(&second_, &QTimer::timeout, this, &Console::everySecond);
    second_.start();

    for (const ScreenRow& row : allScreens())
        if (!row.ofTheJournal || !behind_.journal.empty()) {
            Desk* desk = row.make(*this);
            stack_->addWidget(desk->screen());
            desks_.emplace(row.opens, desk);
        }
    wear();
    footLine();
    if (!choices_.cautioned)
        showPage(cautionWords(), tr("I have read it"));
    everySecond();
}

Console::~Console() = default;

const Picture& Console::picture() const { return board_->picture(); }

const ShiftTrace& Console::trace() const { return board_->chart().trace(); }

void Console::showBoard() {
    if (stack_->currentWidget() == page_ && !choices_.cautioned) {
        choices_.cautioned = true;
        choices_.save();
    }
    stack_->setCurrentWidget(board_);
    board_->setFocus();
    refresh();
}

void Console::showPage(const QString& words, const QString& leaving) {
    page_->show(words, leaving);
    stack_->setCurrentWidget(page_);
    page_->setFocus();
}

void Console::act(Action action) {
    if (const auto desk = desks_.find(action); desk != desks_.end()) {
        desk->second->open();
        stack_->setCurrentWidget(desk->second->screen());
        desk->second->screen()->setFocus();
        return;
    }
    if (action == Action::waterCheck) {
        openWaterCheck();
        return;
    }
    if (makesFact(action)) {
        openSheet(action);
        return;
    }
    auto choices = choices_;
    switch (action) {
    case Action::undo:
        undo();
        break;
    case Action::help:
        showPage(helpWords(), tr("Back"));
        break;
    case Action::acrossTheRoom:
        break; // the board has turned itself already
    case Action::dayOrNight:
        choices.look = choices.look == Look::day ? Look::night : Look::day;
        choose(choices);
        break;
    default:
        say(tr("There is nothing behind this key here."));
        break;
    }
}

void Console::openSheet(Action action) {
    sheetFor_ = action;
    EntryForm form = formFor(action, board_->picture(), choices_.units, behind_.session.now());
    for (const Set& set : behind_.session.settings())
        if (set.key == Setting::elevation)
            form.elevation = Length::metre(set.si);
    sheet_->open(form, choices_.units, board_->chart().trace().clock());
    placeSheet();
}

// Where a probe reads the pan, the console watches it; where none does, the temperature is typed in.
void Console::openWaterCheck() {
    const auto& pan = board_->picture().reading(Series::syrup_pan);
    if (!pan || pan->byHand || pan->reason == Reason::silent) {
        openSheet(Action::waterCheck);
        return;
    }
    water_->begin(pan->probe, behind_.session.now(), choices_.units);
    lookAtWater(board_->picture());
    water_->adjustSize();
    // Over the chart, so that the cards' numbers stay in sight.
    const QRect room = stack_->geometry(), chart = board_->chart().geometry();
    const bool overChart = board_->chart().isVisible() && chart.width() >= water_->width();
    water_->move((overChart ? chart.translated(room.topLeft()) : room).center() -
                 QPoint{water_->width() / 2, water_->height() / 2});
}

void Console::lookAtWater(const Picture& picture) {
    if (!water_->isVisible())
        return;
    const auto samples = waterSamples(behind_.session.boil().facts(), water_->probe(), water_->since());
    const auto expected = expectedBoil(picture);
    water_->display(panside::lookAtWater(samples, picture.at, expected), expected, picture.at);
}

void Console::showAlarmFrame() {
    frame_->setGeometry(stack_->rect());
    frame_->display(board_->sentenceShown(), stack_->currentWidget() != board_);
    footLine();
}

// Beside the place that was pressed, and whole within the window.
void Console::placeSheet() {
    sheet_->adjustSize();
    const auto pressed = sheetFor_ ? board_->placeOf(*sheetFor_) : QRect{};
    const QRect room = stack_->geometry();
    QPoint corner = pressed.isEmpty() ? room.center() - QPoint{sheet_->width() / 2, sheet_->height() / 2}
                                      : pressed.bottomLeft() - QPoint{0, sheet_->height()};
    corner.setX(std::clamp(corner.x(), room.left(), std::max(room.left(), room.right() - sheet_->width())));
    corner.setY(std::clamp(corner.y(), room.top(), std::max(room.top(), room.bottom() - sheet_->height())));
    sheet_->move(corner);
}

void Console::keep(const std::vector<Fact>& facts) {
    board_->setFocus();
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
                    ? tr("Kept: %1. %2 takes it back.").arg(what, keyOf(Action::undo))
                    : tr("Not on the disk yet: %1. It is tried again each second.").arg(what);
    }
    if (behind_.entered)
        behind_.entered(taken);
    say(words);
    refresh();
}

void Console::undo() {
    const auto fact = behind_.session.undo();
    say(fact ? tr("Taken back: %1.").arg(factWords(*fact, choices_.units)) : tr("There is nothing to take back."));
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

void Console::footLine() {
    // The notice is asked for each time: the language may have been changed since.
    QStringList all{behind_.notice ? behind_.notice() : QString{}, lastSaid_};
    // Another screen stands before the board's sentence: an alarm is still said.
    if (const auto& said = board_->sentenceShown(); said.alarm && stack_->currentWidget() != board_)
        all.prepend(said.first.isEmpty() ? said.wrong : tr("%1: %2").arg(said.wrong, said.first));
    all.removeAll(QString{});
    const auto words = all.join(QStringLiteral("   ·   "));
    foot_->setText(words);
    foot_->setVisible(!words.isEmpty());
}

void Console::everySecond() {
    behind_.session.tick();
    if (behind_.advance)
        behind_.advance();
    refresh();
}

void Console::refreshSoon() {
    if (!soon_.isActive())
        soon_.start();
}

void Console::refresh() {
    const auto picture = behind_.session.picture();
    board_->chart().follow(behind_.session.boil());
    board_->display(picture);
    voice_->display(picture);
    lookAtWater(picture);
    showAlarmFrame();
}

void Console::choose(Choices choices) {
    const bool otherLanguage = choices.language != choices_.language;
    choices_ = std::move(choices);
    choices_.save();
    if (otherLanguage) {
        speak(choices_.language);
        say({});
    }
    wear();
    refresh();
    emit chosen(choices_);
}

void Console::speak(const QString& language) {
    QCoreApplication::removeTranslator(&words_);
    QCoreApplication::removeTranslator(&qtWords_);
    QLocale::setDefault(QLocale{language == "fr" ? QStringLiteral("fr_CA") : QStringLiteral("en_US")});
    if (language == "en")
        return;
    if (words_.load(QStringLiteral("panside_") + language, QStringLiteral(":/translations")))
        QCoreApplication::installTranslator(&words_);
    if (qtWords_.load(QStringLiteral("qtbase_") + language, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
        QCoreApplication::installTranslator(&qtWords_);
}

void Console::wear() {
    dress_ = {Measure::of(*this), choices_.look};
    setPalette(paletteOf(dress_.look));
    board_->wear(dress_);
    board_->setUnits(choices_.units);
    sheet_->wear(dress_);
    water_->wear(dress_);
    frame_->wear(dress_);
    page_->wear(dress_);
    voice_->setVolume(choices_.sound.volume / 100.0);
    voice_->setSpoken(choices_.sound.spoken);
    foot_->setPalette(paletteOf(dress_.look));
    foot_->setFont(dress_.letters(mm::smallWords));
    foot_->setMargin(dress_.px(mm::gap / 2));
    for (const auto& [action, desk] : desks_)
        desk->wear(dress_);
}

void Console::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::LanguageChange)
        setWindowTitle(tr("Panside"));
}

void Console::showEvent(QShowEvent* event) {
    QMainWindow::showEvent(event);
    wear();
    stack_->currentWidget()->setFocus();
}

void Console::resizeEvent(QResizeEvent* event) {
    QMainWindow::resizeEvent(event);
    if (sheet_->isVisible())
        placeSheet();
    frame_->setGeometry(stack_->rect());
}

} // namespace panside
