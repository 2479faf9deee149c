#include "core/journal/packing.h"

#include "core/quantity/conversion.h"

#include <array>
#include <bit>
#include <cmath>
#include <cstring>
#include <limits>

namespace panside {
namespace {

constexpr std::uint8_t blockVersion = 1;
constexpr int finestScale = 9;
constexpr std::array<double, finestScale + 1> powersOfTen{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};
constexpr double largestExact = 9007199254740992.0; // 2^53

constexpr std::uint64_t zigzag(std::int64_t n) {
    return (static_cast<std::uint64_t>(n) << 1) ^ static_cast<std::uint64_t>(n >> 63);
}
constexpr std::int64_t unzigzag(std::uint64_t n) {
    return static_cast<std::int64_t>(n >> 1) ^ -static_cast<std::int64_t>(n & 1);
}

// Damaged bytes may hold any step: a sum that leaves the range wraps instead of being undefined.
constexpr void step(std::int64_t& n, std::int64_t by) {
    n = static_cast<std::int64_t>(static_cast<std::uint64_t>(n) + static_cast<std::uint64_t>(by));
}
constexpr Instant instantAt(std::int64_t ticks, std::int64_t tick) {
    return Instant{std::chrono::microseconds{
        static_cast<std::int64_t>(static_cast<std::uint64_t>(ticks) * static_cast<std::uint64_t>(tick))}};
}

void putNumber(std::string& out, std::uint64_t n) {
    while (n >= 0x80) {
        out.push_back(static_cast<char>(n | 0x80));
        n >>= 7;
    }
    out.push_back(static_cast<char>(n));
}

// Reads what putNumber wrote. Past the end it gives zeros and is `broken`.
class Bytes {
public:
    Bytes() = default;
    explicit Bytes(std::string_view bytes) : at_{bytes.data()}, end_{bytes.data() + bytes.size()} {}

