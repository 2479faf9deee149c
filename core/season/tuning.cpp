#include "core/season/tuning.h"

#include "core/quantity/enum_count.h"
#include "core/season/entanglement.h"
#include "core/season/night_table.h"
#include "core/season/shrinkage.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

constexpr std::array<CauseRow, causeCount> causes{{
    {Cause::smallerOftener, -120, 0.10, 0.06, true},
    {Cause::fireInterval, -120, 0.10, 0.06, true}, // 2 minutes sooner
    {Cause::loadMass, -5, 0.10, 0.06, true},       // 5 kg less
    {Cause::moisture, -0.05, 0.06, 0.06, true},    // 5 points drier
    {Cause::depth, 0.01, 0.06, 0.04, true},        // 10 mm deeper
    {Cause::stack, 50, 0.08, 0.08, false},         // 50 K hotter
    {Cause::sapSugar, 0.005, 0.03, 0.25, false},   // half a degree Brix sweeter
    {Cause::pressure, 1000, 0.02, 0.02, false},    // 1 kPa higher
    {Cause::advance, 10, 0.05, 0.06, false},       // ten days later
    {Cause::species, 1, 0.10, 0.15, true},
    {Cause::hand, 1, 0.06, 0.06, false},
}};
static_assert(hasCount<Cause, causeCount>());

constexpr double familyDoubt = 0.05;  // of one false claim among all
constexpr double shownDoubt = 0.05;   // 95 % intervals
constexpr double little = 0.03;       // an effect that hardly matters
constexpr double worthKnowing = 0.05; // what a comparison should be able to show
constexpr int nightsForNothing = 10;  // before an effect is said to hardly matter
constexpr int mostPairs = 20;
constexpr double usualScatter = 0.1; // of a night, as a logarithm: half of the prior below it

double priorSd(Cause cause, Outcome outcome) {
    const CauseRow& row = rowOf(cause);
    return outcome == Outcome::evaporation ? row.evaporationSd : row.perCordSd;
}

// A fit over some of the table's columns.
class Fit {
public:
    Fit(const NightTable& table, std::vector<std::size_t> columns, Outcome outcome) : columns_{std::move(columns)} {
        std::vector<std::vector<double>> x(table.outcome.size());
        std::vector<double> sd;
        for (const std::size_t column : columns_) {
            sd.push_back(priorSd(table.columns[column].cause, outcome));
            for (std::size_t night = 0; night < x.size(); ++night)
                x[night].push_back(table.columns[column].steps[night]);
        }
        belief_ = std::make_unique<Shrinkage>(x, table.outcome, sd, usualScatter);
    }
    // One weight for each column of the table; those that are not in this fit are left out.
    std::vector<double> weights(const std::vector<std::pair<std::size_t, double>>& of) const {
        std::vector<double> weights(columns_.size(), 0.0);
        for (const auto& [column, weight] : of)
            for (std::size_t i = 0; i < columns_.size(); ++i)
                if (columns_[i] == column)
                    weights[i] = weight;
        return weights;
    }
    const Shrinkage& belief() const { return *belief_; }

private:
    std::vector<std::size_t> columns_;
    std::unique_ptr<Shrinkage> belief_;
};

using Movement = std::vector<std::pair<std::size_t, double>>; // columns of the table, in steps

std::optional<std::size_t> columnOf(const NightTable& table, Cause cause) {
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        if (table.columns[i].cause == cause)
            return i;
    return std::nullopt;
}

// Smaller and more often: the interval's step, and the load less by the same share.
std::optional<Movement> smallerOftener(const NightTable& table) {
    const auto interval = columnOf(table, Cause::fireInterval), load = columnOf(table, Cause::loadMass);
    if (!interval || !load || table.columns[*interval].usual <= 0)
        return std::nullopt;
    const double share = rowOf(Cause::fireInterval).step / table.columns[*interval].usual;
    const double loadSteps = share * table.columns[*load].usual / rowOf(Cause::loadMass).step;
    return Movement{{*interval, 1.0}, {*load, loadSteps}};
}

class Judge {
public:
    Judge(const NightTable& table, Outcome outcome) : table_{table}, outcome_{outcome} {
        std::vector<std::size_t> hands, all;
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            all.push_back(i);
            if (table.columns[i].cause != Cause::stack)
                hands.push_back(i);
        }
        fit_ = std::make_unique<Fit>(table, hands, outcome);
        if (hands.size() < all.size())
            withStack_ = std::make_unique<Fit>(table, all, outcome);
    }
    void tell(Tuning& tuning);

private:
    const Fit& fitFor(Cause cause) const { return cause == Cause::stack ? *withStack_ : *fit_; }
    Effect effectOf(Cause cause, const std::string& what, double step, double usual, const Movement& movement) const;
    Verdict verdict(const Fit& fit, const std::vector<double>& weights, double prior, bool mayBeNothing) const;
    void choose(Tuning& tuning) const;

    const NightTable& table_;
    Outcome outcome_;
    std::unique_ptr<Fit> fit_, withStack_;
    std::vector<Movement> movements_; // one an effect
    double claims_ = 1;               // judged at once
};

Effect Judge::effectOf(Cause cause, const std::string& what, double step, double usual,
                       const Movement& movement) const {
    const Fit& fit = fitFor(cause);
    const auto weights = fit.weights(movement);
    Effect effect{.cause = cause, .what = what, .step = step, .usual = usual};
    effect.middle = fit.belief().mean(weights);
    effect.low = fit.belief().quantile(weights, shownDoubt / 2);
    effect.high = fit.belief().quantile(weights, 1 - shownDoubt / 2);
    effect.sd = fit.belief().sd(weights);
    return effect;
}

