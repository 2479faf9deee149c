#pragma once
#include "ui/season/season_view.h"

#include <QAbstractTableModel>
#include <QFont>

namespace panside {

// A season's table for Qt's own view: only what shows is asked for, however many shifts there are.
class SeasonModel : public QAbstractTableModel {
    Q_OBJECT
public:
    using QAbstractTableModel::QAbstractTableModel;
    void display(QStringList headings, std::vector<SeasonLine> lines);
    void mark(std::vector<Instant> marked);
    void choose(int column); // its heading stands out
    void setStrong(const QFont& strong) { strong_ = strong; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    const std::vector<SeasonLine>& lines() const { return lines_; }
    // How wide the widest of a column's words is.
    int widthOf(int column, const QFont& font) const;

private:
    bool isMarked(Instant shift) const;
    QStringList headings_;
    std::vector<SeasonLine> lines_;
    std::vector<Instant> marked_;
    QFont strong_;
    int chosen_ = 0;
};

} // namespace panside
