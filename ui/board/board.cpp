#include "ui/board/board.h"

#include "ui/board/across_view.h"
#include "ui/board/card.h"
#include "ui/chart/rise_chart.h"
#include "ui/look/each_language.h"

#include <QKeyEvent>
#include <utility>

namespace panside {

CardColumn::CardColumn(QWidget* parent)
    : QWidget{parent}, cards_{new Card{QStringLiteral("drawCard"), this}, new Card{QStringLiteral("fireCard"), this},
                              new Card{QStringLiteral("lastLoadCard"), this}} {
    setObjectName(QStringLiteral("cards"));
}

void CardColumn::wear(const Dress& dress) {
    dress_ = dress;
    for (Card* card : cards_)
        card->wear(dress);
    resizeEvent(nullptr);
}

void CardColumn::resizeEvent(QResizeEvent*) {
    const int gap = dress_.px(mm::gap);
    for (int i = 0; i < 3; ++i) {
        const int top = i * (height() + gap) / 3, next = (i + 1) * (height() + gap) / 3;
        cards_[static_cast<std::size_t>(i)]->setGeometry(0, top, width(), next - top - gap);
    }
}

Board::Board(QWidget* parent)
    : QWidget(parent), chart_{new RiseChart{this}}, cards_{new CardColumn{this}}, across_{new AcrossView{this}} {
    setObjectName(QStringLiteral("board"));
    setFocusPolicy(Qt::StrongFocus);
    for (const Card* card : cards_->cards())
        connect(card, &Card::actionPressed, this, &Board::actionWanted);
    cards_->hide();
    across_->hide();
    inEachLanguage(*this, [this] { refresh(); });
}

void Board::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    chart_->wear(dress);
    cards_->wear(dress);
    across_->wear(dress);
    update();
}

void Board::setUnits(Units units) {
    units_ = units;
    chart_->setUnits(units);
    refresh();
}

void Board::await() {
    awaiting_ = true;
    chart_->hide(); // its axes would tell a time
    refresh();
}

void Board::display(const Picture& picture) {
    if (std::exchange(awaiting_, false))
        chart_->show();
    picture_ = picture;
    fireClock_.steady(picture_);
    chart_->display(picture_);
    refresh();
}

void Board::refresh() {
    std::array<CardView, 3> views{drawCard(picture_, units_), fireCard(picture_, units_),
                                  lastLoadCard(picture_, units_)};
    said_ = sentence(picture_, units_);
    if (awaiting_) {
        said_ = {};
        said_.wrong = tr("The night is being read.");
        for (CardView& view : views) {
            const QString title = view.title;
            view = {};
            view.title = title;
            view.chief = dash;
        }
    }
    for (std::size_t i = 0; i < views.size(); ++i)
        cards_->cards()[i]->display(views[i]);
    across_->display(said_, views);
}

QString Board::numbersLine() const {
    const QString names[] = {tr("draw"), tr("fire"), tr("last load")};
    QStringList parts;
    for (std::size_t i = 0; i < 3; ++i) {
        const CardView& view = cards_->cards()[i]->view();
        QString number = view.order;
        if (number.isEmpty())
            for (const Piece& piece : view.chief)
                number += (number.isEmpty() ? QString{} : QString{QChar{0x00a0}}) + piece.text;
        parts << names[i] + u' ' + number;
    }
    return parts.join(QStringLiteral("  ·  "));
}

void Board::keyPressEvent(QKeyEvent* event) {
    if (chart_->press(*event))
        return;
    const auto action = actionOf(*event, picture_.drawing, picture_.litAt.has_value());
    if (!action || event->isAutoRepeat())
        return QWidget::keyPressEvent(event);
    emit actionWanted(*action);
}

void Board::resizeEvent(QResizeEvent*) { chart_->setGeometry(rect()); }

} // namespace panside
