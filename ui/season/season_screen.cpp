#include "ui/season/season_screen.h"

#include "ui/look/each_language.h"
#include "ui/page/action_keys.h"
#include "ui/season/season_leaves.h"
#include "ui/season/season_table_leaf.h"
#include "ui/words/season_words.h"

#include <QKeyEvent>
#include <QLabel>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

SeasonScreen::SeasonScreen(QWidget* parent)
    : QWidget{parent}, leaves_{new QStackedWidget}, table_{new SeasonTableLeaf{[this](int key) { return act(key); }}},
      beside_{new BesideLeaf}, tuning_{new TuningLeaf},
      calibration_{new CalibrationLeaf}, columns_{new ColumnsLeaf}, said_{new QLabel}, keys_{new ActionKeys} {
    setObjectName(QStringLiteral("season"));
    setAutoFillBackground(true);
    auto* column = new QVBoxLayout{this};
    for (QWidget* leaf : std::initializer_list<QWidget*>{table_, beside_, tuning_, calibration_, columns_})
        leaves_->addWidget(leaf); // in the order of Leaf
    column->addWidget(leaves_, 1);
    column->addWidget(said_);
    column->addWidget(keys_);
    connect(keys_, &ActionKeys::pressed, this, &SeasonScreen::act);
    said_->setObjectName(QStringLiteral("said"));
    said_->setWordWrap(true);
    said_->hide();
    connect(table_, &SeasonTableLeaf::chosenChanged, this, &SeasonScreen::drawCurve);
    connect(table_, &SeasonTableLeaf::headingPressed, this, [this](int section) {
        column_ = section;
        sortByChosen();
    });
    connect(table_, &SeasonTableLeaf::filtered, this, [this](const QString& text) {
        choice_.filter = text;
        refresh();
    });
    connect(columns_, &ColumnsLeaf::doneWith, this, &SeasonScreen::back);
    setFocusProxy(table_);
    sayKeys();
    inEachLanguage(*this, [this] {
        sayKeys();
        refresh();
    });
}

// A leaf that is a tab has no way back but the tabs.
void SeasonScreen::sayKeys() {
    switch (leaf()) {
    case Leaf::table:
        return keys_->display({{Qt::Key_Return, QStringLiteral("open"), tr("Open the shift")},
                               {Qt::Key_Space, QStringLiteral("mark"), tr("Mark")},
                               {Qt::Key_B, QStringLiteral("beside"), tr("Side by side")},
                               {Qt::Key_O, QStringLiteral("sort"), tr("Sort by column")},
                               {Qt::Key_N, QStringLiteral("filter"), tr("Filter")},
                               {Qt::Key_K, QStringLiteral("columns"), tr("Columns")},
                               {Qt::Key_Y, QStringLiteral("year"), tr("Other season")},
                               {Qt::Key_P, QStringLiteral("paper"), tr("On paper")}});
    case Leaf::tuning:
        return keys_->display({{Qt::Key_T, QStringLiteral("tuning"),
                                outcome_ == Outcome::evaporation ? tr("By syrup a cord") : tr("By evaporation")}});
    case Leaf::beside:
    case Leaf::columns:
        return keys_->display({{Qt::Key_Escape, QStringLiteral("back"), tr("Back")}});
    case Leaf::calibration:
        return keys_->display({});
    }
}

void SeasonScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    keys_->wear(dress);
    table_->wear(dress);
    beside_->wear(dress);
    tuning_->wear(dress);
    calibration_->wear(dress);
    columns_->wear(dress);
    said_->setFont(dress.letters(mm::words));
    refresh();
    turnTo(leaf());
}

void SeasonScreen::setUnits(Units units) {
    units_ = units;
    refresh();
}

void SeasonScreen::display(std::vector<SeasonShift> shifts) {
    if (shifts == shifts_ && seen_)
        return;
    shifts_ = std::move(shifts);
    if (!seen_ && !shifts_.empty()) {
        choice_.year = seasonsOf(shifts_).front();
        seen_ = true;
    }
    refresh();
    if (shifts_.empty())
        say(tr("No shift yet. The first entry of a boil begins one."));
}

void SeasonScreen::say(const QString& words) {
    said_->setText(words);
    said_->setVisible(!words.isEmpty());
}

const SeasonTable& SeasonScreen::table() const { return table_->table(); }

void SeasonScreen::refresh() {
    auto table = seasonTable(shifts_, choice_, units_);
    column_ = std::clamp(column_, 0, static_cast<int>(table.headings.size()) - 1);
    table_->display(std::move(table), column_);
    drawCurve();
    if (leaf() != Leaf::table && leaf() != Leaf::columns)
        turnTo(leaf());
}

std::optional<SeasonFigure> SeasonScreen::chosenFigure() const {
    const auto at = static_cast<std::size_t>(column_ - 1);
    return column_ >= 1 && at < choice_.columns.size() ? std::optional{choice_.columns[at]} : std::nullopt;
}

void SeasonScreen::drawCurve() {
    const auto figure = chosenFigure().value_or(SeasonFigure::syrup);
    const QString unit = unitWordOf(figure, units_);
    SeasonCurve curve{.name = unit.isEmpty() ? headingOf(figure) : headingOf(figure) + QStringLiteral(", ") + unit,
                      .bars = seasonBars(chosenShifts(shifts_, choice_), figure, units_),
                      .chosen = chosen(),
                      .marked = marked_};
    table_->drawCurve(std::move(curve));
}

