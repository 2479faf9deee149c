#include "ui/ledger/ledger_table.h"

#include "ui/look/press.h"

#include <QAbstractTableModel>
#include <QFontMetrics>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QTableView>
#include <algorithm>
#include <numeric>

namespace panside {
namespace {

constexpr double rowLetters = 3.6; // millimetres

} // namespace

class LedgerTable::Model : public QAbstractTableModel {
public:
    using QAbstractTableModel::QAbstractTableModel;
    std::vector<TableColumn> columns;
    std::vector<TableRow> lines;
    void set(const std::vector<TableColumn>& newColumns, const std::vector<TableRow>& newLines) {
        beginResetModel();
        columns = newColumns;
        lines = newLines;
        endResetModel();
    }
    int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(lines.size());
    }
    int columnCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(columns.size());
    }
    QVariant data(const QModelIndex& index, int role) const override {
        if (role == Qt::DisplayRole)
            return lines[static_cast<std::size_t>(index.row())].cells.value(index.column());
        return {};
    }
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override {
        if (orientation != Qt::Horizontal || static_cast<std::size_t>(section) >= columns.size())
            return {};
        const TableColumn& column = columns[static_cast<std::size_t>(section)];
        if (role == Qt::DisplayRole)
            return column.head;
        if (role == Qt::TextAlignmentRole)
            return static_cast<int>((column.number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
        return {};
    }
};

// Letters are the page's; only what moves in the list is the list's own.
class LedgerTable::View : public QTableView {
public:
    explicit View(LedgerTable* table) : QTableView{table}, table_{table} {}
    void keyPressEvent(QKeyEvent* event) override {
        switch (event->key()) {
        case Qt::Key_Up:
        case Qt::Key_Down:
        case Qt::Key_PageUp:
        case Qt::Key_PageDown:
            QTableView::keyPressEvent(event);
            return;
        case Qt::Key_Home: // of a table these go along the row
            return table_->choose(0);
        case Qt::Key_End:
            return table_->choose(table_->count() - 1);
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (!event->isAutoRepeat() && table_->chosen() >= 0)
                emit table_->opened(table_->chosen());
            return;
        default:
            event->ignore();
        }
    }
    void keyboardSearch(const QString&) override {}

private:
    LedgerTable* table_;
};

class LedgerTable::Paint : public QStyledItemDelegate {
public:
    Paint(const LedgerTable& table) : QStyledItemDelegate{table.view_}, table_{table} {}
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const Dress& dress = table_.dress_;
        const Inks& inks = dress.inks();
        const TableRow& row = table_.model_->lines[static_cast<std::size_t>(index.row())];
        const TableColumn& column = table_.model_->columns[static_cast<std::size_t>(index.column())];
        const bool chosen = table_.chosen() == index.row();
        painter->fillRect(option.rect, chosen ? inks.sel : inks.panel);
        painter->fillRect(QRect{option.rect.left(), option.rect.bottom(), option.rect.width(), 1}, inks.faint);
        if (chosen && index.column() == 0)
            painter->fillRect(QRect{option.rect.left(), option.rect.top(), dress.px(1.5), option.rect.height()},
                              inks.trace);
        painter->setPen(row.quiet && !chosen ? inks.quiet : inks.word);
        const int edge = dress.px(2.2);
        drawFitted(*painter, option.rect.adjusted(edge, 0, -edge / 2, 0),
                   (column.number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter,
                   dress.letters(rowLetters, row.strong), row.cells.value(index.column()), 2);
    }

private:
    const LedgerTable& table_;
};

LedgerTable::LedgerTable(const QString& name, QWidget* parent)
    : QWidget{parent}, model_{new Model{this}}, view_{new View{this}}, up_{new Press{this}}, down_{new Press{this}} {
    setObjectName(name + QStringLiteral("Box"));
    view_->setObjectName(name);
    view_->setModel(model_);
    view_->setItemDelegate(new Paint{*this});
    view_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    view_->setSelectionMode(QAbstractItemView::SingleSelection);
    view_->verticalHeader()->hide();
    view_->setShowGrid(false);
    view_->setFrameShape(QFrame::NoFrame);
    view_->setVerticalScrollMode(QAbstractItemView::ScrollPerItem);
    view_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    view_->horizontalHeader()->setHighlightSections(false);
    view_->horizontalHeader()->setSectionsClickable(false);
    setFocusProxy(view_);
    for (Press* press : {up_, down_}) {
        press->setFocusPolicy(Qt::NoFocus);
        press->hide();
    }
    up_->setObjectName(QStringLiteral("pageUp"));
    down_->setObjectName(QStringLiteral("pageDown"));
    up_->say(QStringLiteral("▲"), {});
    down_->say(QStringLiteral("▼"), {});
    connect(up_, &Press::clicked, this, [this] { turn(-1); });
    connect(down_, &Press::clicked, this, [this] { turn(1); });
    connect(view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& now) {
        view_->viewport()->update();
        emit chosenChanged(now.row());
    });
    connect(view_, &QTableView::doubleClicked, this, [this](const QModelIndex& index) { emit opened(index.row()); });
}

LedgerTable::~LedgerTable() = default;

