#include "ui/review/review_screen.h"

#include "ui/ledger/ledger_table.h"
#include "ui/look/each_language.h"
#include "ui/review/alarms_pane.h"
#include "ui/review/entries_pane.h"
#include "ui/review/score_words.h"
#include "ui/review/shifts_pane.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {
namespace {

constexpr double leastChart = 40, leastLow = 30; // mm: lower, it says nothing
constexpr double lowPage = 112;                  // mm: lower, words give way to the chart

} // namespace

ReviewScreen::ReviewScreen(QWidget* parent)
    : QWidget{parent}, lower_{new QStackedWidget}, shifts_{new ShiftsPane}, entries_{new EntriesPane},
      alarms_{new AlarmsPane}, chart_{new RiseChart}, story_{new QLabel}, said_{new QLabel} {
    setObjectName(QStringLiteral("review"));
    setAutoFillBackground(true);
    column_ = new QVBoxLayout{this};
    column_->addWidget(story_);
    auto* night = new QHBoxLayout; // the nights beside the chart of one: height is what a curve is read by
    night->addWidget(shifts_->list());
    night->addWidget(chart_, 1);
    column_->addLayout(night, 1);
    column_->addWidget(said_);
    column_->addWidget(lower_);
    for (QWidget* leaf : std::initializer_list<QWidget*>{shifts_, entries_, alarms_})
        lower_->addWidget(leaf);
    said_->setObjectName(QStringLiteral("said"));
    story_->setObjectName(QStringLiteral("story"));
    said_->setWordWrap(true);
    story_->setWordWrap(true);
    connect(shifts_, &ShiftsPane::wanted, this, &ReviewScreen::act);
    connect(chart_, &RiseChart::pointedAt, this, [this](const QString& words) {
        said_->setText(words.isEmpty() ? tale_ : words);
        keepPlace();
    });
    connect(entries_, &EntriesPane::chosen, chart_, [this](Instant at) { chart_->pointAt(at); });
    connect(entries_, &EntriesPane::said, this, &ReviewScreen::say);
    connect(entries_, &EntriesPane::left, this, &ReviewScreen::leaveLeaf);
    connect(entries_, &EntriesPane::correctionWanted, this, [this](FactId fact, const std::optional<Fact>& instead) {
        if (opened_)
            emit correctionWanted(*opened_, fact, instead);
    });
    connect(alarms_, &AlarmsPane::chosenChanged, chart_, [this](std::optional<std::size_t> row) {
        if (lower_->currentWidget() == alarms_)
            chart_->chooseAlarm(row);
    });
    connect(alarms_, &AlarmsPane::pointed, chart_, [this](Instant at) { chart_->pointAt(at); });
    connect(alarms_, &AlarmsPane::said, this, &ReviewScreen::say);
    connect(alarms_, &AlarmsPane::left, this, &ReviewScreen::leaveLeaf);
    connect(lower_, &QStackedWidget::currentChanged, this, &ReviewScreen::fitLeaf);
    fitLeaf();
    shifts_->sayFrom(fromWord());
    inEachLanguage(*this, [this] {
        shifts_->sayFrom(fromWord());
        if (opened_) // its heading and its story are told by whoever opens it
            emit openWanted(*opened_);
    });
}

// Only the leaf that is seen asks for room. Beside the chart stand the nights; the alarms and the entries of one share
// the height with it.
void ReviewScreen::fitLeaf() {
    QWidget* shown = lower_->currentWidget();
    for (int i = 0; i < lower_->count(); ++i)
        lower_->widget(i)->setSizePolicy(QSizePolicy::Preferred,
                                         lower_->widget(i) == shown ? QSizePolicy::Preferred : QSizePolicy::Ignored);
    const bool list = shown == shifts_;
    shifts_->list()->setVisible(list);
    column_->setStretchFactor(lower_, list ? 0 : 1);
    setFocusProxy(list ? shifts_->list() : shown);
    fitHeights();
}

// The line's place is kept, so that nothing jumps; but on a low page the chart has it while it is empty.
void ReviewScreen::keepPlace() { said_->setVisible(height() >= dress_.px(lowPage) || !said_->text().isEmpty()); }

