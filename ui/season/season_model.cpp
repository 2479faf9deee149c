#include "ui/season/season_model.h"

#include <QFontMetrics>
#include <algorithm>

namespace panside {

void SeasonModel::display(QStringList headings, std::vector<SeasonLine> lines) {
    beginResetModel();
    headings_ = std::move(headings);
    lines_ = std::move(lines);
    endResetModel();
}

void SeasonModel::mark(std::vector<Instant> marked) {
    marked_ = std::move(marked);
    if (!lines_.empty())
        emit dataChanged(index(0, 0), index(static_cast<int>(lines_.size()) - 1, 0));
}

void SeasonModel::choose(int column) {
    chosen_ = column;
    if (!headings_.empty())
        emit headerDataChanged(Qt::Horizontal, 0, static_cast<int>(headings_.size()) - 1);
}

bool SeasonModel::isMarked(Instant shift) const { return std::ranges::find(marked_, shift) != marked_.end(); }

int SeasonModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}
int SeasonModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(headings_.size());
}

QVariant SeasonModel::data(const QModelIndex& index, int role) const {
    const SeasonLine& line = lines_[static_cast<std::size_t>(index.row())];
    const bool words = index.column() == 0 || index.column() + 1 == columnCount();
    switch (role) {
    case Qt::DisplayRole: {
        const QString text = line.cells.value(index.column());
        return index.column() == 0 && isMarked(line.shift) ? QStringLiteral("● ") + text : text;
    }
    case Qt::TextAlignmentRole:
        return static_cast<int>((words ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    case Qt::FontRole:
        return isMarked(line.shift) ? QVariant{strong_} : QVariant{};
    default:
        return {};
    }
}

QVariant SeasonModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::DisplayRole)
        return section == chosen_ ? QStringLiteral("▸ ") + headings_.value(section) : headings_.value(section);
    if (role == Qt::FontRole && section == chosen_)
        return strong_;
    return {};
}

int SeasonModel::widthOf(int column, const QFont& font) const {
    const QFontMetrics metrics{font};
    int widest = 0;
    for (const QString& line : headings_.value(column).split(u'\n'))
        widest = std::max(widest, QFontMetrics{strong_}.horizontalAdvance(QStringLiteral("▸ ") + line));
    QString longest; // digits are of one width: the longest text is the widest
    for (const SeasonLine& line : lines_)
        if (line.cells.value(column).size() > longest.size())
            longest = line.cells.value(column);
    return std::max(widest, metrics.horizontalAdvance(longest) + (column == 0 ? metrics.horizontalAdvance("● ") : 0));
}

} // namespace panside
