#pragma once
// Reads one row of a log or of the day book; the first fault met is kept and all that follows comes to nothing. For the
// files that read rows; no one else includes it.
#include "core/boil/day_vocabulary.h"
#include "core/boil/detail.h"
#include "core/boil/shift_log.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>
#include <span>
#include <string>

namespace panside {

struct LogFields {
    std::string_view time, what, value, unit, detail;
};

constexpr std::array<Unit, 2> only(Unit unit) { return {unit, unit}; }
inline constexpr std::array volumeUnits{Unit::L, Unit::gal, Unit::impgal, Unit::qt, Unit::pt, Unit::cup, Unit::mL};

// A value: the few units it may have and between which values it is taken (SI; Baumé as written).
struct Form {
    Form(std::span<const Unit> its, double low, double high) : lowest{low}, highest{high} {
        count = std::min(its.size(), room.size());
        std::copy_n(its.begin(), count, room.begin());
    }
    Form(std::initializer_list<Unit> its, double low, double high)
        : Form{std::span<const Unit>{its.begin(), its.size()}, low, high} {}
    std::span<const Unit> units() const { return {room.data(), count}; }
    void add(Unit unit) {
        if (count < room.size())
            room[count++] = unit;
    }
    std::array<Unit, 10> room{};
    std::size_t count = 0;
    double lowest, highest;
};

// Of three units at most.
inline Sentence oneOf(const auto& units) {
    std::vector<std::string> names;
    for (const Unit unit : units)
        if (names.empty() || (names.front() != nameOf(unit) && names.size() < 3))
            names.emplace_back(nameOf(unit));
    return names.size() < 2    ? asWritten(names.empty() ? std::string{} : names.front())
           : names.size() == 2 ? say("%1 or %2", std::move(names))
                               : say("%1 or %2 or %3", std::move(names));
}

inline Sentence range(std::string from, std::string to, Unit unit = Unit::none) {
    return unit == Unit::none ? say("%1 to %2", {std::move(from), std::move(to)})
                              : say("%1 to %2 %3", {std::move(from), std::move(to), std::string{nameOf(unit)}});
}
inline Sentence rangeBetween(double lowest, double highest, Unit unit) {
    // A limit of many digits is a round one: it is written out.
    const auto written = [unit](double si) {
        const double number = fromSi(si, unit);
        return std::abs(number) >= 1e5 ? fmt::format("{:.0f}", number) : fmt::format("{:.5g}", number);
    };
    return range(written(lowest), written(highest), unit);
}
inline Sentence aTemperature() { return say("a number and degC or degF, as in 98.9degC"); }
inline Sentence timeLike() { return say("a time as in %1", {"2025-03-14T18:00:00Z"}); }

class RowReader {
public:
    explicit RowReader(const LogFields& row) : row_{row} {}
    std::variant<Fact, Fault> read(std::optional<Instant> now);

private:
    void fail(Slip slip, std::string_view field, std::string_view given, Sentence wanted = {}, std::string meant = {}) {
        if (!fault_)
            fault_ = Fault{slip, 0, 0, std::string{field}, std::string{given}, std::move(wanted), std::move(meant)};
    }
    std::optional<double> number(std::string_view field, std::string_view text);
    std::optional<Unit> unit(auto takes, const Sentence& wanted);
    void checkRange(std::string_view field, std::string_view given, double value, Unit unit, const Form& form);
    std::optional<Written> value(const Form& form, bool required);
    void noValue();
    void checkWhole(std::string_view field, std::string_view given, double value);

    template <class Q>
    std::optional<Said<Q>> said(const std::optional<Written>& written) {
        if (!written)
            return std::nullopt;
        if constexpr (std::is_same_v<Q, Temperature>)
            return Said<Q>{Temperature::kelvin(written->si()), written->unit};
        else
            return Said<Q>{Q::ofSi(written->si()), written->unit};
    }
    std::optional<Said<Temperature>> temperature(std::string_view key, double lowest, double highest);
    std::optional<double> plainOrIn(std::string_view key, Unit unit, double lowest, double highest);
    std::string text(std::string_view key) { return detail_.use(key).value_or(""); }

    std::optional<What> what();
    What reading(Series series);
    What fired();
    What densityCheck();
    What sapIn();
    What crew();
    What alarm(bool shelved);
    What set();
    What setWords(Setting key);
    What day(Deed deed);
    std::optional<DayAmount> dayValue(const DayDeedRow& row, std::string& words);
    void dayPair(const DayDeedRow& row, Key key, DayRow& day);
    std::optional<double> dayNumber(const DayKeyRow& key, const std::string& given);
    What asUnknown() const {
        return Unknown{std::string{row_.what}, std::string{row_.value}, std::string{row_.unit},
                       std::string{row_.detail}};
    }

    const LogFields& row_;
    Detail detail_;
    std::optional<Fault> fault_;
};

} // namespace panside
