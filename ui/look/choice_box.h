#pragma once
// One of several words, in the console's dress: a key that says which is chosen, and a list whose rows a glove hits.
#include "ui/look/dress.h"

#include <QComboBox>

namespace panside {

class ChoiceBox : public QComboBox {
    Q_OBJECT
public:
    explicit ChoiceBox(QWidget* parent = nullptr);
    void wear(const Dress& dress, double millimetres);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Dress dress_;
};

} // namespace panside
