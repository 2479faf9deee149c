#include "ui/frame/key_map.h"

#include "ui/look/press.h"

#include <QPainter>
#include <algorithm>
#include <numeric>

namespace panside {
namespace {

constexpr double broad = 300; // mm: seven actions side by side, and no key of the page is scrolled to

} // namespace

KeyMap::KeyMap(QWidget* parent) : QWidget{parent} {
    setObjectName(QStringLiteral("keyMap"));
    setFocusPolicy(Qt::StrongFocus);
}

Press* KeyMap::add(const QString& word, const QString& key, const QString& name) {
    auto* press = new Press{this};
    press->wear(dress_);
    press->say(word, key);
    press->setObjectName(name);
    press->show();
    return press;
}

void KeyMap::display(const std::vector<std::pair<Place, std::vector<FrameTab>>>& places) {
    for (const Column& column : columns_)
        for (Press* key : column.keys)
            key->deleteLater();
    for (Press* key : actions_)
        key->deleteLater();
    columns_.clear();
    actions_.clear();
    for (const auto& [place, tabs] : places) {
        Column column{place, {}, {}};
        for (const FrameTab& tab : tabs) {
            Press* key =
                add(tab.word, QString::number(tab.digit), QStringLiteral("map_%1_%2").arg(keyOf(place)).arg(tab.digit));
            connect(key, &Press::clicked, this, [this, screen = tab.screen] { emit screenWanted(screen); });
            column.keys.push_back(key);
        }
        columns_.push_back(std::move(column));
    }
    for (const ActionRow& row : allActions()) {
        if (row.action == Action::drawClose) // the same key
            continue;
        const bool draw = row.action == Action::drawOpen;
        Press* key = add(draw ? tr("Open, close the draw") : wordOf(row.action), keyOf(row.action),
                         QStringLiteral("map_%1").arg(keyOf(row.action)));
        key->setToolTip(sentenceOf(row.action));
        connect(key, &Press::clicked, this, [this, action = row.action] { emit actionWanted(action); });
        actions_.push_back(key);
    }
    arrange();
    update();
}

void KeyMap::wear(const Dress& dress) {
    dress_ = dress;
    for (const Column& column : columns_)
        for (Press* key : column.keys)
            key->wear(dress);
    for (Press* key : actions_)
        key->wear(dress);
    arrange();
    update();
}

void KeyMap::resizeEvent(QResizeEvent*) { arrange(); }

// All alike; where a word does not stand whole then, its column takes what the others can spare.
std::vector<int> KeyMap::columnWidths(int room) const {
    const int count = static_cast<int>(columns_.size());
    std::vector<int> least;
    for (const Column& column : columns_) {
        least.push_back(0);
        for (const Press* key : column.keys)
            least.back() = std::max(least.back(), key->leastWidth());
    }
    const int sum = std::accumulate(least.begin(), least.end(), 0);
    const bool alike = *std::ranges::max_element(least) <= room / count || sum > room;
    std::vector<int> widths;
    for (int i = 0; i < count; ++i) {
        const int from = alike ? 0 : least[static_cast<std::size_t>(i)], shared = alike ? room : room - sum;
        widths.push_back(from + (i + 1) * shared / count - i * shared / count);
    }
    return widths;
}

void KeyMap::arrange() {
    if (columns_.empty())
        return;
    const int gap = dress_.px(1.5), head = dress_.px(5.5), target = dress_.px(mm::target);
    const int count = static_cast<int>(columns_.size());
    const std::vector<int> widths = columnWidths(width() - gap * (count - 1));
    std::size_t most = 0;
    int from = 0;
    for (int i = 0; i < count; ++i) {
        Column& column = columns_[static_cast<std::size_t>(i)];
        const int wide = widths[static_cast<std::size_t>(i)];
        column.head = QRect{from, 0, wide, head};
        for (std::size_t row = 0; row < column.keys.size(); ++row)
            column.keys[row]->setGeometry(from, head + static_cast<int>(row) * (target + gap), wide, target);
        most = std::max(most, column.keys.size());
        from += wide + gap;
    }
    const int across = width() >= dress_.px(broad) ? 7 : 6;
    const int rows = (static_cast<int>(actions_.size()) + across - 1) / across;
    const int wanted = head + rows * (target + gap) - gap;
    const int least = head + static_cast<int>(most) * (target + gap) + gap;
    setMinimumHeight(least + wanted);
    const int top = std::max(least, height() - wanted - dress_.px(1));
    actionsHead_ = QRect{0, top, width(), head};
    for (std::size_t i = 0; i < actions_.size(); ++i) {
        const int column = static_cast<int>(i) % across, row = static_cast<int>(i) / across;
        const int left = column * (width() + gap) / across;
        const int wide = (column + 1) * (width() + gap) / across - gap - left;
        actions_[i]->setGeometry(left, top + head + row * (target + gap), wide, target);
    }
}

void KeyMap::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.fillRect(rect(), inks.ground);
    const QFont font = dress_.letters(mm::smallWords, true);
    painter.setPen(inks.quiet);
    for (const Column& column : columns_)
        drawFitted(painter, column.head, Qt::AlignLeft | Qt::AlignVCenter, font,
                   tr("%1: %2, then").arg(wordOf(column.place), keyOf(column.place)));
    drawFitted(painter, actionsHead_, Qt::AlignLeft | Qt::AlignVCenter, font,
               tr("At the pan. A C D F S U Z mean the same on every screen."));
}

} // namespace panside
