#include "ui/ledger/action_keys.h"

#include "ui/look/press.h"

#include <QKeyEvent>
#include <QKeySequence>

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
        connect(press, &Press::clicked, this, [this, index] { emit pressed(keys_[index].key); });
        presses_.push_back(press);
    }
    for (std::size_t i = 0; i < presses_.size(); ++i) {
        presses_[i]->setVisible(isDrawn(i));
        if (!isDrawn(i))
            continue;
        const bool escape = keys[i].key == Qt::Key_Escape;
        const bool enter = keys[i].key == Qt::Key_Return;
        presses_[i]->setObjectName(keys[i].name);
        presses_[i]->say(keys[i].word, escape  ? tr("Esc")
                                       : enter ? tr("Enter")
                                               : QKeySequence{keys[i].key}.toString(QKeySequence::NativeText));
        presses_[i]->setShape(keys[i].due ? KeyShape::due : KeyShape::plain);
        presses_[i]->setEnabled(keys[i].usable);
    }
    arrange();
}

bool ActionKeys::answer(const QKeyEvent& event) {
    const int key = event.key() == Qt::Key_Enter ? static_cast<int>(Qt::Key_Return) : event.key();
    if ((event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) || event.isAutoRepeat())
        return false;
    for (const PageKey& one : keys_)
        if (one.key == key && one.usable) {
            emit pressed(key);
            return true;
        }
    return false;
}

void ActionKeys::resizeEvent(QResizeEvent*) { arrange(); }

// Shares of the row as the words need.
void ActionKeys::arrange() {
    std::vector<Press*> drawn;
    for (std::size_t i = 0; i < presses_.size(); ++i)
        if (isDrawn(i))
            drawn.push_back(presses_[i]);
    setFixedHeight(drawn.empty() ? 0 : dress_.px(mm::target));
    layInRow(drawn, rect(), dress_.px(1));
}

} // namespace panside
