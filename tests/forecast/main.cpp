// forecast_table: the engine against four simple methods over many made-up boils, with the truth known. One table.
#include "tests/forecast/candidates.h"
#include "tests/forecast/trial.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <cstring>
#include <map>

using namespace panside::judge;
using panside::Fact;

namespace {
double mean(const std::vector<double>& values) {
    double sum = 0;
    for (const double value : values)
        sum += value;
    return values.empty() ? std::nan("") : sum / static_cast<double>(values.size());
}
double quantile(std::vector<double> values, double share) {
    if (values.empty())
        return std::nan("");
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1) + 0.5)];
}

class Table {
public:
    Table(std::vector<std::string> names, std::size_t simple) : names_{std::move(names)}, simple_{simple} {}

    void add(const std::string& group, Trial trial) {
        for (auto& cycle : trial.cycles)
            (cycle.first ? firsts_ : groups_[group]).push_back(cycle);
        for (auto& [name, cycles] : std::map<std::string, int>{{group, 0}})
            if (std::find(order_.begin(), order_.end(), name) == order_.end())
                order_.push_back(name);
        censored_ += trial.censored;
        seconds_ += trial.engineSeconds;
        auto& steam = steam_[trial.evaporationFrom];
        steam.insert(steam.end(), trial.evaporationErrors.begin(), trial.evaporationErrors.end());
    }

    void print() const {
        fmt::print("Pinball loss over p10, p50, p90, s; each 10 s of the cycle, mean over cycles (lower is better)\n");
        fmt::print("{:<24}{:>6}{:>7}", "boils", "draws", "min");
        for (const auto& name : names_)
            fmt::print("{:>14}", name);
        fmt::print("{:>8}\n", "ratio");
        std::vector<Cycle> all;
        for (const auto& group : order_) {
            const auto found = groups_.find(group);
            if (found == groups_.end())
                continue;
            line(group, found->second);
            all.insert(all.end(), found->second.begin(), found->second.end());
        }
        line("ALL", all);
        line("first draw since lit", firsts_);
        auto together = all;
        together.insert(together.end(), firsts_.begin(), firsts_.end());
        wholeTime(together);
        lastMinutes(together);
        fmt::print("({} more cycles ended by the crew or the shutdown before the mark was reached: not counted)\n\n",
                   censored_);
        fmt::print("Inside the 80 % range over the same moments; the 95 % binomial interval of 0.8 for so many draws; "
                   "width, min; "
                   "share of moments with a forecast\n");
        for (std::size_t who = 0; who < names_.size(); ++who) {
            if (who < simple_ && who > 0)
                continue;
            for (const auto& group : order_)
                if (groups_.count(group))
                    inside(who, group, groups_.at(group));
        }
        for (std::size_t who = 0; who < names_.size(); ++who)
            inside(who, "ALL", all);
        errors(all);
        learned(all);
        byGroup();
    }

