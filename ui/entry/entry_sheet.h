#pragma once
#include "ui/entry/form_sheet.h"
#include "ui/entry/unit_slip.h"

namespace panside {

class TypedLine;

// The sheet in which an action is entered. Enter never answers a question.
class EntrySheet : public FormSheet {
    Q_OBJECT
public:
    explicit EntrySheet(QWidget* parent = nullptr);

    // Opens on a form; the focus is in the first field, or on the key that keeps it where there is none.
    void open(const EntryForm& form, Units units, const WallClock& clock);
    void wear(const Dress& dress);
    const EntryForm& form() const { return form_; }
    bool isPutAside(Action action) const { return aside_ && form_.action == action; }
    void resume();
    void takeFocus();

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
    QHBoxLayout* timeRow();
    QHBoxLayout* crewRow();
    QWidget* pad();
    QHBoxLayout* questionRow();
    void typeInto(const QString& text);
    void changed(); // what was asked or said of the sheet as it was holds no longer
    void say() override;
    void keep() override;
    Duration& earlier() override { return form_.earlier; }
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
    void unitOfReading(const QString& reading);

    EntryForm form_{};
    Units units_ = Units::us;
    Press* yes_ = nullptr;   // it is as it was typed
    Press* other_ = nullptr; // it was meant otherwise
    bool asked_ = false;     // what is missing was asked for: keeping it now leaves it out
    bool sure_ = false;      // the slip was answered: it is as typed
    Question question_ = Question::none;
    std::optional<UnitSlip> slip_;
    std::vector<TypedLine*> lines_;
    TypedLine* typing_ = nullptr; // where the pad typed last
};

} // namespace panside
