#include "ui/season/season_screen.h"
#include "ui/words/season_words.h"

#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/season/season_model.h"
#include "ui/season/season_pictures.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QScrollBar>
#include <QStackedWidget>
#include <QTableView>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

struct SeasonScreen::Key {
    int key;
    const char* name; // of the widget
    const char* word;
};

std::span<const SeasonScreen::Key> SeasonScreen::keys() {
    static constexpr Key table[] = {{Qt::Key_Return, "open", QT_TR_NOOP("Open the shift")},
                                    {Qt::Key_Space, "mark", QT_TR_NOOP("Mark")},
                                    {Qt::Key_B, "beside", QT_TR_NOOP("Side by side")},
                                    {Qt::Key_O, "sort", QT_TR_NOOP("Sort by column")},
                                    {Qt::Key_N, "filter", QT_TR_NOOP("Filter")},
                                    {Qt::Key_K, "columns", QT_TR_NOOP("Columns")},
                                    {Qt::Key_Y, "year", QT_TR_NOOP("Other season")},
                                    {Qt::Key_P, "paper", QT_TR_NOOP("On paper")},
                                    {Qt::Key_T, "tuning", QT_TR_NOOP("By syrup a cord")},
                                    {Qt::Key_Escape, "back", QT_TR_NOOP("Back")}};
    return table;
}

SeasonScreen::SeasonScreen(QWidget* parent)
    : QWidget{parent}, leaves_{new QStackedWidget}, title_{new QLabel}, said_{new QLabel}, filter_{new TypedLine},
      curve_{new SeasonPicture}, effects_{new SeasonPicture}, calibration_{new SeasonPicture},
      model_{new SeasonModel{this}}, sums_{new SeasonModel{this}}, table_{new QTableView}, totals_{new QTableView},
      beside_{new QTableWidget}, besideTitle_{new QLabel}, tuningTitle_{new QLabel}, tuningNotes_{new QLabel},
      calibrationTitle_{new QLabel}, columns_{new QListWidget}, rows_{new QGridLayout} {
    setObjectName(QStringLiteral("season"));
    setAutoFillBackground(true);
    auto* column = new QVBoxLayout{this};
    leaves_->addWidget(tablePage());
    const auto page = [this](std::initializer_list<std::pair<QWidget*, int>> parts) {
        auto* widget = new QWidget;
        auto* inside = new QVBoxLayout{widget};
        inside->setContentsMargins(0, 0, 0, 0);
        for (const auto& [part, stretch] : parts)
            inside->addWidget(part, stretch);
        leaves_->addWidget(widget);
    };
    page({{besideTitle_, 0}, {beside_, 1}});
    page({{tuningTitle_, 0}, {effects_, 1}, {tuningNotes_, 0}});
    page({{calibrationTitle_, 0}, {calibration_, 1}});
    page({{columns_, 1}});
    column->addWidget(leaves_, 1);
    column->addWidget(said_);
    for (const Key& key : keys()) {
        auto* press = new Press;
        press->setObjectName(QString::fromLatin1(key.name));
        press->setFocusPolicy(Qt::TabFocus);
        connect(press, &Press::clicked, this, [this, code = key.key] { act(code); });
        presses_[key.key] = press;
    }
    column->addLayout(rows_);
    placeKeys();

    said_->setObjectName(QStringLiteral("said"));
    said_->setWordWrap(true);
    said_->hide();
    beside_->setObjectName(QStringLiteral("besideTable"));
    beside_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    beside_->verticalHeader()->hide();
    beside_->setShowGrid(false);
    beside_->setFocusPolicy(Qt::NoFocus);
    effects_->setObjectName(QStringLiteral("effects"));
    tuningNotes_->setObjectName(QStringLiteral("tuningNotes"));
    tuningTitle_->setObjectName(QStringLiteral("tuningTitle"));
    for (QLabel* label : {tuningNotes_, tuningTitle_, besideTitle_, calibrationTitle_})
        label->setWordWrap(true);
    columns_->setObjectName(QStringLiteral("columnList"));
    columns_->installEventFilter(this);
    leaves_->installEventFilter(this);
    filter_->setObjectName(QStringLiteral("filterText"));
    filter_->hide();
    filter_->installEventFilter(this);
    connect(filter_, &QLineEdit::textChanged, this, [this](const QString& text) {
        choice_.filter = text.trimmed();
        refresh();
    });
    setFocusProxy(table_);
    name();
}

