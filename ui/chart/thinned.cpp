#include "ui/chart/thinned.h"

#include <algorithm>

namespace panside {
namespace {

constexpr std::int64_t hundredth = 10'000; // microseconds in a hundredth of a second
constexpr std::int64_t longest = (std::int64_t{1} << 29) - 1;

std::int64_t floorDivide(std::int64_t a, std::int64_t b) { return a / b - (a % b < 0 ? 1 : 0); }

} // namespace

void Thinned::add(const Sample& sample) {
    if (packed_.empty())
        begin_ = sample.at;
    const std::int64_t when = (sample.at - begin_).count() / hundredth;
    if (when < 0 || when > longest || (!packed_.empty() && when < static_cast<std::int64_t>(packed_.back().when >> 3)))
        return;
    const auto flags = static_cast<std::uint32_t>(sample.trust) | (sample.gapBefore ? 4U : 0U);
    packed_.push_back({static_cast<std::uint32_t>(when) << 3 | flags, sample.value});
    thin(sample);
}

void Thinned::clear() {
    packed_.clear();
    columns_.clear();
}

void Thinned::setColumn(std::chrono::microseconds span) {
    if (span == span_ || span.count() <= 0)
        return;
    span_ = span;
    columns_.clear();
    for (std::size_t i = 0; i < packed_.size(); ++i)
        thin(sample(i));
}

void Thinned::thin(const Sample& sample) {
    const std::int64_t index = floorDivide(sample.at.time_since_epoch().count(), span_.count());
    if (columns_.empty() || columns_.back().index != index) {
        columns_.push_back(
            {index, sample.value, sample.value, sample.value, sample.value, sample.trust, sample.gapBefore});
        return;
    }
    Column& column = columns_.back();
    column.last = sample.value;
    column.least = std::min(column.least, sample.value);
    column.greatest = std::max(column.greatest, sample.value);
    column.trust = std::max(column.trust, sample.trust);
}

Thinned::Sample Thinned::sample(std::size_t index) const {
    const Packed& packed = packed_[index];
    return {begin_ + std::chrono::microseconds{static_cast<std::int64_t>(packed.when >> 3) * hundredth}, packed.value,
            static_cast<Trust>(packed.when & 3U), (packed.when & 4U) != 0};
}

Thinned::Sample Thinned::nearest(Instant at) const {
    const std::int64_t when = (at - begin_).count() / hundredth;
    const auto after = std::partition_point(packed_.begin(), packed_.end(), [&](const Packed& packed) {
        return static_cast<std::int64_t>(packed.when >> 3) < when;
    });
    if (after == packed_.begin())
        return sample(0);
    const auto before = after - 1;
    const bool laterIsNearer = after != packed_.end() && static_cast<std::int64_t>(after->when >> 3) - when <
                                                             when - static_cast<std::int64_t>(before->when >> 3);
    return sample(static_cast<std::size_t>((laterIsNearer ? after : before) - packed_.begin()));
}

} // namespace panside
