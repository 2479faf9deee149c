#pragma once
#include "ui/look/dress.h"
#include "ui/season/season_pictures.h"
#include "ui/season/season_view.h"

#include <QWidget>
#include <functional>

class QLabel;
class QTableView;

namespace panside {

class SeasonModel;
class TypedLine;

// The season's table: a row a shift, its totals below it that scroll along, a picture of one column above it, and a
// line that filters. What of a season it shows, and what a key does to that, is the screen's business.
class SeasonTableLeaf : public QWidget {
    Q_OBJECT
public:
    // `act`: what a key pressed in the table does, true where it does something; asked before the table itself, which
    // would search by letter and keep Enter. Up and down are the table's own.
    explicit SeasonTableLeaf(std::function<bool(int key)> act, QWidget* parent = nullptr);
    void wear(const Dress& dress);
    // Stands on the same shift as before where it is still shown. The heading of `column` stands out.
    void display(SeasonTable table, int column);
    const SeasonTable& table() const { return shown_; }
    void drawCurve(SeasonCurve curve);
    void goToColumn(int column);
    void mark(const std::vector<Instant>& marked);
    std::optional<Instant> chosen() const;
    void askFilter();

signals:
    void filtered(const QString& text);
    void chosenChanged();
    void headingPressed(int column);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void placeTables();
    void fitColumns();
    void name();

    std::function<bool(int)> act_;
    Dress dress_;
    SeasonTable shown_;
    QLabel* title_;
    TypedLine* filter_;
    SeasonPicture* curve_;
    SeasonModel *model_, *sums_;
    QTableView *table_, *totals_;
};

} // namespace panside
