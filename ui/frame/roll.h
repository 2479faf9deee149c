#pragma once
// Holds a page in the frame: where the page needs more height than there is, it rolls, and nothing on it is squeezed
// until it lies over its neighbour. What has the keyboard's focus is always in sight.
#include "ui/look/dress.h"

#include <QScrollArea>

namespace panside {

class Roll : public QScrollArea {
    Q_OBJECT
public:
    explicit Roll(QWidget* page, QWidget* parent = nullptr);
    void wear(const Dress& dress);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
};

} // namespace panside
