#pragma once
#include "ui/look/dress.h"
#include "ui/reckoner/reckoner_form.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace panside {

class Press;

// The sums of the trade for a person in gloves: choose one, type two numbers on the keys or on the pad, read the answer
// with its sum in words. The answer follows every key; nothing has to be confirmed.
class ReckonerScreen : public QWidget {
    Q_OBJECT
public:
    explicit ReckonerScreen(QWidget* parent = nullptr);
    void display(Units units, const Dress& dress);
    void choose(std::size_t sum, std::size_t way = 0);
    const ReckonerForm& form() const { return form_; }

signals:
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    bool isNarrow() const; // a cheap panel: narrower columns, so that the answer has room
    QWidget* sumColumn();
    QWidget* fieldColumn();
    QWidget* fieldRow(std::size_t index);
    QWidget* pad();
    QWidget* answerColumn();
    Press* key(const QString& text, const QString& name, const QString& shortcut = {});
    QLabel* label(const QString& name, double millimetres, bool bold = false);
    void typeInto(const QString& text);
    void reckonAgain();

    ReckonerForm form_{};
    Units units_ = Units::us;
    Dress dress_;
    QWidget* inside_ = nullptr;
    bool narrow_ = false; // as it was built
    std::vector<QLineEdit*> lines_;
    QLabel* name_ = nullptr;
    QLabel* value_ = nullptr;
    QLabel* others_ = nullptr;
    QLabel* sum_ = nullptr;
    QLabel* foot_ = nullptr;
};

} // namespace panside
