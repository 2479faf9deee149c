// Random keys, clicks, sizes, languages and looks: whatever is pressed, there is no crash and no wait, and a load of
// wood can always be kept.
#include "tests/battery/console/house.h"
#include "tests/battery/console/program.h"
#include "ui/frame/frame_view.h"

#include <QAbstractButton>
#include <QApplication>
#include <QDialog>
#include <QElapsedTimer>
#include <QTest>
#include <array>

namespace battery {
namespace {

using namespace panside;

constexpr double tooLong = 200; // milliseconds that nothing may take
#ifdef PANSIDE_SANITIZED
constexpr double slower = 5; // the sanitizers make it so much slower, roughly
#else
constexpr double slower = 1;
#endif

std::string nameOf(const QWidget& widget) {
    return widget.metaObject()->className() + (" " + widget.objectName().toStdString()) +
           (widget.parentWidget() ? " in " + widget.parentWidget()->objectName().toStdString() : "");
}

// Which of those it lies in is hidden, innermost first.
std::string unseenOf(const QWidget& widget) {
    std::string said;
    for (const QWidget* at = &widget; at; at = at->parentWidget())
        if (at->isHidden())
            said += ", hidden: " + nameOf(*at);
    return said;
}

class Hands : public QObject {
public:
    Hands(House& house, std::uint64_t dice, int all, bool judgesTime)
        : house_{house}, random_{dice}, left_{all}, judgesTime_{judgesTime} {
        next();
    }
    const std::string& wrong() const { return wrong_; }
    double longest() const { return longest_; }
    const std::string& longestAt() const { return longestAt_; }

private:
    int upTo(int most) { return static_cast<int>(random_() % static_cast<std::uint64_t>(most)); }
    // A timer of its own each time: a dialog's own loop lies within the call that opened it. Not at once: what was
    // posted before comes before.
    void next() {
        QTimer::singleShot(1, this, [this] { step(); });
    }
    void fail(const std::string& what) {
        if (wrong_.empty())
            wrong_ = what + " (" + std::to_string(left_) + " to go, after " + lately() + ")";
    }
    std::string lately() const {
        std::string all;
        for (const auto& one : lately_)
            all += (all.empty() ? "" : ", ") + one;
        return all;
    }
    void did(std::string what) {
        lately_.push_back(std::move(what));
        if (lately_.size() > 12)
            lately_.erase(lately_.begin());
    }

    void step() {
        // Keys are pressed and waited for in one go there, unless they open a dialog.
        if (keeping_ && !QApplication::activeModalWidget())
            return next();
        if (turn_) {
            const double took = turn_->milliseconds(), worked = turn_->atWork();
            if (took > longest_)
                longest_ = took, longestAt_ = (lately_.empty() ? "" : lately_.back()) + ", at work " +
                                              std::to_string(static_cast<int>(worked));
            // On a busy machine a disk may be waited for; at work itself it may not be.
            if (judgesTime_ && (worked > tooLong * slower || took > 10 * tooLong))
                fail("nothing moved for " + std::to_string(static_cast<int>(took)) + " ms, at work " +
                     std::to_string(static_cast<int>(worked)));
        }
        turn_.reset();
        if (--left_ <= 0 || !wrong_.empty())
            return leave();
        next();
        if (!QApplication::activeModalWidget() && !QApplication::activePopupWidget()) {
            if (QApplication::activeWindow() != house_.console.get())
                house_.console->activateWindow();
            else if (left_ % 40 == 0)
                return keepALoad();
            else
                lookAtFocus();
        }
        turn_.emplace();
        press();
    }
    void leave() {
        if (QWidget* open = QApplication::activePopupWidget() ? QApplication::activePopupWidget()
                                                              : QApplication::activeModalWidget()) {
            next();
            left_ = 0;
            if (auto* dialog = qobject_cast<QDialog*>(open))
                dialog->reject();
            else
                open->close();
            return;
        }
        QApplication::quit();
    }

    // Somewhere that is seen and takes keys.
    void lookAtFocus() {
        const QWidget* focus = QApplication::focusWidget();
        if (!focus)
            fail("nothing has the focus; the window's own is " +
                 (house_.console->focusWidget() ? nameOf(*house_.console->focusWidget()) : std::string{"none"}));
        else if (!focus->isVisible() || !focus->isEnabled())
            fail("the focus is where nothing is seen: " + nameOf(*focus) + unseenOf(*focus));
    }

    QWindow* window() const {
        QWidget* widget = QApplication::activePopupWidget();
        if (!widget)
            widget = QApplication::activeModalWidget();
        if (!widget)
            widget = house_.console.get();
        return widget->windowHandle();
    }
    void key(int code, Qt::KeyboardModifiers held = Qt::NoModifier) {
        did(QKeySequence{code | static_cast<int>(held)}.toString().toStdString());
        if (QWindow* to = window())
            QTest::keyClick(to, static_cast<Qt::Key>(code), held);
    }