QWidget* SeasonScreen::tablePage() {
    auto* page = new QWidget;
    auto* column = new QVBoxLayout{page};
    column->setContentsMargins(0, 0, 0, 0);
    auto* head = new QHBoxLayout;
    head->addWidget(title_, 1);
    head->addWidget(filter_, 1);
    column->addLayout(head);
    column->addWidget(curve_, 2);
    column->addWidget(table_, 5);
    column->addWidget(totals_);
    title_->setObjectName(QStringLiteral("seasonTitle"));
    curve_->setObjectName(QStringLiteral("curve"));
    table_->setObjectName(QStringLiteral("seasonTable"));
    totals_->setObjectName(QStringLiteral("totals"));
    table_->setModel(model_);
    totals_->setModel(sums_);
    for (QTableView* view : {table_, totals_}) {
        view->setEditTriggers(QAbstractItemView::NoEditTriggers);
        view->verticalHeader()->hide();
        view->setShowGrid(false);
        view->setWordWrap(false);
        view->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
        view->horizontalHeader()->setHighlightSections(false);
    }
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    totals_->horizontalHeader()->hide();
    totals_->setSelectionMode(QAbstractItemView::NoSelection);
    totals_->setFocusPolicy(Qt::NoFocus);
    totals_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    totals_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(table_->horizontalScrollBar(), &QScrollBar::valueChanged, totals_->horizontalScrollBar(),
            &QScrollBar::setValue);
    connect(table_->horizontalHeader(), &QHeaderView::sectionResized, this,
            [this](int section, int, int wide) { totals_->setColumnWidth(section, wide); });
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] { drawCurve(); });
    connect(table_, &QTableView::doubleClicked, this, [this] { act(Qt::Key_Return); });
    connect(table_->horizontalHeader(), &QHeaderView::sectionClicked, this, [this](int section) {
        column_ = section;
        sortByChosen();
    });
    table_->horizontalHeader()->setSectionsClickable(true);
    table_->installEventFilter(this);
    return page;
}

// Those that a leaf has, in one row; in two where a small screen would cut their words.
void SeasonScreen::placeKeys() {
    constexpr int broad = 300; // mm
    const int across = width() >= dress_.px(broad) ? static_cast<int>(keys().size()) : 4;
    int place = 0;
    for (const Key& key : keys()) {
        rows_->addWidget(presses_[key.key], place / across, place % across);
        ++place;
    }
}

void SeasonScreen::resizeEvent(QResizeEvent*) { placeKeys(); }

void SeasonScreen::name() {
    for (const Key& key : keys())
        presses_[key.key]->say(tr(key.word), key.key == Qt::Key_Return   ? tr("Enter")
                                             : key.key == Qt::Key_Space  ? tr("Space")
                                             : key.key == Qt::Key_Escape ? tr("Esc")
                                                                         : QString{QChar{key.key}});
    filter_->setPlaceholderText(tr("a name, a wood, an alarm, a date"));
    filter_->setAccessibleName(tr("Filter"));
}

void SeasonScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    for (auto& [key, press] : presses_)
        press->wear(dress);
    const QFont small = dress.letters(mm::smallWords), strong = dress.letters(mm::smallWords, true);
    for (QTableView* view : {table_, totals_, static_cast<QTableView*>(beside_)}) {
        view->setFont(view == totals_ ? strong : small);
        view->horizontalHeader()->setFont(small);
        view->verticalHeader()->setDefaultSectionSize(view == beside_ ? dress.px(5.5) : dress.px(mm::target));
    }
    table_->setMinimumHeight(dress.px(mm::target) * 4); // the heading and some three shifts
    totals_->setFixedHeight(dress.px(mm::target) + 2);
    model_->setStrong(strong);
    sums_->setStrong(strong);
    title_->setFont(dress.letters(mm::words, true));
    for (QLabel* label : {besideTitle_, tuningTitle_, calibrationTitle_})
        label->setFont(dress.letters(mm::words, true));
    said_->setFont(dress.letters(mm::words));
    tuningNotes_->setFont(small);
    filter_->wear(dress, mm::words);
    columns_->setFont(dress.letters(mm::words));
    curve_->setMinimumHeight(dress.px(30));
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

