#include "core/boil/stack_trace.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// Signature of a loading (common practice, no source): the door stands open for 10 to 90 s and lets a fifth to a half
// of cold air into the stack; the charge has caught within five minutes.
constexpr std::size_t toCatch = 60, fallsWithin = 9, beforeIt = 15;
constexpr double leastDip = 0.07;   // of the level before
constexpr double leastSurge = 0.06; // of the level before, above where the old fire would have gone
// A fire in coals falls ever more slowly: of the slope before the door the mean of the next minutes keeps about half.
constexpr double slopeKept = 0.5;

// Flue gas reaches the probe, and warms its sheath, some 25 s late (sheathed thermocouples in moving gas: 10 to 40 s,
// from memory of makers' tables). The heat that the pans take from gas grows faster than its temperature, since it
// radiates (between the first and the fourth power; from memory of furnace practice).
constexpr double lag = 25, radiates = 4.0 / 3;

// Door and drying are over by then: what sinks sooner is the dip itself.
constexpr std::size_t dryingSteps = 26;

struct HeatLine {
    double level, slope; // at the end; a step
};
HeatLine lineThrough(const std::vector<double>& x, std::size_t from, std::size_t to) {
    const auto n = static_cast<double>(to - from);
    double mean = 0, sxy = 0, sxx = 0;
    for (std::size_t i = from; i < to; ++i)
        mean += x[i] / n;
    const double middle = (n - 1) / 2;
    for (std::size_t i = from; i < to; ++i) {
        const double t = static_cast<double>(i - from) - middle;
        sxy += t * (x[i] - mean);
        sxx += t * t;
    }
    const double slope = sxx > 0 ? sxy / sxx : 0;
    return {mean + slope * (n - 1 - middle), slope};
}

// The fire's heat behind a stack reading, in some unit of its own.
std::vector<double> heatBehind(const std::vector<double>& stack, double step) {
    const auto n = static_cast<std::ptrdiff_t>(stack.size());
    const auto smooth = [&](std::ptrdiff_t i) {
        const auto a = std::clamp<std::ptrdiff_t>(i - 1, 0, n - 1), b = std::clamp<std::ptrdiff_t>(i + 1, 0, n - 1);
        return (stack[static_cast<std::size_t>(a)] + stack[static_cast<std::size_t>(i)] +
                stack[static_cast<std::size_t>(b)]) /
               3;
    };
    std::vector<double> heat;
    heat.reserve(stack.size());
    for (std::ptrdiff_t i = 0; i < n; ++i) {
        const auto a = std::max<std::ptrdiff_t>(i - 2, 0), b = std::min<std::ptrdiff_t>(i + 2, n - 1);
        const double rate = b > a ? (smooth(b) - smooth(a)) / (step * static_cast<double>(b - a)) : 0;
        heat.push_back(std::pow(std::max(smooth(i) + lag * rate, 1.0), radiates));
    }
    return heat;
}

// The first place after the top at which it is down to its own mean since the begin.
std::optional<std::size_t> sunk(const std::vector<double>& heat, double& mean) {
    const auto top = static_cast<std::size_t>(std::max_element(heat.begin(), heat.end()) - heat.begin());
    double sum = 0;
    for (std::size_t i = 0; i < heat.size(); ++i) {
        sum += heat[i];
        mean = sum / static_cast<double>(i + 1);
        if (i > top && i >= dryingSteps && heat[i] <= mean)
            return i;
    }
    return std::nullopt;
}

// Loaded before it sagged: how many steps more, were it to fall on as in the last two minutes.
std::optional<double> fallsOn(const std::vector<double>& heat, double mean) {
    const std::size_t tail = std::min<std::size_t>(24, heat.size() / 3);
    if (tail < 6)
        return std::nullopt;
    const HeatLine line = lineThrough(heat, heat.size() - tail, heat.size());
    if (line.slope >= 0)
        return std::nullopt;
    double value = line.level, sum = mean * static_cast<double>(heat.size());
    for (std::size_t more = 1; more <= heat.size() / 2; ++more) {
        value *= 1 + line.slope / line.level;
        sum += value;
        if (value <= sum / static_cast<double>(heat.size() + more))
            return static_cast<double>(more);
    }
    return static_cast<double>(heat.size()) / 2;
}

} // namespace

std::int64_t StackTrace::indexOf(Instant at) {
    return at.time_since_epoch().count() / (static_cast<std::int64_t>(step.count()) * 1'000'000);
}

