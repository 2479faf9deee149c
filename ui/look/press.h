#pragma once
// What a gloved finger presses: a word, and the key that does the same. At least 12 mm high, its focus plain to see.
// One that can be checked says by a tick that it is.
#include "ui/look/dress.h"
#include "ui/look/key_shape.h"

#include <QAbstractButton>
#include <vector>

namespace panside {

// How a key stands there, and its face: edge, ground, foot and the ring of the focus.
struct KeyFace {
    KeyShape shape = KeyShape::plain;
    bool checked = false, down = false, enabled = true, focused = false;
};
void paintFace(QPainter& painter, const QRect& place, const Dress& dress, const KeyFace& face);

class Press : public QAbstractButton {
    Q_OBJECT
public:
    explicit Press(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    // The word and, if there is one, the key as it stands on the keyboard.
    void say(const QString& word, const QString& key);
    QString key() const { return key_; }
    void setShape(KeyShape shape);
    KeyShape shape() const { return shape_; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    // Does the word stand on it whole, in letters of 3 mm at least?
    bool isWhole() const;
    // The narrowest on which it does: in one line, or in two where the word has a gap.
    int leastWidth() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    bool isTight() const;
    int capWidth() const;
    int keyWidth() const;
    int edgeWidth() const;
    int tickWidth() const;
    QRect wordPlace() const;
    void paintCap(QPainter& painter, const QColor& ink) const;
    QColor wordInk() const;
    Dress dress_;
    QString key_;
    KeyShape shape_ = KeyShape::plain;
};

// Keys side by side, as wide as their words need; where the row is too short for that, none gives up more than its word
// can spare.
void layInRow(const std::vector<Press*>& keys, const QRect& place, int gap);

} // namespace panside
