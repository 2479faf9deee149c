#pragma once
// Engine tests read like a log: rows in, pictures out. Times are seconds after noon.
#include "core/boil/boil.h"
#include "core/boil/replay.h"
#include "core/boil/shift_log.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <initializer_list>
#include <string>
#include <utility>
#include <vector>

namespace panside::test {

inline const Instant noon = instantIn("2025-03-14T12:00:00Z").value();

// A log being written.
class Rows {
public:
    Rows& add(double at, std::string_view row) {
        auto fact = factOfLine(textOf(noon + Duration{at}) + "," + std::string{row});
        if (const auto* fault = std::get_if<Fault>(&fact))
            ADD_FAILURE() << sentence(*fault, std::string{row});
        else
            facts.push_back(std::get<Fact>(std::move(fact)));
        return *this;
    }
    Rows& read(double at, std::string_view series, double value, std::string_view unit, std::string_view detail = "") {
        return add(at, fmt::format("{},{:.3f},{},{}", series, value, unit, detail));
    }
    Boil boil() const {
        Boil boil;
        FactId id = 0;
        for (const Fact& fact : facts)
            boil.add(id++, fact);
        boil.fold();
        return boil;
    }
    // Folded once, and on from there as rows come: a test may look at every moment of a night.
    Picture at(double time) const { return seen_.of(facts).pictureAt(noon + Duration{time}); }

    std::vector<Fact> facts;

private:
    struct Seen {
        Seen() = default;
        Seen(const Seen&) {} // each copy sees for itself
        Seen& operator=(const Seen&) {
            boil = {};
            told = 0;
            return *this;
        }
        const Boil& of(const std::vector<Fact>& facts) {
            for (; told < facts.size(); ++told)
                boil.add(static_cast<FactId>(told), facts[told]);
            return boil.fold();
        }
        Boil boil;
        std::size_t told = 0;
    };
    mutable Seen seen_;
};

// A filter pressed to a limit of 300 kPa: the simplest alarm there is (2 s to stand, 2 s to be gone, ends at 285 kPa).
inline Rows pressed(std::initializer_list<std::pair<int, double>> untilAndKilopascal) {
    Rows rows;
    rows.add(0, "set,300,kPa,key=filter_limit");
    int t = 0;
    for (const auto& [until, kilopascal] : untilAndKilopascal)
        for (; t < until; ++t)
            rows.read(t, "filter_pressure", kilopascal, "kPa");
    return rows;
}

inline bool stands(const Picture& picture, Alarm alarm) {
    return std::any_of(picture.alarms.begin(), picture.alarms.end(),
                       [alarm](const AlarmPicture& one) { return one.alarm == alarm && one.stands(); });
}

} // namespace panside::test
