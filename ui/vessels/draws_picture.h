#pragma once
// The draws, each with its density by the pan's own reading and how surely it is known, and beside it what was checked.
#include "core/shift/house_ledger.h"
#include "ui/look/dress.h"
#include "ui/look/units.h"

#include <QWidget>
#include <optional>
#include <vector>

namespace panside {

struct DrawMark {
    QString when, into, amount;
    std::optional<double> brix; // none: nobody knows how much it was
    double sd = 0;
    std::vector<double> checks; // brix, the cup's heat taken out
    bool operator==(const DrawMark&) const = default;
};
struct DrawsView {
    std::vector<DrawMark> draws; // the latest, by time
    double least = 0, most = 0;  // of the place
    bool operator==(const DrawsView&) const = default;
};
DrawsView drawsView(const HouseLedger* house, std::span<const Set> settings, Units units);

class DrawsPicture : public QWidget {
    Q_OBJECT
public:
    explicit DrawsPicture(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const DrawsView& view);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double heightOf(double brix, const QRectF& plot) const;
    void paintLimits(QPainter& painter, const QRectF& plot) const;
    void paintDraw(QPainter& painter, const DrawMark& draw, double x, double width, const QRectF& plot) const;

    Dress dress_;
    DrawsView view_;
};

} // namespace panside
