#pragma once
// A linear regression fit for few nights: every effect has a stated prior about nought, so that little data moves it
// little, and what the data say and how surely comes out as a distribution.
//
//   y = level + x b + e,  e ~ N(0, scatter^2),  b_j ~ N(0, priorSd_j^2), level flat, scatter half-Cauchy
//
// Given the scatter this is generalised ridge regression (Hoerl and Kennard, Technometrics 12 (1970) 55) and exact; the
// scatter is summed over a grid, so that its own doubt is in the intervals (half-Cauchy: Gelman, Bayesian Analysis 1
// (2006) 515).
#include <memory>
#include <span>
#include <vector>

namespace panside {

class Shrinkage {
public:
    // `x`: a row a night, a column a cause, not centred; `y`: one a night. Two nights or more, a finite number
    // everywhere. `scatterScale`: half of the prior lies below it, more than 0.
    Shrinkage(const std::vector<std::vector<double>>& x, const std::vector<double>& y,
              const std::vector<double>& priorSd, double scatterScale);

    // Of a sum of effects, one weight a cause: mean, standard deviation, and the value below which it lies with
    // probability p (0 to 1, both excluded).
    double mean(std::span<const double> weights) const;
    double sd(std::span<const double> weights) const;
    double quantile(std::span<const double> weights, double p) const;
    double scatter() const; // of one night, on the mean

private:
    struct Inside;
    std::shared_ptr<const Inside> inside_;
};

} // namespace panside
