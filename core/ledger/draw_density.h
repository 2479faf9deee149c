#pragma once
// The density of each draw of a shift by the boil engine's own picture: the mean over the time the draw was open, on
// the mark as it was learned by the shift's end, so that a check made after a draw counts for it too.
#include "core/ledger/ledger.h"

#include <memory>
#include <vector>

namespace panside {

class DrawDensities {
public:
    DrawDensities();
    ~DrawDensities();
    DrawDensities(DrawDensities&&) noexcept;
    DrawDensities& operator=(DrawDensities&&) noexcept;

    void take(const Fact& fact); // by time
    struct Found {
        Instant closed;
        DrawDensity density;
    };
    // Draws while which the engine knew the sugar at the draw-off for at least a third of the time.
    std::vector<Found> found() const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace panside
