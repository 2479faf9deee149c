#include "core/journal/reading_stream.h"

#include "core/boil/shift_log.h"

#include <algorithm>
#include <tuple>

namespace panside {
namespace {

[[noreturn]] void throwDamaged(const Journal::Inside& inside, ShiftId shift) {
    throw JournalError{JournalTrouble::damaged, inside.place, readingsOf(textOf(shift))};
}

} // namespace

std::string blockData(const Journal::Inside& inside, ShiftId shift, FactId first) {
    SQLite::Statement query{*inside.db, "SELECT data, sum FROM block WHERE shift=? AND first=?"};
    SQLite::bind(query, microsOf(shift), first);
    if (!query.executeStep())
        throwDamaged(inside, shift);
    std::string data = query.getColumn(0).getString();
    if (sumOf(shift, first, data) != query.getColumn(1).getInt64())
        throwDamaged(inside, shift);
    return data;
}

ReadingStream::ReadingStream(const Journal::Inside& inside, ShiftId shift) : inside_{inside}, shift_{shift} {
    SQLite::Statement query{*inside.db, "SELECT first, earliest FROM block WHERE shift=? ORDER BY earliest, first"};
    query.bind(1, microsOf(shift));
    while (query.executeStep())
        blocks_.push_back({query.getColumn(0).getInt64(), instantOf(query.getColumn(1).getInt64())});
}

void ReadingStream::load() {
    unpacked_.samples.erase(unpacked_.samples.begin(),
                            unpacked_.samples.begin() + static_cast<std::ptrdiff_t>(position_));
    position_ = 0;
    if (!unpack(blockData(inside_, shift_, blocks_[block_].first), unpacked_))
        throwDamaged(inside_, shift_);
    ++block_;
    const auto before = [](const Sample& a, const Sample& b) { return std::tie(a.at, a.id) < std::tie(b.at, b.id); };
    if (!std::ranges::is_sorted(unpacked_.samples, before))
        std::ranges::sort(unpacked_.samples, before);
}

bool ReadingStream::next() {
    if (begun_)
        ++position_;
    begun_ = true;
    // A later block may hold what belongs before the next sample here, or beside it with a lower number.
    while (block_ < blocks_.size() &&
           (position_ == unpacked_.samples.size() || unpacked_.samples[position_].at >= blocks_[block_].earliest))
        load();
    return position_ < unpacked_.samples.size();
}

const Fact& ReadingStream::fact() {
    while (facts_.size() < unpacked_.channels.size()) {
        const Channel& channel = unpacked_.channels[facts_.size()];
        facts_.push_back(Fact{{}, Reading{channel.series, 0, channel.unit, channel.probe}});
    }
    Fact& fact = facts_[sample().channel];
    fact.at = sample().at;
    std::get<Reading>(fact.what).si = sample().si;
    return fact;
}

} // namespace panside
