#include "core/probe/modbus_map.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <tuple>

namespace panside {
namespace {

constexpr int mostRegisters = 125; // Modbus Application Protocol Specification V1.1b3, 6.3 and 6.4

double raw(const RegisterPlace& place, std::span<const std::uint16_t> words) {
    if (place.type == RegisterType::int16)
        return static_cast<std::int16_t>(words[0]);
    if (place.type == RegisterType::uint16)
        return words[0];
    const auto high = place.order == WordOrder::big ? words[0] : words[1];
    const auto low = place.order == WordOrder::big ? words[1] : words[0];
    const auto both = static_cast<std::uint32_t>(high) << 16 | low;
    if (place.type == RegisterType::int32)
        return static_cast<std::int32_t>(both);
    if (place.type == RegisterType::uint32)
        return both;
    return std::bit_cast<float>(both);
}

// 1034 tenths are 103.4, not 103.40000000000001: a scale that is one part of a whole number divides.
double scaled(double number, double scale) {
    const double parts = 1 / scale;
    const double whole = std::round(parts);
    return std::abs(whole) > 1 && std::abs(parts - whole) < 1e-9 * std::abs(whole) ? number / whole : number * scale;
}

} // namespace

std::vector<RegisterRead> requestsFor(const std::vector<FieldRule>& fields) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < fields.size(); ++i)
        if (fields[i].place)
            order.push_back(i);
    std::ranges::stable_sort(order, {}, [&](std::size_t i) {
        const auto& place = *fields[i].place;
        return std::tuple{place.slave, place.function, place.address};
    });
    std::vector<RegisterRead> reads;
    for (const auto i : order) {
        const auto& place = *fields[i].place;
        const int end = place.address + registersIn(place.type);
        if (!reads.empty()) {
            auto& last = reads.back();
            const bool follows = last.slave == place.slave && last.function == place.function &&
                                 place.address <= last.first + last.count && end - last.first <= mostRegisters;
            if (follows) {
                last.count = std::max(last.count, end - last.first);
                last.rules.push_back(i);
                continue;
            }
        }
        reads.push_back({place.slave, place.function, place.address, end - place.address, {i}});
    }
    return reads;
}

std::optional<double> numberAt(const RegisterPlace& place, const RegisterRead& read,
                               std::span<const std::uint16_t> registers) {
    const int from = place.address - read.first, size = registersIn(place.type);
    if (from < 0 || from + size > static_cast<int>(registers.size()))
        return std::nullopt;
    const double number = scaled(
        raw(place, registers.subspan(static_cast<std::size_t>(from), static_cast<std::size_t>(size))), place.scale);
    return std::isfinite(number) ? std::optional{number} : std::nullopt;
}

} // namespace panside
