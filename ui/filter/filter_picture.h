#pragma once
// The cake's resistance against what went through: at a steady flow the gauge shows it. The run that goes on, those
// before it with the same aid and papers, the maker's limit, and where it will be met.
#include "ui/filter/filter_view.h"
#include "ui/look/dress.h"

#include <QPointF>
#include <QString>
#include <QWidget>
#include <optional>
#include <vector>

namespace panside {

struct FilterChart {
    using Curve = std::vector<QPointF>; // across, up
    std::vector<Curve> before;
    Curve now;
    std::optional<double> limit;
    std::optional<double> meetsFrom, meetsTo; // across; without the latter: from there on, or never
    bool byVolume = false;                    // across is a volume; else minutes, for no run told its volume yet
    QString acrossUnit, upUnit;
    bool operator==(const FilterChart&) const = default;
};
FilterChart filterChart(const FilterNow& now, Units units);

class FilterPicture : public QWidget {
    Q_OBJECT
public:
    explicit FilterPicture(QWidget* parent = nullptr);
    void wear(const Dress& dress);
    void display(const FilterChart& chart); // hidden until two readings make a line

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QRectF plot() const;
    QPointF placeOf(const QPointF& at) const;
    void paintScales(QPainter& painter) const;
    void paintLimit(QPainter& painter) const;
    void paintCurves(QPainter& painter) const;

    Dress dress_;
    FilterChart chart_;
    double widest_ = 1, highest_ = 1;
};

} // namespace panside
