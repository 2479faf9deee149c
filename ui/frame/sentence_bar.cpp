#include "ui/frame/sentence_bar.h"

#include "ui/look/each_language.h"
#include "ui/look/press.h"
#include "ui/look/roles.h"

#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

namespace panside {
namespace {

constexpr qint64 blind = 500; // milliseconds in which a key that has just come takes no touch

} // namespace

SentenceBar::SentenceBar(QWidget* parent)
    : QWidget(parent), seen_{new Press{this}}, shelve_{new Press{this}}, board_{new Press{this}} {
    setObjectName(QStringLiteral("sentenceBar"));
    giveRole(*this, QAccessible::AlertMessage);
    setAttribute(Qt::WA_OpaquePaintEvent);
    seen_->setObjectName(QStringLiteral("sentenceSeen"));
    shelve_->setObjectName(QStringLiteral("sentenceShelve"));
    board_->setObjectName(QStringLiteral("toBoard"));
    for (Press* key : {seen_, shelve_, board_})
        key->hide();
    connect(seen_, &Press::clicked, this, [this] {
        if (touched())
            emit actionPressed(Action::alarmSeen);
    });
    connect(shelve_, &Press::clicked, this, [this] {
        if (touched())
            emit actionPressed(Action::alarmShelve);
    });
    connect(board_, &Press::clicked, this, &SentenceBar::boardWanted);
    sayKeys();
    inEachLanguage(*this, [this] { sayKeys(); });
}

bool SentenceBar::touched() { return !sinceChange_.isValid() || sinceChange_.elapsed() >= blind; }

void SentenceBar::sayKeys() {
    seen_->say(wordOf(Action::alarmSeen), typing_ ? QStringLiteral("F12") : keyOf(Action::alarmSeen));
    shelve_->say(wordOf(Action::alarmShelve), keyOf(Action::alarmShelve));
    board_->say(tr("Board"), tr("Esc"));
    placeKeys();
}

void SentenceBar::wear(const Dress& dress) {
    dress_ = dress;
    for (Press* key : {seen_, shelve_, board_})
        key->wear(dress);
    placeKeys();
    update();
}

void SentenceBar::display(const SentenceView& view, const QString& numbers) {
    if (view == view_ && numbers == numbers_)
        return;
    if (view.alarm != view_.alarm && (view.canBeSeen || view.canBeShelved) && (view_.canBeSeen || view_.canBeShelved))
        sinceChange_.start(); // what the finger is about to answer has become something else
    view_ = view;
    numbers_ = numbers;
    setAccessibleName(view.wrong);
    setAccessibleDescription(secondLine());
    placeKeys();
    update();
}

void SentenceBar::setAway(bool away) {
    away_ = away;
    placeKeys();
    update();
}

void SentenceBar::setTyping(bool typing) {
    if (typing == typing_)
        return;
    typing_ = typing;
    sayKeys();
}

QString SentenceBar::secondLine() const {
    QStringList parts{view_.first()};
    if (view_.steps.isEmpty())
        parts << (away_ ? numbers_ : view_.next);
    parts << view_.others;
    parts.removeAll(QString{});
    return parts.join(QStringLiteral(" · "));
}

// The answer stands at the edge, the way back left of it.
void SentenceBar::placeKeys() {
    const int gap = dress_.px(mm::gap), high = std::min(height() - 2 * dress_.px(1.5), dress_.px(15));
    int right = width() - dress_.px(3);
    const auto place = [&](Press* key, bool shown) {
        key->setVisible(shown);
        if (!shown)
            return;
        const int wide = std::max(key->sizeHint().width(), dress_.px(27));
        key->setGeometry(right - wide, (height() - high) / 2, wide, high);
        right -= wide + gap;
    };
    place(seen_, view_.canBeSeen);
    place(shelve_, view_.canBeShelved);
    place(board_, away_);
    left_ = right;
}

void SentenceBar::resizeEvent(QResizeEvent*) { placeKeys(); }

void SentenceBar::mouseReleaseEvent(QMouseEvent* event) {
    if (away_ && event->button() == Qt::LeftButton && rect().contains(event->position().toPoint()))
        emit boardWanted();
}

// By night no more of the screen shines than the words: eyes that are used to the dark are to stay so. Only what is
// urgent is worth them, and its red costs them the least.
bool SentenceBar::isFilled() const {
    const bool day = dress_.look == Look::day;
    if (view_.state == SentenceView::State::alarm)
        return view_.flashing && (day || view_.tone == Tone::high);
    return view_.state == SentenceView::State::due && day;
}

QColor SentenceBar::wordInk() const {
    const Inks& inks = dress_.inks();
    switch (view_.state) {
    case SentenceView::State::alarm:
        return isFilled() ? inks.onAlarm : inkOf(view_.tone, inks);
    case SentenceView::State::due:
        return isFilled() ? inks.panel : inks.trace;
    case SentenceView::State::over:
    case SentenceView::State::calm:
        break;
    }
    return inks.word;
}

// Filled while an alarm is unseen or something is called for; an edge once it was seen; plain otherwise.
void SentenceBar::paintGround(QPainter& painter, const QColor& ink) const {
    const Inks& inks = dress_.inks();
    const bool due = view_.state == SentenceView::State::due, alarm = view_.state == SentenceView::State::alarm;
    const bool full = isFilled();
    painter.fillRect(rect(), full ? alarm ? ink : inks.trace : inks.panel);
    if (full || (!alarm && !due))
        return;
    const int wide = std::max(3, dress_.px(0.8));
    painter.setPen(QPen{due ? inks.trace : ink, wide * 1.0});
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF{rect()}.adjusted(wide / 2.0, wide / 2.0, -wide / 2.0, -wide / 2.0));
}

