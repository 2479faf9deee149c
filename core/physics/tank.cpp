#include "core/physics/tank.h"

#include "core/physics/range.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace panside {
namespace {

constexpr double largest = 20; // m

bool sound(Length length) { return length.metre() > 0 && length.metre() <= largest; }

bool sound(const UprightTank& tank) { return sound(tank.diameter) && sound(tank.height); }
bool sound(const LyingTank& tank) { return sound(tank.diameter) && sound(tank.length); }
bool sound(const BoxTank& tank) { return sound(tank.length) && sound(tank.width) && sound(tank.height); }
bool sound(const TankTable& tank) {
    if (tank.marks.size() < 2 || tank.marks.front().depth < Length{} || tank.marks.front().volume < Volume{} ||
        !sound(tank.marks.back().depth))
        return false;
    return std::adjacent_find(tank.marks.begin(), tank.marks.end(), [](const auto& low, const auto& high) {
               return !(low.depth < high.depth) || !(low.volume < high.volume);
           }) == tank.marks.end();
}

Length depthOf(const UprightTank& tank) { return tank.height; }
Length depthOf(const LyingTank& tank) { return tank.diameter; }
Length depthOf(const BoxTank& tank) { return tank.height; }
Length depthOf(const TankTable& tank) { return tank.marks.back().depth; }

Volume volumeAt(const UprightTank& tank, Length depth) {
    const double r = tank.diameter.metre() / 2;
    return Area::squareMetre(std::numbers::pi * r * r) * depth;
}
Volume volumeAt(const LyingTank& tank, Length depth) {
    const double r = tank.diameter.metre() / 2, h = std::clamp(depth.metre(), 0.0, 2 * r);
    const double segment =
        r * r * std::acos(std::clamp((r - h) / r, -1.0, 1.0)) - (r - h) * std::sqrt(std::max(2 * r * h - h * h, 0.0));
    return Area::squareMetre(segment) * tank.length;
}
Volume volumeAt(const BoxTank& tank, Length depth) {
    return Area::squareMetre(tank.length.metre() * tank.width.metre()) * depth;
}
Volume volumeAt(const TankTable& tank, Length depth) {
    TankTable::Mark low{};
    for (const auto& high : tank.marks) {
        if (depth <= high.depth)
            return high.depth > low.depth
                       ? low.volume + (high.volume - low.volume) * ((depth - low.depth) / (high.depth - low.depth))
                       : high.volume;
        low = high;
    }
    return low.volume;
}

} // namespace

bool isTank(const TankShape& shape) {
    return std::visit([](const auto& tank) { return sound(tank); }, shape);
}

std::optional<Length> tankDepth(const TankShape& shape) {
    if (!isTank(shape))
        return std::nullopt;
    return std::visit([](const auto& tank) { return depthOf(tank); }, shape);
}

std::optional<Volume> tankVolume(const TankShape& shape, Length depth) {
    const auto deep = tankDepth(shape);
    if (!deep || !within(depth.metre(), 0, deep->metre()))
        return std::nullopt;
    return std::visit([&](const auto& tank) { return volumeAt(tank, std::clamp(depth, Length{}, *deep)); }, shape);
}

} // namespace panside
