#include "tests/forecast/trial.h"

#include "core/boil/state.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace panside::judge {

namespace {
struct Moment {
    double at; // s since the boil began
    std::vector<std::optional<Range>> said;
};

double pinball(double share, double said, double came) {
    return came >= said ? share * (came - said) : (1 - share) * (said - came);
}

Showing showing(const std::vector<Moment>& moments, std::size_t who, double event) {
    Showing result;
    double spoke = 0;
    for (const auto& moment : moments) {
        const double came = event - moment.at;
        const auto& said = moment.said[who];
        const double p10 = said ? seconds(said->p10) : nullP10, p50 = said ? seconds(said->p50) : nullP50;
        const double p90 = !said ? nullP90 : said->p90 ? seconds(*said->p90) : std::max(nullP90, 3 * p50);
        result.pinball += (pinball(0.1, p10, came) + pinball(0.5, p50, came) + pinball(0.9, p90, came)) / 3;
        if (!said)
            continue;
        spoke += 1;
        const bool inside = came >= p10 && came <= p90;
        result.inside += inside ? 1 : 0;
        result.atLast += came <= 120 ? 1 : 0;
        result.insideAtLast += came <= 120 && inside ? 1 : 0;
        result.width += p90 - p10;
        for (std::size_t i = 0; i < leads.size(); ++i)
            if (std::abs(came - leads[i]) < 5)
                result.errors[i] = p50 - came;
    }
    const auto count = static_cast<double>(moments.size());
    result.pinball /= count;
    result.spoke = spoke / count;
    if (spoke > 0) {
        result.inside /= spoke;
        result.width /= spoke;
    }
    return result;
}

// A fact reaches a forecaster when it was entered.
class Queue {
public:
    void add(std::vector<Fact> facts) {
        for (auto& fact : facts)
            waiting_.push_back(std::move(fact));
    }
    std::vector<Fact> upTo(Instant now) {
        std::vector<Fact> ready, later;
        for (auto& fact : waiting_)
            (fact.entered.value_or(fact.at) <= now ? ready : later).push_back(std::move(fact));
        waiting_ = std::move(later);
        return ready;
    }

private:
    std::vector<Fact> waiting_;
};

class Run {
public:
    Run(const Boiling& boiling, std::size_t number, const std::vector<Entrant>& entrants,
        const std::vector<Fact>& before)
        : number_{number}, unchecked_{boiling.unchecked}, begins_{boiling.options.begins}, plant_{boiling.options,
                                                                                                  boiling.seed} {
        for (const auto& entrant : entrants)
            forecasters_.push_back(entrant.make());
        for (const Fact& fact : before)
            for (auto& forecaster : forecasters_)
                forecaster->add(fact);
        const auto& read = boiling.options.readings;
        trial_.evaporationFrom = std::find(read.begin(), read.end(), Series::tank_level) == read.end() ? "draws alone"
                                 : boiling.options.feedFault != FeedFault::none ? "tank, feed faulty"
                                                                                : "tank";
    }

    Trial go() {
        for (double at = 0; !plant_.ended() && !over_; ++at)
            second(at);
        return std::move(trial_);
    }

private:
    void second(double at) {
        const Instant now = begins_ + Duration{at};
        queue_.add(plant_.advance(now));
        const auto& truth = plant_.truth();
        const bool ask = std::fmod(at, 10) < 0.5;
        if (ask)
            give(now);
        follow(at, truth);
        if (ask)
            hear(at, now, truth);
    }

    void give(Instant now) {
        for (const auto& fact : queue_.upTo(now)) {
            if (std::holds_alternative<Shutdown>(fact.what))
                over_ = true;
            if (unchecked_ &&
                (std::holds_alternative<DensityCheck>(fact.what) || std::holds_alternative<WaterCheck>(fact.what)))
                continue;
            for (std::size_t who = 0; who < forecasters_.size(); ++who) {
                const auto from = std::chrono::steady_clock::now();
                forecasters_[who]->add(fact);
                if (who == 0)
                    trial_.engineSeconds +=
                        std::chrono::duration<double>(std::chrono::steady_clock::now() - from).count();
            }
        }
    }

