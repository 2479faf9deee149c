#pragma once
// The bar over the board: the sentence, and the key that says the alarm was seen.
#include "ui/board/sentence.h"
#include "ui/look/dress.h"

#include <QWidget>

namespace panside {

class Press;

class SentenceBar : public QWidget {
    Q_OBJECT
public:
    explicit SentenceBar(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const SentenceView& view);
    void setFlash(bool on); // the lit half of the flash
    const SentenceView& view() const { return view_; }

signals:
    void actionPressed(panside::Action action);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void placeButton();
    Dress dress_;
    SentenceView view_;
    bool flash_ = false;
    Press* seen_;
};

// What to do first, and which other alarms there are: a band over the chart that is there only when it has something to
// say.
class FirstBand : public QWidget {
    Q_OBJECT
public:
    explicit FirstBand(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const SentenceView& view);
    int wantedHeight() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Dress dress_;
    SentenceView view_;
};

QColor inkOf(Tone tone, const Inks& inks);
// The priority as a shape: a triangle for urgent, a diamond for soon, a disc for to know.
void drawPriority(QPainter& painter, const QRectF& place, Tone tone, const QColor& ink);

} // namespace panside
