#pragma once
#include "ui/entry/entry_form.h"
#include "ui/look/dress.h"

#include <QFrame>

class QLabel;
class QLineEdit;

namespace panside {

class Press;

// The small sheet in which an action is entered: by the keyboard, the number block, or the pad on the screen. Enter
// keeps it, Escape leaves. It is not modal: the numbers beside it go on, and so do the alarms.
class EntrySheet : public QFrame {
    Q_OBJECT
public:
    explicit EntrySheet(QWidget* parent = nullptr);

    // Opens on a form; the focus is in the first field, or on the key that keeps it where there is none.
    void open(const EntryForm& form, Units units, const WallClock& clock);
    void wear(const Dress& dress);
    const EntryForm& form() const { return form_; }

signals:
    void kept(const std::vector<panside::Fact>& facts);
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    QWidget* fieldRow(std::size_t index);
    QWidget* kindsOfReading(std::size_t index);
    void chooseKind(const QString& kind);
    bool choosesKind(const QKeyEvent& event); // a letter that stands on a kind
    QWidget* timeRow();
    QWidget* crewRow();
    QWidget* pad();
    Press* key(const QString& text, const QString& name, const QString& shortcut = {});
    void typeInto(const QString& text);
    void sayWhatItWrites();
    void keep();
    // A question, or what is wrong, at the field it is about.
    void putForward(const EntryProblem& problem);
    void ask(bool asked);
    // Two keys instead of the one that keeps it, until one is pressed or something else is typed.
    void askSeaLevel(const SeaLevelQuestion& question);
    void withdrawSeaLevel();
    void hand(const std::vector<Fact>& facts);
    void focusOn(const QString& field);
    void leave();
    void stepEarlier(Duration by);
    void unitOfReading(const QString& reading);

    EntryForm form_{};
    Units units_ = Units::us;
    Dress dress_;
    WallClock clock_;
    QWidget* inside_ = nullptr;
    QLabel* writes_ = nullptr;
    QLabel* problem_ = nullptr;
    Press* keep_ = nullptr;
    Press* here_ = nullptr;     // it is the pressure at the pan
    Press* reported_ = nullptr; // it is a weather report's
    bool asked_ = false;        // what is missing was asked for: keeping it now leaves it out
    std::vector<QLineEdit*> lines_;
    QLineEdit* typing_ = nullptr; // where the pad typed last
};

} // namespace panside
