#pragma once
// A shift's facts in memory, by time; those of one time by their numbers. A night is a quarter of a million readings of
// a few probes and some hundreds of all else: a reading takes 32 bytes here, a Fact that could be anything seven times
// as many.
#include "core/boil/fact.h"

#include <iterator>
#include <utility>
#include <vector>

namespace panside {

// Names a fact within its shift: the journal's own number, or any that the caller keeps unique.
using FactId = std::int64_t;

struct FactEntry {
    FactId id;
    Fact fact;
};

// Where readings come from: a series, the unit its numbers are written in, and the probe.
struct Channel {
    Series series;
    Unit unit;
    std::string probe;
    bool operator==(const Channel&) const = default;
};
// Its place in `channels`, where it is added if it is new. They are few: a linear search is the fastest.
std::uint32_t channelIndex(std::vector<Channel>& channels, const Reading& reading);

class Facts {
public:
    class Iterator;
    using const_iterator = Iterator;
    using value_type = FactEntry;

    Facts() = default;
    Facts(const std::vector<FactEntry>& entries); // in any order; on purpose no other word is needed for it

    // Takes its place in time, which is told. The last one costs next to nothing.
    std::size_t add(FactId id, Fact fact);
    void erase(std::size_t place);
    void reserve(std::size_t count) { rows_.reserve(count); }

    std::size_t size() const { return rows_.size(); }
    bool empty() const { return rows_.empty(); }
    Instant at(std::size_t place) const { return rows_[place].at; }
    // How many were before that time, and how many before it or at it.
    std::size_t before(Instant at) const;
    std::size_t upTo(Instant at) const;
    // What was entered last is found soonest.
    std::optional<std::size_t> placeOf(FactId id) const;

    FactEntry operator[](std::size_t place) const;
    FactEntry front() const { return (*this)[0]; }
    FactEntry back() const { return (*this)[size() - 1]; }
    // The same without making a new one each time: what is given back is `scratch`, or stands here.
    const Fact& fact(std::size_t place, Fact& scratch) const;
    Iterator begin() const;
    Iterator end() const;

private:
    struct Row {
        Instant at;
        FactId id;
        double si;             // of a reading
        std::uint32_t channel; // `whole`: no plain reading
        std::uint32_t index;   // then of the whole ones
        bool isBefore(const Row& other) const { return at != other.at ? at < other.at : id < other.id; }
    };
    static constexpr std::uint32_t whole = UINT32_MAX;

    std::vector<Row> rows_;
    std::vector<Channel> channels_;
    std::vector<Fact> whole_; // one that was withdrawn leaves its place empty: they are few
};

// Gives entries by value.
class Facts::Iterator {
public:
    using iterator_category = std::random_access_iterator_tag;
    using value_type = FactEntry;
    using difference_type = std::ptrdiff_t;
    using reference = FactEntry;
    struct pointer {
        FactEntry entry;
        const FactEntry* operator->() const { return &entry; }
    };

    Iterator() = default;
    Iterator(const Facts& of, std::size_t place) : of_{&of}, place_{place} {}
    FactEntry operator*() const { return (*of_)[place_]; }
    pointer operator->() const { return {**this}; }
    FactEntry operator[](difference_type by) const { return *(*this + by); }
    Iterator& operator+=(difference_type by) {
        place_ += static_cast<std::size_t>(by);
        return *this;
    }
    Iterator& operator-=(difference_type by) { return *this += -by; }
    Iterator& operator++() { return *this += 1; }
    Iterator& operator--() { return *this += -1; }
    Iterator operator++(int) { return std::exchange(*this, *this + 1); }
    Iterator operator--(int) { return std::exchange(*this, *this - 1); }
    friend Iterator operator+(Iterator from, difference_type by) { return from += by; }
    friend Iterator operator+(difference_type by, Iterator from) { return from += by; }
    friend Iterator operator-(Iterator from, difference_type by) { return from -= by; }
    friend difference_type operator-(const Iterator& a, const Iterator& b) {
        return static_cast<difference_type>(a.place_) - static_cast<difference_type>(b.place_);
    }
    bool operator==(const Iterator& other) const { return place_ == other.place_; }
    auto operator<=>(const Iterator& other) const { return place_ <=> other.place_; }

private:
    const Facts* of_ = nullptr;
    std::size_t place_ = 0;
};

inline Facts::Iterator Facts::begin() const { return {*this, 0}; }
inline Facts::Iterator Facts::end() const { return {*this, size()}; }

} // namespace panside
