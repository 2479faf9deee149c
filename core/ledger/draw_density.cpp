#include "core/ledger/draw_density.h"

#include "core/boil/square.h"
#include "core/boil/state.h"
#include "core/ledger/mark_hindsight.h"
#include "core/physics/sugar.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace panside {
namespace {

constexpr double sampleEvery = 5;       // seconds
constexpr double leastKnown = 1.0 / 3;  // of the samples
constexpr std::size_t foamSamples = 12; // foam stands about a probe for so long (common practice, no source)
constexpr double heaves = 1;            // brix: so much a boiling pan heaves up and down while it is drawn
constexpr double brixPerKelvin = 5;     // near the finish, where the mark's band is not known
// Where nobody said when a cup was dipped, this share of what its check errs by beyond a careful one is alike in every
// cup of the crew (no source); kelvin, of a careful one.
constexpr double alike = 0.7, carefulCup = 0.07;

} // namespace

struct DrawDensities::Inside {
    struct Open {
        Instant opened{}, next{};
        std::optional<Instant> closed;
        double offset = 0, slope = brixPerKelvin;
        int samples = 0;  // until it was closed
        double heard = 0; // kelvin, sum of what was read since the last sample
        int readings = 0;
        std::vector<double> brix, later; // what was known of each; what was read in the minute after the last of them
    };
    struct Past {
        Instant closed{};
        double brix, offset, slope;
    };
    State state;
    std::optional<Open> open;
    std::vector<Past> past;
    std::vector<Checked> checked;
    MarkHindsight hindsight;
    std::optional<MarkHindsight::Offset> believed; // by the engine, as of the last fact
    bool anyCheck = false;
    Instant last{};

    void finish() {
        const auto known = static_cast<double>(open->brix.size());
        if (open->closed && known > 0 && known >= leastKnown * open->samples) {
            past.push_back({*open->closed, thinning(*open), open->offset / known, open->slope});
            hindsight.ask(*open->closed);
        }
        open.reset();
    }
    // The mean of what ran out. Syrup thins while it is drawn, and what stood lower than it does a minute later was
    // steam: foam about the probe, spray.
    static double thinning(const Open& draw) {
        std::vector<double> all = draw.brix;
        all.insert(all.end(), draw.later.begin(), draw.later.end());
        double sum = 0;
        for (std::size_t i = 0; i < draw.brix.size(); ++i) {
            const std::size_t until = std::min(all.size(), i + 1 + foamSamples);
            const auto from = all.begin() + static_cast<std::ptrdiff_t>(i);
            const double high = *std::max_element(from, all.begin() + static_cast<std::ptrdiff_t>(until));
            sum += std::max(*from, high - heaves);
        }
        return sum / static_cast<double>(draw.brix.size());
    }
    // As it came: a filter that is smooth while the pan climbs is seconds behind while a draw thins it.
    void hear(const Fact& fact) {
        const auto* reading = std::get_if<Reading>(&fact.what);
        if (!reading || reading->series != Series::syrup_pan || fact.at < open->opened + probeLag)
            return;
        const Sensor& sensor = state.sensors.of(Series::syrup_pan);
        const auto pan = sensor.value(fact.at);
        if (!pan || pan->at != fact.at || sensor.trust(fact.at) != Trust::good)
            return;
        open->heard += pan->sample;
        ++open->readings;
    }
    void sample(Instant now) {
        const Picture seen = picture(state, now);
        const auto water = state.weather.boiling(now);
        const double heard = open->readings > 0 ? open->heard / open->readings : 0;
        const int readings = std::exchange(open->readings, 0);
        open->heard = 0;
        const bool after = open->closed && now > *open->closed + probeLag;
        open->samples += after ? 0 : 1;
        if (!seen.brix || !water)
            return;
        const auto brix = readings > 0 ? sugarAtRise(Temperature::kelvin(heard) - seen.probeOffset - water->waterBoils,
                                                     water->forModel)
                                       : seen.brix;
        if (!brix)
            return;
        (after ? open->later : open->brix).push_back(brix->degrees());
        if (after)
            return;
        if (seen.legalRise && seen.heavyRise && *seen.heavyRise > *seen.legalRise)
            open->slope = (state.settings.tooHeavy() - state.settings.legalMinimum()).degrees() /
                          (*seen.heavyRise - *seen.legalRise).kelvin();
        open->offset += seen.probeOffset.kelvin();
    }
    // What the engine came to believe by this fact: a check is told as it is, all else as a drift of what was believed.
    void follow(const Fact& fact) {
        const auto water = state.weather.boiling(fact.at);
        const double sd = std::hypot(state.mark.offsetSd(fact.at).kelvin(), water ? water->uncertainty().kelvin() : 0);
        const MarkHindsight::Offset now{state.mark.offset(fact.at).kelvin(), sd};
        const auto* set = std::get_if<Set>(&fact.what);
        const bool told = set && (set->key == Setting::probe_offset || set->key == Setting::probe_offset_sd);
        const bool boiled = std::holds_alternative<WaterCheck>(fact.what);
        const auto* check = std::get_if<DensityCheck>(&fact.what);
        if (!believed || told || (boiled && !anyCheck))
            hindsight.begin(fact.at, now);
        else if (!check && !boiled)
            hindsight.drift(now.kelvin - believed->kelvin, square(now.sd) - square(believed->sd));
        believed = now;
        if (check)
            takeCheck(*check, fact.at);
    }
    void takeCheck(const DensityCheck& check, Instant at) {
        const auto& came = state.mark.lastCheck();
        if (!came || came->at != at || !came->apart)
            return;
        anyCheck = true;
        const double sd = came->apartSd.kelvin();
        hindsight.check(at, {came->apart->kelvin(), sd},
                        check.drawn ? 0 : alike * std::max(0.0, square(sd) - square(carefulCup)));
        if (check.with == Instrument::hydrometer)
            checked.push_back({at, {*came->apart, came->apartSd}});
    }
};

