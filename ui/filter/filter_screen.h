#pragma once
#include "ui/ledger/list_page.h"

class QHBoxLayout;
class QLabel;

namespace panside {

class FilterPicture;
class Pad;
struct FilterChart;
class Press;
class TypedLine;

// The gauge is typed at the top, by the pad too while a run goes on; below it the run and the runs before.
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
    QHBoxLayout* across_;
    QLabel* label_;
    TypedLine* gauge_;
    Press* keep_;
    ListPage* list_;
    FilterPicture* picture_;
    Pad* pad_ = nullptr; // while a run goes on; made anew for each dress
    bool running_ = false;
};

} // namespace panside