void ReviewScreen::fitHeights() {
    const bool low = height() < dress_.px(lowPage);
    chart_->setMinimumHeight(dress_.px(low ? leastLow : leastChart));
    said_->setFont(dress_.letters(low ? mm::smallWords : 3.6)); // five lines of French under a chart
    column_->setSpacing(dress_.px(low ? 0.8 : 1.6));
    keepPlace();
}

void ReviewScreen::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    shifts_->list()->setFixedWidth(std::min(dress_.px(80), width() * 3 / 10));
    fitHeights();
}

void ReviewScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    chart_->wear(dress);
    entries_->wear(dress);
    alarms_->wear(dress);
    shifts_->wear(dress);
    story_->setFont(dress.letters(3.6, true)); // two lines of French on a small screen
    fitHeights();
}

void ReviewScreen::display(const std::vector<ReviewRow>& rows, Units units) {
    chart_->setUnits(units);
    if (!shifts_->display(rows))
        return;
    // The newest night at once: an empty chart beside a chosen row says nothing.
    if (!opened_ && !rows.empty())
        emit openWanted(rows.front().shift);
    if (rows.empty())
        say(tr("No shift yet. The first entry of a boil begins one."));
}

std::optional<ShiftId> ReviewScreen::chosen() const { return shifts_->chosen(); }

void ReviewScreen::showShift(ShiftId shift, const Boil& boil, const QString& story, Units units) {
    ShiftTrace trace;
    trace.follow(boil);
    const Facts& facts = boil.facts();
    showShift(shift, std::move(trace),
              facts.empty() ? std::nullopt : std::optional{boil.pictureAt(facts.at(facts.size() - 1))}, story, units);
}

void ReviewScreen::showShift(ShiftId shift, ShiftTrace trace, const std::optional<Picture>& last, const QString& story,
                             Units units) {
    if (opened_ != shift)
        showShifts();
    over_.clear();
    opened_ = shift;
    units_ = units;
    drawOver();
    chart_->setUnits(units);
    chart_->trace() = std::move(trace);
    if (last)
        chart_->display(*last);
    chart_->showWhole();
    chart_->layForecasts({});
    chart_->layAlarms({});
    alarms_->display({}, chart_->trace().clock());
    scores_.clear();
    forecastsLie_ = false;
    story_->setText(story);
    shifts_->tellOpened(shift);
    tellNight({});
}

void ReviewScreen::tellNight(const QString& story) {
    night_ = story;
    if (lower_->currentWidget() == shifts_)
        say(night_);
}

void ReviewScreen::tellScores(const std::vector<DrawScore>& scores) { scores_ = scores; }

void ReviewScreen::tellAlarms(AlarmReview review) {
    chart_->layAlarms(review);
    alarms_->display(std::move(review), chart_->trace().clock());
    if (lower_->currentWidget() == alarms_)
        chart_->chooseAlarm(alarms_->chosen());
}

void ReviewScreen::showAlarms() {
    lower_->setCurrentWidget(alarms_);
    alarms_->setFocus();
    chart_->chooseAlarm(alarms_->chosen());
    say({});
}

void ReviewScreen::turn(Action leaf) {
    if (leaf == Action::review)
        showShifts();
    else if (!opened_)
        say(tr("Open a shift first."));
    else if (leaf == Action::nightAlarms)
        showAlarms();
    else
        emit entriesWanted(*opened_);
}

void ReviewScreen::leaveLeaf() {
    showShifts();
    emit turned(Action::review);
}

void ReviewScreen::layForecasts(std::vector<PastForecast> past) {
    forecastsLie_ = !past.empty();
    chart_->layForecasts(std::move(past));
    said_->setText(forecastsLie_ ? scoreStory(scores_) + u'\n' + scoreList(scores_, chart_->trace().clock())
                                 : tr("No draw was predicted in it."));
    said_->show();
}

void ReviewScreen::turnForecasts() {
    if (!opened_)
        return;
    if (!forecastsLie_) {
        emit forecastsWanted(*opened_);
        return;
    }
    chart_->layForecasts({});
    forecastsLie_ = false;
    said_->setText(tale_);
}

