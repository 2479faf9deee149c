#include "ui/board/board.h"

#include "ui/board/across_view.h"
#include "ui/board/card.h"
#include "ui/board/sentence_bar.h"
#include "ui/chart/rise_chart.h"
#include "ui/look/press.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>

namespace panside {
namespace {

constexpr int halfFlash = 500; // milliseconds: once a second, well under the three that can bring on a seizure

} // namespace

Board::Board(QWidget* parent)
    : QWidget(parent), bar_{new SentenceBar{this}}, first_{new FirstBand{this}}, chart_{new RiseChart{this}},
      cards_{new Card{QStringLiteral("drawCard"), this}, new Card{QStringLiteral("fireCard"), this},
             new Card{QStringLiteral("lastLoadCard"), this}},
      across_{new AcrossView{this}} {
    setObjectName(QStringLiteral("board"));
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    connect(bar_, &SentenceBar::actionPressed, this, &Board::want);
    for (Card* card : cards_)
        connect(card, &Card::actionPressed, this, &Board::want);
    for (const ActionRow& row : allActions()) {
        if (row.place != Place::keyRow)
            continue;
        auto* key = new Press{this};
        key->setObjectName(QStringLiteral("key%1").arg(keyOf(row.action)));
        connect(key, &Press::clicked, this, [this, action = row.action] { want(action); });
        keys_.emplace_back(row.action, key);
    }
    nameKeys();
    across_->hide();
    flashing_.setInterval(halfFlash);
    connect(&flashing_, &QTimer::timeout, this, &Board::flash);
    refresh(picture_);
}

void Board::nameKeys() {
    for (const auto& [action, key] : keys_)
        key->say(wordOf(action), keyOf(action));
}

void Board::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    bar_->wear(dress);
    first_->wear(dress);
    chart_->wear(dress);
    for (Card* card : cards_)
        card->wear(dress);
    for (const auto& [action, key] : keys_)
        key->wear(dress);
    across_->wear(dress);
    arrange();
    update();
}

void Board::setUnits(Units units) {
    units_ = units;
    chart_->setUnits(units);
    refresh(picture_);
}

void Board::display(const Picture& picture) {
    chart_->display(picture);
    picture_ = picture;
    refresh(picture_);
}

void Board::refresh(const Picture& picture) {
    const SentenceView said = sentence(picture, units_);
    const std::array<CardView, 3> views{drawCard(picture, units_), fireCard(picture, units_),
                                        lastLoadCard(picture, units_)};
    const bool sameBand = said.first == bar_->view().first && said.others == bar_->view().others;
    bar_->display(said);
    first_->display(said);
    for (std::size_t i = 0; i < cards_.size(); ++i)
        cards_[i]->display(views[i]);
    across_->display(said, views);
    if (!sameBand)
        arrange();
    if (said.flashing == flashing_.isActive())
        return;
    if (said.flashing) {
        flashOn_ = false;
        flash();
        flashing_.start();
    } else {
        flashing_.stop();
        flashOn_ = true;
        flash();
    }
}

void Board::flash() {
    flashOn_ = !flashOn_;
    bar_->setFlash(flashOn_);
    across_->setFlash(flashOn_);
    update();
}

const SentenceView& Board::sentenceShown() const { return bar_->view(); }

void Board::showAcrossTheRoom(bool on) {
    across_->setVisible(on);
    across_->raise();
}

bool Board::acrossTheRoom() const { return !across_->isHidden(); }

QRect Board::placeOf(Action action) const {
    for (const Card* card : cards_) {
        const auto& actions = card->view().actions;
        if (std::find(actions.begin(), actions.end(), action) != actions.end())
            return card->geometry();
    }
    for (const auto& [its, key] : keys_)
        if (its == action)
            return key->geometry();
    return rowOf(action).place == Place::sentence ? bar_->geometry() : QRect{};
}

void Board::want(Action action) {
    if (action == Action::acrossTheRoom)
        showAcrossTheRoom(!acrossTheRoom());
    emit actionWanted(action);
}

