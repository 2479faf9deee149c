#include "core/season/shrinkage.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <limits>

namespace panside {
namespace {

constexpr int gridPoints = 81;
constexpr double gridReach = 30; // the scatter is looked for from a 30th to 30 times its scale

Eigen::MatrixXd matrixOf(const std::vector<std::vector<double>>& rows, std::size_t columns) {
    Eigen::MatrixXd x(static_cast<Eigen::Index>(rows.size()), static_cast<Eigen::Index>(columns));
    for (Eigen::Index i = 0; i < x.rows(); ++i)
        for (Eigen::Index j = 0; j < x.cols(); ++j)
            x(i, j) = rows[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)];
    return x;
}

Eigen::Map<const Eigen::VectorXd> viewOf(std::span<const double> values) {
    return {values.data(), static_cast<Eigen::Index>(values.size())};
}

double belowNormal(double value, double mean, double sd) {
    if (sd <= 0)
        return value < mean ? 0 : 1;
    return 0.5 * std::erfc((mean - value) / (sd * std::sqrt(2.0)));
}

} // namespace

struct Shrinkage::Inside {
    struct Node { // what is believed if the scatter is this
        double scatter;
        double weight;
        Eigen::VectorXd mean;
        Eigen::MatrixXd covariance;
    };
    std::vector<Node> nodes;

    double meanOf(const Eigen::VectorXd& w) const {
        double sum = 0;
        for (const Node& node : nodes)
            sum += node.weight * node.mean.dot(w);
        return sum;
    }
};

Shrinkage::Shrinkage(const std::vector<std::vector<double>>& rows, const std::vector<double>& values,
                     const std::vector<double>& priorSd, double scatterScale) {
    Eigen::MatrixXd x = matrixOf(rows, priorSd.size());
    Eigen::VectorXd y = viewOf(values);
    // The level has a flat prior: taking the means away is exact, and costs one night's worth.
    x.rowwise() -= Eigen::RowVectorXd{x.colwise().mean()};
    y.array() -= y.mean();
    const Eigen::MatrixXd xx = x.transpose() * x;
    const Eigen::VectorXd xy = x.transpose() * y;
    const Eigen::VectorXd precision = viewOf(priorSd).array().square().inverse();
    const double freedom = static_cast<double>(values.size()) - 1;

    auto inside = std::make_shared<Inside>();
    double best = -std::numeric_limits<double>::infinity();
    for (int i = 0; i < gridPoints; ++i) {
        const double scatter = scatterScale * std::pow(gridReach, 2.0 * i / (gridPoints - 1) - 1);
        const double variance = scatter * scatter;
        Eigen::MatrixXd a = xx / variance;
        a.diagonal() += precision;
        const Eigen::LLT<Eigen::MatrixXd> factor{a};
        const Eigen::VectorXd mean = factor.solve(xy / variance);
        // The data's probability given the scatter, the effects integrated out.
        const double logDet =
            2 * Eigen::MatrixXd{factor.matrixL()}.diagonal().array().log().sum() - precision.array().log().sum();
        const double fit = (y.squaredNorm() - xy.dot(mean)) / variance;
        const double ratio = scatter / scatterScale;
        const double logPrior = std::log(ratio) - std::log1p(ratio * ratio); // on the grid's even logarithm
        const double logWeight = -freedom * std::log(scatter) - 0.5 * logDet - 0.5 * fit + logPrior;
        best = std::max(best, logWeight);
        inside->nodes.push_back(
            {scatter, logWeight, mean, factor.solve(Eigen::MatrixXd::Identity(a.rows(), a.cols()))});
    }
    for (auto& node : inside->nodes)
        node.weight = std::exp(node.weight - best);
    std::erase_if(inside->nodes, [](const auto& node) { return node.weight < 1e-7; });
    double sum = 0;
    for (const auto& node : inside->nodes)
        sum += node.weight;
    for (auto& node : inside->nodes)
        node.weight /= sum;
    inside_ = std::move(inside);
}

double Shrinkage::mean(std::span<const double> weights) const { return inside_->meanOf(viewOf(weights)); }

double Shrinkage::sd(std::span<const double> weights) const {
    const Eigen::VectorXd w = viewOf(weights);
    const double mean = inside_->meanOf(w);
    double variance = 0;
    for (const auto& node : inside_->nodes) {
        const double off = node.mean.dot(w) - mean;
        variance += node.weight * (w.dot(node.covariance * w) + off * off);
    }
    return std::sqrt(variance);
}

double Shrinkage::quantile(std::span<const double> weights, double p) const {
    const Eigen::VectorXd w = viewOf(weights);
    struct Part {
        double weight, mean, sd;
    };
    std::vector<Part> parts;
    double low = std::numeric_limits<double>::infinity(), high = -low;
    for (const auto& node : inside_->nodes) {
        const Part part{node.weight, node.mean.dot(w), std::sqrt(std::max(w.dot(node.covariance * w), 0.0))};
        low = std::min(low, part.mean - 9 * part.sd);
        high = std::max(high, part.mean + 9 * part.sd);
        parts.push_back(part);
    }
    for (int i = 0; i < 50 && low < high; ++i) {
        const double middle = 0.5 * (low + high);
        double below = 0;
        for (const Part& part : parts)
            below += part.weight * belowNormal(middle, part.mean, part.sd);
        (below < p ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

double Shrinkage::scatter() const {
    double sum = 0;
    for (const auto& node : inside_->nodes)
        sum += node.weight * node.scatter;
    return sum;
}

} // namespace panside
