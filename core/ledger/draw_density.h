#pragma once
// The density of each draw of a shift by the boil engine's own picture: the mean over the time the draw was open, on
// the mark as it was learned by the shift's end, so that a check made after a draw counts for it too.
#include "core/ledger/ledger.h"

#include <memory>
#include <vector>

namespace panside {

// Moves whenever the same facts would give other densities by what stands in draw_density.cpp.
inline constexpr int drawDensityForm = 1;

class DrawDensities {
public:
    DrawDensities();
    ~DrawDensities();
    DrawDensities(DrawDensities&&) noexcept;
    DrawDensities& operator=(DrawDensities&&) noexcept;

    void add(const Fact& fact); // by time
    struct Found {
        Instant closed;
        DrawDensity density;
    };
    // Draws while which the engine knew the sugar at the draw-off for at least a third of the time.
    std::vector<Found> found() const;

    // How far each hydrometer check lay from physics.
    struct Checked {
        Instant at;
        CheckApart apart;
    };
    const std::vector<Checked>& checked() const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace panside