    // The cycle: from the draw shut (the first one from the fire lit) to the first second above the mark.
    void follow(double at, const RehearsalTruth& truth) {
        const bool above = truth.reading >= truth.mark;
        if (truth.drawing && !drawing_) {
            if (open_ && below_)
                ++trial_.censored;
            open_ = false;
        }
        if (!truth.drawing && drawing_) {
            open_ = true;
            below_ = false;
            first_ = false;
            moments_.clear();
            shutAt_ = at;
        }
        drawing_ = truth.drawing;
        if (open_ && !truth.drawing) {
            if (above && below_ && !moments_.empty())
                event(at, begins_ + Duration{at}, truth);
            else if (!above)
                below_ = true;
        }
        if (truth.boiling && boilsFrom_ < 0)
            boilsFrom_ = at;
    }

    void event(double at, Instant now, const RehearsalTruth& truth) {
        Cycle cycle{number_, first_, at - shutAt_, static_cast<double>(moments_.size()), {}, {}, {}};
        for (std::size_t who = 0; who < forecasters_.size(); ++who)
            cycle.showings.push_back(showing(moments_, who, at));
        // What is shown at that very moment, not at the last full ten seconds.
        give(now);
        (void)forecasters_.front()->eta(now);
        const auto* picture = forecasters_.front()->picture();
        if (picture && picture->checks >= 3) {
            if (picture->target)
                cycle.markError = (*picture->target - truth.mark).kelvin();
            if (picture->brix)
                cycle.brixError = (*picture->brix - truth.drawOff).degrees();
        }
        trial_.cycles.push_back(std::move(cycle));
        open_ = false;
    }

    void hear(double at, Instant now, const RehearsalTruth& truth) {
        Moment moment{at, {}};
        for (std::size_t who = 0; who < forecasters_.size(); ++who) {
            const auto from = std::chrono::steady_clock::now();
            moment.said.push_back(forecasters_[who]->eta(now));
            if (who == 0)
                trial_.engineSeconds += std::chrono::duration<double>(std::chrono::steady_clock::now() - from).count();
        }
        if (open_ && below_ && !truth.drawing && boilsFrom_ >= 0)
            moments_.push_back(std::move(moment));
        weighSteam(at, truth);
    }

    void weighSteam(double at, const RehearsalTruth& truth) {
        if (std::fmod(at, 600) > 0.5)
            return;
        boiledOff_.push_back(truth.boiledOff.litre());
        const auto* picture = forecasters_.front()->picture();
        if (boilsFrom_ < 0 || at < boilsFrom_ + 2400 || !picture || !picture->evaporation || boiledOff_.size() < 4)
            return;
        const double lph = 2 * (boiledOff_.back() - boiledOff_[boiledOff_.size() - 4]);
        trial_.evaporationErrors.push_back(picture->evaporation->litrePerHour() / lph - 1);
    }

    std::size_t number_;
    bool unchecked_;
    Instant begins_;
    Rehearsal plant_;
    std::vector<std::unique_ptr<Forecaster>> forecasters_;
    Queue queue_;
    Trial trial_;
    std::vector<Moment> moments_;
    std::vector<double> boiledOff_;
    double shutAt_ = 0, boilsFrom_ = -1;
    bool open_ = true, below_ = false, first_ = true, drawing_ = false, over_ = false;
};
} // namespace

Trial run(const Boiling& boiling, std::size_t number, const std::vector<Entrant>& entrants,
          const std::vector<Fact>& before) {
    return Run{boiling, number, entrants, before}.go();
}

std::vector<Fact> learnedTheNightBefore(const Boiling& boiling) {
    constexpr std::uint64_t otherChance = 500'000;
    Rehearsal plant{boiling.options, boiling.seed + otherChance};
    const Instant begins = boiling.options.begins;
    std::vector<Fact> night;
    for (double at = 0; !plant.ended(); ++at)
        for (Fact& fact : plant.advance(begins + Duration{at}))
            night.push_back(std::move(fact));
    std::stable_sort(night.begin(), night.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    State state;
    for (const Fact& fact : night)
        absorbUnwatched(state, fact);
    const auto [cycle, brix] = state.forecast.learned();
    std::vector<Fact> learned;
    if (cycle)
        learned.push_back({begins, Set{Setting::learned_cycle, cycle->count(), Unit::min}});
    if (brix)
        learned.push_back({begins, Set{Setting::learned_brix, brix->count(), Unit::min}});
    return learned;
}

} // namespace panside::judge
