#pragma once
#include "core/boil/fact.h"
#include "ui/look/dress.h"
#include "ui/look/press.h"
#include "ui/look/wall_clock.h"

#include <QFrame>
#include <span>
#include <utility>

class QHBoxLayout;
class QLabel;

namespace panside {

class Pad;

// What the sheets have in common in which something is entered: by the keyboard, the number block, or the pad on the
// screen. Enter keeps it, Escape leaves; a key held down, or a glove that taps twice, answers no question. They are not
// modal: the numbers beside them go on, and when an alarm comes they are put aside with what was typed.
class FormSheet : public QFrame {
    Q_OBJECT
public:
    // Goes out of the way; what was typed stays, and whoever resumes it brings it back.
    void putAside();
    bool isAside() const { return aside_; }

signals:
    void kept(const std::vector<panside::Fact>& facts);
    void left();

protected:
    explicit FormSheet(const QString& name, QWidget* parent);
    void keyPressEvent(QKeyEvent* event) override;
    virtual void keep() = 0;
    virtual void say() = 0;          // what it will write, as it stands
    virtual Duration& earlier() = 0; // than the key was pressed

    bool isLow() const { return dress_.isLow(height()); }
    Press* key(const QString& text, const QString& name, const QString& shortcut = {});
    // Now, or so much earlier at each press.
    QHBoxLayout* whenRow(std::span<const std::pair<QString, Duration>> steps);
    void sayWhen();
    QHBoxLayout* endRow();
    Pad* makePad();
    void leave();

    Dress dress_;
    WallClock clock_;
    QWidget* inside_ = nullptr;
    QLabel *writes_ = nullptr, *problem_ = nullptr;
    Press *leave_ = nullptr, *keep_ = nullptr, *now_ = nullptr;
    bool aside_ = false;
};

} // namespace panside
