#include "core/season/night_table.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

namespace panside {
namespace {

constexpr double knownOnMost = 0.8; // of the nights: a cause known on fewer would cost too many nights
constexpr int fewestEachWay = 2;    // nights with a species or hand, and without
constexpr double muchTheSame = 0.1; // steps: less scatter than this tells nothing
constexpr double mostOfTheWood = 0.8;

struct Night {
    const ShiftAccount* account;
    double outcome;
};

using Tell = std::function<std::optional<double>(const ShiftAccount&)>;

std::optional<double> toldOf(const ShiftAccount& account, SeasonFigure figure) {
    const auto told = figureOf(account, figure);
    return told && !told->atLeast ? std::optional{told->si} : std::nullopt;
}

std::vector<Night> nightsOf(std::span<const SeasonShift> shifts, Outcome outcome) {
    const auto figure = outcome == Outcome::evaporation ? SeasonFigure::evaporation : SeasonFigure::syrupPerCord;
    std::vector<Night> nights;
    for (const SeasonShift& shift : shifts) {
        const auto value = shift.account && !shift.open ? toldOf(*shift.account, figure) : std::nullopt;
        if (value && *value > 0)
            nights.push_back({&*shift.account, std::log(*value)});
    }
    return nights;
}

// The species of most of the wood; none where nobody said.
std::optional<std::string> speciesOf(const ShiftAccount& account) {
    for (const auto& [species, mass] : account.woods)
        if (!species.empty() && mass / account.wood >= mostOfTheWood)
            return species;
    return std::nullopt;
}

double daysInto(const ShiftAccount& account) {
    const auto begins = std::chrono::sys_days{std::chrono::year{seasonOf(account.first)} / std::chrono::January / 1};
    return secondsBetween(Instant{begins}, account.first) / 86400;
}

struct Candidate {
    Cause cause;
    std::string what;
    Tell tell;
};

std::vector<Candidate> candidates(const std::vector<Night>& nights) {
    const auto figure = [](SeasonFigure one) {
        return [one](const ShiftAccount& account) { return toldOf(account, one); };
    };
    std::vector<Candidate> all{
        {Cause::fireInterval, {}, figure(SeasonFigure::fireInterval)},
        {Cause::loadMass, {}, figure(SeasonFigure::loadMass)},
        {Cause::moisture, {}, figure(SeasonFigure::moisture)},
        {Cause::depth, {}, figure(SeasonFigure::depth)},
        {Cause::stack, {}, figure(SeasonFigure::stack)},
        {Cause::sapSugar, {}, figure(SeasonFigure::sapSugar)},
        {Cause::pressure, {}, figure(SeasonFigure::pressure)},
        {Cause::advance, {}, [](const ShiftAccount& account) { return std::optional{daysInto(account)}; }}};
    std::set<std::string> species, hands;
    for (const Night& night : nights) {
        if (const auto one = speciesOf(*night.account))
            species.insert(*one);
        for (const auto& [name, time] : night.account->crew)
            hands.insert(name);
    }
    for (const auto& name : species)
        all.push_back({Cause::species, name, [name](const ShiftAccount& account) -> std::optional<double> {
                           if (account.woods.empty() || (account.woods.size() == 1 && account.woods.contains({})))
                               return std::nullopt;
                           return speciesOf(account) == name ? 1 : 0;
                       }});
    for (const auto& name : hands)
        all.push_back({Cause::hand, name, [name](const ShiftAccount& account) -> std::optional<double> {
                           if (account.crew.empty())
                               return std::nullopt;
                           return account.crew.contains(name) ? 1 : 0;
                       }});
    return all;
}

bool isKind(Cause cause) { return cause == Cause::species || cause == Cause::hand; }

bool varies(const CauseColumn& column) {
    const auto count = static_cast<double>(column.steps.size());
    if (isKind(column.cause)) {
        const auto with = std::ranges::count_if(column.steps, [](double x) { return x > 0.5; });
        return with >= fewestEachWay && static_cast<long>(column.steps.size()) - with >= fewestEachWay;
    }
    double sum = 0, squares = 0;
    for (const double x : column.steps)
        sum += x;
    for (const double x : column.steps)
        squares += (x - sum / count) * (x - sum / count);
    return count > 1 && std::sqrt(squares / (count - 1)) > muchTheSame;
}

} // namespace

NightTable nightTable(std::span<const SeasonShift> shifts, Outcome outcome) {
    NightTable table;
    auto nights = nightsOf(shifts, outcome);
    table.withOutcome = static_cast<int>(nights.size());
    auto causes = candidates(nights);
    // Causes known on too few nights go first, then the nights that lack one of the rest.
    std::erase_if(causes, [&](const Candidate& candidate) {
        const auto known = std::ranges::count_if(
            nights, [&](const Night& night) { return candidate.tell(*night.account).has_value(); });
        const bool tooFew = static_cast<double>(known) < knownOnMost * static_cast<double>(nights.size());
        if (tooFew)
            table.leftOut.push_back({candidate.cause, candidate.what, static_cast<int>(known)});
        return tooFew;
    });
    std::erase_if(nights, [&](const Night& night) {
        return std::ranges::any_of(causes, [&](const Candidate& candidate) { return !candidate.tell(*night.account); });
    });
    for (const Night& night : nights)
        table.outcome.push_back(night.outcome);
    for (const Candidate& candidate : causes) {
        CauseColumn column{candidate.cause, candidate.what, 0, {}};
        for (const Night& night : nights) {
            const double value = *candidate.tell(*night.account);
            column.usual += value / static_cast<double>(nights.size());
            column.steps.push_back(value / rowOf(candidate.cause).step);
        }
        if (varies(column))
            table.columns.push_back(std::move(column));
        else
            table.leftOut.push_back({candidate.cause, candidate.what, static_cast<int>(nights.size()), true});
    }
    return table;
}

} // namespace panside
