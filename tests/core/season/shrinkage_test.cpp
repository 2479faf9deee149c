#include "core/season/shrinkage.h"

#include "core/season/entanglement.h"

#include <gtest/gtest.h>

#include <algorithm>

#include <cmath>
#include <random>

namespace panside {
namespace {

// NIST Statistical Reference Datasets, linear regression, "Norris": y, x. Certified: slope 1.00211681802045, residual
// standard deviation 0.884796396144373.
const double norris[][2] = {
    {0.1, 0.2},     {338.8, 337.4}, {118.1, 118.2}, {888.0, 884.6}, {9.2, 10.1},    {228.1, 226.5},
    {668.5, 666.3}, {998.5, 996.3}, {449.1, 448.6}, {778.9, 777.0}, {559.2, 558.2}, {0.3, 0.4},
    {0.1, 0.6},     {778.1, 775.5}, {668.8, 666.9}, {339.3, 338.0}, {448.9, 447.5}, {10.8, 11.6},
    {557.7, 556.0}, {228.3, 228.1}, {998.0, 995.8}, {888.8, 887.6}, {119.6, 120.2}, {0.3, 0.3},
    {0.6, 0.3},     {557.6, 556.8}, {339.3, 339.1}, {888.0, 887.2}, {998.5, 999.0}, {778.9, 779.0},
    {10.2, 11.1},   {117.6, 118.3}, {228.9, 229.2}, {668.4, 669.1}, {449.2, 448.9}, {0.2, 0.5}};

// NIST Statistical Reference Datasets, linear regression, "Longley" (J. W. Longley, J. Am. Stat. Assoc. 62 (1967) 819):
// y, then six causes so entangled that careless sums lose all their digits.
const double longley[][7] = {
    {60323, 83.0, 234289, 2356, 1590, 107608, 1947},  {61122, 88.5, 259426, 2325, 1456, 108632, 1948},
    {60171, 88.2, 258054, 3682, 1616, 109773, 1949},  {61187, 89.5, 284599, 3351, 1650, 110929, 1950},
    {63221, 96.2, 328975, 2099, 3099, 112075, 1951},  {63639, 98.1, 346999, 1932, 3594, 113270, 1952},
    {64989, 99.0, 365385, 1870, 3547, 115094, 1953},  {63761, 100.0, 363112, 3578, 3350, 116219, 1954},
    {66019, 101.2, 397469, 2904, 3048, 117388, 1955}, {67857, 104.6, 419180, 2822, 2857, 118734, 1956},
    {68169, 108.4, 442769, 2936, 2798, 120445, 1957}, {66513, 110.8, 444546, 4681, 2637, 121950, 1958},
    {68655, 112.6, 482704, 3813, 2552, 123366, 1959}, {69564, 114.2, 502601, 3931, 2514, 125368, 1960},
    {69331, 115.7, 518173, 4806, 2572, 127852, 1961}, {70551, 116.9, 554894, 4007, 2827, 130081, 1962}};

std::vector<double> only(std::size_t count, std::size_t which) {
    std::vector<double> weights(count, 0.0);
    weights[which] = 1;
    return weights;
}

TEST(Shrinkage, IsLeastSquaresWherePriorsSayNothing) {
    std::vector<std::vector<double>> x;
    std::vector<double> y;
    for (const auto& [observed, cause] : norris) {
        x.push_back({cause});
        y.push_back(observed);
    }
    const Shrinkage fit{x, y, {1e6}, 1};
    EXPECT_NEAR(fit.mean(only(1, 0)), 1.00211681802045, 1e-9);
    // Certified standard deviation of the slope 0.000429796848199937 on 34 degrees of freedom; Student's distribution
    // of so many is wider by the root of 34 / 32.
    EXPECT_NEAR(fit.sd(only(1, 0)) / (0.000429796848199937 * std::sqrt(34.0 / 32)), 1, 0.005);
    EXPECT_NEAR(fit.scatter(), 0.884796396144373, 0.03);
}

TEST(Shrinkage, KeepsItsDigitsWhereCausesAreEntangled) {
    // Certified effects.
    const double certified[] = {15.0618722713733,  -0.358191792925910E-01, -2.02022980381683,
                                -1.03322686717359, -0.511041056535807E-01, 1829.15146461355};
    std::vector<std::vector<double>> x;
    std::vector<double> y;
    for (const auto& row : longley) {
        x.emplace_back(row + 1, row + 7);
        y.push_back(row[0]);
    }
    const Shrinkage fit{x, y, std::vector<double>(6, 1e7), 300};
    for (std::size_t i = 0; i < 6; ++i)
        EXPECT_NEAR(fit.mean(only(6, i)) / certified[i], 1, 1e-5) << i;
}

// Two causes that do not touch each other, +1 and -1: x'x = 4 for each, and ridge regression's answer (Hoerl and
// Kennard, 1970) is x'y / (4 + s^2 / t^2), here worked by hand for every scatter s: the mean must lie between no
// shrinkage and the most, and follow x'y exactly in proportion.
TEST(Shrinkage, ShrinksEachEffectByItsOwnPriorAlone) {
    const std::vector<std::vector<double>> x{{1, 1}, {1, -1}, {-1, 1}, {-1, -1}};
    const std::vector<double> y{0.5, 0.3, -0.2, -0.6}; // x'y: 1.6 and 0.6
    const Shrinkage fit{x, y, {0.2, 0.2}, 0.1};
    EXPECT_LT(fit.mean(only(2, 0)), 1.6 / 4);
    EXPECT_NEAR(fit.mean(only(2, 0)) / fit.mean(only(2, 1)), 1.6 / 0.6, 1e-9);
    // One scatter only, by a prior that leaves no other: 1.6 / (4 + s^2 / t^2) between its ends.
    const double s = fit.scatter();
    EXPECT_NEAR(fit.mean(only(2, 0)), 1.6 / (4 + s * s / 0.04), 0.03);
    const Shrinkage tight{x, y, {0.02, 20}, 0.1};
    EXPECT_LT(std::abs(tight.mean(only(2, 0))), 0.05);
    EXPECT_NEAR(tight.mean(only(2, 1)), 0.6 / 4, 0.001);
}

TEST(Shrinkage, WithoutDataBelievesThePrior) {
    const Shrinkage fit{{{1, 0}, {1, 0}}, {0.2, 0.2}, {0.1, 0.3}, 0.1};
    EXPECT_NEAR(fit.mean(only(2, 1)), 0, 1e-12);
    EXPECT_NEAR(fit.sd(only(2, 1)), 0.3, 1e-9);
    // The normal distribution's 97.5 % point, 1.959964 (Abramowitz and Stegun, table 26.5).
    EXPECT_NEAR(fit.quantile(only(2, 1), 0.975), 0.3 * 1.959964, 1e-6);
    EXPECT_NEAR(fit.quantile(only(2, 1), 0.025), -0.3 * 1.959964, 1e-6);
}

// Truths drawn from the priors themselves: then 95 of 100 intervals hold theirs, if the sums are right.
TEST(Shrinkage, HoldsTheTruthAsOftenAsItSays) {
    std::mt19937_64 dice{20260314};
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> even{0.0, 1.0};
    const std::vector<double> prior{0.1, 0.05, 0.2};
    int held = 0, tried = 0;
    for (int boil = 0; boil < 400; ++boil) {
        const double scatter = 0.1 * std::tan(1.5707963267948966 * std::clamp(even(dice), 0.03, 0.95));
        std::vector<double> truth, y;
        for (const double sd : prior)
            truth.push_back(sd * normal(dice));
        std::vector<std::vector<double>> x;
        for (int night = 0; night < 9; ++night) {
            const double common = normal(dice);
            x.push_back({common + normal(dice), common + normal(dice), normal(dice)});
            y.push_back(5 + scatter * normal(dice));
            for (std::size_t j = 0; j < prior.size(); ++j)
                y.back() += truth[j] * x.back()[j];
        }
        const Shrinkage fit{x, y, prior, 0.1};
        for (std::size_t j = 0; j < prior.size(); ++j) {
            held += fit.quantile(only(3, j), 0.025) <= truth[j] && truth[j] <= fit.quantile(only(3, j), 0.975);
            ++tried;
        }
    }
    // 1200 trials: one standard deviation is 0.6 %.
    EXPECT_NEAR(static_cast<double>(held) / tried, 0.95, 0.02);
}

TEST(Entanglement, NamesWhatWentTogetherInLongleysTable) {
    std::vector<std::vector<double>> columns(6);
    for (const auto& row : longley)
        for (std::size_t j = 0; j < 6; ++j)
            columns[j].push_back(row[j + 1]);
    const auto groups = entangledColumns(columns);
    ASSERT_EQ(groups.size(), 1U);
    // Prices, product, population and the year all grew together; the size of the armed forces did not.
    for (const std::size_t column : {0U, 1U, 4U, 5U})
        EXPECT_NE(std::find(groups[0].columns.begin(), groups[0].columns.end(), column), groups[0].columns.end())
            << column;
    EXPECT_EQ(std::find(groups[0].columns.begin(), groups[0].columns.end(), 3U), groups[0].columns.end());
}

TEST(Entanglement, FindsThreeOfWhichEachIsTheRest) {
    std::mt19937_64 dice{7};
    std::normal_distribution<double> normal;
    std::vector<std::vector<double>> columns(4);
    for (int night = 0; night < 20; ++night) {
        const double a = normal(dice), b = normal(dice);
        columns[0].push_back(a);
        columns[1].push_back(b);
        columns[2].push_back(normal(dice));
        columns[3].push_back(a + b + 0.05 * normal(dice)); // correlates with each by 0.7 only
    }
    const auto groups = entangledColumns(columns);
    ASSERT_EQ(groups.size(), 1U);
    EXPECT_EQ(groups[0].columns, (std::vector<std::size_t>{0, 1, 3}));
}

TEST(Entanglement, LeavesAloneWhatWentItsOwnWay) {
    std::mt19937_64 dice{8};
    std::normal_distribution<double> normal;
    std::vector<std::vector<double>> columns(4);
    for (int night = 0; night < 30; ++night)
        for (auto& column : columns)
            column.push_back(normal(dice));
    EXPECT_TRUE(entangledColumns(columns).empty());
}

} // namespace
} // namespace panside
