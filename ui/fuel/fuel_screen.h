#pragma once
// The fuel page, in two faces: loads, stack and water boiled off beneath each other with where the heat went; and how
// the boil ends, with what would change it.
#include "ui/chart/shift_trace.h"
#include "ui/fuel/fuel_view.h"
#include "ui/look/dress.h"

#include <QWidget>
#include <array>

namespace panside {

class Press;

class FuelScreen : public QWidget {
    Q_OBJECT
public:
    enum class Face { account, plan };

    explicit FuelScreen(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    // `trace` is looked at whenever the screen is painted: it must outlive it.
    void display(const FuelView& view, const ShiftTrace& trace, Instant now);
    const FuelView& view() const { return view_; }
    void turnTo(Face face);
    Face face() const { return face_; }
    // What the person asks of the plan: how much more sap, how much harder a fire.
    PlanSteps steps() const { return steps_; }

signals:
    void left();
    void stepsChanged();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void name();
    void step(int sap, int fire);
    void paintAccount(QPainter& painter, QRect room);
    void paintPlan(QPainter& painter, QRect room);
    // How much larger than on the smallest screen: a large one is read from further away.
    double larger() const;
    int foot() const;

    FuelView view_;
    const ShiftTrace* trace_ = nullptr;
    Instant now_{};
    Dress dress_;
    Face face_ = Face::account;
    PlanSteps steps_;
    Press* turn_;
    std::array<Press*, 4> stepKeys_; // less and more sap, softer and harder fire
};

} // namespace panside