DrawDensities::DrawDensities() : inside_{std::make_unique<Inside>()} {}
DrawDensities::~DrawDensities() = default;
DrawDensities::DrawDensities(DrawDensities&&) noexcept = default;
DrawDensities& DrawDensities::operator=(DrawDensities&&) noexcept = default;

void DrawDensities::add(const Fact& fact) {
    Inside& in = *inside_;
    if (in.open) {
        const auto until =
            in.open->closed ? *in.open->closed + probeLag + Duration{sampleEvery * foamSamples} : fact.at;
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
    in.follow(fact);
    if (in.open)
        in.hear(fact);
    if (std::holds_alternative<DrawOpened>(fact.what) && (!in.open || in.open->closed)) {
        if (in.open)
            in.finish();
        in.open = Inside::Open{};
        in.open->opened = fact.at;
        in.open->next = fact.at + probeLag + Duration{sampleEvery / 2};
    }
}

const std::vector<DrawDensities::Checked>& DrawDensities::checked() const { return inside_->checked; }

std::vector<DrawDensities::Found> DrawDensities::found() const {
    std::vector<Found> found;
    Inside settled = *inside_; // more may come of a draw that was closed just now
    if (settled.open && settled.open->closed)
        settled.finish();
    const auto offsets = settled.hindsight.answers();
    for (std::size_t i = 0; i < offsets.size(); ++i) {
        const auto& past = settled.past[i];
        // A probe that read higher than was thought showed less sugar.
        const double brix = past.brix - (offsets[i].kelvin - past.offset) * past.slope;
        const double sd = std::hypot(offsets[i].sd * past.slope, glassError.degrees());
        found.push_back({past.closed, {Brix::degrees(brix), Brix::degrees(sd)}});
    }
    return found;
}

} // namespace panside
