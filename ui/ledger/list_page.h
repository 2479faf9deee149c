#pragma once
// A page that is a list: what is to be said of the chosen row in letters that are read at the pan, the list, a row of
// keys. It shows a view and says what was pressed; which leaf it is, its desk knows.
#include "ui/ledger/ledger_table.h"
#include "ui/page/action_keys.h"

class QLabel;

namespace panside {

struct ListView {
    struct Said {
        QString words, notes; // of a row
        bool operator==(const Said&) const = default;
    };
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
    std::vector<Said> said; // of each row; fewer: nothing is said of the others
    QString head, notes;    // where the chosen row has none
    std::vector<PageKey> keys;
    bool operator==(const ListView&) const = default;
};

class ListPage : public QWidget {
    Q_OBJECT
public:
    explicit ListPage(const QString& name, QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const ListView& view);
    const ListView& view() const { return view_; }
    int chosen() const { return table_->chosen(); }
    void choose(int row) { table_->choose(row); }
    QString headline() const;
    // Its keys are answered there too.
    void answerFor(QWidget& other) { keys_->answerFor(other); }

signals:
    void pressed(int key); // one of the keys; Enter on a row is Qt::Key_Return

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    int room() const;
    void letter();
    void sayChosen();
    Dress dress_;
    ListView view_;
    QLabel *head_, *notes_;
    LedgerTable* table_;
    ActionKeys* keys_;
};

} // namespace panside