    double ratio() const {
        std::vector<Cycle> all;
        for (const auto& [group, cycles] : groups_)
            all.insert(all.end(), cycles.begin(), cycles.end());
        return score(0, all) / best(all);
    }

private:
    double score(std::size_t who, const std::vector<Cycle>& cycles) const {
        std::vector<double> scores;
        for (const auto& cycle : cycles)
            scores.push_back(cycle.showings[who].pinball);
        return mean(scores);
    }
    double best(const std::vector<Cycle>& cycles) const {
        double least = INFINITY;
        for (std::size_t who = 1; who < simple_; ++who)
            least = std::min(least, score(who, cycles));
        return least;
    }
    void line(const std::string& group, const std::vector<Cycle>& cycles) const {
        std::vector<double> lengths;
        for (const auto& cycle : cycles)
            lengths.push_back(cycle.length / 60);
        fmt::print("{:<24}{:>6}{:>7.1f}", group, cycles.size(), quantile(lengths, 0.5));
        for (std::size_t who = 0; who < names_.size(); ++who)
            fmt::print("{:>14.1f}", score(who, cycles));
        fmt::print("{:>8.2f}\n", score(0, cycles) / best(cycles));
    }
    // Each moment counts alike, so that a long cycle counts for more than a short one.
    void wholeTime(const std::vector<Cycle>& cycles) const {
        std::vector<double> sums(names_.size());
        double moments = 0;
        for (const auto& cycle : cycles) {
            moments += cycle.moments;
            for (std::size_t who = 0; who < names_.size(); ++who)
                sums[who] += cycle.showings[who].pinball * cycle.moments;
        }
        fmt::print("{:<24}{:>6}{:>7}", "ALL TIME, first draws too", cycles.size(), "");
        for (const double sum : sums)
            fmt::print("{:>14.1f}", sum / moments);
        const double best = *std::min_element(sums.begin() + 1, sums.begin() + static_cast<std::ptrdiff_t>(simple_));
        fmt::print("{:>8.2f}\n", sums[0] / best);
    }
    void lastMinutes(const std::vector<Cycle>& cycles) const {
        double inside = 0, moments = 0;
        for (const auto& cycle : cycles) {
            inside += cycle.showings[0].insideAtLast;
            moments += cycle.showings[0].atLast;
        }
        fmt::print("Inside the engine's range over the last two minutes before the mark: {:.3f}\n", inside / moments);
    }
    void inside(std::size_t who, const std::string& group, const std::vector<Cycle>& cycles) const {
        std::vector<double> shares, widths, spoke;
        for (const auto& cycle : cycles) {
            const auto& showing = cycle.showings[who];
            spoke.push_back(showing.spoke);
            if (showing.spoke <= 0)
                continue;
            shares.push_back(showing.inside);
            widths.push_back(showing.width / 60);
        }
        const double half = 1.96 * std::sqrt(0.16 / std::max<double>(1, static_cast<double>(shares.size())));
        const double share = mean(shares);
        fmt::print("{:<14}{:<24}{:>6} draws {:>6.3f}  [{:.3f}, {:.3f}] {:<4} width {:>6.1f}  spoke {:>5.2f}\n",
                   names_[who], group, shares.size(), share, 0.8 - half, std::min(1.0, 0.8 + half),
                   std::abs(share - 0.8) <= half ? "in" : (share < 0.8 ? "LOW" : "HIGH"), mean(widths), mean(spoke));
    }
    void errors(const std::vector<Cycle>& cycles) const {
        fmt::print(
            "\nError of the middle, min: median and 90th percentile at fixed leads (known only afterwards)\n{:<14}",
            "");
        for (const double lead : leads)
            fmt::print("{:>16}", fmt::format("{:.0f} min before", lead / 60));
        fmt::print("\n");
        for (std::size_t who = 0; who < names_.size(); ++who) {
            fmt::print("{:<14}", names_[who]);
            for (std::size_t i = 0; i < leads.size(); ++i) {
                std::vector<double> sizes;
                for (const auto& cycle : cycles)
                    if (cycle.showings[who].errors[i])
                        sizes.push_back(std::abs(*cycle.showings[who].errors[i]) / 60);
                fmt::print("{:>16}", fmt::format("{:.1f} / {:.1f}", quantile(sizes, 0.5), quantile(sizes, 0.9)));
            }
            fmt::print("\n");
        }
    }
    // Where the mark and the sugar are known worst.
    void byGroup() const {
        fmt::print("\n{:<26}{:>6}{:>24}{:>24}{:>12}\n", "After three checks", "times", "mark, K: median, 90 %",
                   "sugar: median, 90 %", "mean");
        for (const auto& group : order_) {
            std::vector<double> marks, sugars, signedSugars;
            if (groups_.count(group))
                for (const auto& cycle : groups_.at(group)) {
                    if (cycle.markError)
                        marks.push_back(std::abs(*cycle.markError));
                    if (cycle.brixError) {
                        sugars.push_back(std::abs(*cycle.brixError));
                        signedSugars.push_back(*cycle.brixError);
                    }
                }
            if (!sugars.empty())
                fmt::print("{:<26}{:>6}{:>16.3f}{:>8.3f}{:>16.2f}{:>8.2f}{:>12.2f}\n", group, sugars.size(),
                           quantile(marks, 0.5), quantile(marks, 0.9), quantile(sugars, 0.5), quantile(sugars, 0.9),
                           mean(signedSugars));
        }
    }
    void learned(const std::vector<Cycle>& cycles) const {
        std::vector<double> marks, signedMarks, brix;
        for (const auto& cycle : cycles) {
            if (cycle.markError) {
                marks.push_back(std::abs(*cycle.markError));
                signedMarks.push_back(*cycle.markError);
            }
            if (cycle.brixError)
                brix.push_back(std::abs(*cycle.brixError));
        }
        fmt::print("\n{:<44}{:>8}{:>10}{:>10}{:>10}\n", "The engine", "times", "median", "90 %", "mean");
        fmt::print("{:<44}{:>8}{:>10.3f}{:>10.3f}{:>10.3f}\n", "mark, K, after three checks", marks.size(),
                   quantile(marks, 0.5), quantile(marks, 0.9), mean(signedMarks));
        const auto close = std::ranges::count_if(brix, [](double error) { return error <= 0.5; });
        fmt::print("{:<44}{:>8}{:>10.2f}{:>10.2f}{:>9.0f} % within 0.5\n",
                   "sugar at the draw-off, Brix, after three checks", brix.size(), quantile(brix, 0.5),
                   quantile(brix, 0.9), 100.0 * static_cast<double>(close) / static_cast<double>(brix.size()));
        for (const auto& [from, errors] : steam_) {
            std::vector<double> sizes;
            for (const double error : errors)
                sizes.push_back(100 * std::abs(error));
            fmt::print("{:<44}{:>8}{:>10.1f}{:>10.1f}{:>10.1f}\n", "evaporation, % of the half hour's: " + from,
                       sizes.size(), quantile(sizes, 0.5), quantile(sizes, 0.9), 100 * mean(errors));
        }
        fmt::print("Time in the engine: {:.1f} s\n", seconds_);
    }

