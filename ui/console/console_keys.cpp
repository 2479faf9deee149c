// Which keys are the console's own, whatever has the focus.
#include "ui/board/across_view.h"
#include "ui/board/board.h"
#include "ui/console/console.h"
#include "ui/console/screens.h"
#include "ui/entry/entry_sheet.h"
#include "ui/entry/water_sheet.h"
#include "ui/look/typing.h"

#include <QApplication>
#include <QKeyEvent>

namespace panside {
namespace {

bool isPress(QEvent::Type type) {
    return type == QEvent::KeyPress || type == QEvent::MouseButtonPress || type == QEvent::TouchBegin ||
           type == QEvent::Wheel;
}

// An alarm that nobody could read has not been seen, and what nobody could read is not taken back.
bool answersWhatIsShown(Action action) { return action == Action::alarmSeen || action == Action::undo; }

} // namespace

// Seen before any widget sees it: a list that looks its rows up by their letters would eat the load of wood.
bool Console::eventFilter(QObject* watched, QEvent* event) {
    // Whatever was pressed may have hidden what had the focus.
    if (event->type() == QEvent::KeyRelease || event->type() == QEvent::MouseButtonRelease)
        QMetaObject::invokeMethod(this, &Console::holdFocus, Qt::QueuedConnection);
    const auto* widget = qobject_cast<QWidget*>(watched);
    if (!begun_ && widget && widget->window() == this) {
        if (isPress(event->type())) // what it means depends on the night
            begin();
        else if (event->type() == QEvent::Paint)
            QMetaObject::invokeMethod(this, &Console::begin, Qt::QueuedConnection);
    } else if (blind_ && event->type() == QEvent::Paint && widget && widget->window() == this) {
        blind_ = false; // the night is being painted
    }
    if (event->type() != QEvent::KeyPress)
        return QMainWindow::eventFilter(watched, event);
    if (!widget || QApplication::activeModalWidget())
        return QMainWindow::eventFilter(watched, event);
    const auto& key = static_cast<QKeyEvent&>(*event);
    if (QWidget* offered = QApplication::activePopupWidget()) { // words to choose from, a window of its own
        if (key.key() < Qt::Key_F1 || key.key() > Qt::Key_F12)
            return QMainWindow::eventFilter(watched, event);
        offered->close();
        return goesByKey(key);
    }
    if (widget->window() != this)
        return QMainWindow::eventFilter(watched, event);
    return takesKey(key) || QMainWindow::eventFilter(watched, event);
}

bool Console::takesKey(const QKeyEvent& event) {
    const auto held = event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier);
    if (held == Qt::ControlModifier)
        return goesByDigit(event);
    if (held != Qt::NoModifier || event.isAutoRepeat())
        return false;
    if (goesByKey(event))
        return true;
    if (event.key() == Qt::Key_Escape && board_->across().isVisible()) {
        board_->across().hide();
        return true;
    }
    const QWidget* focused = QApplication::focusWidget();
    if (hasSheet() || takesLetters(focused) || hasKeysOfItsOwn(focused))
        return false;
    if (!takesDigits(focused) && goesByDigit(event))
        return true;
    if (event.key() == Qt::Key_Question) {
        openScreen(Action::help);
        return true;
    }
    const Picture& picture = board_->picture();
    const auto action = actionOf(event, picture.drawing, picture.litAt.has_value());
    if (!action)
        return false;
    // The load's key, which lights the fire as long as none burns, reaches as far then.
    const Action itsKey = *action == Action::fireLit && event.key() == Qt::Key_F ? Action::fired : *action;
    if (rowOf(itsKey).reach != KeyReach::everywhere)
        return false;
    if (blind_ && answersWhatIsShown(*action))
        return true;
    act(*action);
    return true;
}

// The F-keys only ever change the place, or how it looks.
bool Console::goesByKey(const QKeyEvent& event) {
    for (const PlaceRow& row : railPlaces())
        if (row.key == event.key()) {
            goTo(row.place);
            return true;
        }
    if (event.key() == Qt::Key_F12) { // what A says, from inside a field
        if (!blind_)
            seen();
    } else if (event.key() == Qt::Key_F9)
        act(Action::dayOrNight);
    else if (event.key() == Qt::Key_F11)
        act(Action::acrossTheRoom);
    else
        return false;
    return true;
}

bool Console::goesByDigit(const QKeyEvent& event) {
    const int digit = event.key() - Qt::Key_0;
    if (digit < 1 || digit > 9)
        return false;
    for (const FrameTab& tab : tabsOf(screenRow(shown_)->place, withJournal(), this))
        if (tab.digit == digit) {
            openScreen(tab.screen);
            return true;
        }
    return false;
}

} // namespace panside
