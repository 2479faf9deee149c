#pragma once
// A row of the day book: what is done before and after the boil. One uniform value for all of them: what was done, how
// much, and the details by key, each as it was typed and, where it is a number, in SI beside it. Which details belong
// to which row, and what they may be, stands in the table of day_vocabulary.h and nowhere else.
#include "core/quantity/quantity.h"
#include "core/quantity/unit.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace panside {

// The rows of the day book.
enum class Deed : std::uint8_t {
    vessel,
    gathered,
    moved,
    dipped,
    concentrated,
    bought,
    sold,
    lost,
    pans_emptied,
    press_on,
    press_off,
    graded,
    packed,
    shipped,
    came_back,
    destroyed,
    cleaned,
    tested
};
inline constexpr std::size_t deedCount = 18;

// The keys of their details.
enum class Key : std::uint8_t {
    name,
    kind,
    shape,
    tare,
    material,
    lead,
    out,
    to,
    from,
    taps,
    brix,
    with,
    cal,
    temp,
    clear,
    in,
    brix_in,
    hours,
    washed,
    what,
    vessel,
    price,
    why,
    chased,
    aid,
    papers,
    heel,
    result,
    lot,
    light_class, // written class
    flavour,
    off,
    sample,
    size,
    of,
    filler,
    capped,
    broken,
    laid,
    rinsed,
    checked,
    tested_for // written for
};
inline constexpr std::size_t keyCount = 42;

// An amount with the unit it was written in, which says its dimension.
struct DayAmount {
    double si;
    Unit unit;
    bool operator==(const DayAmount&) const = default;
};

struct DayPair {
    Key key;
    std::string text; // as typed
    double si = 0;    // of a key that is a number: of the dimension that keyOf() says
    bool operator==(const DayPair&) const = default;
};

struct DayRow {
    Deed deed;
    std::optional<DayAmount> value;
    std::string words; // in the value's place where it is no number: what a test came to
    std::vector<DayPair> pairs;

    const DayPair* of(Key key) const {
        for (const DayPair& pair : pairs)
            if (pair.key == key)
                return &pair;
        return nullptr;
    }
    std::string_view text(Key key) const {
        const DayPair* pair = of(key);
        return pair ? std::string_view{pair->text} : std::string_view{};
    }
    std::optional<double> si(Key key) const {
        const DayPair* pair = of(key);
        return pair ? std::optional{pair->si} : std::nullopt;
    }
    // SI of the value, if it has that dimension.
    std::optional<double> value_as(Dimension dimension) const {
        return value && dimensionOf(value->unit) == dimension ? std::optional{value->si} : std::nullopt;
    }
    std::optional<Volume> volume() const {
        const auto si = value_as(Dimension::volume);
        return si ? std::optional{Volume::ofSi(*si)} : std::nullopt;
    }
    std::optional<Brix> brix() const {
        const auto share = si(Key::brix);
        return share ? std::optional{Brix::ofSi(*share)} : std::nullopt;
    }
    std::optional<Temperature> temperature(Key key = Key::temp) const {
        const auto kelvin = si(key);
        return kelvin ? std::optional{Temperature::kelvin(*kelvin)} : std::nullopt;
    }
    bool operator==(const DayRow&) const = default;
};

} // namespace panside
