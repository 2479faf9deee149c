#pragma once
// A place in the rail at the left: its picture, its key, its word.
#include "ui/keys/places.h"
#include "ui/look/dress.h"

#include <QAbstractButton>

namespace panside {

class RailKey : public QAbstractButton {
    Q_OBJECT
public:
    explicit RailKey(Place place, QWidget* parent = nullptr);
    Place place() const { return place_; }
    void wear(const Dress& dress);
    void sayWord();

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Place place_;
    Dress dress_;
};

// The picture of a place, in lines of this pen's ink.
void drawPlace(QPainter& painter, const QRectF& square, Place place);

} // namespace panside
