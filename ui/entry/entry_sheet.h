#pragma once
#include "ui/entry/unit_slip.h"
#include "ui/look/dress.h"

#include <QFrame>

class QLabel;

namespace panside {

class TypedLine;
class Press;

// The sheet in which an action is entered: by the keyboard, the number block, or the pad on the screen. Enter keeps it,
// Escape leaves; Enter never answers a question. It is not modal: the numbers beside it go on, and when an alarm comes
// it is put aside with what was typed.
class EntrySheet : public QFrame {
    Q_OBJECT
public:
    explicit EntrySheet(QWidget* parent = nullptr);

    // Opens on a form; the focus is in the first field, or on the key that keeps it where there is none.
    void open(const EntryForm& form, Units units, const WallClock& clock);
    void wear(const Dress& dress);
    const EntryForm& form() const { return form_; }
    // Goes out of the way; what was typed stays, and resume() brings it back.
    void putAside();
    bool isPutAside(Action action) const { return aside_ && form_.action == action; }
    void resume();
    void takeFocus();

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
    QWidget* offersFor(std::size_t index);
    void chooseKind(const QString& kind);
    bool answers(const QKeyEvent& event); // a letter that stands on an answer, a scale or a kind
    bool typesUnit(const QKeyEvent& event);
    bool choosesKind(const QKeyEvent& event);
    QWidget* timeRow();
    QWidget* crewRow();
    QWidget* pad();
    Press* key(const QString& text, const QString& name, const QString& shortcut = {});
    QLayout* endRow();
    void typeInto(const QString& text);
    void sayWhatItWrites();
    void keep();
    // A question, or what is wrong, at the field it is about.
    void putForward(const EntryProblem& problem);
    void ask(bool asked);
    // One or two answers instead of the key that keeps it, until one is pressed or something else is typed.
    enum class Question { none, seaLevel, slip, loss, twice };
    void put(Question question, const QString& words, const QString& field, const QString& yes, const QString& other);
    void withdrawQuestion();
    void answerYes();
    void answerOther();
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
    Press* leave_ = nullptr;
    Press* keep_ = nullptr;
    Press* yes_ = nullptr;   // it is as it was typed
    Press* other_ = nullptr; // it was meant otherwise
    bool asked_ = false;     // what is missing was asked for: keeping it now leaves it out
    bool sure_ = false;      // the slip was answered: it is as typed
    bool aside_ = false;
    Question question_ = Question::none;
    std::optional<UnitSlip> slip_;
    std::vector<TypedLine*> lines_;
    TypedLine* typing_ = nullptr; // where the pad typed last
};

} // namespace panside
