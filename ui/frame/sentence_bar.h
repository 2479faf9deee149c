#pragma once
// The bar at the top of every screen, always two lines high: the sentence; under it what to do first, or what comes
// next, or, off the board, the three numbers. Its right end is for answers.
#include "ui/board/sentence.h"
#include "ui/keys/actions.h"
#include "ui/look/dress.h"

#include <QElapsedTimer>
#include <QWidget>

namespace panside {

class Press;

class SentenceBar : public QWidget {
    Q_OBJECT
public:
    explicit SentenceBar(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    // `numbers`: what the cards say, for the screens that have none.
    void display(const SentenceView& view, const QString& numbers);
    // Away from the board there is a key that goes back to it.
    void setAway(bool away);
    // Letters are typed: the answer's key is another one then.
    void setTyping(bool typing);
    const SentenceView& view() const { return view_; }
    QString secondLine() const;

signals:
    void actionPressed(panside::Action action);
    void boardWanted();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    void sayKeys();
    void placeKeys();
    bool touched(); // false right after a key has come under the finger
    void paintGround(QPainter& painter, const QColor& ink) const;
    void paintSteps(QPainter& painter, const QRect& place, const QColor& ink) const;
    bool isFilled() const;
    QColor wordInk() const;

    Dress dress_;
    SentenceView view_;
    QString numbers_;
    bool away_ = false, typing_ = false;
    int left_ = 0; // how far the words may go
    Press *seen_, *shelve_, *board_;
    QElapsedTimer sinceChange_;
};

} // namespace panside
