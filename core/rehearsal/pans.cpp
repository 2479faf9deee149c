#include "core/rehearsal/pans.h"
#include "core/rehearsal/liquid.h"

#include <algorithm>

namespace panside::rehearsal {
namespace {
constexpr std::size_t channelParts = 3;
}

double Pans::Section::volume() const { return mass() / (1000.0 * hotDensity(share())); }

Pans::Pans(const RehearsalRig& rig, double sapSugar, double sweetLeft, double celsius)
    : flues_{static_cast<std::size_t>(rig.flueSections)}, mixes_{seconds(rig.mixes)},
      flueArea_{rig.flueArea.squareMetre()}, syrupArea_{rig.syrupArea.squareMetre()}, belowFlues_{rig.flues.metre()},
      wanted_{rig.depth.metre()}, nominal_{rig.rate.si() * 1000 * (evaporationHeat + 4.1e3 * 94)} {
    const auto count = flues_ + channelParts * static_cast<std::size_t>(rig.syrupChannels);
    for (std::size_t i = 0; i < count; ++i) {
        const bool flue = i < flues_;
        // What yesterday left, evened out overnight: sweet behind, half way to syrup in front.
        const double front = flue ? 0.0
                                  : (static_cast<double>(i - flues_) + 1) /
                                        static_cast<double>(channelParts * static_cast<std::size_t>(rig.syrupChannels));
        const double sugar = sapSugar + sweetLeft * (flue ? 2.2 * sapSugar : 0.22 + 0.26 * front);
        const double volume = flue
                                  ? flueArea_ * (wanted_ + belowFlues_) / rig.flueSections
                                  : syrupArea_ * wanted_ /
                                        static_cast<double>(channelParts * static_cast<std::size_t>(rig.syrupChannels));
        const double mass = volume * 1000 * coldDensity(sugar);
        sections_.push_back({mass * (1 - sugar), mass * sugar, celsius});
        heatShare_.push_back(
            flue ? (1 - rig.syrupShare) / rig.flueSections
                 : rig.syrupShare / static_cast<double>(channelParts * static_cast<std::size_t>(rig.syrupChannels)));
    }
}

double Pans::depthOf(std::size_t first, std::size_t last, double area) const {
    double volume = 0;
    for (std::size_t i = first; i < last; ++i)
        volume += sections_[i].volume();
    return volume / area;
}
double Pans::syrupDepth() const { return depthOf(flues_, sections_.size(), syrupArea_); }
double Pans::flueDepth() const { return depthOf(0, flues_, flueArea_) - belowFlues_; }
double Pans::drawOffSugar() const { return sections_.back().share(); }
double Pans::syrupPanSugar() const {
    double sugar = 0, mass = 0;
    for (std::size_t i = flues_; i < sections_.size(); ++i) {
        sugar += sections_[i].sugar;
        mass += sections_[i].mass();
    }
    return mass > 0 ? sugar / mass : 0;
}
double Pans::flueCelsius() const { return sections_[flues_ - 1].celsius; }
double Pans::sugarHeld() const {
    double kilogram = 0;
    for (const auto& section : sections_)
        kilogram += section.sugar;
    return kilogram;
}

void Pans::pour(double cubicMetre, double sugar, double celsius) {
    auto& last = sections_.back();
    const double mass = cubicMetre * 1000 * coldDensity(sugar);
    last.celsius = (last.celsius * last.mass() + celsius * mass) / (last.mass() + mass);
    last.water += mass * (1 - sugar);
    last.sugar += mass * sugar;
}

void Pans::step(double dt, const Surroundings& around) {
    evaporated_ = heatTaken_ = 0;
    boil(dt, around);
    flow(dt, around);
}

void Pans::boil(double dt, const Surroundings& around) {
    const double boils = waterBoils(around.pascal);
    for (std::size_t i = 0; i < sections_.size(); ++i) {
        auto& section = sections_[i];
        const double area = i < flues_ ? flueArea_ / static_cast<double>(flues_)
                                       : syrupArea_ / static_cast<double>(sections_.size() - flues_);
        // Above the boil the steam itself keeps the air off; below it the pan loses some kilowatts a square metre.
        const double loss =
            35.0 * area * std::max(0.0, section.celsius - around.airCelsius) * (flux_ > 0.15 ? 0.2 : 1.0);
        const double heat = (around.heat * heatShare_[i] - loss) * dt;
        const double capacity = std::max(1.0, section.mass() * heatCapacity(section.share()));
        const double limit = boils + around.risesFactor * risesBy(section.share(), around.pascal);
        section.celsius += heat / capacity;
        heatTaken_ += heat;
        if (i + 1 == sections_.size()) {
            flux_ = around.heat * heatShare_[i] / (nominal_ * heatShare_[i]);
            boilsOff_ =
                section.celsius > limit ? (section.celsius - limit) * capacity / (nominal_ * heatShare_[i] * dt) : 0;
        }
        if (section.celsius > limit) {
            const double steam = std::min((section.celsius - limit) * capacity / evaporationHeat, 0.98 * section.water);
            section.water -= steam;
            section.celsius = limit;
            evaporated_ += steam;
        }
    }
}

void Pans::move(std::size_t from, std::size_t to, double cubicMetre) {
    auto& source = sections_[from];
    auto& target = sections_[to];
    const double part = std::min(0.5, cubicMetre / std::max(1e-9, source.volume()));
    const double water = source.water * part, sugar = source.sugar * part, mass = water + sugar;
    if (mass <= 0)
        return;
    target.celsius = (target.celsius * target.mass() + source.celsius * mass) / (target.mass() + mass);
    source.water -= water;
    source.sugar -= sugar;
    target.water += water;
    target.sugar += sugar;
}

void Pans::swap(std::size_t a, std::size_t b, double cubicMetre) {
    move(a, b, cubicMetre);
    move(b, a, cubicMetre);
}

void Pans::feed(double dt, const Surroundings& around) {
    // The float: it opens with the fall of the level, never quite at once.
    const double lacks = wanted_ - flueDepth();
    feedOpen_ = lacks > (feedOpen_ ? 0 : around.floatSticks);
    const double opens = around.floatSticks > 0 ? (feedOpen_ ? 0.8 : 0.0) : std::clamp(lacks / 0.006, 0.0, 1.0);
    const double aim = (around.floatOpen ? 1.0 : opens) * around.feedLimit;
    feedFlow_ += (aim - feedFlow_) * std::min(1.0, dt / 6);
    if (around.feedLimit <= 0)
        feedFlow_ = 0;
    const double mass = feedFlow_ * dt * 1000 * coldDensity(around.feedSugar);
    fed_ = mass;
    auto& first = sections_.front();
    if (mass > 0) {
        first.celsius = (first.celsius * first.mass() + around.feedCelsius * mass) / (first.mass() + mass);
        first.water += mass * (1 - around.feedSugar);
        first.sugar += mass * around.feedSugar;
    }
}

// What runs from the flue pan into the syrup pan, m3/s.
double Pans::pipe(const Surroundings& around) {
    const double need = std::max(0.0, wanted_ - syrupDepth());
    const double head = std::max(0.0, flueDepth() + 0.25 * wanted_);
    pipeOpen_ = need > (pipeOpen_ ? 0 : around.floatSticks / 4);
    const double opens = around.floatSticks > 0 ? (pipeOpen_ ? 1.0 : 0.0) : std::min(need / 0.004, 1.0);
    return opens * std::min(1.0, head / (0.5 * wanted_)) * syrupArea_ * 0.0012;
}

void Pans::heave(double dt, const Surroundings& around) {
    const std::size_t last = sections_.size() - 1;
    if (around.heaves > 0 && last > flues_ + channelParts)
        swap(last - channelParts, last - channelParts + 1, sections_[last].volume() * dt * around.heaves);
    if (around.pulls > 0)
        swap(std::max(flues_, last - std::min(last, 2 * channelParts - 1)), last,
             sections_[last].volume() * dt * around.pulls);
}

void Pans::flow(double dt, const Surroundings& around) {
    feed(dt, around);
    // The draw-off.
    auto& last = sections_.back();
    const double part = std::min(0.3, around.draw * dt / std::max(1e-9, last.volume()));
    drawn_ = last.mass() * part;
    drawnSugar_ = last.sugar * part;
    last.water *= 1 - part;
    last.sugar *= 1 - part;

    // Within a pan the level evens out at once; between the pans a pipe carries what the syrup pan lacks.
    for (std::size_t i = 0; i + 1 < flues_; ++i) {
        const double mine = sections_[i].volume(), next = sections_[i + 1].volume();
        if (mine > next)
            move(i, i + 1, 0.5 * (mine - next));
        else
            move(i + 1, i, 0.5 * (next - mine));
    }
    if (const double runs = pipe(around); runs > 0)
        move(flues_ - 1, flues_, runs * dt);
    for (std::size_t i = flues_; i + 1 < sections_.size(); ++i) {
        const double mine = sections_[i].volume(), next = sections_[i + 1].volume();
        if (mine > next)
            move(i, i + 1, 0.5 * (mine - next));
        else
            move(i + 1, i, 0.5 * (next - mine));
    }
    // The boil throws some liquid back over the partitions; where it has died the sections mix.
    const double calm = std::clamp(1 - boilsOff_ / 0.3, 0.0, 1.0);
    const double flood = std::clamp((syrupDepth() - wanted_) / 0.01, 0.0, 2.0);
    for (std::size_t i = 0; i + 1 < sections_.size(); ++i)
        if (i + 1 != flues_) {
            const bool channel = i >= flues_ && (i + 1 - flues_) % channelParts != 0;
            const double boil = channel ? (1 - 0.7 * calm) / mixes_ : 0.00006;
            swap(i, i + 1, sections_[i + 1].volume() * dt * (boil + 0.0006 * calm + 0.0008 * flood));
        }
    heave(dt, around);
}

} // namespace panside::rehearsal
