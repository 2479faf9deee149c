#pragma once
// The fuel page: loads, stack and water boiled off beneath each other, where the heat went, and how the boil ends.
#include "ui/chart/shift_trace.h"
#include "ui/fuel/fuel_view.h"
#include "ui/look/dress.h"

#include <QWidget>

namespace panside {

class Press;

class FuelScreen : public QWidget {
    Q_OBJECT
public:
    explicit FuelScreen(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    // `trace` is looked at whenever the screen is painted: it must outlive it.
    void display(const FuelView& view, const ShiftTrace& trace, Instant now, Units units);
    const FuelView& view() const { return view_; }

signals:
    void left();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void name();

    FuelView view_;
    const ShiftTrace* trace_ = nullptr;
    Instant now_{};
    Units units_ = Units::us;
    Dress dress_;
    Press* back_;
};

} // namespace panside
