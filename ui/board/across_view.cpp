#include "ui/board/across_view.h"

#include "ui/board/card.h"
#include "ui/look/roles.h"

#include <QPainter>
#include <algorithm>

namespace panside {

AcrossView::AcrossView(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("acrossView"));
    giveRole(*this, QAccessible::StaticText);
    setAttribute(Qt::WA_OpaquePaintEvent);
}

void AcrossView::wear(const Dress& dress) {
    dress_ = dress;
    update();
}

void AcrossView::display(const SentenceView& sentence, const std::array<CardView, 3>& cards) {
    if (sentence == sentence_ && cards == cards_)
        return;
    sentence_ = sentence;
    cards_ = cards;
    setAccessibleName(sentence.wrong);
    update();
}

void AcrossView::drawNumber(QPainter& painter, const QRect& place, const CardView& card) const {
    const Inks& inks = dress_.inks();
    const int title = place.height() / 8, below = place.height() / 5;
    const QColor ink = inkOf(card.tone, inks);
    const QRect headed{place.left(), place.top(), place.width(), title};
    const bool whole = card.insistence >= 2;
    if (card.insistence > 0) // what stays undone is inverted, as on its card
        painter.fillRect(whole ? place : headed, ink);
    painter.setPen(card.insistence > 0 ? inks.onAlarm : card.tone == Tone::calm ? inks.quiet : ink);
    drawFitted(painter, headed, Qt::AlignCenter, letteringOfPixels(title * 0.5, true), card.title);
    const QRect number{place.left(), place.top() + title, place.width(), place.height() - title - below};
    painter.setPen(whole ? inks.onAlarm : card.doubt.isEmpty() && card.reason.isEmpty() ? ink : inks.quiet);
    if (card.order.isEmpty()) {
        // "now" is as tall as the digits beside it.
        double digits = number.height() * 0.9;
        const int wide = drawPieces(nullptr, number, card.chief, digits, digits * 0.4);
        digits *= std::min(1.0, static_cast<double>(number.width()) / std::max(1, wide));
        const int taken = drawPieces(nullptr, number, card.chief, digits, digits * 0.4);
        drawPieces(&painter, number.adjusted((number.width() - taken) / 2, 0, 0, 0), card.chief, digits, digits * 0.4);
    } else {
        drawFitted(painter, number, Qt::AlignCenter, letteringOfPixels(number.height() * 0.36, true), card.order, 3);
    }
    painter.setPen(whole ? inks.onAlarm : inks.word);
    const QString words = !card.doubt.isEmpty()    ? card.doubt
                          : !card.reason.isEmpty() ? card.reason
                          : card.beside.isEmpty()  ? card.figure
                                                   : card.beside;
    drawFitted(painter, QRect{place.left(), place.bottom() - below, place.width(), below}, Qt::AlignCenter,
               letteringOfPixels(below * 0.45), words, 2);
}

void AcrossView::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    const QColor ink = inkOf(sentence_.tone, inks);
    const bool due = sentence_.state == SentenceView::State::due, alarm = sentence_.tone != Tone::calm;
    const bool full = (alarm && sentence_.flashing) || (due && dress_.look == Look::day);
    painter.fillRect(rect(), inks.panel);
    const int edge = dress_.px(4);
    const QRect inside = rect().adjusted(edge, edge, -edge, -edge);
    const bool wide = inside.width() >= inside.height();
    QRect sentence{inside.left(), inside.top(), inside.width(), inside.height() * 3 / 10};
    if (full)
        painter.fillRect(QRect{0, 0, width(), sentence.bottom()}, alarm ? ink : inks.trace);
    const QColor said = full ? alarm ? inks.onAlarm : inks.panel : alarm ? ink : due ? inks.trace : inks.word;
    painter.setPen(said);
    if (alarm) {
        const double side = sentence.height() * 0.5;
        drawPriority(painter, QRectF{sentence.left() * 1.0, sentence.center().y() - side / 2, side, side},
                     sentence_.tone, said);
        sentence.setLeft(sentence.left() + static_cast<int>(side * 1.3));
    }
    // What is wrong, as large as it goes; under it what to do first.
    const int first = sentence_.steps.isEmpty() ? 0 : sentence.height() * 2 / 5;
    drawFitted(painter, sentence.adjusted(0, 0, 0, -first), Qt::AlignLeft | Qt::AlignVCenter,
               letteringOfPixels(sentence.height() * 0.45, true), sentence_.wrong, 2);
    if (first > 0)
        drawFitted(painter, sentence.adjusted(0, sentence.height() - first, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                   letteringOfPixels(first * 0.4), sentence_.steps.front(), 2);
    const QRect numbers{inside.left(), sentence.bottom() + edge, inside.width(),
                        inside.bottom() - sentence.bottom() - edge};
    for (int i = 0; i < 3; ++i) {
        const QRect place = wide ? QRect{numbers.left() + i * numbers.width() / 3, numbers.top(),
                                         numbers.width() / 3 - 3 * edge, numbers.height()}
                                 : QRect{numbers.left(), numbers.top() + i * numbers.height() / 3, numbers.width(),
                                         numbers.height() / 3 - edge};
        drawNumber(painter, place, cards_[static_cast<std::size_t>(i)]);
    }
}

} // namespace panside
