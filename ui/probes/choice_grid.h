#pragma once
// One choice among a few, each a large key with a letter of its own: what a field reads, in which unit.
#include "ui/look/dress.h"

#include <QStringList>
#include <QWidget>

namespace panside {

class ChoiceGrid : public QWidget {
    Q_OBJECT
public:
    // `now` is the index of what holds; it has the focus. −1: none.
    ChoiceGrid(const QString& title, const QStringList& choices, int now, const Dress& dress,
               QWidget* parent = nullptr);

signals:
    void chosen(int index);
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    int count_;
};

} // namespace panside