    // Escape leaves what is open, F3 goes to the board, F and Enter keep a load: from anywhere.
    void keepALoad() {
        keeping_ = true;
        pressForALoad();
        keeping_ = false;
    }
    void pressForALoad() {
        for (int i = 0; i < 3 && !QApplication::activeModalWidget(); ++i)
            key(Qt::Key_Escape);
        key(Qt::Key_F3);
        const Instant before = house_.session->now();
        key(Qt::Key_F);
        key(Qt::Key_Return);
        const Fact* last = house_.session->lastEntered();
        const bool isLoad =
            last && (std::holds_alternative<Fired>(last->what) || std::holds_alternative<Lit>(last->what));
        if (!isLoad || last->at < before)
            fail("F and Enter on the board kept no load");
    }

    void press() {
        const int what = upTo(100);
        if (what < 62)
            pressKey();
        else if (what < 88)
            click();
        else if (what < 92)
            resize();
        else
            choose();
    }
    void pressKey() {
        static constexpr std::array others{
            Qt::Key_Tab,      Qt::Key_Backtab,  Qt::Key_Space,     Qt::Key_Return, Qt::Key_Enter, Qt::Key_Up,
            Qt::Key_Down,     Qt::Key_Left,     Qt::Key_Right,     Qt::Key_Home,   Qt::Key_End,   Qt::Key_PageUp,
            Qt::Key_PageDown, Qt::Key_Delete,   Qt::Key_Backspace, Qt::Key_Plus,   Qt::Key_Minus, Qt::Key_Period,
            Qt::Key_Comma,    Qt::Key_Question, Qt::Key_Escape};
        const int kind = upTo(10);
        if (kind < 3)
            key(Qt::Key_A + upTo(26));
        else if (kind < 5)
            key(Qt::Key_0 + upTo(10));
        else if (kind < 7)
            key(Qt::Key_F1 + upTo(12));
        else if (kind == 7)
            key(Qt::Key_0 + upTo(10), Qt::ControlModifier);
        else if (kind == 8)
            key(others[static_cast<std::size_t>(upTo(static_cast<int>(others.size())))],
                upTo(4) == 0 ? Qt::ShiftModifier : Qt::NoModifier);
        else
            key(Qt::Key_Escape);
    }
    void click() {
        QWindow* to = window();
        QWidget* widget = QWidget::find(to ? to->winId() : 0);
        if (!to || !widget)
            return;
        QPoint at{upTo(std::max(1, to->width())), upTo(std::max(1, to->height()))};
        if (upTo(3) > 0) { // most clicks are meant for something
            QList<QAbstractButton*> seen;
            for (auto* button : widget->findChildren<QAbstractButton*>())
                if (button->isVisible())
                    seen << button;
            if (!seen.isEmpty()) {
                auto* button = seen[upTo(static_cast<int>(seen.size()))];
                at = button->mapTo(widget, button->rect().center());
            }
        }
        const auto* under = widget->childAt(at);
        did("click on " + (under ? under->objectName().toStdString() : std::string{"nothing"}));
        const auto which = upTo(12) == 0 ? Qt::RightButton : Qt::LeftButton;
        if (upTo(8) == 0)
            QTest::mouseDClick(to, which, Qt::NoModifier, at);
        else
            QTest::mouseClick(to, which, Qt::NoModifier, at);
    }
    void resize() {
        static constexpr std::array<QSize, 5> sizes{
            QSize{1024, 600}, {1366, 768}, {1920, 1080}, {2560, 1440}, {800, 480}};
        const QSize size =
            upTo(2) ? sizes[static_cast<std::size_t>(upTo(5))] : QSize{640 + upTo(2000), 420 + upTo(1100)};
        did("size " + std::to_string(size.width()) + " by " + std::to_string(size.height()));
        house_.console->resize(size);
    }
    void choose() {
        Choices choices = house_.console->choices();
        const int what = upTo(3);
        did("choice " + std::to_string(what));
        if (what == 0)
            choices.language = choices.language == QLatin1String("fr") ? QStringLiteral("en") : QStringLiteral("fr");
        else if (what == 1)
            choices.look = choices.look == Look::day ? Look::night : Look::day;
        else
            choices.units = choices.units == Units::us ? Units::metric : Units::us;
        house_.console->choose(choices);
    }

    House& house_;
    std::mt19937_64 random_;
    int left_;
    bool judgesTime_, keeping_ = false;
    std::optional<Turn> turn_;
    double longest_ = 0;
    std::string longestAt_, wrong_;
    std::vector<std::string> lately_;
};

} // namespace

std::string randomHands(const Case& c) {
    putNightsInto(c.folder / "house.journal", 2);
    const std::uint64_t dice = c.random();
    return inAProcessOfItsOwn(c, [&](Program& program) {
        House house{c.folder, dice};
        std::string thrown;
        program.failed = [&](const QString& words) { thrown = words.toStdString(); };
        house.console->resize(1366, 768);
        house.console->show();
        if (!QTest::qWaitForWindowActive(house.console.get()))
            return std::string{"no window came"};
        Hands hands{house, dice, c.brief ? 150 : 1500, !c.brief};
        QApplication::exec();
        program.failed = {};
        house.probe.stop();
        std::string wrong = hands.wrong();
        if (wrong.empty() && !thrown.empty())
            wrong = "thrown: " + thrown;
        if (!house.session->flush() && wrong.empty())
            wrong = "not kept in the end";
        if (std::getenv("BATTERY_TELLS"))
            std::fprintf(stderr, "case %d: longest turn %.0f ms, at %s\n", c.number, hands.longest(),
                         hands.longestAt().c_str());
        return wrong;
    });
}

} // namespace battery
