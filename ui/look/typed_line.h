#pragma once
// One line that is typed into, the same on every screen: an edge that is seen by day and by night, its unit inside at
// the right, digits only where a number is meant, all of it selected when it is come to.
#include "ui/look/dress.h"

#include <QLineEdit>

namespace panside {

class TypedLine : public QLineEdit {
    Q_OBJECT
public:
    explicit TypedLine(QWidget* parent = nullptr);
    void wear(const Dress& dress, double letters = 5); // letters in millimetres
    void setUnit(const QString& unit);
    QString unit() const { return unit_; }
    // Only what a number is written with: digits, a point or a comma, and a minus where it may have one.
    void takeNumbers(bool withMinus);
    // What is typed cannot be meant: the edge says so until it is changed.
    void setDoubted(bool doubted);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void focusInEvent(QFocusEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void place();
    Dress dress_;
    QString unit_;
    double letters_ = 5;
    bool doubted_ = false, came_ = false; // `came_`: by the finger that is still down
};

} // namespace panside
