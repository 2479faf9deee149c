#include "ui/board/card.h"

#include "ui/look/each_language.h"
#include "ui/look/press.h"
#include "ui/look/roles.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace panside {
namespace {

constexpr double hangs = 0.31; // how far a p hangs below its line, of a capital's height

} // namespace

int drawPieces(QPainter* painter, const QRect& place, const std::vector<Piece>& pieces, double digits, double words) {
    const QFont large = letteringOfPixels(digits), small = letteringOfPixels(words);
    const double foot = place.top() + (place.height() + digits) / 2;
    double x = place.left();
    for (const Piece& piece : pieces) {
        const QFont& font = piece.small ? small : large;
        const double gap = piece.small ? words * 0.3 : 0;
        if (painter) {
            painter->setFont(font);
            painter->drawText(QPointF{x + gap, foot}, piece.text);
        }
        x += gap + QFontMetricsF{font}.horizontalAdvance(piece.text) + gap;
    }
    return static_cast<int>(std::ceil(x)) - place.left();
}

Card::Card(const QString& name, QWidget* parent) : QWidget(parent) {
    giveRole(*this, QAccessible::Grouping);
    setObjectName(name);
    setAttribute(Qt::WA_OpaquePaintEvent);
    inEachLanguage(*this, [this] { sayKeys(); });
}

void Card::wear(const Dress& dress) {
    dress_ = dress;
    for (Press* button : buttons_)
        button->wear(dress);
    placeButtons();
    update();
}

void Card::display(const CardView& view) {
    if (view == view_)
        return;
    const bool sameKeys = view.keys == view_.keys;
    view_ = view;
    setAccessibleName(view.title);
    setAccessibleDescription(view.spoken());
    if (!sameKeys)
        sayKeys();
    update();
}

void Card::sayKeys() {
    while (buttons_.size() < view_.keys.size()) {
        auto* button = new Press{this};
        const std::size_t place = buttons_.size();
        button->setObjectName(objectName() + QStringLiteral("Action%1").arg(place));
        connect(button, &Press::clicked, this, [this, place] { emit actionPressed(view_.keys[place].action); });
        button->wear(dress_);
        buttons_.push_back(button);
    }
    for (std::size_t i = 0; i < buttons_.size(); ++i) {
        buttons_[i]->setVisible(i < view_.keys.size());
        if (i >= view_.keys.size())
            continue;
        buttons_[i]->say(view_.keys[i].said(), keyOf(view_.keys[i].action));
        buttons_[i]->setShape(view_.keys[i].shape);
    }
    placeButtons();
}

Card::Rows Card::layout() const {
    const bool low = height() < dress_.px(48);
    const int side = dress_.px(3.2), edge = dress_.px(low ? 0.8 : 1.8), gap = dress_.px(low ? 0.6 : 1);
    const QRect inside = rect().adjusted(side, edge, -side, -edge);
    const int title = dress_.px(low ? 5.6 : 5.2), button = dress_.px(mm::target);
    Rows rows;
    rows.buttons = QRect{inside.left(), inside.bottom() - button + 1, inside.width(), button};
    rows.title = QRect{inside.left(), inside.top(), inside.width(), title};
    const int bottom = rows.buttons.top() - gap;
    int top = rows.title.bottom() + 1;
    const int chief = std::min(dress_.px(mm::chiefDigits + (low ? 0 : 1)), std::max(1, bottom - top));
    rows.chief = QRect{inside.left(), top, inside.width(), chief};
    top += chief;
    const auto cut = [&](int height) {
        const QRect row{inside.left(), top, inside.width(), height};
        top += height;
        return row;
    };
    const int figure = dress_.px(mm::act * 1.28), line = dress_.px(5.6);
    bool besideNumber = false;
    if (low && !view_.figure.isEmpty()) { // no room under the number: beside the title, or the number
        const QFont least = dress_.letters(mm::smallWords);
        const int space = dress_.px(2);
        const int wide = QFontMetrics{captionLetters()}.horizontalAdvance(view_.title) + space,
                  leastTitle = QFontMetrics{least}.horizontalAdvance(view_.title) + space;
        const int beside = QFontMetrics{dress_.letters(mm::words)}.horizontalAdvance(view_.figure),
                  leastFigure = QFontMetrics{least}.horizontalAdvance(view_.figure) + 1;
        besideNumber = leastTitle + leastFigure > inside.width() && view_.under.isEmpty();
        if (!besideNumber) { // neither is made much smaller than the other, and none too small to be read
            const int share = wide + beside > inside.width() ? inside.width() * wide / (wide + beside) : wide;
            rows.figure = rows.title.adjusted(
                std::clamp(share, leastTitle, std::max(leastTitle, inside.width() - leastFigure)), 0, 0, 0);
            rows.title.setRight(rows.figure.left() - 1 - space);
        }
    } else if (!view_.figure.isEmpty() && bottom - top >= dress_.px(4)) {
        // What is spare stands between the number and the words under it.
        top += std::clamp(bottom - top - figure, 0, dress_.px(2.5));
        rows.figure = cut(std::min(bottom - top, figure));
    }
    for (std::size_t i = 0; i < view_.lines.size() && bottom - top >= line; ++i)
        rows.lines.push_back(cut(line));
    placeBeside(rows, besideNumber);
    return rows;
}

