#pragma once
// A series as the screen can show it: for each column of pixels its first, last, least and greatest value, kept as the
// samples arrive, so that no peak is lost and a new second costs one column. The samples stay beside it, packed, for
// the moment when somebody looks closer.
#include "core/boil/picture.h"

#include <cstdint>
#include <vector>

namespace panside {

class Thinned {
public:
    struct Column {
        std::int64_t index; // times the column's span since the epoch
        float first, last, least, greatest;
        Trust trust;    // the worst in it
        bool gapBefore; // no line may be drawn to it
        bool operator==(const Column&) const = default;
    };
    struct Sample {
        Instant at;
        float value;
        Trust trust;
        bool gapBefore;
    };

    // Samples in the order of time; one that is earlier than the last is left out (a rewritten past comes as a whole).
    void add(const Sample& sample);
    void clear();
    // Thins anew for columns so wide; does nothing when they are already.
    void setColumn(std::chrono::microseconds span);
    std::chrono::microseconds column() const { return span_; }

    const std::vector<Column>& columns() const { return columns_; }
    std::size_t size() const { return packed_.size(); }
    Sample sample(std::size_t index) const;
    // The sample nearest in time; size() must not be zero.
    Sample nearest(Instant at) const;

private:
    // Eight bytes a sample: hundredths of a second since the first (62 days' worth), trust and gap in the lowest bits.
    struct Packed {
        std::uint32_t when;
        float value;
    };
    void thin(const Sample& sample);

    Instant begin_{};
    std::vector<Packed> packed_;
    std::vector<Column> columns_;
    std::chrono::microseconds span_{1'000'000};
};

} // namespace panside
