#pragma once
#include "ui/look/dress.h"
#include "ui/review/review_view.h"

#include <QWidget>

namespace panside {

class ActionKeys;
class LedgerTable;

// The keys of what can be done with the night that the list stands on. The list itself stands beside the chart, where
// whoever shows this pane puts it.
class ShiftsPane : public QWidget {
    Q_OBJECT
public:
    explicit ShiftsPane(QWidget* parent = nullptr);

    LedgerTable* list() { return list_; }
    void wear(const Dress& dress);
    // Stands on the same shift as before. False: nothing is new.
    bool display(const std::vector<ReviewRow>& rows);
    const std::vector<ReviewRow>& rows() const { return rows_; }
    // Which one the chart shows: its row is bold.
    void tellOpened(ShiftId shift);
    std::optional<ShiftId> chosen() const;
    void step(int by);
    // From which moment the others are laid over, on its key.
    void sayFrom(const QString& word);

signals:
    void wanted(int key); // by finger or mouse

private:
    void fill();

    std::vector<ReviewRow> rows_;
    std::optional<ShiftId> opened_;
    LedgerTable* list_;
    ActionKeys* keys_;
};

} // namespace panside
