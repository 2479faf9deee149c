#include "core/physics/pack.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace panside {

std::optional<Containers> containersFrom(Volume volume, std::span<const Volume> sizes) {
    const auto fits = [](Volume size) { return size.si() > 0; };
    if (sizes.empty() || !std::ranges::all_of(sizes, fits) || !(volume.si() >= 0 && volume.si() <= 1e6))
        return std::nullopt;
    std::vector<std::size_t> order(sizes.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) { return sizes[a] > sizes[b]; });
    Containers found{std::vector<long long>(sizes.size()), volume};
    for (const std::size_t i : order) {
        // A gallon in quarts is four, whatever the last bit says.
        constexpr double hair = 1e-9;
        const double count = std::floor(found.left / sizes[i] + hair);
        found.counts[i] = static_cast<long long>(count);
        found.left = std::max(Volume{}, found.left - sizes[i] * count);
    }
    return found;
}

std::optional<double> lightThrough(std::span<const LitPart> parts) {
    double absorbed = 0, volume = 0;
    for (const LitPart& part : parts) {
        if (!(part.light > 0 && part.light <= 1) || !(part.volume.si() >= 0))
            return std::nullopt;
        absorbed -= std::log10(part.light) * part.volume.si();
        volume += part.volume.si();
    }
    if (!(volume > 0))
        return std::nullopt;
    return std::pow(10, -absorbed / volume);
}

std::string_view colourClass(double light) {
    if (light >= 0.75)
        return "golden";
    if (light >= 0.50)
        return "amber";
    return light >= 0.25 ? "dark" : "very dark";
}

} // namespace panside
