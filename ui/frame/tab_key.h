#pragma once
// A screen of the place that one is in: its word, and the digit that goes there.
#include "ui/look/dress.h"

#include <QAbstractButton>

namespace panside {

class TabKey : public QAbstractButton {
    Q_OBJECT
public:
    explicit TabKey(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void say(const QString& word, int digit);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    int digitWidth() const;
    Dress dress_;
    int digit_ = 0;
};

} // namespace panside
