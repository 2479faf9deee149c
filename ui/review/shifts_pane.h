#pragma once
#include "ui/look/dress.h"
#include "ui/review/review_view.h"

#include <QWidget>
#include <functional>

class QKeyEvent;
class QTableWidget;

namespace panside {

class Press;

// The shifts so far, a row each, and the keys of what can be done with the one that the list stands on.
class ShiftsPane : public QWidget {
    Q_OBJECT
public:
    // `press`: what a key pressed in the list does, true where it does something; asked before the list itself, which
    // would search by letter and keep Enter. Up and down are the list's own.
    explicit ShiftsPane(std::function<bool(const QKeyEvent&)> press, QWidget* parent = nullptr);

    void wear(const Dress& dress);
    // Stands on the same shift as before. False: nothing is new.
    bool display(const std::vector<ReviewRow>& rows);
    const std::vector<ReviewRow>& rows() const { return rows_; }
    std::optional<ShiftId> chosen() const;
    void step(int by);
    // From which moment the others are laid over, on its key.
    void sayFrom(const QString& word);

signals:
    void wanted(int key); // by finger or mouse

protected:
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void name();

    std::function<bool(const QKeyEvent&)> press_;
    std::vector<ReviewRow> rows_;
    QTableWidget* table_;
    Press *open_, *lay_, *from_, *forecasts_, *export_;
};

} // namespace panside
