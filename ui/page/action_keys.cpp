#include "ui/page/action_keys.h"

#include "ui/look/press.h"

#include <QKeyEvent>
#include <QKeySequence>
#include <algorithm>

namespace panside {

PageKey wayToBoard() { return {Qt::Key_Escape, QStringLiteral("back"), {}}; }

ActionKeys::ActionKeys(QWidget* parent) : QWidget{parent} { setObjectName(QStringLiteral("actionKeys")); }

void ActionKeys::wear(const Dress& dress) {
    dress_ = dress;
    for (Press* press : presses_)
        press->wear(dress);
    arrange();
}

void ActionKeys::display(const std::vector<PageKey>& keys) {
    if (keys == keys_)
        return;
    keys_ = keys;
    while (presses_.size() < keys.size()) {
        auto* press = new Press{this};
        const std::size_t index = presses_.size();
        press->wear(dress_);
        press->setFocusPolicy(Qt::TabFocus); // the list or field above keeps the keys
        connect(press, &Press::clicked, this, [this, index] { emit pressed(keys_[index].key); });
        presses_.push_back(press);
    }
    for (std::size_t i = 0; i < presses_.size(); ++i) {
        presses_[i]->setVisible(isDrawn(i));
        if (!isDrawn(i)) {
            presses_[i]->setObjectName({}); // what is not there is not found
            continue;
        }
        presses_[i]->setObjectName(keys[i].name);
        presses_[i]->say(keys[i].word, capOf(keys[i].key));
        presses_[i]->setShape(keys[i].due ? KeyShape::due : KeyShape::plain);
        presses_[i]->setEnabled(keys[i].usable);
    }
    arrange();
}

// As it stands on the keyboard.
QString ActionKeys::capOf(int key) {
    switch (key) {
    case Qt::Key_Escape:
        return tr("Esc");
    case Qt::Key_Return:
        return tr("Enter");
    case Qt::Key_Space:
        return tr("Space");
    case Qt::Key_Delete:
        return tr("Del");
    case Qt::Key_Up:
        return QStringLiteral("↑");
    case Qt::Key_Down:
        return QStringLiteral("↓");
    case Qt::Key_Left:
        return QStringLiteral("←");
    case Qt::Key_Right:
        return QStringLiteral("→");
    case ctrlEnter:
        return tr("Ctrl+Enter");
    case ctrlDel:
        return tr("Ctrl+Del");
    default:
        return QKeySequence{key}.toString(QKeySequence::NativeText);
    }
}

bool ActionKeys::answer(const QKeyEvent& event) {
    if ((event.modifiers() & (Qt::AltModifier | Qt::MetaModifier)) || event.isAutoRepeat())
        return false;
    const int key = (event.key() == Qt::Key_Enter ? static_cast<int>(Qt::Key_Return) : event.key()) |
                    (event.modifiers() & Qt::ControlModifier ? static_cast<int>(Qt::CTRL) : 0);
    for (const PageKey& one : keys_)
        if (one.key == key && one.usable) {
            emit pressed(key);
            return true;
        }
    return false;
}

bool ActionKeys::eventFilter(QObject* page, QEvent* event) {
    return (event->type() == QEvent::KeyPress && answer(static_cast<QKeyEvent&>(*event))) ||
           QWidget::eventFilter(page, event);
}

void ActionKeys::resizeEvent(QResizeEvent*) { arrange(); }

// Shares of a row as the words need.
void ActionKeys::arrange() {
    std::vector<Press*> drawn;
    for (std::size_t i = 0; i < presses_.size(); ++i)
        if (isDrawn(i))
            drawn.push_back(presses_[i]);
    const int gap = dress_.px(1), high = dress_.px(mm::target), count = static_cast<int>(drawn.size());
    int least = -gap;
    for (const Press* press : drawn)
        least += press->leastWidth() + gap;
    const int rows = count == 0 ? 0 : least <= width() ? 1 : 2, across = rows == 2 ? (count + 1) / 2 : count;
    setFixedHeight(rows * high + std::max(0, rows - 1) * gap);
    for (int row = 0; row < rows; ++row) {
        const auto first = drawn.begin() + row * across, last = row + 1 < rows ? first + across : drawn.end();
        layInRow({first, last}, QRect{0, row * (high + gap), width(), high}, gap);
    }
}

} // namespace panside
