#include "ui/start/place_pick.h"

#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/start/start_view.h"
#include "ui/words/place_words.h"
#include "ui/words/said.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <algorithm>

namespace panside {

PlacePick::PlacePick(std::optional<std::size_t> now, Units units, const Dress& dress, bool low, QWidget* parent)
    : QWidget{parent}, units_{units}, dress_{dress}, line_{new TypedLine}, room_{new QWidget}, earlier_{new Press},
      later_{new Press}, numbers_{new QLabel}, chosen_{now} {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    if (low)
        column->setSpacing(dress.px(1));
    auto* head = new QHBoxLayout;
    auto* label = new QLabel{tr("its first letters")};
    label->setFont(dress.letters(mm::words));
    line_->setObjectName(QStringLiteral("place"));
    line_->setAccessibleName(label->text());
    line_->wear(dress);
    line_->setMinimumHeight(dress.px(mm::target));
    line_->installEventFilter(this);
    connect(line_, &QLineEdit::textEdited, this, [this] {
        look();
        chosen_ = found_.empty() || line_->text().trimmed().isEmpty() ? std::nullopt : std::optional{found_.front()};
        showPage();
    });
    head->addWidget(label);
    head->addWidget(line_, 1);
    const std::pair<Press*, int> turns[] = {{earlier_, -1}, {later_, 1}};
    for (const auto& [press, by] : turns) {
        press->wear(dress);
        press->say(by < 0 ? tr("earlier") : tr("more"), {});
        press->setObjectName(by < 0 ? QStringLiteral("placesEarlier") : QStringLiteral("placesMore"));
        connect(press, &Press::clicked, this, [this, by = by] { turn(by); });
        head->addWidget(press);
    }
    column->addLayout(head);
    column->addWidget(room_, 1);
    numbers_->setObjectName(QStringLiteral("placeNumbers"));
    numbers_->setFont(dress.letters(low ? mm::smallWords : mm::words));
    numbers_->setWordWrap(true);
    column->addWidget(numbers_);
    setFocusProxy(line_);
    room_->setMinimumHeight(dress.px((low ? 1 : 2) * (mm::target + 1)));
    look();
}

QString PlacePick::typed() const { return line_->text().trimmed(); }
bool PlacePick::isUnknown() const { return !typed().isEmpty() && found_.empty(); }

void PlacePick::look() {
    found_ = placesLike(line_->text(), units_);
    first_ = 0;
}

void PlacePick::turn(int by) {
    const int next = first_ + by * perPage();
    if (next >= 0 && next < static_cast<int>(found_.size()))
        first_ = next;
    showPage();
}

// To the next of those that are found.
void PlacePick::step(int by) {
    if (found_.empty())
        return;
    const auto at = chosen_ ? std::ranges::find(found_, *chosen_) : found_.end();
    const int last = static_cast<int>(found_.size()) - 1;
    const int next =
        at == found_.end() ? (by > 0 ? 0 : last) : std::clamp(static_cast<int>(at - found_.begin()) + by, 0, last);
    chosen_ = found_[static_cast<std::size_t>(next)];
    first_ = next / std::max(1, perPage()) * perPage();
    showPage();
}

// As many keys as there is room for; whole pages of them.
void PlacePick::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    layout()->activate();
    const int gap = dress_.px(1), high = dress_.px(mm::target);
    const int columns = std::max(2, room_->width() / dress_.px(50));
    const int rows = std::max(1, (room_->height() + gap) / (high + gap));
    const int wide = (room_->width() - gap * (columns - 1)) / columns;
    while (static_cast<int>(keys_.size()) > columns * rows) {
        delete keys_.back();
        keys_.pop_back();
    }
    while (static_cast<int>(keys_.size()) < columns * rows) {
        auto* key = new Press{room_};
        const std::size_t index = keys_.size();
        key->wear(dress_);
        key->setCheckable(true);
        connect(key, &Press::clicked, this, [this, index] {
            chosen_ = found_[static_cast<std::size_t>(first_) + index];
            showPage();
            emit picked();
        });
        keys_.push_back(key);
    }
    for (int i = 0; i < columns * rows; ++i) {
        keys_[static_cast<std::size_t>(i)]->setObjectName(QStringLiteral("place_%1").arg(i));
        keys_[static_cast<std::size_t>(i)]->setGeometry(i % columns * (wide + gap), i / columns * (high + gap), wide,
                                                        high);
    }
    if (chosen_ && perPage() > 0) // what holds is in sight
        if (const auto at = std::ranges::find(found_, *chosen_); at != found_.end())
            first_ = static_cast<int>(at - found_.begin()) / perPage() * perPage();
    showPage();
}

void PlacePick::showPage() {
    for (std::size_t i = 0; i < keys_.size(); ++i) {
        const std::size_t at = static_cast<std::size_t>(first_) + i;
        keys_[i]->setVisible(at < found_.size());
        if (at >= found_.size())
            continue;
        keys_[i]->say(placeName(allPlaces()[found_[at]]), {});
        keys_[i]->setChecked(chosen_ == found_[at]);
    }
    earlier_->setEnabled(first_ > 0);
    later_->setEnabled(first_ + perPage() < static_cast<int>(found_.size()));
    if (isUnknown())
        numbers_->setText(tr("No place is called so. Is it %1?")
                              .arg(placeName(allPlaces()[placeNamed(placeLike(typed().toStdString())).value_or(0)])));
    else if (chosen_)
        numbers_->setText(namedAs(placeName(allPlaces()[*chosen_]), placeNumbers(allPlaces()[*chosen_], units_)) +
                          QLatin1Char(' ') + tr("From: %1.").arg(sourceText(allPlaces()[*chosen_].density)));
    else
        numbers_->setText(tr("Left out, the density wanted is 66.9 °Brix, and no law is asked."));
}

bool PlacePick::eventFilter(QObject* watched, QEvent* event) {
    if (watched != line_ || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key != Qt::Key_Down && key != Qt::Key_Up)
        return QWidget::eventFilter(watched, event);
    step(key == Qt::Key_Down ? 1 : -1);
    return true;
}

} // namespace panside
