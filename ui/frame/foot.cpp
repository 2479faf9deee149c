#include "ui/frame/foot.h"

#include "ui/look/each_language.h"
#include "ui/look/press.h"
#include "ui/look/roles.h"

#include <QPainter>
#include <algorithm>

namespace panside {
namespace {

constexpr int mostLines = 4; // why nothing is kept is long, and the foot of a small screen narrow

} // namespace

Foot::Foot(QWidget* parent)
    : QWidget{parent}, undo_{new Press{this}}, look_{new Press{this}}, across_{new Press{this}} {
    setObjectName(QStringLiteral("foot"));
    giveRole(*this, QAccessible::StatusBar);
    setAttribute(Qt::WA_OpaquePaintEvent);
    const std::pair<Press*, Action> keys[] = {
        {undo_, Action::undo}, {look_, Action::dayOrNight}, {across_, Action::acrossTheRoom}};
    for (const auto& [key, action] : keys)
        connect(key, &Press::clicked, this, [this, action = action] { emit actionPressed(action); });
    undo_->setObjectName(QStringLiteral("footUndo"));
    look_->setObjectName(QStringLiteral("footLook"));
    across_->setObjectName(QStringLiteral("footAcross"));
    inEachLanguage(*this, [this] { sayKeys(); });
}

void Foot::sayKeys() {
    undo_->say(what_.isEmpty() ? wordOf(Action::undo) : tr("Undo: %1").arg(what_), keyOf(Action::undo));
    undo_->setEnabled(!what_.isEmpty());
    look_->say(dress_.look == Look::day ? tr("Night") : tr("Day"), keyOf(Action::dayOrNight));
    across_->say(tr("Far view"), keyOf(Action::acrossTheRoom));
    arrange();
}

void Foot::wear(const Dress& dress) {
    dress_ = dress;
    for (Press* key : {undo_, look_, across_})
        key->wear(dress);
    sayKeys();
    update();
}

void Foot::offerUndo(const QString& what) {
    if (what == what_)
        return;
    what_ = what;
    sayKeys();
}

void Foot::say(const QString& words) {
    if (words == said_)
        return;
    said_ = words;
    setAccessibleName(words);
    update(saidPlace_);
}

void Foot::tellTime(const QString& clock, const QString& chip) {
    if (clock == clock_ && chip == chip_)
        return;
    const bool sameChip = chip == chip_;
    clock_ = clock;
    chip_ = chip;
    if (!sameChip)
        arrange();
    update();
}

// The places depend on the width and the language alone, never on what is said.
void Foot::arrange() {
    const int gap = dress_.px(mm::gap), high = height();
    int right = width() - dress_.px(1); // an alarm's frame does not touch the clock
    const auto fromRight = [&](int wide) {
        right -= wide;
        const QRect place{right, 0, wide, high};
        right -= gap;
        return place;
    };
    clockPlace_ =
        fromRight(QFontMetrics{dress_.letters(mm::lead, true)}.horizontalAdvance(QStringLiteral("00:00")) + 4);
    chipPlace_ = chip_.isEmpty()
                     ? QRect{}
                     : fromRight(QFontMetrics{dress_.letters(mm::smallWords)}.horizontalAdvance(chip_) + dress_.px(3));
    const bool narrow = width() < dress_.px(190);
    across_->setVisible(!narrow || chip_.isEmpty());
    if (!across_->isHidden())
        across_->setGeometry(
            fromRight(narrow ? std::min(across_->sizeHint().width(), dress_.px(27)) : across_->sizeHint().width()));
    look_->setGeometry(fromRight(std::min(look_->sizeHint().width(), dress_.px(30))));
    undo_->setGeometry(0, 0, std::min(right * 55 / 100, dress_.px(78)), high);
    saidPlace_ = QRect{undo_->width() + gap, 0, right - undo_->width() - gap, high};
}

void Foot::resizeEvent(QResizeEvent*) { arrange(); }

void Foot::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.fillRect(rect(), inks.ground);
    painter.setPen(inks.word);
    drawFitted(painter, saidPlace_, Qt::AlignLeft | Qt::AlignVCenter, dress_.letters(3.4), said_, mostLines);
    painter.setFont(dress_.letters(mm::lead, true));
    painter.drawText(clockPlace_, Qt::AlignRight | Qt::AlignVCenter, clock_);
    if (chip_.isEmpty())
        return;
    const int tall = dress_.px(6.5);
    const QRect chip{chipPlace_.left(), (height() - tall) / 2, chipPlace_.width(), tall};
    painter.setPen(inks.line);
    painter.drawRect(chip.adjusted(0, 0, -1, -1));
    painter.setPen(inks.word);
    drawFitted(painter, chip, Qt::AlignCenter, dress_.letters(mm::smallWords), chip_);
}

} // namespace panside