void LedgerTable::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    view_->setPalette(paletteOf(dress.look));
    view_->horizontalHeader()->setFont(dress.letters(mm::smallWords));
    view_->horizontalHeader()->setFixedHeight(dress.px(8));
    view_->horizontalHeader()->setStyleSheet(
        QStringLiteral("QHeaderView { border: none; background: %2; } QHeaderView::section { border: none; "
                       "border-bottom: 1px solid %1; background: %2; color: %3;"
                       " padding-left: %4px; padding-right: %5px; }")
            .arg(dress.inks().line.name(), dress.inks().panel.name(), dress.inks().quiet.name())
            .arg(dress.px(2.2))
            .arg(dress.px(1.1)));
    view_->verticalHeader()->setMinimumSectionSize(1);
    view_->verticalHeader()->setDefaultSectionSize(dress.px(mm::target));
    up_->wear(dress);
    down_->wear(dress);
    arrange();
}

int LedgerTable::count() const { return model_->rowCount(); }
const std::vector<TableRow>& LedgerTable::rows() const { return model_->lines; }

int LedgerTable::chosen() const {
    const QModelIndex now = view_->currentIndex();
    return now.isValid() ? now.row() : -1;
}

void LedgerTable::choose(int row) {
    if (row >= 0 && row < count())
        view_->selectRow(row);
}

void LedgerTable::display(const std::vector<TableColumn>& columns, const std::vector<TableRow>& rows) {
    if (columns == model_->columns && rows == model_->lines)
        return;
    const int before = chosen();
    const QString name = before >= 0 ? model_->lines[static_cast<std::size_t>(before)].cells.value(0) : QString{};
    model_->set(columns, rows);
    int again = rows.empty() ? -1 : std::min(std::max(before, 0), static_cast<int>(rows.size()) - 1);
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (!name.isEmpty() && rows[i].cells.value(0) == name)
            again = static_cast<int>(i);
    arrange();
    choose(again);
}

int LedgerTable::rowsShown() const {
    return std::max(1, (height() - view_->horizontalHeader()->height()) / std::max(1, dress_.px(mm::target)));
}

void LedgerTable::turn(int pages) {
    if (count() == 0)
        return;
    const int row = std::clamp(chosen() + pages * rowsShown(), 0, count() - 1);
    choose(row);
    view_->scrollTo(model_->index(row, 0),
                    pages > 0 ? QAbstractItemView::PositionAtTop : QAbstractItemView::PositionAtBottom);
}

void LedgerTable::arrange() {
    const bool turns = count() > rowsShown();
    const int side = dress_.px(mm::target), gap = dress_.px(mm::gap), head = view_->horizontalHeader()->height();
    // One over the other, or beside each other where there is no height for that.
    const bool beside = height() < head + 2 * side + gap;
    const int keys = turns ? side + gap + (beside ? side + gap : 0) : 0;
    up_->setVisible(turns);
    down_->setVisible(turns);
    const int wide = std::max(1, width() - keys);
    // No row is shown by half.
    const int high = head + rowsShown() * side;
    view_->setGeometry(0, 0, wide, std::min(std::max(high, 1), std::max(height(), 1)));
    down_->setGeometry(width() - side, beside ? std::max(0, height() - side) : head + side + gap, side, side);
    up_->setGeometry(beside ? down_->x() - side - gap : width() - side, beside ? down_->y() : head, side, side);
    fitColumns(wide);
}

void LedgerTable::fitColumns(int width) {
    const QFontMetrics small{dress_.letters(mm::smallWords)}, letters{dress_.letters(rowLetters, true)};
    const std::size_t all = model_->columns.size();
    std::vector<int> wants(all);
    for (std::size_t i = 0; i < all; ++i) {
        int widest = small.horizontalAdvance(model_->columns[i].head);
        for (const TableRow& row : model_->lines)
            widest = std::max(widest,
                              std::min(letters.horizontalAdvance(row.cells.value(static_cast<int>(i))), dress_.px(70)));
        wants[i] = widest + dress_.px(4.4);
    }
    const auto sum = [&] { return std::accumulate(wants.begin(), wants.end(), 0); };
    while (sum() > width) {
        std::size_t leaves = all;
        for (std::size_t i = 0; i < all; ++i)
            if (wants[i] > 0 && model_->columns[i].leaves > 0 &&
                (leaves == all || model_->columns[i].leaves > model_->columns[leaves].leaves))
                leaves = i;
        if (leaves == all)
            break;
        wants[leaves] = 0;
    }
    // What is left over goes to the words; what is missing is taken from them, where they stand in two lines.
    const int rest = width - sum();
    int words = 0;
    for (std::size_t i = 0; i < all; ++i)
        words += model_->columns[i].number ? 0 : wants[i];
    for (std::size_t i = 0; i < all; ++i) {
        const int more = model_->columns[i].number || words == 0 ? 0 : rest * wants[i] / words;
        view_->setColumnHidden(static_cast<int>(i), wants[i] == 0);
        view_->setColumnWidth(static_cast<int>(i), std::max(dress_.px(6), wants[i] + more));
    }
}

void LedgerTable::resizeEvent(QResizeEvent*) { arrange(); }

} // namespace panside