    std::vector<std::string> names_;
    std::size_t simple_; // the engine and the simple methods come first
    std::map<std::string, std::vector<Cycle>> groups_;
    std::vector<std::string> order_;
    std::vector<Cycle> firsts_;
    std::map<std::string, std::vector<double>> steam_; // by what it was judged from
    int censored_ = 0;
    double seconds_ = 0;
};

int usage() {
    fmt::print("forecast_table [--each N] [--group NAME] [--at-most RATIO] [--other | --hard] [--learned]\n"
               "  --each N         boils in each of the fifteen groups (8: 120 boils; 1 if left out)\n"
               "  --group NAME     only the groups whose name holds NAME\n"
               "  --at-most RATIO  fail if the engine's score is more than so much of the best simple method's\n"
               "  --other          seven groups of plants that nothing was tuned on, in place of the fifteen\n"
               "  --hard           ten groups with the unrest that a tidy plant lacks, in place of the fifteen\n"
               "  --learned        with what another night of the same rig and crew taught\n");
    return 2;
}
} // namespace

int main(int argc, char** argv) {
    int each = 1;
    double atMost = INFINITY;
    std::string only;
    bool other = false, hard = false, learned = false;
    for (int i = 1; i < argc; ++i) {
        if (std::strcmp(argv[i], "--other") == 0) {
            other = true;
            continue;
        }
        if (std::strcmp(argv[i], "--learned") == 0) {
            learned = true;
            continue;
        }
        if (std::strcmp(argv[i], "--hard") == 0) {
            hard = true;
            continue;
        }
        if (i + 1 >= argc)
            return usage();
        if (std::strcmp(argv[i], "--each") == 0)
            each = std::atoi(argv[++i]);
        else if (std::strcmp(argv[i], "--group") == 0)
            only = argv[++i];
        else if (std::strcmp(argv[i], "--at-most") == 0)
            atMost = std::atof(argv[++i]);
        else
            return usage();
    }
    auto entrants = simpleMethods();
    entrants.insert(entrants.begin(), engine());
    const std::size_t simple = entrants.size();
    for (auto& candidate : candidates())
        entrants.push_back(std::move(candidate));
    std::vector<std::string> names;
    for (const auto& entrant : entrants)
        names.push_back(entrant.name);
    Table table{names, simple};
    std::size_t number = 0;
    for (const auto& boiling : hard ? hardBoils(each) : other ? otherBoils(each) : boils(each))
        if (boiling.group.find(only) != std::string::npos)
            table.add(boiling.group,
                      run(boiling, number++, entrants, learned ? learnedTheNightBefore(boiling) : std::vector<Fact>{}));
    fmt::print("{} boils, seeds {} * group + 1 to {}\n\n", number,
               hard    ? "80000 + 1000"
               : other ? "50000 + 1000"
                       : "1000",
               each);
    table.print();
    const double ratio = table.ratio();
    if (!(ratio <= atMost)) {
        fmt::print("The engine's score is {:.2f} of the best simple method's; at most {:.2f} is wanted.\n", ratio,
                   atMost);
        return 1;
    }
    return 0;
}
