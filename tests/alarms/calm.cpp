#include "tests/alarms/calm.h"

#include "core/boil/alarm_history.h"
#include "core/boil/shift_log.h"
#include "tests/judge/watched.h"

#include <fmt/format.h>

#include <fstream>
#include <iterator>
#include <map>

namespace panside::judge {

void verdict(bool kept) {
    fmt::print("  {}\n", kept ? "kept" : "NOT KEPT");
    broken += kept ? 0 : 1;
}

namespace {

// How long, each second, the truth has borne out what the draw's two alarms say: shut over the mark, or drawn on under
// the least that is legal.
class LateDraws {
public:
    void addSecond(const RehearsalTruth& truth) {
        constexpr double legal = 66;
        over_.push_back(!truth.drawing && truth.reading > truth.mark ? last(over_) + 1 : 0);
        under_.push_back(truth.drawing && truth.drawOff.degrees() < legal ? last(under_) + 1 : 0);
    }
    // One that began after so many seconds has a late hand for its cause.
    bool explains(Alarm alarm, double since) const {
        constexpr double late =
            10; // of the 20 s that the alarm waits: the mark is known to some hundredths of a kelvin
        const auto& lasts = alarm == Alarm::above_target ? over_ : under_;
        const auto i = static_cast<std::size_t>(std::max(0.0, since));
        return (alarm == Alarm::above_target || alarm == Alarm::draw_overdue) && i < lasts.size() && lasts[i] >= late;
    }

private:
    static double last(const std::vector<double>& of) { return of.empty() ? 0 : of.back(); }
    std::vector<double> over_, under_;
};

// Alarms begun in an hour, each counted, right or not: from an hour after the first fact to an hour and a half before
// the crew stops firing, or to the end of the facts.
class CalmHours {
public:
    void add(const std::string& name, const Facts& facts, const LateDraws& late, bool apart) {
        const AlarmHistory history = alarmHistory(facts);
        Instant until = history.until;
        for (const auto& [id, fact] : facts)
            if (std::holds_alternative<Shutdown>(fact.what))
                until = std::min(until, fact.at - std::chrono::minutes{90});
        const Instant from = history.from + std::chrono::hours{1};
        CalmHours night;
        night.hours_ = std::max(0.0, secondsBetween(from, until)) / 3600;
        for (const AlarmSpan& span : history.spans)
            if (span.began >= from && span.began < until) {
                ++night.begun_[span.alarm];
                night.byLateHands_ += late.explains(span.alarm, secondsBetween(history.from, span.began)) ? 1 : 0;
            }
        if (apart)
            night.say(name);
        for (const auto& [alarm, times] : night.begun_)
            begun_[alarm] += times;
        byLateHands_ += night.byLateHands_;
        hours_ += night.hours_;
    }
    // Alarms an hour: all of them; those that no late hand is the cause of.
    double all() const { return (apart() + byLateHands_) / std::max(hours_, 1e-9); }
    double unexplained() const { return apart() / std::max(hours_, 1e-9); }
    void say(const std::string& name) const {
        std::string which;
        for (const auto& [alarm, times] : begun_)
            which += fmt::format(" {} {}", nameOf(alarm), times);
        fmt::print("{:<28}{:>7.1f} h{:>8.2f} an hour, {:.2f} for no late draw {}\n", name, hours_, all(), unexplained(),
                   which);
    }

private:
    int apart() const {
        int all = -byLateHands_;
        for (const auto& [alarm, times] : begun_)
            all += times;
        return all;
    }
    std::map<Alarm, int> begun_;
    int byLateHands_ = 0;
    double hours_ = 0;
};

// Nights in which nothing fails and nobody forgets.
CalmHours calmNights(int boils, bool prompt) {
    CalmHours nights;
    for (int i = 1; i <= boils; ++i) {
        const std::uint64_t seed = 23000 + others + static_cast<std::uint64_t>(i);
        auto options = anyBoil(seed);
        options.probe.spikesPerHour = options.probe.splashesPerHour = options.probe.foamsPerHour = 0;
        options.fire.forgets = 0;
        options.crew.forgetsToClose = 0;
        if (prompt) {
            options.crew.heavy = 0;
            options.crew.slow = Duration{8};
            options.crew.closesUnder = 0.1;
        }
        Watched boil{options, seed};
        LateDraws late;
        while (boil.second() && boil.since() < 12 * 3600)
            late.addSecond(boil.truth());
        nights.add(fmt::format("seed {}", seed), boil.facts(), late, boils <= 10);
    }
    return nights;
}

} // namespace

void calm(int boils, const std::vector<std::string>& logs) {
    fmt::print("\nAlarms begun in a calm hour, nothing fails and nobody forgets\n"
               "A crew that opens within 16 s of its mark and shuts 0.1 K under it; under 1 wanted\n");
    const CalmHours prompt = calmNights(boils, true);
    prompt.say("all");
    verdict(prompt.all() < 1);
    fmt::print("Crews with habits: up to 80 s late, 0.25 K over their mark, shut up to 0.7 K under it; under 1 wanted "
               "that no late draw explains\n");
    const CalmHours own = calmNights(boils, false);
    own.say("all");
    verdict(own.unexplained() < 1);
    for (const std::string& name : logs) {
        std::ifstream in{name, std::ios::binary};
        const ReadLog log = readLog(std::string{std::istreambuf_iterator<char>{in}, {}});
        Facts facts;
        for (const Fact& fact : log.facts)
            facts.add(static_cast<FactId>(facts.size()), fact);
        CalmHours{}.add(name.substr(name.rfind('/') + 1), facts, {}, true);
    }
}

} // namespace panside::judge
