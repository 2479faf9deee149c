#pragma once
// The season's pictures, drawn straight with a painter, so that they are the same on the screen and on paper.
#include "core/season/season.h"
#include "ui/look/dress.h"
#include "ui/season/season_view.h"
#include "ui/season/tuning_view.h"

#include <QWidget>
#include <functional>

class QPainter;

namespace panside {

// One figure, a bar a shift, by date. A hole is a gap with a mark under it; what was partly measured is hollow at its
// top. The chosen and the marked shifts stand out.
struct SeasonCurve {
    QString name; // "syrup, L"
    std::vector<SeasonBar> bars;
    std::optional<Instant> chosen;
    std::vector<Instant> marked;
    bool operator==(const SeasonCurve&) const = default;
};
void paintCurve(QPainter& painter, const QRectF& place, const SeasonCurve& curve, const Dress& dress);

// An interval an effect, about the line of no effect.
void paintEffects(QPainter& painter, const QRectF& place, const std::vector<EffectLine>& lines, const Dress& dress);

// The share of draws inside each level of the forecast, beside the share that was promised.
void paintCalibration(QPainter& painter, const QRectF& place, const CalibrationPicture& calibration,
                      const Dress& dress);

// A widget that shows one of them.
class SeasonPicture : public QWidget {
    Q_OBJECT
public:
    explicit SeasonPicture(QWidget* parent = nullptr);
    // `name`: what a screen reader calls it.
    void show(const QString& name, std::function<void(QPainter&, const QRectF&)> paint);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::function<void(QPainter&, const QRectF&)> paint_;
};

} // namespace panside