Verdict Judge::verdict(const Fit& fit, const std::vector<double>& weights, double prior, bool mayBeNothing) const {
    if (table_.outcome.size() < static_cast<std::size_t>(fewestNights))
        return Verdict::tooLittle;
    const double tail = familyDoubt / claims_ / 2;
    if (fit.belief().quantile(weights, tail) > 0)
        return Verdict::pays;
    if (fit.belief().quantile(weights, 1 - tail) < 0)
        return Verdict::costs;
    // The prior alone would often say so: the data must have said most of it.
    const bool said = fit.belief().sd(weights) < prior / 2;
    const bool small = fit.belief().quantile(weights, shownDoubt / 2) > -little &&
                       fit.belief().quantile(weights, 1 - shownDoubt / 2) < little;
    return mayBeNothing && said && small && table_.outcome.size() >= static_cast<std::size_t>(nightsForNothing)
               ? Verdict::hardlyMatters
               : Verdict::tooLittle;
}

void Judge::tell(Tuning& tuning) {
    if (const auto both = smallerOftener(table_)) {
        const double usual = table_.columns[both->front().first].usual;
        tuning.effects.push_back(effectOf(Cause::smallerOftener, {}, rowOf(Cause::fireInterval).step, usual, *both));
        movements_.push_back(*both);
    }
    const std::size_t first = tuning.effects.size(); // from here an effect a column
    for (std::size_t i = 0; i < table_.columns.size(); ++i) {
        const CauseColumn& column = table_.columns[i];
        movements_.push_back({{i, 1.0}});
        tuning.effects.push_back(
            effectOf(column.cause, column.what, rowOf(column.cause).step, column.usual, movements_.back()));
    }
    std::vector<std::vector<double>> columns;
    for (const CauseColumn& column : table_.columns)
        columns.push_back(column.steps);
    const auto groups = entangledColumns(columns);
    claims_ = static_cast<double>(tuning.effects.size() + groups.size());

    for (std::size_t i = 0; i < tuning.effects.size(); ++i) {
        Effect& effect = tuning.effects[i];
        const Fit& fit = fitFor(effect.cause);
        effect.verdict = verdict(fit, fit.weights(movements_[i]), priorSd(effect.cause, outcome_), true);
    }
    for (const TogetherGroup& group : groups) {
        Entangled entangled;
        Movement movement;
        bool stack = false;
        for (std::size_t i = 0; i < group.columns.size(); ++i) {
            entangled.effects.push_back(first + group.columns[i]);
            entangled.against.push_back(group.movement[i] < 0);
            movement.emplace_back(group.columns[i], group.movement[i]);
            tuning.effects[first + group.columns[i]].verdict = Verdict::entangled;
            stack = stack || table_.columns[group.columns[i]].cause == Cause::stack;
        }
        const Fit& fit = stack ? *withStack_ : *fit_;
        const auto weights = fit.weights(movement);
        entangled.middle = fit.belief().mean(weights);
        entangled.low = fit.belief().quantile(weights, shownDoubt / 2);
        entangled.high = fit.belief().quantile(weights, 1 - shownDoubt / 2);
        entangled.verdict = verdict(fit, weights, 1, false);
        tuning.entangled.push_back(std::move(entangled));
    }
    // Where interval or load cannot be told from another cause, nor can the two of them together, unless they are told
    // from each other only.
    if (first == 1)
        for (const Entangled& group : tuning.entangled) {
            const auto holds = [&](Cause cause) {
                return std::ranges::any_of(group.effects,
                                           [&](std::size_t i) { return tuning.effects[i].cause == cause; });
            };
            const bool interval = holds(Cause::fireInterval), load = holds(Cause::loadMass);
            if ((interval || load) && !(interval && load && group.effects.size() == 2))
                tuning.effects.front().verdict = Verdict::entangled;
        }
    tuning.scatter = fit_->belief().scatter();
    choose(tuning);
}

// A pair of nights, half a step either side of the usual, all else alike, adds w w' / (2 scatter^2) to what is known:
// the variance c of the effect becomes c / (1 + c pairs / (2 scatter^2)). What is least known gains most.
void Judge::choose(Tuning& tuning) const {
    double most = 0;
    const double noise = 2 * tuning.scatter * tuning.scatter;
    for (std::size_t i = 0; i < tuning.effects.size(); ++i) {
        const Effect& effect = tuning.effects[i];
        const bool open = effect.verdict == Verdict::tooLittle || effect.verdict == Verdict::entangled;
        if (!rowOf(effect.cause).choosable || !open)
            continue;
        const double c = effect.sd * effect.sd;
        const double gain = effect.sd - std::sqrt(c / (1 + c / noise));
        if (gain <= most)
            continue;
        most = gain;
        const double wanted = worthKnowing / 1.959963984540054;
        const double pairs = std::ceil(noise * (1 / (wanted * wanted) - 1 / c));
        tuning.next = Comparison{i, pairs > mostPairs ? 0 : std::max(static_cast<int>(pairs), 1)};
    }
}

} // namespace

const CauseRow& rowOf(Cause cause) { return causes[static_cast<std::size_t>(cause)]; }

Tuning tune(std::span<const SeasonShift> shifts, Outcome outcome) {
    NightTable table = nightTable(shifts, outcome);
    Tuning tuning{.outcome = outcome,
                  .nights = static_cast<int>(table.outcome.size()),
                  .withOutcome = table.withOutcome,
                  .leftOut = std::move(table.leftOut)};
    if (tuning.nights >= 2 && !table.columns.empty())
        Judge{table, outcome}.tell(tuning);
    return tuning;
}

} // namespace panside
