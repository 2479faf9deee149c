#include "ui/frame/frame_view.h"

#include "ui/frame/foot.h"
#include "ui/frame/rail_key.h"
#include "ui/frame/roll.h"
#include "ui/frame/sentence_bar.h"
#include "ui/frame/tab_key.h"
#include "ui/look/each_language.h"
#include "ui/look/press.h"

#include <QPainter>
#include <QStackedWidget>
#include <algorithm>

namespace panside {
namespace {

constexpr int halfFlash = 500; // milliseconds: once a second, well under the three that can bring on a seizure
constexpr double lowScreen = 180, outer = 2; // mm

} // namespace

FrameView::FrameView(QWidget* parent)
    : QWidget{parent}, bar_{new SentenceBar{this}}, foot_{new Foot{this}}, stack_{new QStackedWidget{this}} {
    setObjectName(QStringLiteral("frame"));
    setAttribute(Qt::WA_OpaquePaintEvent);
    connect(bar_, &SentenceBar::actionPressed, this, &FrameView::actionWanted);
    connect(bar_, &SentenceBar::boardWanted, this, &FrameView::boardWanted);
    connect(foot_, &Foot::actionPressed, this, &FrameView::actionWanted);
    flashing_.setInterval(halfFlash);
    connect(&flashing_, &QTimer::timeout, this, &FrameView::flash);
    inEachLanguage(*this, [this] {
        sayWords();
        arrange();
    });
}

bool FrameView::isLow() const { return dress_.measure.millimetres(height()) < lowScreen; }

void FrameView::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    bar_->wear(dress);
    foot_->wear(dress);
    for (RailKey* key : rail_)
        key->wear(dress);
    for (TabKey* tab : tabs_)
        tab->wear(dress);
    for (const auto& [action, key] : row_)
        key->wear(dress);
    for (Roll* roll : rolls_)
        roll->wear(dress);
    arrange();
    update();
}

void FrameView::setPlaces(const std::vector<Place>& places) {
    qDeleteAll(rail_);
    rail_.clear();
    for (const Place place : places) {
        auto* key = new RailKey{place, this};
        key->wear(dress_);
        connect(key, &RailKey::clicked, this, [this, place] { emit placeWanted(place); });
        rail_.push_back(key);
    }
    arrange();
}

void FrameView::addPage(QWidget* page) {
    auto* roll = new Roll{page};
    roll->wear(dress_);
    rolls_.push_back(roll);
    stack_->addWidget(roll);
}

QWidget* FrameView::page() const {
    const auto* roll = qobject_cast<Roll*>(stack_->currentWidget());
    return roll ? roll->widget() : nullptr;
}

void FrameView::showPage(QWidget* page, QWidget* side, const std::vector<Action>& row) {
    if (side_ && side_ != side)
        side_->hide();
    side_ = side;
    if (side_) {
        side_->setParent(this);
        side_->show();
    }
    for (const auto& [action, key] : row_) {
        key->hide();
        key->deleteLater(); // it may be what asked for this
    }
    row_.clear();
    for (const Action action : row) {
        auto* key = new Press{this};
        key->setObjectName(QStringLiteral("key%1").arg(keyOf(action)));
        key->wear(dress_);
        key->show();
        connect(key, &Press::clicked, this, [this, action] { emit actionWanted(action); });
        row_.emplace_back(action, key);
    }
    sayWords();
    arrange();
    const auto roll = std::ranges::find_if(rolls_, [&](const Roll* one) { return one->widget() == page; });
    if (roll != rolls_.end())
        stack_->setCurrentWidget(*roll);
}

void FrameView::showTabs(Place place, const std::vector<FrameTab>& tabs, Action shown) {
    for (RailKey* key : rail_)
        key->setChecked(key->place() == place);
    shownTabs_ = tabs;
    while (tabs_.size() < tabs.size()) {
        auto* made = new TabKey{this};
        const std::size_t index = tabs_.size();
        made->setObjectName(QStringLiteral("tab%1").arg(index));
        made->wear(dress_);
        connect(made, &TabKey::clicked, this, [this, index] { emit screenWanted(shownTabs_[index].screen); });
        tabs_.push_back(made);
    }
    for (std::size_t i = 0; i < tabs_.size(); ++i) {
        tabs_[i]->setVisible(i < tabs.size());
        if (i >= tabs.size())
            continue;
        tabs_[i]->say(tabs[i].word, tabs[i].digit);
        tabs_[i]->setChecked(tabs[i].screen == shown);
    }
    bar_->setAway(shown != Action::board);
    arrange();
}

void FrameView::setStill(bool still) {
    still_ = still;
    if (still_ && flashing_.isActive()) {
        flashing_.stop();
        lit_ = true;
        update();
    }
}

