#pragma once
#include "ui/ledger/list_page.h"

class QLabel;

namespace panside {

class FilterPicture;
struct FilterChart;
class Press;
class TypedLine;

// The gauge is typed at the top; below it the run and the runs before.
class FilterScreen : public QWidget {
    Q_OBJECT
public:
    explicit FilterScreen(QWidget* parent = nullptr);
    void wear(const Dress& dress, const QString& unit);
    void display(const ListView& view, const FilterChart& chart, bool running);
    ListPage& list() { return *list_; }

signals:
    void gaugeTyped(const QString& number);
    void pressed(int key);

private:
    void give();
    void name();
    QLabel* label_;
    TypedLine* gauge_;
    Press* keep_;
    ListPage* list_;
    FilterPicture* picture_;
};

} // namespace panside
