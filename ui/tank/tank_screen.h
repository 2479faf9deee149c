#pragma once
// The tank page: dip the tank by hand, tell its shape; measure the woodpile and say what a cord costs.
#include "ui/look/dress.h"
#include "ui/tank/tank_form.h"

#include <QWidget>

class QGridLayout;
class QHBoxLayout;
class QLabel;

namespace panside {

class TypedLine;
class Press;

class TankScreen : public QWidget {
    Q_OBJECT
public:
    explicit TankScreen(QWidget* parent = nullptr);
    void display(const Yard& yard, Units units, const Dress& dress);
    // What is known now; the fields are left alone. `sapSince`: sap was entered since the level was last read.
    void follow(const Picture& picture, bool sapSince, Instant now);
    void say(const QString& words);

signals:
    void yardWanted(const panside::Yard& yard);
    void dipped(const panside::Fact& fact);
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    TypedLine* field(const QString& name, const QString& label, const QString& answer, Unit unit, QHBoxLayout* row,
                     bool wide = false);
    void addDip(QGridLayout* grid);
    void addTank(QGridLayout* grid);
    void addPile(QGridLayout* grid);
    void turnKind();
    void keepYard();
    void keepDip();
    void sayDip();

    Yard yard_;
    TankForm form_;
    Units units_ = Units::us;
    Dress dress_;
    bool pileTyped_ = false; // since it was kept
    Picture picture_;
    bool sapSince_ = false;
    Instant now_{};
    QWidget* inside_ = nullptr;
    TypedLine* dip_ = nullptr;
    QLabel *comes_ = nullptr, *odd_ = nullptr, *said_ = nullptr, *holds_ = nullptr, *stacked_ = nullptr,
           *stands_ = nullptr;
};

} // namespace panside
