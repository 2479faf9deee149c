#include "ui/board/card.h"

#include "ui/board/sentence_bar.h"
#include "ui/look/press.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

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
    setObjectName(name);
    setAttribute(Qt::WA_OpaquePaintEvent);
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
    const bool sameActions = view.actions == view_.actions;
    view_ = view;
    setAccessibleName(view.title);
    setAccessibleDescription(view.spoken());
    if (!sameActions) {
        while (buttons_.size() < view.actions.size()) {
            auto* button = new Press{this};
            const std::size_t place = buttons_.size();
            connect(button, &Press::clicked, this, [this, place] { emit actionPressed(view_.actions[place]); });
            button->wear(dress_);
            buttons_.push_back(button);
        }
        for (std::size_t i = 0; i < buttons_.size(); ++i) {
            buttons_[i]->setVisible(i < view.actions.size());
            if (i < view.actions.size()) {
                buttons_[i]->setObjectName(objectName() + QStringLiteral("Action%1").arg(i));
                buttons_[i]->say(wordOf(view.actions[i]), keyOf(view.actions[i]));
            }
        }
        placeButtons();
    }
    update();
}

Card::Rows Card::layout() const {
    const int edge = dress_.px(2.5), gap = dress_.px(1);
    QRect inside = rect().adjusted(edge, dress_.px(2), -edge, -dress_.px(2));
    const int title = dress_.px(5.5), chief = dress_.px(mm::chiefDigits + 2), button = dress_.px(mm::target);
    Rows rows;
    if (inside.height() < title + chief + button + gap) { // too low for a row of buttons: they stand beside
        rows.buttons =
            QRect{inside.right() - inside.width() / 2 + 1, inside.top(), inside.width() / 2, inside.height()};
        inside.setRight(rows.buttons.left() - gap - 1);
    } else {
        rows.buttons = QRect{inside.left(), inside.bottom() - button + 1, inside.width(), button};
        inside.setBottom(rows.buttons.top() - gap - 1);
    }
    rows.title = QRect{inside.left(), inside.top(), inside.width(), title};
    rows.chief =
        QRect{inside.left(), rows.title.bottom() + 1, inside.width(), std::min(chief, inside.height() - title)};
    int left = inside.bottom() - rows.chief.bottom();
    int top = rows.chief.bottom() + 1;
    const auto take = [&](int height) {
        const QRect row{inside.left(), top, inside.width(), height};
        top += height;
        left -= height;
        return row;
    };
    const int figure = dress_.px(mm::fromAfar + 2.5), line = dress_.px(6);
    // What stands beside the number has its own row where there is room for it.
    const int taken = drawPieces(nullptr, rows.chief, view_.chief, dress_.px(mm::chiefDigits), dress_.px(mm::fromAfar));
    const QRect right = rows.chief.adjusted(taken + dress_.px(4), 0, 0, 0);
    const QFont afar = dress_.letters(mm::fromAfar);
    const QString& words = view_.reason.isEmpty() ? view_.beside : view_.reason;
    // What is spare stands between the number and the words under it.
    const int wanted = (view_.figure.isEmpty() ? 0 : figure) + static_cast<int>(view_.lines.size()) * line;
    const int spare = std::clamp(left - wanted, 0, dress_.px(2.5));
    top += spare;
    left -= spare;
    const bool roomy = fits(afar, words, right.size()) || !view_.reason.isEmpty();
    const int lines = static_cast<int>(view_.lines.size());
    if (roomy || left < 2 * figure)
        rows.beside = right;
    else
        rows.beside = take(figure);
    if (!view_.figure.isEmpty() && left >= dress_.px(6))
        rows.figure = take(std::min(left, figure));
    for (int i = 0; i < lines && left >= line; ++i)
        rows.lines.push_back(take(line));
    return rows;
}

void Card::placeButtons() {
    const QRect row = layout().buttons;
    const int count = static_cast<int>(view_.actions.size());
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
    if (view_.tone != Tone::calm) // a bar at the edge, so that it is not only the colour
        painter.fillRect(QRect{0, 0, dress_.px(1.5), height()}, ink);
    painter.setPen(whole || headed ? inks.onAlarm : view_.tone == Tone::calm ? inks.quiet : ink);
    drawFitted(painter, rows.title, Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::words, true), view_.title);

    double digits = dress_.px(mm::chiefDigits), words = dress_.px(mm::fromAfar);
    // The digits stand high in their row: the room is wanted under them.
    const QRect chief = rows.chief.adjusted(
        0, 0, 0, -std::min(dress_.px(1.4), std::max(0, rows.chief.height() - static_cast<int>(digits))));
    const bool known = view_.reason.isEmpty();
    const int wide = drawPieces(nullptr, rows.chief, view_.chief, digits, words);
    if (wide > rows.chief.width()) {
        digits *= static_cast<double>(rows.chief.width()) / wide;
        words *= static_cast<double>(rows.chief.width()) / wide;
    }
    painter.setPen(whole ? inks.onAlarm : !known || !view_.doubt.isEmpty() ? inks.quiet : ink);
    const int taken = drawPieces(&painter, chief, view_.chief, digits, words);

    painter.setPen(whole ? inks.onAlarm : inks.word);
    if (!known)
        drawFitted(painter, rows.beside, Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::fromAfar * 0.8),
                   view_.reason, 2);
    else if (view_.doubt.isEmpty())
        drawFitted(painter, rows.beside, Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::fromAfar), view_.beside,
                   2);
    if (!view_.doubt.isEmpty()) { // the number is struck, and the word that strikes it stands there
        const int middle = chief.center().y();
        painter.fillRect(QRect{rows.chief.left(), middle - dress_.px(0.6), taken, dress_.px(1.2)}, inks.word);
        const QRect place = rows.chief.adjusted(taken + dress_.px(3), 0, 0, 0);
        drawFitted(painter, place, Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::fromAfar), view_.doubt, 2);
    }
    if (rows.figure.isValid()) {
        const double letters = std::min<double>(dress_.px(mm::fromAfar), rows.figure.height() * 0.75);
        // A line is centred by its capitals: what hangs below them would otherwise run under the buttons.
        const int lift = static_cast<int>(letters * hangs / 2);
        drawFitted(painter, rows.figure.translated(0, -lift), Qt::AlignLeft | Qt::AlignVCenter,
                   letteringOfPixels(letters), view_.figure);
    }
    painter.setPen(whole ? inks.onAlarm : inks.quiet);
    for (std::size_t i = 0; i < rows.lines.size(); ++i)
        drawFitted(painter, rows.lines[i], Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(mm::words), view_.lines[i]);
}

} // namespace panside
