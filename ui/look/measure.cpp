#include "ui/look/measure.h"

#include <QScreen>
#include <QWidget>
#include <cmath>

namespace panside {

Measure Measure::of(const QScreen& screen) {
    const double across = screen.physicalDotsPerInchX(), down = screen.physicalDotsPerInchY();
    const bool sane = std::isfinite(across) && std::isfinite(down) && down >= 40 && down <= 400 &&
                      std::abs(across - down) < 0.2 * down;
    return Measure{sane ? down : screen.logicalDotsPerInchY()};
}

Measure Measure::of(const QWidget& widget) { return widget.screen() ? of(*widget.screen()) : Measure{}; }

} // namespace panside
