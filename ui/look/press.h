#pragma once
// What a gloved finger presses: a word, and the key that does the same. At least 12 mm high, its focus plain to see.
// One that can be checked says by a tick that it is.
#include "ui/look/dress.h"

#include <QAbstractButton>

namespace panside {

class Press : public QAbstractButton {
    Q_OBJECT
public:
    explicit Press(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    // The word and, if there is one, the key as it stands on the keyboard.
    void say(const QString& word, const QString& key);
    QString key() const { return key_; }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    int keyWidth() const;
    int tickWidth() const;
    Dress dress_;
    QString key_;
};

} // namespace panside
