#pragma once
// The desk of a screen: fetches what the screen shows and does to the shift and the journal what is pressed there.
#include "ui/frame/shell.h"

#include <QCoreApplication>
#include <QWidget>

namespace panside {

class Desk : public QObject {
    Q_DECLARE_TR_FUNCTIONS(panside::Desk)
public:
    // The desk goes with its screen.
    Desk(Shell& shell, QWidget* screen) : QObject{screen}, shell_{shell}, screen_{screen} {}
    QWidget* screen() const { return screen_; }
    // Called before the screen is shown.
    virtual void open() {}
    // Called after it: a screen whose leaves have tabs of their own turns to this one.
    virtual void openLeaf(Action) {}
    // Sizes, colours, units and language, now and whenever they change.
    virtual void wear(const Dress& dress) = 0;

protected:
    // For a screen with a way back to the board.
    template <class Screen>
    void leavesFrom(Screen* screen) {
        connect(screen, &Screen::left, this, [this] { shell_.showBoard(); });
    }
    Session& session() const { return shell_.session(); }
    Units units() const { return shell_.choices().units; }
    // Changes one choice of the person's.
    template <class Change>
    void choose(Change&& change) {
        auto choices = shell_.choices();
        change(choices);
        shell_.choose(std::move(choices));
    }
    Shell& shell_;

private:
    QWidget* screen_;
};

} // namespace panside