// Numbered, so that the order is plain; one alone needs no number. What comes first is told first: where they do not
// all stand there in letters that can be read, the last is left out and none is cut.
void SentenceBar::paintSteps(QPainter& painter, const QRect& place, const QColor& ink) const {
    const double disc = place.height() * 0.82;
    const int gap = dress_.px(4);
    int count = static_cast<int>(view_.steps.size());
    const bool numbered = count > 1;
    QFont font = dress_.letters(mm::act);
    const auto widthOf = [&](const QFont& letters) {
        double wide = gap * (count - 1.0);
        for (int i = 0; i < count; ++i)
            wide += QFontMetricsF{letters}.horizontalAdvance(view_.steps[i]) + (numbered ? disc + dress_.px(1.8) : 0);
        return wide;
    };
    const int least = std::max(1, dress_.letters(mm::smallWords).pixelSize());
    while (font.pixelSize() > least && widthOf(font) > place.width())
        font.setPixelSize(font.pixelSize() - 1);
    while (count > 1 && widthOf(font) > place.width())
        --count;
    double x = place.left();
    for (int i = 0; i < count; ++i) {
        painter.setPen(QPen{ink, 1.6});
        painter.setBrush(Qt::NoBrush);
        if (numbered) {
            const QRectF circle{x, place.center().y() - disc / 2 + 0.5, disc, disc};
            painter.drawEllipse(circle.adjusted(1, 1, -1, -1));
            painter.setFont(letteringOfPixels(disc * 0.42, true));
            painter.drawText(circle, Qt::AlignCenter, QString::number(i + 1));
            x += disc + dress_.px(1.8);
        }
        painter.setFont(font);
        const double wide = QFontMetricsF{font}.horizontalAdvance(view_.steps[i]);
        painter.drawText(QRectF{x, place.top() * 1.0, wide + 2, place.height() * 1.0},
                         Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, view_.steps[i]);
        x += wide + gap;
    }
    if (view_.others.isEmpty())
        return;
    const QRect rest{static_cast<int>(x), place.top(), place.right() - static_cast<int>(x), place.height()};
    if (rest.width() > dress_.px(20))
        drawFitted(painter, rest, Qt::AlignRight | Qt::AlignVCenter, dress_.letters(mm::words), view_.others, 2);
}

void SentenceBar::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor ink = inkOf(view_.tone, inks), said = wordInk();
    paintGround(painter, ink);
    QRect words{dress_.px(3.5), dress_.px(1.2), left_ - dress_.px(3.5), height() - dress_.px(2.4)};
    if (view_.state == SentenceView::State::alarm) {
        const double side = height() * 0.4;
        drawPriority(painter, QRectF{words.left() * 1.0, words.top() + height() * 0.06, side, side}, view_.tone, said);
        words.setLeft(words.left() + static_cast<int>(side) + dress_.px(2.5));
    }
    const int first = words.height() * 56 / 100;
    const QRect headline{words.left(), words.top(), words.width(), first};
    const QRect second{dress_.px(3.5), words.top() + first, words.right() - dress_.px(3.5), words.height() - first};
    painter.setPen(said);
    const bool bold = view_.state == SentenceView::State::alarm || view_.state == SentenceView::State::due;
    drawFitted(painter, headline, Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::fromAfar, bold), view_.wrong);
    if (!view_.steps.isEmpty()) {
        paintSteps(painter, second, said);
        return;
    }
    painter.setPen(bold ? said : inks.quiet);
    drawFitted(painter, second, Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::lead), secondLine());
}

} // namespace panside