void FrameView::display(const SentenceView& said, const QString& numbers) {
    const bool changed = said.flashing != bar_->view().flashing;
    bar_->display(said, numbers);
    const bool flashes = said.flashing && !still_;
    if (!changed && flashes == flashing_.isActive() && (flashes || lit_ == (said.state == SentenceView::State::alarm)))
        return;
    if (flashes) {
        lit_ = true;
        flashing_.start();
    } else {
        flashing_.stop();
        lit_ = said.state == SentenceView::State::alarm;
    }
    update();
}

void FrameView::flash() {
    lit_ = !lit_;
    update();
}

void FrameView::sayWords() {
    for (RailKey* key : rail_)
        key->sayWord();
    for (const auto& [action, key] : row_)
        key->say(wordOf(action), keyOf(action));
}

void FrameView::resizeEvent(QResizeEvent*) { arrange(); }

void FrameView::arrange() {
    const int edge = dress_.px(outer), gap = dress_.px(mm::gap), target = dress_.px(mm::target);
    const QRect inside = rect().adjusted(edge, edge, -edge, -edge);
    const bool low = isLow();
    const int bar = dress_.px(low ? mm::bar * 0.85 : mm::bar), rail = dress_.px(low ? 20.6 : 23.3);
    bar_->setGeometry(inside.left(), inside.top(), inside.width(), bar);
    const int top = inside.top() + bar + gap;
    arrangeRail(QRect{inside.left(), top, rail, inside.bottom() + 1 - top});
    work_ = QRect{inside.left() + rail + gap, top, inside.width() - rail - gap, inside.bottom() + 1 - top};
    QRect left = work_;
    if (side_) {
        // A third, never so narrow that a chief number and its range do not stand side by side.
        const int wide =
            std::clamp(inside.width() * 31 / 100, std::min(dress_.px(89), work_.width() / 2), dress_.px(112));
        side_->setGeometry(work_.right() + 1 - wide, work_.top(), wide, work_.height());
        left.setRight(left.right() - wide - gap);
    }
    arrangeTabs(QRect{left.left(), left.top(), left.width(), target});
    foot_->setGeometry(left.left(), left.bottom() + 1 - target, left.width(), target);
    int bottom = foot_->y() - gap;
    if (!row_.empty()) {
        arrangeRow(QRect{left.left(), bottom - target, left.width(), target});
        bottom -= target + gap;
    }
    const int pageTop = left.top() + target + (side_ ? dress_.px(0.5) : 0);
    stack_->setGeometry(left.left(), pageTop, left.width(), std::max(1, bottom - pageTop));
}

void FrameView::arrangeRail(const QRect& place) {
    const int count = static_cast<int>(rail_.size());
    for (int i = 0; i < count; ++i) {
        const int from = place.top() + i * place.height() / count, to = place.top() + (i + 1) * place.height() / count;
        rail_[static_cast<std::size_t>(i)]->setGeometry(place.left(), from, place.width(), to - from);
    }
}

void FrameView::arrangeTabs(const QRect& place) {
    int wanted = 0, at = place.left();
    for (std::size_t i = 0; i < shownTabs_.size(); ++i)
        wanted += tabs_[i]->sizeHint().width();
    for (std::size_t i = 0; i < shownTabs_.size(); ++i) {
        const int hint = tabs_[i]->sizeHint().width();
        const int wide = wanted <= place.width() ? hint : hint * place.width() / std::max(1, wanted);
        tabs_[i]->setGeometry(at, place.top(), wide, place.height());
        at += wide;
    }
}

// Shares of the row as the words need; nothing in it moves while the language stays.
void FrameView::arrangeRow(const QRect& place) {
    std::vector<Press*> keys;
    for (const auto& [action, key] : row_)
        keys.push_back(key);
    layInRow(keys, place, dress_.px(isLow() ? 1 : 1.5));
}

QRect FrameView::sheetPlace() const {
    QRect place = work_;
    if (isLow())
        return place;
    if (side_)
        place.setRight(side_->x() - dress_.px(mm::gap) - 1);
    place.setBottom(foot_->y() - dress_.px(mm::gap) - 1);
    return place;
}

void FrameView::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.fillRect(rect(), inks.ground);
    const SentenceView& said = bar_->view();
    if (said.state != SentenceView::State::alarm || !lit_)
        return;
    // Whole and flashing while the alarm is not seen, thin and steady afterwards: in the gap that is there anyway.
    const int wide = said.flashing ? dress_.px(outer) : dress_.px(outer) / 3;
    const QColor ink = inkOf(said.tone, inks);
    painter.fillRect(QRect{0, 0, width(), wide}, ink);
    painter.fillRect(QRect{0, height() - wide, width(), wide}, ink);
    painter.fillRect(QRect{0, 0, wide, height()}, ink);
    painter.fillRect(QRect{width() - wide, 0, wide, height()}, ink);
}

} // namespace panside