// Is there anything that could be read beside a number that leaves it so much room?
bool Card::isBeside(const QSize& room, bool figureToo) const {
    const QFont least = dress_.letters(mm::smallWords);
    const QString& words = figureToo ? view_.figure : view_.under;
    return (!words.isEmpty() && fits(least, words, room)) ||
           std::ranges::any_of(std::initializer_list<QString>{view_.beside, view_.reason, view_.doubt},
                               [&](const QString& one) { return !one.isEmpty() && fits(least, one, room, 3); });
}

// Right of the number: the range, and under it what is smaller. A word in the number's place ("now") leaves it room;
// digits do not: what has none beside them is left out.
void Card::placeBeside(Rows& rows, bool figureToo) const {
    const double digits = dress_.px(mm::chiefDigits);
    const int taken = drawPieces(nullptr, rows.chief, view_.chief, digits, digits * 0.4);
    const bool word = std::ranges::none_of(view_.chief, [](const Piece& piece) {
        return std::ranges::any_of(piece.text, [](QChar one) { return one.isDigit(); });
    });
    const int whole = rows.chief.width(), lessOfIt = whole * 58 / 100;
    const int most =
        word && isBeside({whole - lessOfIt - dress_.px(3), rows.chief.height()}, figureToo) ? lessOfIt : whole;
    rows.scale = std::min(1.0, static_cast<double>(most) / std::max(1, taken));
    rows.beside = rows.chief.adjusted(static_cast<int>(std::ceil(taken * rows.scale)) + dress_.px(3), 0, 0, 0);
    if (view_.under.isEmpty() && !figureToo)
        return;
    const int high = dress_.px(6.5);
    QRect& under = figureToo ? rows.figure : rows.under;
    under = QRect{rows.beside.left(), rows.chief.bottom() - high, rows.beside.width(), high};
    rows.beside.setBottom(under.top() - 1);
}

void Card::placeButtons() {
    const QRect row = layout().buttons;
    const int count = static_cast<int>(view_.keys.size());
    if (count == 0)
        return;
    const int gap = dress_.px(mm::gap);
    const bool stacked = row.height() >= count * dress_.px(mm::target) + (count - 1) * gap && count > 1;
    double wanted = 0;
    for (int i = 0; i < count; ++i)
        wanted += buttons_[static_cast<std::size_t>(i)]->sizeHint().width();
    int at = stacked ? row.top() : row.left();
    for (int i = 0; i < count; ++i) {
        Press* button = buttons_[static_cast<std::size_t>(i)];
        if (stacked) {
            const int high = (row.height() - (count - 1) * gap) / count;
            button->setGeometry(row.left(), at, row.width(), high);
            at += high + gap;
        } else { // shares of the row as the words need
            const double share = button->sizeHint().width() / wanted;
            const int end =
                i + 1 == count ? row.right() + 1 : at + static_cast<int>((row.width() - (count - 1) * gap) * share);
            button->setGeometry(at, row.top(), end - at, std::max(row.height(), dress_.px(mm::target)));
            at = end + gap;
        }
    }
}

void Card::resizeEvent(QResizeEvent*) { placeButtons(); }

QFont Card::captionLetters() const {
    QFont caption = dress_.letters(mm::smallWords * 1.1, true);
    caption.setLetterSpacing(QFont::PercentageSpacing, 104);
    return caption;
}

