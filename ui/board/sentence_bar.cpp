#include "ui/board/sentence_bar.h"

#include "ui/look/press.h"

#include <QPainter>

namespace panside {

QColor inkOf(Tone tone, const Inks& inks) {
    switch (tone) {
    case Tone::high:
        return inks.high;
    case Tone::medium:
        return inks.medium;
    case Tone::low:
        return inks.low;
    case Tone::calm:
        break;
    }
    return inks.word;
}

void drawPriority(QPainter& painter, const QRectF& place, Tone tone, const QColor& ink) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    const QPointF middle = place.center();
    switch (tone) {
    case Tone::high:
        painter.drawPolygon(QPolygonF{{middle.x(), place.top()}, place.bottomRight(), place.bottomLeft()});
        break;
    case Tone::medium:
        painter.drawPolygon(QPolygonF{{middle.x(), place.top()},
                                      {place.right(), middle.y()},
                                      {middle.x(), place.bottom()},
                                      {place.left(), middle.y()}});
        break;
    case Tone::low:
        painter.drawEllipse(
            place.adjusted(place.width() * 0.1, place.height() * 0.1, -place.width() * 0.1, -place.height() * 0.1));
        break;
    case Tone::calm:
        break;
    }
    painter.restore();
}

SentenceBar::SentenceBar(QWidget* parent) : QWidget(parent), seen_{new Press{this}} {
    setObjectName(QStringLiteral("sentenceBar"));
    setAttribute(Qt::WA_OpaquePaintEvent);
    seen_->setObjectName(QStringLiteral("sentenceSeen"));
    seen_->say(wordOf(Action::alarmSeen), keyOf(Action::alarmSeen));
    seen_->hide();
    connect(seen_, &Press::clicked, this, [this] { emit actionPressed(Action::alarmSeen); });
}

void SentenceBar::wear(const Dress& dress) {
    dress_ = dress;
    seen_->wear(dress);
    seen_->say(wordOf(Action::alarmSeen), keyOf(Action::alarmSeen));
    placeButton();
    update();
}

void SentenceBar::display(const SentenceView& view) {
    if (view == view_)
        return;
    view_ = view;
    setAccessibleName(view.wrong);
    setAccessibleDescription(view.first);
    seen_->setVisible(view.canBeSeen);
    placeButton();
    update();
}

void SentenceBar::setFlash(bool on) {
    if (on == flash_)
        return;
    flash_ = on;
    update();
}

void SentenceBar::placeButton() {
    const int wide = seen_->sizeHint().width(), high = dress_.px(mm::target);
    seen_->setGeometry(width() - wide - dress_.px(2.5), (height() - high) / 2, wide, high);
}

void SentenceBar::resizeEvent(QResizeEvent*) { placeButton(); }

void SentenceBar::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    const bool calm = view_.tone == Tone::calm;
    const QColor ink = inkOf(view_.tone, inks);
    // Not yet seen: the bar is full and flashes. Seen: an outline and words, steady.
    const bool full = !calm && view_.flashing && flash_;
    painter.fillRect(rect(), full ? ink : inks.panel);
    QRect words = rect().adjusted(dress_.px(3), 0, -dress_.px(3), 0);
    if (!calm) {
        painter.setPen(QPen{ink, dress_.px(1) * 1.0});
        painter.setBrush(Qt::NoBrush);
        const int half = dress_.px(0.5);
        painter.drawRect(rect().adjusted(half, half, -half, -half));
        const double side = dress_.px(9);
        drawPriority(painter, QRectF{words.left() * 1.0, (height() - side) / 2, side, side}, view_.tone,
                     full ? inks.onAlarm : ink);
        words.setLeft(words.left() + dress_.px(12));
    }
    if (view_.canBeSeen)
        words.setRight(seen_->x() - dress_.px(3));
    if (!view_.state.isEmpty()) {
        const QFont font = dress_.letters(mm::words);
        const int wide = std::min(QFontMetrics{font}.horizontalAdvance(view_.state) + dress_.px(3), words.width() / 3);
        painter.setPen(full ? inks.onAlarm : inks.quiet);
        drawFitted(painter, QRect{words.right() - wide, 0, wide, height()}, Qt::AlignRight | Qt::AlignVCenter, font,
                   view_.state, 2);
        words.setRight(words.right() - wide - dress_.px(2));
    }
    painter.setPen(full ? inks.onAlarm : calm ? inks.word : ink);
    drawFitted(painter, words, Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::fromAfar, !calm), view_.wrong, 2);
}

FirstBand::FirstBand(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("firstBand"));
    setAttribute(Qt::WA_OpaquePaintEvent);
}

void FirstBand::wear(const Dress& dress) {
    dress_ = dress;
    update();
}

void FirstBand::display(const SentenceView& view) {
    if (view == view_)
        return;
    view_ = view;
    setAccessibleName(view.first);
    setAccessibleDescription(view.others);
    update();
}

int FirstBand::wantedHeight() const {
    return (view_.first.isEmpty() ? 0 : dress_.px(17)) + (view_.others.isEmpty() ? 0 : dress_.px(6.5));
}

void FirstBand::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.fillRect(rect(), inks.panel);
    QRect place = rect().adjusted(dress_.px(3), 0, -dress_.px(3), 0);
    if (!view_.others.isEmpty()) {
        painter.setPen(inks.quiet);
        const int high = dress_.px(6.5);
        drawFitted(painter, QRect{place.left(), place.bottom() - high + 1, place.width(), high},
                   Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::words), view_.others);
        place.setBottom(place.bottom() - high);
    }
    if (view_.first.isEmpty())
        return;
    painter.setPen(inks.word);
    drawFitted(painter, place, Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::fromAfar),
               tr("First: %1").arg(view_.first), 2);
}

} // namespace panside