    std::uint64_t number() {
        if (at_ < end_ && static_cast<unsigned char>(*at_) < 0x80)
            return static_cast<unsigned char>(*at_++);
        return longNumber();
    }
    std::uint64_t fixed() {
        const auto bytes = next(8);
        std::uint64_t word = 0;
        if (!broken_)
            std::memcpy(&word, bytes.data(), 8);
        return word;
    }
    std::string_view next(std::uint64_t count) {
        if (count > static_cast<std::uint64_t>(end_ - at_)) {
            broken_ = true;
            at_ = end_;
            return {};
        }
        const std::string_view bytes{at_, count};
        at_ += count;
        return bytes;
    }
    bool empty() const { return at_ == end_; }
    bool broken() const { return broken_; }

private:
    std::uint64_t longNumber() {
        std::uint64_t n = 0;
        for (int shift = 0; shift < 64; shift += 7) {
            if (at_ == end_)
                break;
            const auto byte = static_cast<unsigned char>(*at_++);
            n |= static_cast<std::uint64_t>(byte & 0x7f) << shift;
            if (byte < 0x80)
                return n;
        }
        broken_ = true;
        return 0;
    }
    const char* at_ = nullptr;
    const char* end_ = nullptr;
    bool broken_ = false;
};

// A stream of exceptions: how many predictions came true, then what stood there instead.
class ExceptionsOut {
public:
    void hit() { ++run_; }
    void miss(std::uint64_t what) {
        putNumber(bytes_, run_);
        putNumber(bytes_, what);
        run_ = 0;
    }
    const std::string& bytes() const { return bytes_; }

private:
    std::uint64_t run_ = 0;
    std::string bytes_;
};

class ExceptionsIn {
public:
    explicit ExceptionsIn(std::string_view bytes) : bytes_{bytes} { next(); }
    bool miss() { return run_-- == 0; }
    std::uint64_t what() {
        const auto what = bytes_.number();
        next();
        return what;
    }
    bool broken() const { return bytes_.broken(); }

private:
    void next() { run_ = bytes_.empty() ? std::numeric_limits<std::uint64_t>::max() : bytes_.number(); }
    Bytes bytes_;
    std::uint64_t run_ = 0;
};

// The decimal number of `unit` at this scale that is exactly this SI value, if there is one.
std::optional<std::int64_t> decimalOf(double si, Unit unit, int scale) {
    const double whole = std::nearbyint(fromSi(si, unit) * powersOfTen[scale]);
    if (!(std::fabs(whole) < largestExact) || toSi(whole / powersOfTen[scale], unit) != si)
        return std::nullopt;
    return static_cast<std::int64_t>(whole);
}

std::vector<int> scalesOf(const std::vector<Channel>& channels, const std::vector<Sample>& samples) {
    std::vector<int> scales(channels.size(), 0);
    for (const Sample& sample : samples) {
        int& scale = scales[sample.channel];
        for (int finer = scale; finer <= finestScale; ++finer) {
            if (decimalOf(sample.si, channels[sample.channel].unit, finer)) {
                scale = finer;
                break;
            }
        }
    }
    return scales;
}

// Times are kept in seconds or milliseconds where all of a block fall on them.
std::int64_t tickOf(const std::vector<Sample>& samples) {
    std::int64_t tick = 1'000'000;
    for (const Sample& sample : samples)
        while (tick > 1 && sample.at.time_since_epoch().count() % tick != 0)
            tick /= 1000;
    return tick;
}

struct Header {
    std::uint64_t count = 0;
    std::vector<Channel> channels;
    std::vector<int> scales;
    std::int64_t tick = 1, firstTime = 0, firstId = 0;
};

void put(std::string& out, const Header& header) {
    out.push_back(static_cast<char>(blockVersion));
    putNumber(out, header.count);
    putNumber(out, header.channels.size());
    for (std::size_t i = 0; i < header.channels.size(); ++i) {
        const Channel& channel = header.channels[i];
        putNumber(out, static_cast<std::uint64_t>(channel.series));
        putNumber(out, static_cast<std::uint64_t>(channel.unit));
        putNumber(out, static_cast<std::uint64_t>(header.scales[i]));
        putNumber(out, channel.probe.size());
        out += channel.probe;
    }
    putNumber(out, static_cast<std::uint64_t>(header.tick));
    putNumber(out, zigzag(header.firstTime));
    putNumber(out, zigzag(header.firstId));
}

std::optional<Header> headerIn(Bytes& bytes) {
    if (bytes.next(1) != std::string_view{"\x01", 1})
        return std::nullopt;
    Header header;
    header.count = bytes.number();
    const auto channels = bytes.number();
    if (channels == 0 || channels > header.count)
        return std::nullopt;
    for (std::uint64_t i = 0; i < channels && !bytes.broken(); ++i) {
        const auto series = bytes.number();
        const auto unit = bytes.number();
        const auto scale = bytes.number();
        const auto probe = bytes.next(bytes.number());
        if (series >= seriesCount || unit >= unitCount || scale > finestScale)
            return std::nullopt;
        header.channels.push_back({static_cast<Series>(series), static_cast<Unit>(unit), std::string{probe}});
        header.scales.push_back(static_cast<int>(scale));
    }
    header.tick = static_cast<std::int64_t>(bytes.number());
    header.firstTime = unzigzag(bytes.number());
    header.firstId = unzigzag(bytes.number());
    if (bytes.broken() || header.tick < 1 || header.tick > 1'000'000)
        return std::nullopt;
    return header;
}

// What the samples so far lead one to expect of the next; packing and unpacking keep the same one.
struct Foretold {
    struct Lane {               // a channel
        std::uint32_t follower; // which channel came after this one
        std::int64_t step = 0;  // in time, when this channel came
        std::int64_t value = 0;
        double power;
        Conversion conversion;
    };
    explicit Foretold(const Header& header) : time{header.firstTime}, id{header.firstId} {
        const auto count = static_cast<std::uint32_t>(header.channels.size());
        for (std::uint32_t i = 0; i < count; ++i)
            lanes.push_back({.follower = i + 1 < count ? i + 1 : 0,
                             .power = powersOfTen[header.scales[i]],
                             .conversion = conversionOf(header.channels[i].unit)});
        channel = count - 1;
    }
    std::int64_t time, id;
    std::uint32_t channel; // of the sample before
    std::vector<Lane> lanes;
};

// Calls sink(channel, at, id, si) for each sample.
template <class Sink>
bool walk(const Header& header, Bytes& rest, Sink&& sink) {
    ExceptionsIn channels{rest.next(rest.number())};
    ExceptionsIn times{rest.next(rest.number())};
    ExceptionsIn ids{rest.next(rest.number())};
    Bytes bytes = rest; // by value: what nobody else can see may stay in registers
    Foretold next{header};
    std::int64_t time = next.time, id = next.id;
    std::uint32_t channel = next.channel;
    for (std::uint64_t i = 0; i < header.count; ++i) {
        if (channels.miss()) {
            const auto other = channels.what();
            if (other >= header.channels.size())
                return false;
            next.lanes[channel].follower = static_cast<std::uint32_t>(other);
        }
        channel = next.lanes[channel].follower;
        Foretold::Lane& lane = next.lanes[channel];
        if (times.miss())
            step(lane.step, unzigzag(times.what()));
        step(time, lane.step);
        if (ids.miss())
            step(id, unzigzag(ids.what()));
        double si = 0;
        if (const auto coded = bytes.number(); coded == 0) {
            si = std::bit_cast<double>(bytes.fixed());
        } else {
            step(lane.value, unzigzag(coded - 1));
            si = lane.conversion.toSi(static_cast<double>(lane.value) / lane.power);
        }
        if (bytes.broken())
            return false;
        sink(channel, instantAt(time, header.tick), id, si);
        step(id, 1);
    }
    return !channels.broken() && !times.broken() && !ids.broken() && bytes.empty();
}

} // namespace

std::string packed(const std::vector<Channel>& channels, const std::vector<Sample>& samples) {
    Header header{samples.size(), channels, scalesOf(channels, samples), tickOf(samples), 0, samples.front().id};
    header.firstTime = samples.front().at.time_since_epoch().count() / header.tick;
    ExceptionsOut channelMisses, timeMisses, idMisses;
    std::string values;
    Foretold next{header};
    for (const Sample& sample : samples) {
        std::uint32_t& follower = next.lanes[next.channel].follower;
        if (follower == sample.channel)
            channelMisses.hit();
        else
            channelMisses.miss(follower = sample.channel);
        next.channel = sample.channel;

        const std::int64_t time = sample.at.time_since_epoch().count() / header.tick;
        Foretold::Lane& lane = next.lanes[sample.channel];
        std::int64_t& expected = lane.step;
        if (time == next.time + expected) {
            timeMisses.hit();
        } else {
            timeMisses.miss(zigzag(time - next.time - expected));
            expected = time - next.time;
        }
        next.time = time;

        if (sample.id == next.id)
            idMisses.hit();
        else
            idMisses.miss(zigzag(sample.id - next.id));
        next.id = sample.id + 1;

        const auto decimal = decimalOf(sample.si, channels[sample.channel].unit, header.scales[sample.channel]);
        if (decimal) {
            putNumber(values, zigzag(*decimal - lane.value) + 1);
            lane.value = *decimal;
        } else {
            putNumber(values, 0);
            const auto bits = std::bit_cast<std::array<char, 8>>(sample.si);
            values.append(bits.data(), bits.size());
        }
    }
    std::string out;
    put(out, header);
    for (const auto* misses : {&channelMisses, &timeMisses, &idMisses}) {
        putNumber(out, misses->bytes().size());
        out += misses->bytes();
    }
    return out + values;
}

bool unpack(std::string_view bytes, Unpacked& into) {
    Bytes block{bytes};
    const auto header = headerIn(block);
    if (!header)
        return false;
    const auto channelsBefore = into.channels.size();
    const auto samplesBefore = into.samples.size();
    std::vector<std::uint32_t> index;
    for (const Channel& channel : header->channels)
        index.push_back(channelIndex(into.channels, {channel.series, 0, channel.unit, channel.probe}));
    const bool whole = walk(*header, block, [&](std::uint32_t channel, Instant at, FactId id, double si) {
        into.samples.push_back({id, at, si, index[channel]});
    });
    if (!whole) {
        into.channels.resize(channelsBefore);
        into.samples.resize(samplesBefore);
    }
    return whole;
}

} // namespace panside
