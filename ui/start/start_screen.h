#pragma once
// The first questions, one a page. Enter goes on with what stands there; each can be left out; Escape leaves them all.
#include "ui/look/dress.h"
#include "ui/start/start_view.h"

#include <QWidget>

class QLabel;

namespace panside {

class ActionKeys;
class PlacePick;
class Press;
class TypedLine;

class StartScreen : public QWidget {
    Q_OBJECT
public:
    explicit StartScreen(QWidget* parent = nullptr);
    void display(const StartView& view, Units units, const Dress& dress);
    // What was wrong with an answer, and in which of the fields.
    void refuse(const QString& words, std::size_t field = 0);

signals:
    void chose(int index);
    void typed(const QStringList& answers); // one for each field; an empty one leaves it as it is
    void picked(std::size_t place);
    void wentOn(); // nothing was answered
    void wentBack();
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    QWidget* choiceKeys();
    QWidget* fieldsAndPad();
    void act(int key);
    void accept();
    StartView view_;
    Units units_ = Units::us;
    Dress dress_;
    bool low_ = false;
    QWidget* inside_ = nullptr;
    QLabel* said_ = nullptr;
    ActionKeys* keys_ = nullptr;
    PlacePick* place_ = nullptr;
    std::vector<Press*> choices_;
    std::vector<TypedLine*> lines_;
};

} // namespace panside