void SeasonScreen::refresh() {
    const auto kept = chosen();
    auto table = seasonTable(shifts_, choice_, units_);
    column_ = std::clamp(column_, 0, static_cast<int>(table.headings.size()) - 1);
    title_->setText(table.working
                        ? table.title + QStringLiteral(" · ") + tr("%n still being worked out", nullptr, table.working)
                        : table.title);
    if (table != shown_) {
        shown_ = std::move(table);
        model_->display(shown_.headings, shown_.lines);
        sums_->display(shown_.headings, {{{}, shown_.totals}});
    }
    model_->choose(column_);
    sums_->choose(-1);
    fitColumns();
    const auto found = std::find_if(shown_.lines.begin(), shown_.lines.end(),
                                    [&](const SeasonLine& line) { return line.shift == kept; });
    if (!shown_.lines.empty())
        table_->selectRow(found == shown_.lines.end() ? 0 : static_cast<int>(found - shown_.lines.begin()));
    drawCurve();
    if (leaf() != Leaf::table && leaf() != Leaf::columns)
        turnTo(leaf());
}

void SeasonScreen::fitColumns() {
    const int count = static_cast<int>(shown_.headings.size());
    for (int i = 0; i < count; ++i) {
        const int wide = std::max(model_->widthOf(i, table_->font()), sums_->widthOf(i, totals_->font()));
        table_->setColumnWidth(i, wide + dress_.px(3));
        totals_->setColumnWidth(i, wide + dress_.px(3));
    }
    table_->horizontalHeader()->setFixedHeight(dress_.px(12));
    table_->horizontalHeader()->setStretchLastSection(true);
    totals_->horizontalHeader()->setStretchLastSection(true);
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
    const QString name = curve.name;
    curve_->show(name, [curve = std::move(curve), dress = dress_](QPainter& painter, const QRectF& place) {
        paintCurve(painter, place, curve, dress);
    });
}

std::optional<Instant> SeasonScreen::chosen() const {
    const int row = table_->currentIndex().row();
    return row >= 0 && row < static_cast<int>(shown_.lines.size())
               ? std::optional{shown_.lines[static_cast<std::size_t>(row)].shift}
               : std::nullopt;
}

SeasonScreen::Leaf SeasonScreen::leaf() const { return static_cast<Leaf>(leaves_->currentIndex()); }

void SeasonScreen::turnTo(Leaf leaf) {
    switch (leaf) {
    case Leaf::table:
        break;
    case Leaf::beside:
        showBeside();
        break;
    case Leaf::tuning:
        showTuning();
        break;
    case Leaf::calibration:
        showCalibration();
        break;
    case Leaf::columns:
        showColumns();
        break;
    }
    if (leaf != this->leaf())
        say({});
    leaves_->setCurrentIndex(static_cast<int>(leaf));
    for (auto& [key, press] : presses_) // a leaf that is a tab has no way back but the tabs
        press->setVisible(key == Qt::Key_T        ? leaf == Leaf::tuning
                          : key == Qt::Key_Escape ? leaf == Leaf::beside || leaf == Leaf::columns
                                                  : leaf == Leaf::table);
    presses_[Qt::Key_T]->say(outcome_ == Outcome::evaporation ? tr("By syrup a cord") : tr("By evaporation"),
                             QStringLiteral("T"));
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
    const auto found = std::find_if(shifts_.begin(), shifts_.end(), [&](const auto& shift) { return shift.id == id; });
    return found == shifts_.end() ? nullptr : &*found;
}

