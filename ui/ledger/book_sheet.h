#pragma once
// The sheet in which a row of the day book is entered, by what is offered too. What the ledger finds odd is said and
// asked once.
#include "ui/entry/form_sheet.h"
#include "ui/ledger/book_form.h"

namespace panside {

class BookSheet : public FormSheet {
    Q_OBJECT
public:
    explicit BookSheet(QWidget* parent = nullptr);
    // `odd`: what the ledger would find odd in a row, in words; may be empty.
    void open(BookForm form, Units units, const WallClock& clock, std::function<QStringList(const Fact&)> odd);
    void wear(const Dress& dress);
    const BookForm& form() const { return form_; }
    void resume();

protected:
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    QWidget* fieldRow(std::size_t index);
    QLayout* lateRow();
    QLayout* fieldsAndPad(int gap);
    QLayout* offersRow(int gap);
    void changed(std::size_t index);
    void follow(const QObject* focused); // what is offered is for the field that has the focus
    void offer();
    void choose(const QString& word);
    void typeInto(const QString& face);
    void turnHand();
    void say() override;
    void giveWay(); // where the sheet is too low for all
    void keep() override;
    Duration& earlier() override { return form_.earlier; }
    void tell(const QString& problem);
    void focusOn(const QString& field);

    BookForm form_{};
    Units units_ = Units::us;
    std::function<QStringList(const Fact&)> odd_;
    QLabel* live_ = nullptr;
    Press* hand_ = nullptr;
    std::vector<QWidget*> edits_; // by field
    std::vector<Press*> offers_;
    std::size_t at_ = 0;   // the field that is filled in
    int from_ = 0;         // the first word that is offered
    QStringList insteads_; // what could stand there instead of what was refused
    bool asked_ = false;
};

} // namespace panside
