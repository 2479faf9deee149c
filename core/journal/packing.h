#pragma once
// Readings packed: a block of samples in the order they came, delta-coded a channel, 1.2 to 1.6 bytes a reading for
// what probes give. Numbers are kept as they were written (a decimal number of the unit), or where they have no short
// decimal form as the whole double: what comes out is the same double that went in.
//
// What can be foretold takes no room: the next channel, the step in time and the next id are predicted from the samples
// before, and only the exceptions are written.
//
//   block = version, count, channels, first time, first id, exceptions (channel, time, id), values
//
// The layout is kept on disk: never change it; a new one gets a new version number.
#include "core/boil/facts.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace panside {

struct Sample {
    FactId id;
    Instant at;
    double si;
    std::uint32_t channel; // index into the channels
};

// `samples` must not be empty; their channels are indexes into `channels`.
std::string packed(const std::vector<Channel>& channels, const std::vector<Sample>& samples);

struct Unpacked {
    std::vector<Channel> channels;
    std::vector<Sample> samples;
};
// Appends the block's samples to `into`. False if these bytes are no block: then `into` is left as it was.
bool unpack(std::string_view bytes, Unpacked& into);

} // namespace panside
