#include "core/boil/facts.h"

#include <algorithm>

namespace panside {

std::uint32_t channelIndex(std::vector<Channel>& channels, const Reading& reading) {
    for (std::uint32_t i = 0; i < channels.size(); ++i)
        if (channels[i].series == reading.series && channels[i].unit == reading.unit &&
            channels[i].probe == reading.probe)
            return i;
    channels.push_back({reading.series, reading.unit, reading.probe});
    return static_cast<std::uint32_t>(channels.size()) - 1;
}

Facts::Facts(const std::vector<FactEntry>& entries) {
    reserve(entries.size());
    for (const FactEntry& entry : entries)
        add(entry.id, entry.fact);
}

std::size_t Facts::add(FactId id, Fact fact) {
    Row row{fact.at, id, 0, whole, 0};
    const auto* reading = std::get_if<Reading>(&fact.what);
    if (reading && fact.by.empty() && !fact.entered && fact.extra.empty()) {
        row.si = reading->si;
        row.channel = channelIndex(channels_, *reading);
    } else {
        row.index = static_cast<std::uint32_t>(whole_.size());
        whole_.push_back(std::move(fact));
    }
    std::size_t place = size();
    if (place > 0 && row.isBefore(rows_.back()))
        place = static_cast<std::size_t>(std::upper_bound(rows_.begin(), rows_.end(), row,
                                                          [](const Row& a, const Row& b) { return a.isBefore(b); }) -
                                         rows_.begin());
    rows_.insert(rows_.begin() + static_cast<std::ptrdiff_t>(place), row);
    return place;
}

void Facts::erase(std::size_t place) {
    if (rows_[place].channel == whole)
        whole_[rows_[place].index] = {};
    rows_.erase(rows_.begin() + static_cast<std::ptrdiff_t>(place));
}

std::size_t Facts::before(Instant at) const {
    return static_cast<std::size_t>(
        std::lower_bound(rows_.begin(), rows_.end(), at, [](const Row& row, Instant time) { return row.at < time; }) -
        rows_.begin());
}

std::size_t Facts::upTo(Instant at) const {
    return static_cast<std::size_t>(
        std::upper_bound(rows_.begin(), rows_.end(), at, [](Instant time, const Row& row) { return time < row.at; }) -
        rows_.begin());
}

std::optional<std::size_t> Facts::placeOf(FactId id) const {
    for (std::size_t place = size(); place-- > 0;)
        if (rows_[place].id == id)
            return place;
    return std::nullopt;
}

FactEntry Facts::operator[](std::size_t place) const {
    FactEntry entry{rows_[place].id, {}};
    if (const Fact& there = fact(place, entry.fact); &there != &entry.fact)
        entry.fact = there;
    return entry;
}

const Fact& Facts::fact(std::size_t place, Fact& scratch) const {
    const Row& row = rows_[place];
    if (row.channel == whole)
        return whole_[row.index];
    const Channel& channel = channels_[row.channel];
    scratch.at = row.at;
    if (auto* reading = std::get_if<Reading>(&scratch.what)) { // its text has room already
        reading->series = channel.series;
        reading->si = row.si;
        reading->unit = channel.unit;
        reading->probe = channel.probe;
    } else {
        scratch.what = Reading{channel.series, row.si, channel.unit, channel.probe};
    }
    return scratch;
}

} // namespace panside