void SeasonScreen::showBeside() {
    if (marked_.size() < 2)
        return;
    const SeasonShift *first = shiftOf(marked_[0]), *second = shiftOf(marked_[1]);
    if (!first || !second)
        return;
    besideTitle_->setText(tr("Two shifts side by side"));
    const auto lines = besideLines(*first, *second, units_);
    beside_->setColumnCount(4);
    beside_->setHorizontalHeaderLabels(
        {{}, seasonShiftName(first->id), seasonShiftName(second->id), tr("the second less the first")});
    beside_->setRowCount(static_cast<int>(lines.size()));
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const QString cells[] = {lines[i].what, lines[i].first, lines[i].second, lines[i].difference};
        for (int c = 0; c < 4; ++c) {
            auto* item = new QTableWidgetItem{cells[c]};
            item->setTextAlignment((c == 0 ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
            beside_->setItem(static_cast<int>(i), c, item);
        }
    }
    beside_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    beside_->resizeRowToContents(static_cast<int>(lines.size()) - 1); // the alarms may want two lines
}

void SeasonScreen::showTuning() {
    const auto words = tuningWords(tune(chosenShifts(shifts_, choice_), outcome_), units_);
    tuningTitle_->setText(words.title + QStringLiteral(". ") + words.basis);
    QStringList notes = words.notes;
    notes << words.tomorrow << words.caution;
    tuningNotes_->setText(notes.join(QStringLiteral("\n")).replace(QStringLiteral(" %"), QStringLiteral("\u00a0%")));
    effects_->show(words.title, [lines = words.lines, dress = dress_](QPainter& painter, const QRectF& place) {
        paintEffects(painter, place, lines, dress);
    });
}

void SeasonScreen::showCalibration() {
    const auto calibration = calibrationOf(chosenShifts(shifts_, choice_));
    calibrationTitle_->setText(tr("Was the forecast right? Draws so far: %1. The ring is what was promised, the bar "
                                  "what came, as surely as so many draws can say (95 %).")
                                   .arg(calibration.draws));
    calibration_->show(calibrationTitle_->text(),
                       [calibration, dress = dress_](QPainter& painter, const QRectF& place) {
                           paintCalibration(painter, place, calibration, dress);
                       });
}

void SeasonScreen::showColumns() {
    columns_->clear();
    for (const FigureRow& row : allSeasonFigures()) {
        auto* item = new QListWidgetItem{headingOf(row.figure), columns_};
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setSizeHint({dress_.px(60), dress_.px(mm::target)});
        const bool shown =
            std::find(choice_.columns.begin(), choice_.columns.end(), row.figure) != choice_.columns.end();
        item->setCheckState(shown ? Qt::Checked : Qt::Unchecked);
    }
    columns_->setFlow(QListView::TopToBottom);
    columns_->setWrapping(true);
    columns_->setCurrentRow(0);
}

void SeasonScreen::takeColumns() {
    std::vector<SeasonFigure> columns;
    for (int i = 0; i < columns_->count(); ++i)
        if (columns_->item(i)->checkState() == Qt::Checked)
            columns.push_back(allSeasonFigures()[static_cast<std::size_t>(i)].figure);
    setColumns(columns);
    emit columnsChosen(choice_.columns);
}

void SeasonScreen::setColumns(const std::vector<SeasonFigure>& columns) {
    if (columns.empty())
        return;
    choice_.columns = columns;
    refresh();
}

void SeasonScreen::moveColumn(int by) {
    const int count = static_cast<int>(shown_.headings.size());
    column_ = std::clamp(column_ + by, 0, std::max(count - 2, 0)); // the crew cannot be sorted by
    model_->choose(column_);
    if (!shown_.lines.empty())
        table_->scrollTo(model_->index(table_->currentIndex().row(), column_));
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
    const auto now = choice_.year ? std::find(years.begin(), years.end(), *choice_.year) : years.end();
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
    model_->mark(marked_);
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
        filter_->show();
        filter_->setFocus();
        filter_->selectAll();
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

bool SeasonScreen::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (watched == filter_) {
        if (key != Qt::Key_Escape && key != Qt::Key_Return && key != Qt::Key_Enter)
            return false;
        if (key == Qt::Key_Escape)
            filter_->clear();
        filter_->setVisible(!filter_->text().isEmpty());
        table_->setFocus();
        return true;
    }
    if (watched == columns_) {
        if (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Escape || key == Qt::Key_K) {
            back();
            return true;
        }
        return false; // arrows and Space are the list's own
    }
    // The table would search by letter and keep Enter for itself.
    if (watched == table_ && key != Qt::Key_Up && key != Qt::Key_Down && act(key))
        return true;
    return QWidget::eventFilter(watched, event);
}

void SeasonScreen::keyPressEvent(QKeyEvent* event) {
    if (!act(event->key()))
        QWidget::keyPressEvent(event);
}

void SeasonScreen::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) {
        name();
        refresh();
    }
    QWidget::changeEvent(event);
}

} // namespace panside
