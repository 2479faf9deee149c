#include "core/season/entanglement.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace panside {
namespace {

constexpr double together = 0.8;          // correlation
constexpr double inflated = 10;           // variance inflation
constexpr double takesPart = 0.3;         // in a direction that hardly varies
constexpr double hardlyVaries = 0.1;      // eigenvalue of the correlations
constexpr Eigen::Index nightsToSpare = 4; // more nights than columns, or everything foretells everything

// Columns of mean 0 and length 1, so that their products are correlations.
Eigen::MatrixXd standardised(const std::vector<std::vector<double>>& columns) {
    Eigen::MatrixXd x(static_cast<Eigen::Index>(columns.front().size()), static_cast<Eigen::Index>(columns.size()));
    for (std::size_t j = 0; j < columns.size(); ++j)
        x.col(static_cast<Eigen::Index>(j)) =
            Eigen::Map<const Eigen::VectorXd>(columns[j].data(), static_cast<Eigen::Index>(columns[j].size()));
    x.rowwise() -= Eigen::RowVectorXd{x.colwise().mean()};
    return x;
}

class Joined {
public:
    explicit Joined(std::size_t count) : parent_(count) { std::iota(parent_.begin(), parent_.end(), 0); }
    std::size_t root(std::size_t i) const {
        while (parent_[i] != i)
            i = parent_[i];
        return i;
    }
    void join(std::size_t a, std::size_t b) { parent_[std::max(root(a), root(b))] = std::min(root(a), root(b)); }

private:
    std::vector<std::size_t> parent_;
};

void joinForetold(const Eigen::MatrixXd& correlation, Eigen::Index nights, Joined& joined) {
    const Eigen::Index count = correlation.rows();
    if (nights < count + nightsToSpare)
        return;
    const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver{correlation};
    for (Eigen::Index k = 0; k < count && solver.eigenvalues()(k) < hardlyVaries; ++k) {
        std::vector<std::size_t> parts;
        double inflation = 0;
        for (Eigen::Index j = 0; j < count; ++j) {
            const double part = solver.eigenvectors()(j, k);
            inflation = std::max(inflation, part * part / std::max(solver.eigenvalues()(k), 1e-12));
            if (std::abs(part) > takesPart)
                parts.push_back(static_cast<std::size_t>(j));
        }
        if (inflation < inflated)
            continue;
        for (const std::size_t part : parts)
            joined.join(parts.front(), part);
    }
}

} // namespace

std::vector<TogetherGroup> entangledColumns(const std::vector<std::vector<double>>& columns) {
    if (columns.size() < 2 || columns.front().size() < 3)
        return {};
    Eigen::MatrixXd x = standardised(columns);
    const Eigen::RowVectorXd spread = x.colwise().norm() / std::sqrt(static_cast<double>(x.rows() - 1));
    x.colwise().normalize();
    const Eigen::MatrixXd correlation = x.transpose() * x;
    Joined joined{columns.size()};
    for (std::size_t a = 0; a < columns.size(); ++a)
        for (std::size_t b = a + 1; b < columns.size(); ++b)
            if (std::abs(correlation(static_cast<Eigen::Index>(a), static_cast<Eigen::Index>(b))) >= together)
                joined.join(a, b);
    joinForetold(correlation, x.rows(), joined);

    std::vector<TogetherGroup> groups;
    for (std::size_t first = 0; first < columns.size(); ++first) {
        TogetherGroup group;
        for (std::size_t j = first; j < columns.size(); ++j)
            if (joined.root(j) == first)
                group.columns.push_back(j);
        if (group.columns.size() < 2)
            continue;
        const auto count = static_cast<Eigen::Index>(group.columns.size());
        Eigen::MatrixXd inside(count, count);
        for (Eigen::Index a = 0; a < count; ++a)
            for (Eigen::Index b = 0; b < count; ++b)
                inside(a, b) = correlation(static_cast<Eigen::Index>(group.columns[static_cast<std::size_t>(a)]),
                                           static_cast<Eigen::Index>(group.columns[static_cast<std::size_t>(b)]));
        const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver{inside};
        const double scale = std::sqrt(std::max(solver.eigenvalues()(count - 1), 0.0));
        const Eigen::VectorXd main = solver.eigenvectors().col(count - 1);
        const double sign = main(0) < 0 ? -1 : 1;
        for (Eigen::Index a = 0; a < count; ++a)
            group.movement.push_back(sign * scale * main(a) *
                                     spread(static_cast<Eigen::Index>(group.columns[static_cast<std::size_t>(a)])));
        groups.push_back(std::move(group));
    }
    return groups;
}

} // namespace panside
