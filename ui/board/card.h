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
    // Where things stand, for tests: the chief digits are never under 20 mm unless the card is too narrow, and under
    // them the figure has a place at every size.
    QRect chiefPlace() const { return layout().chief; }
    QRect figurePlace() const { return layout().figure; }
    int paintings() const { return paintings_; }

signals:
    void actionPressed(panside::Action action);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    // Rows from top to bottom; those without room are left empty, the last lines first.
    struct Rows {
        QRect title, chief, beside, under, figure, buttons;
        double scale = 1; // of the chief number, where it has to be smaller than it is meant
        std::vector<QRect> lines;
    };
    Rows layout() const;
    bool isBeside(const QSize& room, bool figureToo) const;
    void tell(QPainter& painter, const QRect& place, int alignment, const QFont& font, const QString& text,
              int lines) const;
    void paintChief(QPainter& painter, const Rows& rows, const QColor& ink, bool whole) const;
    void placeBeside(Rows& rows, bool figureToo) const;
    QFont captionLetters() const;
    QFont titleLetters(const QSize& room) const;
    void sayKeys();
    void placeButtons();

    Dress dress_;
    CardView view_;
    std::vector<Press*> buttons_;
    int paintings_ = 0;
};

// Draws the pieces of a number on one foot line, digits `digits` pixels high; returns the width they take.
int drawPieces(QPainter* painter, const QRect& place, const std::vector<Piece>& pieces, double digits, double words);

} // namespace panside
