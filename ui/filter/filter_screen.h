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

// The gauge is typed at the top; below it the run and the runs before. Whoever touches the line has no
// keyboard at hand: digits come in the picture's place until a figure is kept.
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

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void give();
    void showPad(bool shown);
    void name();
    QHBoxLayout* across_;
    QLabel* label_;
    TypedLine* gauge_;
    Press* keep_;
    ListPage* list_;
    FilterPicture* picture_;
    Pad* pad_ = nullptr; // made anew for each dress
    bool running_ = false, padShown_ = false, hasCurve_ = false;
};

} // namespace panside
