#include "ui/season/season_table_leaf.h"

#include "ui/look/each_language.h"
#include "ui/look/typed_line.h"
#include "ui/season/season_model.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollBar>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

SeasonTableLeaf::SeasonTableLeaf(std::function<bool(int)> act, QWidget* parent)
    : QWidget{parent}, act_{std::move(act)}, title_{new QLabel}, filter_{new TypedLine}, curve_{new SeasonPicture},
      model_{new SeasonModel{this}}, sums_{new SeasonModel{this}}, table_{new QTableView}, totals_{new QTableView} {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    auto* head = new QHBoxLayout;
    head->addWidget(title_, 1);
    head->addWidget(filter_, 1);
    column->addLayout(head);
    column->addWidget(curve_, 4);
    column->addWidget(table_, 5);
    column->addWidget(totals_);
    title_->setObjectName(QStringLiteral("seasonTitle"));
    curve_->setObjectName(QStringLiteral("curve"));
    placeTables();
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] { emit chosenChanged(); });
    connect(table_, &QTableView::doubleClicked, this, [this] { act_(Qt::Key_Return); });
    connect(table_->horizontalHeader(), &QHeaderView::sectionClicked, this, &SeasonTableLeaf::headingPressed);
    filter_->setObjectName(QStringLiteral("filterText"));
    filter_->hide();
    filter_->installEventFilter(this);
    connect(filter_, &QLineEdit::textChanged, this, [this](const QString& text) { emit filtered(text.trimmed()); });
    setFocusProxy(table_);
    name();
    inEachLanguage(*this, [this] { name(); });
}

void SeasonTableLeaf::placeTables() {
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
    table_->horizontalHeader()->setSectionsClickable(true);
    table_->installEventFilter(this);
}

void SeasonTableLeaf::name() {
    filter_->setPlaceholderText(tr("a name, a wood, an alarm, a date"));
    filter_->setAccessibleName(tr("Filter"));
}

void SeasonTableLeaf::wear(const Dress& dress) {
    dress_ = dress;
    const QFont small = dress.letters(mm::smallWords), strong = dress.letters(mm::smallWords, true);
    for (QTableView* view : {table_, totals_}) {
        view->setFont(view == totals_ ? strong : small);
        view->horizontalHeader()->setFont(small);
        view->verticalHeader()->setDefaultSectionSize(dress.px(mm::target));
    }
    table_->setMinimumHeight(dress.px(mm::target) * 4); // the heading and some three shifts
    totals_->setFixedHeight(dress.px(mm::target) + 2);
    model_->setStrong(strong);
    sums_->setStrong(strong);
    title_->setFont(dress.letters(mm::words, true));
    filter_->wear(dress, mm::words);
    curve_->setMinimumHeight(dress.px(30));
}

void SeasonTableLeaf::display(SeasonTable table, int column) {
    const auto kept = chosen();
    title_->setText(table.working
                        ? table.title + QStringLiteral(" · ") + tr("%n still being worked out", nullptr, table.working)
                        : table.title);
    if (table != shown_) {
        shown_ = std::move(table);
        model_->display(shown_.headings, shown_.lines);
        sums_->display(shown_.headings, {{{}, shown_.totals}});
    }
    model_->choose(column);
    sums_->choose(-1);
    fitColumns();
    const auto found = std::ranges::find(shown_.lines, kept, &SeasonLine::shift);
    if (!shown_.lines.empty())
        table_->selectRow(found == shown_.lines.end() ? 0 : static_cast<int>(found - shown_.lines.begin()));
}

void SeasonTableLeaf::fitColumns() {
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

void SeasonTableLeaf::drawCurve(SeasonCurve curve) {
    const QString name = curve.name;
    curve_->show(name, [curve = std::move(curve), dress = dress_](QPainter& painter, const QRectF& place) {
        paintCurve(painter, place, curve, dress);
    });
}

void SeasonTableLeaf::goToColumn(int column) {
    model_->choose(column);
    if (!shown_.lines.empty())
        table_->scrollTo(model_->index(table_->currentIndex().row(), column));
}

void SeasonTableLeaf::mark(const std::vector<Instant>& marked) { model_->mark(marked); }

std::optional<Instant> SeasonTableLeaf::chosen() const {
    const int row = table_->currentIndex().row();
    return row >= 0 && row < static_cast<int>(shown_.lines.size())
               ? std::optional{shown_.lines[static_cast<std::size_t>(row)].shift}
               : std::nullopt;
}

void SeasonTableLeaf::askFilter() {
    filter_->show();
    filter_->setFocus();
    filter_->selectAll();
}

bool SeasonTableLeaf::eventFilter(QObject* watched, QEvent* event) {
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
    if (watched == table_ && key != Qt::Key_Up && key != Qt::Key_Down && act_(key))
        return true;
    return QWidget::eventFilter(watched, event);
}

} // namespace panside