void Board::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && acrossTheRoom())
        return want(Action::acrossTheRoom);
    if (chart_->press(*event))
        return;
    const auto action = actionOf(*event, picture_.drawing, picture_.litAt.has_value());
    if (!action || event->isAutoRepeat())
        return QWidget::keyPressEvent(event);
    want(*action);
}

void Board::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) {
        nameKeys();
        wear(dress_);
        refresh(picture_);
    }
    QWidget::changeEvent(event);
}

void Board::resizeEvent(QResizeEvent*) { arrange(); }

void Board::arrange() {
    const int frame = dress_.px(mm::frame), gap = dress_.px(1.5);
    const QRect inside = rect().adjusted(frame, frame, -frame, -frame);
    across_->setGeometry(inside);
    const int bar = dress_.px(mm::sentenceBar);
    bar_->setGeometry(inside.left(), inside.top(), inside.width(), bar);
    const QRect below = inside.adjusted(0, bar + gap, 0, 0);
    // A third for the cards, never so narrow that a chief number and its range do not stand side by side.
    const int column =
        std::clamp(inside.width() * 32 / 100, std::min(dress_.px(112), inside.width() / 2), dress_.px(170));
    const int left = below.width() - column - gap;
    const int x = below.left() + left + gap;
    for (int i = 0; i < 3; ++i) {
        const int top = below.top() + i * (below.height() + gap) / 3;
        const int next = below.top() + (i + 1) * (below.height() + gap) / 3;
        cards_[static_cast<std::size_t>(i)]->setGeometry(x, top, column, next - top - gap);
    }
    const int band = first_->wantedHeight();
    first_->setVisible(band > 0);
    first_->setGeometry(below.left(), below.top(), left, band);
    const int chartTop = below.top() + (band > 0 ? band + gap : 0);
    const int keysTop = arrangeKeys(QRect{below.left(), below.top(), left, below.height()}, gap);
    chart_->setGeometry(below.left(), chartTop, left, std::max(1, keysTop - gap - chartTop));
}

// The keys at the foot of the place, in two rows where one would squeeze their words; returns where they begin.
int Board::arrangeKeys(const QRect& place, int gap) {
    const int target = dress_.px(mm::target), count = static_cast<int>(keys_.size());
    int wanted = gap * (count - 1);
    for (const auto& [action, key] : keys_)
        wanted += key->sizeHint().width();
    const int rows = wanted * 9 / 10 > place.width() ? 2 : 1;
    const int each = (count + rows - 1) / rows;
    const int top = place.bottom() + 1 - rows * target - (rows - 1) * gap;
    for (int row = 0; row < rows; ++row) {
        const int first = row * each, last = std::min(count, first + each);
        int share = 0;
        for (int i = first; i < last; ++i)
            share += keys_[static_cast<std::size_t>(i)].second->sizeHint().width();
        int at = place.left(), rest = place.width() - gap * (last - first - 1);
        for (int i = first; i < last; ++i) {
            Press* key = keys_[static_cast<std::size_t>(i)].second;
            const int hint = key->sizeHint().width();
            const int wide = static_cast<int>(static_cast<long long>(rest) * hint / std::max(1, share));
            key->setGeometry(at, top + row * (target + gap), wide, target);
            at += wide + gap;
            rest -= wide;
            share -= hint;
        }
    }
    return top;
}

void Board::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.fillRect(rect(), inks.ground);
    const SentenceView& said = bar_->view();
    if (said.tone == Tone::calm || (said.flashing && !flashOn_))
        return;
    // The frame: whole and flashing while the alarm is not seen, thin and steady afterwards.
    const int wide = said.flashing ? dress_.px(mm::frame) : dress_.px(mm::frame) / 3;
    const QColor ink = inkOf(said.tone, inks);
    painter.fillRect(QRect{0, 0, width(), wide}, ink);
    painter.fillRect(QRect{0, height() - wide, width(), wide}, ink);
    painter.fillRect(QRect{0, 0, wide, height()}, ink);
    painter.fillRect(QRect{width() - wide, 0, wide, height()}, ink);
}

} // namespace panside