void ReviewScreen::showEntries(std::vector<EntryLine> lines) {
    entries_->display(std::move(lines), chart_->trace().clock(), units_);
    lower_->setCurrentWidget(entries_);
    entries_->setFocus();
    if (entries_->lines().empty())
        say(tr("Nobody entered anything in this shift."));
}

void ReviewScreen::showShifts() {
    lower_->setCurrentWidget(shifts_);
    chart_->pointAt(std::nullopt);
    chart_->chooseAlarm(std::nullopt);
    shifts_->list()->setFocus();
    say(night_);
}

bool ReviewScreen::isLaidOver(ShiftId shift) const {
    return std::ranges::any_of(over_, [&](const Over& over) { return over.shift == shift; });
}

void ReviewScreen::layOver(ShiftId shift, const Boil& boil) {
    ShiftTrace trace;
    trace.follow(boil);
    layOver(shift, std::move(trace));
}

void ReviewScreen::layOver(ShiftId shift, ShiftTrace trace) {
    if (isLaidOver(shift) || shift == opened_)
        return;
    over_.push_back({shift, {std::make_shared<ShiftTrace>(std::move(trace)), shiftName(shift)}});
    drawOver();
    say(over_.back().laid.trace->momentOf(laidFrom_)
            ? tr("%1 is overlaid. %2.").arg(shiftName(shift), fromWord())
            : tr("%1 has no such moment. Choose another with L.").arg(shiftName(shift)));
}

QString ReviewScreen::fromWord() const {
    switch (laidFrom_) {
    case LaidFrom::lit:
        return tr("From fire lit");
    case LaidFrom::boil:
        return tr("From first boil");
    case LaidFrom::lastDraw:
        return tr("From the last draw");
    }
    return {};
}

void ReviewScreen::turnFrom() {
    laidFrom_ = laidFrom_ == LaidFrom::lit    ? LaidFrom::boil
                : laidFrom_ == LaidFrom::boil ? LaidFrom::lastDraw
                                              : LaidFrom::lit;
    shifts_->sayFrom(fromWord());
    chart_->layFrom(laidFrom_);
    QStringList without;
    for (const Over& over : over_)
        if (!over.laid.trace->momentOf(laidFrom_))
            without << over.laid.name;
    say(without.isEmpty() ? fromWord() + QStringLiteral(".")
                          : tr("Not drawn, as it has no such moment: %1.").arg(without.join(QStringLiteral(" · "))));
}

void ReviewScreen::drawOver() {
    std::vector<Laid> laid;
    for (const Over& over : over_)
        laid.push_back(over.laid);
    chart_->layUnder(std::move(laid));
}

void ReviewScreen::takeOff(ShiftId shift) {
    std::erase_if(over_, [&](const Over& over) { return over.shift == shift; });
    drawOver();
}

void ReviewScreen::say(const QString& words) {
    tale_ = words;
    said_->setText(words);
    keepPlace();
}

bool ReviewScreen::act(int key) {
    const auto shift = chosen();
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (shift)
            emit openWanted(*shift);
        return true;
    case Qt::Key_Space:
        if (shift && isLaidOver(*shift))
            takeOff(*shift);
        else if (shift)
            emit layOverWanted(*shift);
        return true;
    case Qt::Key_L:
        turnFrom();
        return true;
    case Qt::Key_P:
        turnForecasts();
        return true;
    case Qt::Key_E:
        if (shift)
            emit exportWanted(*shift);
        return true;
    case Qt::Key_Escape:
        emit left();
        return true;
    default:
        return false;
    }
}

void ReviewScreen::keyPressEvent(QKeyEvent* event) {
    const bool upOrDown = event->key() == Qt::Key_Up || event->key() == Qt::Key_Down;
    if (upOrDown && lower_->currentWidget() == shifts_ && !shifts_->rows().empty()) {
        shifts_->step(event->key() == Qt::Key_Down ? 1 : -1); // wherever the focus came to stand
        return;
    }
    if (!act(event->key()) && !chart_->press(*event))
        QWidget::keyPressEvent(event);
}

} // namespace panside
