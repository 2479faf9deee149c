#pragma once
#include "core/journal/inside.h"

namespace panside {

// A shift's packed readings by time, a few blocks in memory at a time.
class ReadingStream {
public:
    ReadingStream(const Journal::Inside& inside, ShiftId shift);
    bool next();
    FactId id() const { return sample().id; }
    Instant at() const { return sample().at; }
    Series series() const { return unpacked_.channels[sample().channel].series; }
    // Good until the next call of next() or fact().
    const Fact& fact();

private:
    const Sample& sample() const { return unpacked_.samples[position_]; }
    void load();
    const Journal::Inside& inside_;
    ShiftId shift_;
    struct Block {
        FactId first;
        Instant earliest;
    };
    std::vector<Block> blocks_; // by their earliest reading
    std::size_t block_ = 0, position_ = 0;
    bool begun_ = false;
    Unpacked unpacked_;
    std::vector<Fact> facts_; // one a channel, to be handed out with another time and value
};

// One block, checked; throws damaged.
std::string blockData(const Journal::Inside& inside, ShiftId shift, FactId first);

} // namespace panside