std::optional<Instant> SeasonScreen::chosen() const { return table_->chosen(); }

SeasonScreen::Leaf SeasonScreen::leaf() const { return static_cast<Leaf>(leaves_->currentIndex()); }

void SeasonScreen::turnTo(Leaf leaf) {
    switch (leaf) {
    case Leaf::table:
        break;
    case Leaf::beside:
        showBeside();
        break;
    case Leaf::tuning:
        tuning_->display(tuningWords(tune(chosenShifts(shifts_, choice_), outcome_), units_));
        break;
    case Leaf::calibration:
        calibration_->display(calibrationOf(chosenShifts(shifts_, choice_)));
        break;
    case Leaf::columns:
        columns_->display(choice_.columns);
        break;
    }
    if (leaf != this->leaf())
        say({});
    leaves_->setCurrentIndex(static_cast<int>(leaf));
    sayKeys();
    // A page that is not before the person takes no keys from the one that is, nor does what is not seen.
    QWidget* takesKeys = leaves_;
    if (leaf == Leaf::columns)
        takesKeys = columns_;
    else if (leaf == Leaf::table)
        takesKeys = table_;
    setFocusProxy(takesKeys);
    if (isVisible())
        takesKeys->setFocus();
}

const SeasonShift* SeasonScreen::shiftOf(Instant id) const {
    const auto found = std::ranges::find_if(shifts_, [&](const auto& shift) { return shift.id == id; });
    return found == shifts_.end() ? nullptr : &*found;
}

void SeasonScreen::showBeside() {
    if (marked_.size() < 2)
        return;
    const SeasonShift *first = shiftOf(marked_[0]), *second = shiftOf(marked_[1]);
    if (first && second)
        beside_->display(*first, *second, units_);
}

void SeasonScreen::takeColumns() {
    setColumns(columns_->ticked());
    emit columnsChosen(choice_.columns);
}

void SeasonScreen::setColumns(const std::vector<SeasonFigure>& columns) {
    if (columns.empty())
        return;
    choice_.columns = columns;
    refresh();
}

void SeasonScreen::moveColumn(int by) {
    const int count = static_cast<int>(table().headings.size());
    column_ = std::clamp(column_ + by, 0, std::max(count - 2, 0)); // the crew cannot be sorted by
    table_->goToColumn(column_);
    drawCurve();
}

void SeasonScreen::sortByChosen() {
    const auto by = chosenFigure();
    choice_.falling = choice_.sortBy == by ? !choice_.falling : true;
    choice_.sortBy = by;
    refresh();
}

void SeasonScreen::nextYear() {
    const auto years = seasonsOf(shifts_);
    if (years.empty())
        return;
    const auto now = choice_.year ? std::ranges::find(years, *choice_.year) : years.end();
    // From each season to the one before, then all together, then the newest again.
    choice_.year = !choice_.year           ? std::optional{years.front()}
                   : now + 1 < years.end() ? std::optional{*(now + 1)}
                   : years.size() > 1      ? std::nullopt
                                           : choice_.year;
    refresh();
}

void SeasonScreen::mark() {
    const auto shift = chosen();
    if (!shift)
        return;
    if (std::erase(marked_, *shift) == 0) {
        if (marked_.size() == 2)
            marked_.erase(marked_.begin());
        marked_.push_back(*shift);
    }
    table_->mark(marked_);
    drawCurve();
    say(marked_.size() == 2 ? tr("Two are marked: B lays their accounts side by side.")
                            : tr("One more is needed to lay two side by side."));
}

void SeasonScreen::back() {
    if (leaf() == Leaf::columns)
        takeColumns();
    if (leaf() != Leaf::table) {
        turnTo(Leaf::table);
        emit turned();
        return;
    }
    emit left();
}

bool SeasonScreen::actOnTable(int key) {
    const auto shift = chosen();
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (shift)
            emit openWanted(*shift);
        return true;
    case Qt::Key_Space:
        mark();
        return true;
    case Qt::Key_B:
        if (marked_.size() == 2)
            turnTo(Leaf::beside);
        else
            say(tr("Mark two shifts first, with Space."));
        return true;
    case Qt::Key_O:
        sortByChosen();
        return true;
    case Qt::Key_N:
        table_->askFilter();
        return true;
    case Qt::Key_K:
        turnTo(Leaf::columns);
        return true;
    case Qt::Key_Y:
        nextYear();
        return true;
    case Qt::Key_P:
        emit paperWanted(choice_);
        return true;
    case Qt::Key_Left:
    case Qt::Key_Right:
        moveColumn(key == Qt::Key_Left ? -1 : 1);
        return true;
    default:
        return false;
    }
}

bool SeasonScreen::act(int key) {
    switch (key) {
    case Qt::Key_Escape:
        back();
        return true;
    case Qt::Key_T:
        if (leaf() != Leaf::tuning)
            return false;
        outcome_ = outcome_ == Outcome::evaporation ? Outcome::syrupPerCord : Outcome::evaporation;
        turnTo(Leaf::tuning);
        return true;
    default:
        return leaf() == Leaf::table && actOnTable(key);
    }
}

void SeasonScreen::keyPressEvent(QKeyEvent* event) {
    if (!act(event->key()))
        QWidget::keyPressEvent(event);
}

} // namespace panside
