#pragma once
// The frame of an alarm around whatever screen stands before the board: for the deaf, and where the blower is louder
// than any voice. The board draws its own. Fingers and keys go through it.
#include "ui/board/sentence.h"
#include "ui/look/dress.h"

#include <QTimer>
#include <QWidget>

namespace panside {

class AlarmFrame : public QWidget {
    Q_OBJECT
public:
    explicit AlarmFrame(QWidget* parent);
    void wear(const Dress& dress);
    // `covered`: another screen stands before the board.
    void display(const SentenceView& said, bool covered);
    bool isFull() const { return on_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Dress dress_;
    SentenceView said_;
    QTimer flashing_;
    bool on_ = true;
};

} // namespace panside