// Bold and spaced as far as there is room: thinner before it is smaller than can be read.
QFont Card::titleLetters(const QSize& room) const {
    for (const QFont& font : {captionLetters(), dress_.letters(mm::smallWords, true)})
        if (fits(font, view_.title, room))
            return font;
    return dress_.letters(mm::smallWords);
}

void Card::paintChief(QPainter& painter, const Rows& rows, const QColor& ink, bool whole) const {
    const Inks& inks = dress_.inks();
    if (!view_.order.isEmpty()) { // an order in the place of the number
        const QRect place =
            rows.chief.adjusted(0, 0, 0, rows.under.isValid() ? rows.under.top() - rows.chief.bottom() : 0);
        const double side = dress_.px(10);
        drawPriority(painter, QRectF{place.left() * 1.0, place.center().y() - side / 2, side, side}, view_.tone, ink);
        painter.setPen(ink);
        drawFitted(painter, place.adjusted(dress_.px(13), 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                   dress_.letters(mm::chiefDigits * 0.6, true), view_.order, 2);
        return;
    }
    const double digits = dress_.px(mm::chiefDigits) * rows.scale, words = digits * 0.4;
    const bool known = view_.reason.isEmpty() && view_.doubt.isEmpty();
    painter.setPen(whole ? inks.onAlarm : known ? ink : inks.quiet);
    drawPieces(&painter, rows.chief, view_.chief, digits, words);
    // Beside it the range; where the number is not known or not to be trusted, why.
    const QString& beside = view_.doubt.isEmpty() ? view_.reason.isEmpty() ? view_.beside : view_.reason : view_.doubt;
    painter.setPen(whole ? inks.onAlarm : inks.word);
    tell(painter, rows.beside, Qt::AlignRight | Qt::AlignVCenter, dress_.letters(known ? mm::fromAfar * 0.8 : mm::act),
         beside, 3);
}

// What cannot be read is no help: it is left out before it is made smaller than the marks of the chart.
void Card::tell(QPainter& painter, const QRect& place, int alignment, const QFont& font, const QString& text,
                int lines) const {
    if (place.width() > 0 && fits(dress_.letters(mm::smallWords), text, place.size(), lines))
        drawFitted(painter, place, alignment, font, text, lines);
}

void Card::paintEvent(QPaintEvent*) {
    ++paintings_;
    const Inks& inks = dress_.inks();
    const Rows rows = layout();
    const QColor ink = inkOf(view_.tone, inks);
    QPainter painter{this};
    // The longer it is overdue, the more of the card stands in the alarm's ink.
    const bool whole = view_.insistence >= 2, headed = view_.insistence == 1;
    painter.fillRect(rect(), whole ? ink : inks.panel);
    if (headed)
        painter.fillRect(QRect{0, 0, width(), rows.title.bottom() + 1}, ink);
    if (view_.tone != Tone::calm || view_.due) // a bar at the edge, so that it is not only the colour
        painter.fillRect(QRect{0, 0, dress_.px(1.5), height()}, view_.tone == Tone::calm ? inks.trace : ink);
    painter.setPen(whole || headed ? inks.onAlarm : view_.tone == Tone::calm ? inks.quiet : ink);
    drawFitted(painter, rows.title, Qt::AlignLeft | Qt::AlignVCenter, titleLetters(rows.title.size()), view_.title);
    paintChief(painter, rows, ink, whole);
    painter.setPen(whole ? inks.onAlarm : inks.word);
    if (rows.under.isValid())
        tell(painter, rows.under, Qt::AlignRight | Qt::AlignVCenter, dress_.letters(mm::words), view_.under, 1);
    if (rows.figure.isValid()) {
        const double letters = std::min<double>(dress_.px(mm::act), rows.figure.height() * 0.75);
        // A line is centred by its capitals: what hangs below them would otherwise run under the buttons.
        const int lift = static_cast<int>(letters * hangs / 2);
        const bool besideTitle = rows.figure.left() > rows.chief.left();
        const bool besideNumber = rows.figure.top() >= rows.chief.top() && rows.figure.bottom() <= rows.chief.bottom();
        if (!besideNumber || view_.order.isEmpty())
            tell(painter, rows.figure.translated(0, -lift),
                 (besideTitle ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter, letteringOfPixels(letters),
                 view_.figure, 1);
    }
    painter.setPen(whole ? inks.onAlarm : inks.quiet);
    for (std::size_t i = 0; i < rows.lines.size(); ++i)
        drawFitted(painter, rows.lines[i], Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::words), view_.lines[i]);
}

} // namespace panside
