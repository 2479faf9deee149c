#include "core/ledger/draw_density.h"

#include "core/boil/state.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// Seconds by which the pan's filtered reading is behind the liquid: a probe's own five, and a few of the filter's (our
// judgement, no source). While a draw is open the sugar falls by some 4 brix a minute: so much late is 0.4 brix too
// much.
constexpr double lag = 6;
constexpr double sampleEvery = 5;      // seconds
constexpr double leastKnown = 1.0 / 3; // of the samples
constexpr double pathSd = 0.3;         // brix: the pail is not quite the mean of what the probe saw
constexpr double brixPerKelvin = 5;    // near the finish, where the mark's band is not known

} // namespace

struct DrawDensities::Inside {
    struct Open {
        Instant next{};
        std::optional<Instant> closed;
        double sum = 0, sd = 0, offset = 0, slope = brixPerKelvin;
        int samples = 0, known = 0;
    };
    struct Past {
        Instant closed{};
        double brix, sd, offset, slope;
    };
    State state;
    std::optional<Open> open;
    std::vector<Past> past;
    std::vector<Checked> checked;
    Instant last{};
    double offset = 0;

    void finish() {
        if (open->closed && open->known > 0 && open->known >= leastKnown * open->samples) {
            const auto n = static_cast<double>(open->known);
            past.push_back({*open->closed, open->sum / n, open->sd / n, open->offset / n, open->slope});
        }
        open.reset();
    }
    void sample(Instant now) {
        const Picture seen = picture(state, now);
        ++open->samples;
        if (!seen.brix)
            return;
        ++open->known;
        open->sum += seen.brix->degrees();
        if (seen.legalRise && seen.heavyRise && *seen.heavyRise > *seen.legalRise)
            open->slope = (state.settings.tooHeavy() - state.settings.legalMinimum()).degrees() /
                          (*seen.heavyRise - *seen.legalRise).kelvin();
        open->sd += seen.targetUncertainty ? seen.targetUncertainty->kelvin() * open->slope : 1;
        open->offset += seen.probeOffset.kelvin();
    }
};

DrawDensities::DrawDensities() : inside_{std::make_unique<Inside>()} {}
DrawDensities::~DrawDensities() = default;
DrawDensities::DrawDensities(DrawDensities&&) noexcept = default;
DrawDensities& DrawDensities::operator=(DrawDensities&&) noexcept = default;

void DrawDensities::add(const Fact& fact) {
    Inside& in = *inside_;
    if (in.open) {
        const auto until = in.open->closed ? *in.open->closed + Duration{lag} : fact.at;
        while (in.open->next <= std::min(until, fact.at)) {
            in.sample(std::max(in.open->next, in.last));
            in.open->next = in.open->next + Duration{sampleEvery};
        }
        if (in.open->closed && fact.at > until)
            in.finish();
    }
    if (std::holds_alternative<DrawClosed>(fact.what) && in.open && !in.open->closed)
        in.open->closed = fact.at;
    absorbUnwatched(in.state, fact);
    in.last = fact.at;
    if (const auto* check = std::get_if<DensityCheck>(&fact.what); check && check->with == Instrument::hydrometer)
        if (const auto& came = in.state.mark.lastCheck(); came && came->at == fact.at && came->apart)
            in.checked.push_back({fact.at, {*came->apart, came->apartSd}});
    in.offset = in.state.mark.offset(fact.at).kelvin();
    if (std::holds_alternative<DrawOpened>(fact.what) && (!in.open || in.open->closed)) {
        if (in.open)
            in.finish();
        in.open = Inside::Open{};
        in.open->next = fact.at + Duration{lag};
    }
}

const std::vector<DrawDensities::Checked>& DrawDensities::checked() const { return inside_->checked; }

std::vector<DrawDensities::Found> DrawDensities::found() const {
    std::vector<Found> found;
    if (inside_->open && inside_->open->closed)
        inside_->finish();
    for (const auto& past : inside_->past) {
        // What the mark learned afterwards: a probe that reads higher than was thought showed less sugar.
        const double brix = past.brix - (inside_->offset - past.offset) * past.slope;
        found.push_back({past.closed, {Brix::degrees(brix), Brix::degrees(std::hypot(past.sd, pathSd))}});
    }
    return found;
}

} // namespace panside
