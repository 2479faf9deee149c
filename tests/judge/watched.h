#pragma once
// A made-up boil with the engine watching it: facts reach the engine when they are entered, the truth stands beside
// them.
#include "core/boil/boil.h"
#include "core/rehearsal/rehearsal.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace panside::judge {

class Watched {
public:
    Watched(const RehearsalOptions& options, std::uint64_t seed) : begins_{options.begins}, plant_{options, seed} {}

    // One second on; false when the crew has gone home.
    bool second() {
        if (plant_.ended())
            return false;
        ++since_;
        const Instant now = at();
        for (auto& fact : plant_.advance(now))
            waiting_.push_back(std::move(fact));
        std::vector<Fact> later;
        for (auto& fact : waiting_) {
            if (fact.entered.value_or(fact.at) <= now)
                boil_.add(++id_, std::move(fact));
            else
                later.push_back(std::move(fact));
        }
        boil_.fold();
        waiting_ = std::move(later);
        return true;
    }
    double since() const { return since_; }
    Instant at() const { return begins_ + Duration{since_}; }
    Picture picture() const { return boil_.pictureAt(at()); }
    const RehearsalTruth& truth() const { return plant_.truth(); }
    Rehearsal& plant() { return plant_; }
    const Facts& facts() const { return boil_.facts(); }

private:
    Instant begins_;
    Rehearsal plant_;
    Boil boil_;
    FactId id_ = 0;
    std::vector<Fact> waiting_;
    double since_ = -1;
};

inline bool stands(const Picture& picture, Alarm alarm) {
    return std::any_of(picture.alarms.begin(), picture.alarms.end(),
                       [&](const AlarmPicture& one) { return one.alarm == alarm && one.stands(); });
}

inline double quantile(std::vector<double> values, double share) {
    if (values.empty())
        return 0;
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1) + 0.5)];
}

} // namespace panside::judge
