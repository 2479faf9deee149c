#pragma once
// The density of each draw of a shift by the boil engine's own picture: the mean over the time the draw was open, on
// the mark as all checks of the shift make it at that time, so that a check made after a draw counts for it too.
// Accuracy   drums of three draws of a night, one standard deviation: 0.19 brix on one made-up plant (glass off by 0.13
//            from rig to rig), 0.28 on another, 0.36 there with another glass and probe each night; the ± that a vessel
//            shows holds 7 to 8 of 10
#include "core/ledger/ledger.h"

#include <memory>
#include <vector>

namespace panside {

// Moves whenever the same facts would give other densities by what stands in draw_density.cpp.
inline constexpr int drawDensityForm = 3;

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
    // Draws while which the engine knew the sugar at the draw-off for at least a third of the time. May be asked
    // before all is added.
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
