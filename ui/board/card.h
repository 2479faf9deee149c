#pragma once
// A card of the board: one number as large as it goes, what belongs to it, and the actions that change it.
#include "ui/board/card_view.h"
#include "ui/look/dress.h"

#include <QWidget>
#include <vector>

namespace panside {

class Press;

class Card : public QWidget {
    Q_OBJECT
public:
    explicit Card(const QString& name, QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const CardView& view);
    const CardView& view() const { return view_; }
    // Where the chief number was drawn last, for tests: its digits are never under 20 mm unless the card is too narrow.
    QRect chiefPlace() const { return layout().chief; }
    int paintings() const { return paintings_; }

signals:
    void actionPressed(panside::Action action);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    // Rows from top to bottom; those without room are left empty, the last lines first.
    struct Rows {
        QRect title, chief, beside, figure, buttons;
        std::vector<QRect> lines;
    };
    Rows layout() const;
    void placeButtons();

    Dress dress_;
    CardView view_;
    std::vector<Press*> buttons_;
    int paintings_ = 0;
};

// Draws the pieces of a number on one foot line, digits `digits` pixels high; returns the width they take.
int drawPieces(QPainter* painter, const QRect& place, const std::vector<Piece>& pieces, double digits, double words);

} // namespace panside
