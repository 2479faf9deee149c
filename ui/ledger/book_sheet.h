#pragma once
// The sheet in which a row of the day book is entered: by the keyboard, the pad on the screen, or what is offered.
// Enter keeps it, Escape leaves. What the ledger finds odd is said and asked once. Not modal; an alarm puts it aside
// with what was typed.
#include "ui/ledger/book_form.h"
#include "ui/look/dress.h"
#include "ui/look/wall_clock.h"

#include <QFrame>

class QBoxLayout;
class QLabel;

namespace panside {

class Press;
class TypedLine;

class BookSheet : public QFrame {
    Q_OBJECT
public:
    explicit BookSheet(QWidget* parent = nullptr);
    // `odd`: what the ledger would find odd in a row, in words; may be empty.
    void open(BookForm form, Units units, const WallClock& clock, std::function<QStringList(const Fact&)> odd);
    void wear(const Dress& dress);
    const BookForm& form() const { return form_; }
    // Goes out of the way; resume() brings it back with what was typed.
    void putAside();
    bool isAside() const { return aside_; }
    void resume();

signals:
    void kept(const std::vector<panside::Fact>& facts);
    void left();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void build();
    QWidget* fieldRow(std::size_t index);
    QWidget* whenRow();
    Press* key(const QString& text, const QString& name, const QString& shortcut = {});
    QLayout* fieldsAndPad(int gap);
    QLayout* offersRow(int gap);
    QLayout* endRow();
    void changed(std::size_t index);
    void follow(const QObject* focused); // what is offered is for the field that has the focus
    void offer();
    void choose(const QString& word);
    void typeInto(const QString& face);
    void turnHand();
    void stepEarlier(Duration by);
    void say();
    void keep();
    void leave();
    void focusOn(const QString& field);

    BookForm form_{};
    Units units_ = Units::us;
    WallClock clock_;
    std::function<QStringList(const Fact&)> odd_;
    Dress dress_;
    QWidget* inside_ = nullptr;
    QLabel *writes_ = nullptr, *problem_ = nullptr, *live_ = nullptr;
    Press *leave_ = nullptr, *keep_ = nullptr, *hand_ = nullptr;
    std::vector<QWidget*> edits_; // by field
    std::vector<Press*> offers_;
    std::size_t at_ = 0;   // the field that is filled in
    int from_ = 0;         // the first word that is offered
    QStringList insteads_; // what could stand there instead of what was refused
    bool aside_ = false, asked_ = false;
};

} // namespace panside
