#pragma once
// The list of a page: a finger's height a row, a rule under each, numbers at the right, the chosen row told by its
// ground and its edge. Longer than the page it turns whole pages. Letters pass through to the page.
#include "ui/look/dress.h"

#include <QStringList>
#include <QWidget>
#include <vector>

class QTableView;

namespace panside {

class Press;

struct TableColumn {
    QString head;
    bool number = false;
    int leaves = 0; // where it is narrow, columns with the highest number leave first; 0 never
    bool operator==(const TableColumn&) const = default;
};
struct TableRow {
    QStringList cells;
    bool strong = false, quiet = false;
    bool operator==(const TableRow&) const = default;
};

class LedgerTable : public QWidget {
    Q_OBJECT
public:
    explicit LedgerTable(const QString& name, QWidget* parent = nullptr);
    ~LedgerTable() override;
    void wear(const Dress& dress);
    // The chosen row stays where its first cell is found again.
    void display(const std::vector<TableColumn>& columns, const std::vector<TableRow>& rows);
    int chosen() const; // -1: none
    void choose(int row);
    int count() const;
    const std::vector<TableRow>& rows() const;

signals:
    void chosenChanged(int row);
    void opened(int row); // by Enter, or twice by the finger

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    class Model;
    class View;
    class Paint;
    void arrange();
    void fitColumns(int width);
    void turn(int pages);
    int rowsShown() const;
    Dress dress_;
    Model* model_;
    View* view_;
    Press *up_, *down_;
};

} // namespace panside
