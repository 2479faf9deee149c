#include "core/boil/stack_trace.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace panside {
namespace {

// Signature of a loading, common practice and the rehearsal's plants, no source: the door stands open for 15 to 90 s
// and the charge has caught within four minutes.
constexpr int stepsToCatch = 48;
constexpr int stepsOfDoor = 18;
constexpr double leastSurge = 0.04; // of the level before it
constexpr double leastDip = 0.05;

double mean(const std::vector<double>& values, std::size_t from, std::size_t to) {
    double sum = 0;
    for (std::size_t i = from; i < to; ++i)
        sum += values[i];
    return sum / static_cast<double>(to - from);
}

} // namespace

std::int64_t StackTrace::indexOf(Instant at) {
    return at.time_since_epoch().count() / (static_cast<std::int64_t>(step.count()) * 1'000'000);
}

bool StackTrace::take(Instant at, Temperature stack) {
    const std::int64_t index = indexOf(at);
    const bool begins = index > newest_;
    if (begins) {
        const std::int64_t fresh = std::max(newest_ + 1, index - kept + 1);
        for (std::int64_t i = fresh; i <= index; ++i)
            samples_[static_cast<std::size_t>(i % kept)] = 0;
        newest_ = index;
    }
    const auto slot = static_cast<std::size_t>(index % kept);
    if (index <= newest_ - kept || samples_[slot] == 255)
        return false;
    const float n = ++samples_[slot];
    mean_[slot] = n == 1 ? static_cast<float>(stack.celsius())
                         : mean_[slot] + (static_cast<float>(stack.celsius()) - mean_[slot]) / n;
    return begins;
}

std::optional<double> StackTrace::at(std::int64_t index) const {
    if (index < 0 || index > newest_ || index <= newest_ - kept)
        return std::nullopt;
    const auto slot = static_cast<std::size_t>(index % kept);
    return samples_[slot] ? std::optional<double>{mean_[slot]} : std::nullopt;
}

std::optional<Instant> StackTrace::loading(Instant now) const {
    // The newest step is still filling: end at the one before it.
    const std::int64_t end = std::min(newest_, indexOf(now)) - 1;
    const int span = stepsToCatch + 2 * stepsOfDoor;
    std::vector<double> trace;
    trace.reserve(span);
    for (std::int64_t i = end - span + 1; i <= end; ++i) {
        const auto value = at(i);
        if (!value)
            return std::nullopt;
        trace.push_back(*value);
    }
    // The bottom of the dip lies where the charge can have caught since.
    const std::size_t first = 2 * stepsOfDoor;
    const auto lowest = std::min_element(trace.begin() + static_cast<std::ptrdiff_t>(first), trace.end() - 2);
    const auto bottom = static_cast<std::size_t>(lowest - trace.begin());
    const double before = mean(trace, bottom - 2 * stepsOfDoor, bottom - stepsOfDoor);
    const double current = mean(trace, trace.size() - 2, trace.size());
    // The top just before the door opened; if that is the bottom itself nothing dipped.
    const auto top = static_cast<std::size_t>(
        std::max_element(trace.begin() + static_cast<std::ptrdiff_t>(bottom - stepsOfDoor), lowest) - trace.begin());
    const double level = std::max(before, trace[top]);
    if (level <= 0 || trace[bottom] > level * (1 - leastDip) || current < level * (1 + leastSurge))
        return std::nullopt;
    // Already climbing before the dip: the door was opened while an earlier load was still catching.
    if (trace[top] > before * (1 + leastSurge) && top > bottom - 3)
        return std::nullopt;
    // The door opened where the fall began.
    std::size_t opened = bottom;
    while (opened > top && trace[opened - 1] < trace[top] - 0.15 * (trace[top] - trace[bottom]))
        --opened;
    const std::int64_t index = end - span + 1 + static_cast<std::int64_t>(opened);
    return Instant{std::chrono::microseconds{index * static_cast<std::int64_t>(step.count()) * 1'000'000}};
}

std::optional<Duration> StackTrace::sag(Instant from, Instant to) const {
    const std::int64_t first = indexOf(from), last = indexOf(to) - 1;
    if (last - first < 12 || last - first > kept - 4)
        return std::nullopt;
    std::vector<double> trace;
    double carried = 0;
    int missing = 0;
    for (std::int64_t i = first; i <= last; ++i) {
        if (const auto value = at(i))
            carried = *value;
        else
            ++missing;
        trace.push_back(carried);
    }
    if (missing * 5 > static_cast<int>(trace.size()))
        return std::nullopt;
    const auto peak = static_cast<std::size_t>(std::max_element(trace.begin(), trace.end()) - trace.begin());
    double sum = 0;
    for (std::size_t i = 0; i < trace.size(); ++i) {
        sum += trace[i];
        const double soFar = sum / static_cast<double>(i + 1);
        if (i > peak && trace[i] <= soFar)
            return step * static_cast<double>(i);
    }
    // Loaded before it sagged: follow the fall of the last minute and a half, no further than half as long again.
    const std::size_t tail = std::min<std::size_t>(18, trace.size() - peak);
    const double length = seconds(step) * static_cast<double>(trace.size());
    if (tail < 4)
        return Duration{1.5 * length};
    const double fall = (trace[trace.size() - tail] - trace.back()) / (seconds(step) * static_cast<double>(tail - 1));
    const double above = trace.back() - sum / static_cast<double>(trace.size());
    const double more = fall > 0 ? above / fall : length;
    return Duration{length + std::min(more, 0.5 * length)};
}

} // namespace panside
