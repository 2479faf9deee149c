#pragma once
// The row of keys under a page, or two rows where one would be crowded: each a letter and a finger's target. It answers
// the keyboard for the page, or the page asks it what a key means.
#include "ui/look/dress.h"

#include <QKeyCombination>
#include <QWidget>
#include <vector>

class QKeyEvent;

namespace panside {

class Press;

struct PageKey {
    int key;            // a Qt::Key, or a combination
    QString name, word; // without a word it acts and is not drawn
    bool due = false;   // what is called for now
    bool usable = true; // else it stands there and cannot be pressed
    bool operator==(const PageKey&) const = default;
};

constexpr int ctrlEnter = QKeyCombination{Qt::ControlModifier, Qt::Key_Return}.toCombined();
constexpr int ctrlDel = QKeyCombination{Qt::ControlModifier, Qt::Key_Delete}.toCombined();

// Its key is drawn in the bar, on every screen in the same place.
PageKey wayToBoard();

class ActionKeys : public QWidget {
    Q_OBJECT
public:
    explicit ActionKeys(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const std::vector<PageKey>& keys);
    // Keys of the keyboard that come to the page are answered from now on.
    void answerFor(QWidget& page) { page.installEventFilter(this); }
    // True: it was one of these, and pressed() was said.
    bool answer(const QKeyEvent& event);

signals:
    void pressed(int key);

private:
    void arrange();
    static QString capOf(int key);
    bool isDrawn(std::size_t index) const { return index < keys_.size() && !keys_[index].word.isEmpty(); }
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* page, QEvent* event) override;
    Dress dress_;
    std::vector<PageKey> keys_;
    std::vector<Press*> presses_;
};

} // namespace panside
