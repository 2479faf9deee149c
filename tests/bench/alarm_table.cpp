// alarm_table [BOILS]: how well alarms tell danger from a messy but harmless night, on rehearsal boils whose truth is
// known. Prints one table: false alarms by name on harmless boils, and how long before the harm the true ones came.
#include "core/boil/boil.h"
#include "core/boil/state.h"
#include "core/probe/rehearsal.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace {

using namespace panside;

struct Night {
    std::map<Alarm, std::vector<double>> begun; // seconds since the fire was lit
    std::optional<double> dry, tooDense;        // when the pan really was dry, when past 75 brix
    double hours = 0;
};

Night watch(RehearsalOptions options, std::uint64_t seed, double hours) {
    Rehearsal boil{options, seed};
    State state;
    std::vector<Fact> waiting;
    Night night;
    std::map<Alarm, bool> stood;
    for (int t = 1; t <= hours * 3600 && !boil.ended(); ++t) {
        const Instant now = options.begins + std::chrono::seconds{t};
        // What the crew keys in with a later time waits for its time.
        for (Fact& fact : boil.advance(now))
            waiting.push_back(std::move(fact));
        const auto due =
            std::stable_partition(waiting.begin(), waiting.end(), [now](const Fact& fact) { return fact.at <= now; });
        std::stable_sort(waiting.begin(), due, [](const Fact& a, const Fact& b) { return a.at < b.at; });
        std::for_each(waiting.begin(), due, [&state](const Fact& fact) { absorb(state, fact); });
        waiting.erase(waiting.begin(), due);
        const auto& truth = boil.truth();
        if (truth.panDepth < Length::millimetre(5) && !night.dry)
            night.dry = t;
        if (truth.drawOff.degrees() > 75 && !night.tooDense)
            night.tooDense = t;
        std::map<Alarm, bool> stands;
        for (const AlarmPicture& alarm : picture(state, now).alarms)
            stands[alarm.alarm] = stands[alarm.alarm] || alarm.stands();
        for (const auto& [alarm, standing] : stands)
            if (standing && !stood[alarm])
                night.begun[alarm].push_back(t);
        stood = stands;
        night.hours = t / 3600.0;
        if (night.dry)
            break;
    }
    return night;
}

std::string list(std::vector<double> times) {
    std::string out;
    for (std::size_t i = 0; i < times.size() && i < 8; ++i)
        out += fmt::format(" {:.0f}", times[i]);
    return out;
}

void harmless(int boils) {
    std::map<Alarm, int> count;
    double hours = 0;
    for (int i = 0; i < boils; ++i) {
        auto options = anyBoil(static_cast<std::uint64_t>(i));
        options.crew.boilFor = std::chrono::hours{5};
        const Night night = watch(options, static_cast<std::uint64_t>(i), 7);
        hours += night.hours;
        for (const auto& [alarm, times] : night.begun) {
            count[alarm] += static_cast<int>(times.size());
            if (alarm != Alarm::above_target && alarm != Alarm::fire_overdue && alarm != Alarm::draw_overdue)
                fmt::print("  boil {:3}: {:22}{}\n", i, nameOf(alarm), list(times));
        }
        if (night.dry || night.tooDense)
            fmt::print("  boil {:3}: truly dry at {:.0f}, past 75 brix at {:.0f}\n", i, night.dry.value_or(0),
                       night.tooDense.value_or(0));
    }
    fmt::print("harmless: {} boils, {:.0f} h\n", boils, hours);
    for (const auto& [alarm, n] : count)
        fmt::print("  {:22} {:4}   {:6.2f} in 12 h\n", nameOf(alarm), n, n * 12 / hours);
}

// The feed stops and nobody sees it.
void danger(int boils, std::string_view name, std::vector<Series> readings) {
    std::vector<double> leads;
    int missed = 0, happened = 0;
    for (int i = 0; i < boils; ++i) {
        auto options = anyBoil(static_cast<std::uint64_t>(1000 + i));
        options.readings = readings;
        options.spacing = Duration{1};
        options.byHand = false;
        options.feedFault = FeedFault::stops;
        options.feedFaultAfter = std::chrono::minutes{100 + 7 * (i % 9)};
        options.crewSavesPan = false;
        Night night = watch(options, static_cast<std::uint64_t>(1000 + i), 5);
        double harm = std::min(night.dry.value_or(1e9), night.tooDense.value_or(1e9));
        if (harm > 1e8)
            continue;
        ++happened;
        double lead = -1;
        if (const auto scorch = night.begun.find(Alarm::scorch_risk); scorch != night.begun.end())
            for (const double t : scorch->second)
                if (t < harm && t > harm - 7200)
                    lead = std::max(lead, harm - t);
        if (lead < 0)
            ++missed;
        leads.push_back(lead);
        if (lead < 60)
            fmt::print("  boil {}: dry {:.0f}, past 75 brix {:.0f}, scorch_risk{}\n", 1000 + i, night.dry.value_or(0), night.tooDense.value_or(0), list(night.begun[Alarm::scorch_risk]));
    }
    std::sort(leads.begin(), leads.end());
    if (!leads.empty())
        fmt::print("feed stops, {:24}: {} harms, missed {}, lead least {:.0f} s, tenth {:.0f} s, median {:.0f} s, most "
                   "{:.0f} s\n",
                   name, happened, missed, leads.front(), leads[leads.size() / 10], leads[leads.size() / 2],
                   leads.back());
}

} // namespace

int main(int count, char** words) {
    const int boils = count > 1 ? std::atoi(words[1]) : 24;
    harmless(boils);
    using enum panside::Series;
    danger(boils / 2, "pan temperature and level", {syrup_pan, pan_level, pressure});
    danger(boils / 2, "pan temperature and feed", {syrup_pan, feed_flow, pressure});
    danger(boils / 2, "pan temperature and tank", {syrup_pan, tank_level, pressure});
    danger(boils / 2, "pan temperature only", {syrup_pan, pressure});
    return 0;
}