bool StackTrace::addSample(Instant at, Temperature stack) {
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

std::vector<double> StackTrace::between(std::int64_t first, std::int64_t last) const {
    const auto reach = static_cast<std::int64_t>(bridged / step);
    std::int64_t before = first;
    while (before > first - reach && !at(before))
        --before;
    auto left = at(before);
    if (!left)
        return {};
    std::vector<double> trace;
    trace.reserve(static_cast<std::size_t>(last - first + 1));
    for (std::int64_t i = before + 1; i <= last || (i <= newest_ && i - before <= reach && before < last); ++i) {
        const auto right = at(i);
        if (!right)
            continue;
        if (i - before > reach)
            return {};
        for (std::int64_t k = std::max(before, first); k < i && k <= last; ++k)
            trace.push_back(*left +
                            (*right - *left) * static_cast<double>(k - before) / static_cast<double>(i - before));
        before = i;
        left = right;
    }
    if (before < last - reach)
        return {};
    while (static_cast<std::int64_t>(trace.size()) < last - first + 1)
        trace.push_back(*left);
    for (std::size_t i = 1; i + 1 < trace.size(); ++i) // a spike is one step long
        trace[i] = std::clamp(trace[i], std::min(trace[i - 1], trace[i + 1]), std::max(trace[i - 1], trace[i + 1]));
    return trace;
}

std::optional<Instant> StackTrace::loading(Instant now, Instant after) const {
    // The newest step is still filling: end at the one before it.
    const std::int64_t end = std::min(newest_, indexOf(now)) - 1;
    const std::int64_t first = end - static_cast<std::int64_t>(toCatch + fallsWithin + beforeIt) + 1;
    const auto trace = between(first, end);
    if (trace.empty())
        return std::nullopt;
    const double current = (trace[trace.size() - 1] + trace[trace.size() - 2]) / 2;
    const auto earliest = static_cast<std::size_t>(std::max(std::int64_t{beforeIt}, indexOf(after) - first));
    // The steepest fall is the door.
    std::size_t door = 0;
    double deepest = 0;
    for (std::size_t i = earliest; i + fallsWithin + 4 < trace.size(); ++i) {
        const auto from = trace.begin() + static_cast<std::ptrdiff_t>(i);
        const double fall = *from - *std::min_element(from, from + fallsWithin + 1);
        if (fall > deepest * 1.02) {
            deepest = fall;
            door = i;
        }
    }
    if (door == 0 || trace[door] <= 0 || deepest < leastDip * trace[door])
        return std::nullopt;
    const HeatLine before = lineThrough(trace, door - beforeIt + 1, door + 1);
    const auto since = static_cast<double>(trace.size() - 1 - door);
    // Where it would stand by now with nothing put in. Still climbing from an earlier load: it climbs on a while.
    const double gone = before.slope < 0 ? before.slope * slopeKept * since
                                         : before.slope * std::min(since, static_cast<double>(toCatch) / 2);
    const double alone = std::max(before.level + gone, 0.5 * before.level);
    if (current < alone + leastSurge * before.level || current < 0.9 * before.level)
        return std::nullopt;
    return Instant{std::chrono::microseconds{(first + static_cast<std::int64_t>(door)) *
                                             static_cast<std::int64_t>(step.count()) * 1'000'000}};
}

std::optional<StackTrace::Sag> StackTrace::sag(Instant from, Instant to) const {
    const std::int64_t first = indexOf(from), last = indexOf(to) - 1;
    if (last - first < 24 || last - first > kept - 10)
        return std::nullopt;
    const auto trace = between(first, last);
    if (trace.empty())
        return std::nullopt;
    const auto heat = heatBehind(trace, seconds(step));
    double mean = 0, meanStack = 0;
    const auto down = sunk(heat, mean);
    if (down) {
        const auto stackDown = sunk(trace, meanStack);
        return Sag{step * static_cast<double>(*down), step * static_cast<double>(stackDown.value_or(trace.size())),
                   true};
    }
    const auto more = fallsOn(heat, mean);
    if (!more)
        return std::nullopt;
    const Duration then = step * (static_cast<double>(heat.size()) + *more);
    return Sag{then, then + Duration{lag}, false};
}

std::optional<bool> StackTrace::burnsHigh(Instant from, Instant now) const {
    const std::int64_t first = indexOf(from), last = std::min(newest_, indexOf(now) - 1);
    if (last - first < 24 || last - first > kept - 10 ||
        last < indexOf(now) - static_cast<std::int64_t>(bridged / step))
        return std::nullopt;
    const auto trace = between(first, last);
    if (trace.empty())
        return std::nullopt;
    double mean = 0;
    return !sunk(heatBehind(trace, seconds(step)), mean);
}

} // namespace panside
