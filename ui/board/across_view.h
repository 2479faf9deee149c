#pragma once
// From across the room: the sentence and the three numbers, as large as the screen allows.
#include "ui/board/card_view.h"
#include "ui/board/sentence.h"
#include "ui/look/dress.h"

#include <QWidget>
#include <array>

namespace panside {

class AcrossView : public QWidget {
    Q_OBJECT
public:
    explicit AcrossView(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const SentenceView& sentence, const std::array<CardView, 3>& cards);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void drawNumber(QPainter& painter, const QRect& place, const CardView& card) const;
    Dress dress_;
    SentenceView sentence_;
    std::array<CardView, 3> cards_;
};

} // namespace panside
